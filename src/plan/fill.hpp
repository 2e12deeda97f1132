// SPDX-License-Identifier: Apache-2.0
// Backwards from jars to a batch that fills them.
#pragma once

#include <vector>

#include "plan/make.hpp"

namespace maslin::plan {

// What so many jars take below the headspace of this framework.
Volume room_in(const language::Program& program, const language::Framework& framework,
               const std::vector<language::JarStock>& jars);

// The aim, in prepared produce, that is expected to fill task.jars; volumes are estimates, so the
// last jar may come out less full. Where the basket does not suffice, the aim that would: planning
// it says what is short.
Aim aim_to_fill(const language::Program& program, const Task& task);

}  // namespace maslin::plan
