// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "language/program.hpp"
#include "plan/make.hpp"

namespace maslin::report {

// What the sections of the method took for granted, for the list of what was assumed.
std::vector<std::string> method_assumptions(const language::Program& program,
                                            const plan::Plan& plan);

}  // namespace maslin::report
