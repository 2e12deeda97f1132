// SPDX-License-Identifier: Apache-2.0
// The weight in the pan along the method, as far as the method says it: what is added, what boils
// away, what is kept. Ranges, since nobody states what a simmer loses.
#pragma once

#include <optional>
#include <vector>

#include "plan/timeline.hpp"

namespace maslin::plan {

struct Course {
  // By stage and step of the method, g in the pan when the step is done; for the whole batch.
  std::vector<std::vector<Range<Mass>>> after;
  Range<FinishedMass> finish;  // all that is kept: in the pan, and packed into jars
  bool is_boiled_down = false;
};

Course make_course(const language::Program& program, const VerifiedPlan& plan,
                   const Timeline& timeline);

}  // namespace maslin::plan
