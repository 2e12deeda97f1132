// SPDX-License-Identifier: Apache-2.0
// Solving a grounded framework, with the choice that `full` substitutions leave.
#pragma once

#include <vector>

#include "blend/ground.hpp"
#include "blend/solver.hpp"
#include "plan/draft.hpp"

namespace maslin::plan {

struct Solved {
  blend::Setting setting;
  blend::Blend blend;
  blend::Solution solution;
};

blend::Goal goal_of(const Aim& aim);

// The best over all ways in which credits may or may not reach their caps; where none has a
// solution, the way in which no credit reaches its cap: its reasons are the plainest.
Solved solve_best(const blend::Grounding& grounding, const blend::Setting& setting);

// With the same choice of caps as before.
Solved solve_again(const blend::Grounding& grounding, const blend::Setting& setting);

}  // namespace maslin::plan
