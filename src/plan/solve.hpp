// SPDX-License-Identifier: Apache-2.0
// An aim as the goal of a linear programme.
#pragma once

#include "blend/best.hpp"
#include "plan/draft.hpp"

namespace maslin::plan {

using blend::solve_again;
using blend::solve_best;
using blend::Solved;

blend::Goal goal_of(const Aim& aim);

}  // namespace maslin::plan
