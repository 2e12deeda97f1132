// SPDX-License-Identifier: Apache-2.0
// The method with the weights of a plan: what of everything weighed out goes in at which step.
// Exact; over all steps the shares of each thing taken add up to all of it.
#pragma once

#include <cstddef>
#include <vector>

#include "language/uses.hpp"
#include "plan/verify.hpp"

namespace maslin::plan {

// One thing weighed out: the list of the draft it stands in, and its place there.
struct TakenId {
  language::SlotKind list{};
  std::size_t index = 0;

  friend bool operator==(const TakenId&, const TakenId&) = default;
};
const Taken& taken_of(const Draft& draft, const TakenId& id);
// Produce, additions, substitutes.
std::vector<TakenId> all_taken(const Draft& draft);

// What one step takes of one thing weighed out.
struct Item {
  TakenId taken;
  Rational share;      // of all that is taken of it
  bool aside = false;  // it goes in with what lies in it
};

struct TimelineStep {
  const language::Step* step = nullptr;  // of the framework
  std::vector<Item> items;               // named in the step
  std::vector<Item> entering;            // what comes into the pan, or the jars, with it
  std::vector<Item> in_the_pan;          // what came into the pan before it
  bool for_jars = false;                 // what enters goes into the jars as it is
};

struct TimelineStage {
  const language::Stage* stage = nullptr;
  std::vector<TimelineStep> steps;
};

// No stages where the framework states no method.
using Timeline = std::vector<TimelineStage>;

Timeline make_timeline(const language::Program& program, const VerifiedPlan& plan);

// All that goes into the pan at some step; what is packed into jars does not. Everything, where no
// method says.
std::vector<Item> through_the_pan(const Draft& draft, const Timeline& timeline);

// The weight of a share of something taken, g.
Rational weight_of(const Draft& draft, const Item& item);

}  // namespace maslin::plan
