// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <string>

#include "report/sheet.hpp"

namespace maslin::report {

// For a terminal or a file: no line wider than 100 columns, no colour.
std::string to_text(const Sheet& sheet);

// Broken at blanks to lines as wide as the sheet's; every line but the first begins with `indent`
// blanks, which the first is taken to have before it.
std::string wrapped(const std::string& text, std::size_t indent);

}  // namespace maslin::report
