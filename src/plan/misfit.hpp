// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "plan/solve.hpp"

namespace maslin::plan {

// Says which statements cannot hold together, by how much, and what would mend it. `solved` has no
// solution. `asked` is false where the size of the batch was ours to choose.
void report_misfit(const blend::Grounding& grounding, const Task& task, const Solved& solved,
                   bool asked, Diagnostics& diagnostics);

}  // namespace maslin::plan
