// SPDX-License-Identifier: Apache-2.0
// What is known of how the batch keeps: figures worked out, the lines they are held against, what
// has to be read, and whom to ask. Never that it keeps.
#pragma once

#include "language/program.hpp"
#include "plan/verify.hpp"
#include "report/sheet.hpp"

namespace maslin::report {

Section keeping_section(const language::Program& program, const plan::Plan& plan);

// "mature 6 weeks, best within 12 months, once opened keep cold, 6 weeks": what the author says.
// Empty where nothing is said.
std::string claims_text(const language::Framework& framework);

// "pH at most 4", "filling temperature at least 85 °C", "seal".
std::string reading_text(const language::ToRead& reading);

}  // namespace maslin::report
