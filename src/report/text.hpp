// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "report/sheet.hpp"

namespace maslin::report {

// For a terminal or a file: no line wider than 100 columns, no colour.
std::string to_text(const Sheet& sheet);

}  // namespace maslin::report
