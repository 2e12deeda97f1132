// SPDX-License-Identifier: Apache-2.0
// The smallest changes that make a plan possible.
#pragma once

#include <vector>

#include "blend/ground.hpp"
#include "plan/make.hpp"
#include "plan/misfit.hpp"

namespace maslin::plan {

// Tries one lever at a time (more of this, buying that, a smaller batch), then several together,
// until there is a choice. Each is solved on the whole model, rounded, and planned again before it
// is offered. A misfit without conflicts stands for something that is missing altogether.
std::vector<Mend> find_mends(const language::Program& program, const Task& task,
                             const Misfit& misfit);

}  // namespace maslin::plan
