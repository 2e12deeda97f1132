// SPDX-License-Identifier: Apache-2.0
// One try at a plan, without a word about it: for the plan itself, and for trying out mends.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "plan/make.hpp"
#include "plan/solve.hpp"
#include "plan/verify.hpp"

namespace maslin::plan {

enum class Outcome : std::uint8_t {
  planned,
  misfit,    // no amounts meet every statement
  nothing,   // only a batch of nothing at all meets them
  too_fine,  // amounts exist, but none that the scales can weigh
};

struct Attempt {
  Outcome outcome{};
  std::optional<Plan> plan;
  Solved solved;                 // what was found, or what has no solution
  std::vector<Breach> breaches;  // of the last draft that the verifier refused
};

Attempt attempt_plan(const blend::Grounding& grounding, const Task& task);

// Kilograms of everything that goes into the pan less what boils off.
double finished_of(const Solved& solved);
double total_of(const Solved& solved);

}  // namespace maslin::plan
