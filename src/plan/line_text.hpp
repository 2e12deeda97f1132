// SPDX-License-Identifier: Apache-2.0
// Lines of a basket as they would be written.
#pragma once

#include <string>
#include <vector>

#include "diagnostic/diagnostic.hpp"
#include "language/program.hpp"

namespace maslin::plan {

// In quotes where the name holds a word with a meaning of its own.
std::string written_name(const std::string& name);

// What stands in the place of Line::amount_span: "1.4 kg gross".
std::string amount_text(const language::Program& program, const language::Line& line);

// Puts more lines at the end of a basket, laid out as the others are.
Edit new_lines_edit(const language::Basket& basket, const std::vector<std::string>& lines);

}  // namespace maslin::plan
