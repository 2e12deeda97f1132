// SPDX-License-Identifier: Apache-2.0
// Solving a grounded framework, with the choices that the language and boiling leave.
#pragma once

#include "blend/ground.hpp"
#include "blend/solver.hpp"

namespace maslin::blend {

struct Solved {
  Setting setting;
  Blend blend;
  Solution solution;
};

// The best over all ways in which credits may or may not reach their caps; where none has a
// solution, the way in which no credit reaches its cap: its reasons are the plainest. What boiling
// leaves is found by solving again until what was expected of it comes about.
Solved solve_best(const Grounding& grounding, const Setting& setting);

// As the setting says: with its choice of caps, and what it expects of boiling.
Solved solve_again(const Grounding& grounding, const Setting& setting);

// What leaves the pan then. Error: more is to boil away than is in the pan when the method says so.
science::Computed<language::Contents> pan_of(const Grounding& grounding, const Solved& solved);

}  // namespace maslin::blend
