// SPDX-License-Identifier: Apache-2.0
// From kilograms in binary to what a cook can weigh: produce first, so that its sum is a weight of
// the scales; then what is added to it; then what the credits leave of the rest.
#pragma once

#include <optional>

#include "plan/solve.hpp"

namespace maslin::plan {

// Nothing when a step of it has no solution any more.
std::optional<Draft> round_plan(const blend::Grounding& grounding, const Task& task,
                                const Solved& solved);

}  // namespace maslin::plan
