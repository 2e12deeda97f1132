// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "language/program.hpp"
#include "plan/make.hpp"
#include "report/sheet.hpp"

namespace maslin::report {

// What of the basket no boil takes, and what more would use it up.
Section left_over_section(const language::Program& program, const plan::Plan& plan);

}  // namespace maslin::report
