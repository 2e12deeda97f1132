// SPDX-License-Identifier: Apache-2.0
// A linear programme in the CPLEX LP format, for solvers that are not ours.
#pragma once

#include <string>

#include "blend/linear_program.hpp"

namespace maslin::blend::testing {

// Every side of a row is a row of its own.
std::string lp_text(const LinearProgram& program, const Objective& objective);

}  // namespace maslin::blend::testing
