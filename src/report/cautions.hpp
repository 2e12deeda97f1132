// SPDX-License-Identifier: Apache-2.0
// The usual cautions, chosen by what is in the pan.
#pragma once

#include <string>
#include <vector>

#include "language/program.hpp"
#include "plan/draft.hpp"

namespace maslin::report {

std::vector<std::string> cautions_for(const language::Program& program, const plan::Draft& draft);

}  // namespace maslin::report
