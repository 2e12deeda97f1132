// SPDX-License-Identifier: Apache-2.0
// From pan to shelf: what a verified plan becomes in its kitchen. Nothing here changes what is
// weighed out, and a plan stands without it.
#pragma once

#include <optional>

#include "diagnostic/diagnostic.hpp"
#include "plan/boil_limits.hpp"
#include "plan/boils.hpp"
#include "plan/clock.hpp"
#include "plan/jars.hpp"
#include "plan/liquor.hpp"
#include "plan/salting.hpp"
#include "plan/tested.hpp"
#include "plan/timeline.hpp"

namespace maslin::plan {

struct Afternoon {
  Timeline timeline;
  Course course;
  Boils boils;
  std::vector<Salting> saltings;
  std::vector<BoilMiss> misses;  // limits that a boil does not keep to, by rounding
  std::optional<Height> height;
  std::optional<Range<Temperature>> set;  // where jam has reached its solids, by a thermometer
  std::optional<Liquor> liquor;           // where something is packed into the jars as it is
  std::optional<JarPlan> jars;            // where the kitchen has any and something is filled
  std::optional<Clock> clock;
  std::optional<Tested> tested;  // where the framework calls itself so, or claims a tested process
};

Afternoon plan_afternoon(const language::Program& program, const VerifiedPlan& plan);

// What the method says; else what is usual, inside what the routes claimed have, or as the recipe
// was tested whose minutes are claimed.
Headspace headspace_of(const language::Program& program, const language::Framework& framework);

// What the whole batch is expected to fill, boiling hot, less what sticks to the pan.
Range<Volume> expected_volume(const language::Program& program, const VerifiedPlan& plan,
                              const Course& course);

// What the kitchen cannot do, as findings; the plan stands.
void report_kitchen(const language::Program& program, const VerifiedPlan& plan,
                    const Afternoon& afternoon, Diagnostics& diagnostics);

// Whether all that is taken and makes ill when raw gets its boiling; else it is reported, and there
// is no plan.
bool check_boiling(const language::Program& program, const Draft& draft, Diagnostics& diagnostics);

}  // namespace maslin::plan
