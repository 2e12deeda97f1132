// SPDX-License-Identifier: Apache-2.0
// What only the cook can know, as blanks to fill in.
#pragma once

#include "language/program.hpp"
#include "plan/make.hpp"
#include "report/sheet.hpp"

namespace maslin::report {

// A column for each boil; where they are too many for a page, one for whichever it is. What the
// routes that are claimed want read stands last, with the name of who answers for it.
Section readings_section(const language::Program& program, const plan::Plan& plan);

}  // namespace maslin::report
