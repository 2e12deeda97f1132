// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "report/sheet.hpp"

namespace maslin::report {

// One value of a row of comma-separated values (RFC 4180). A text that a spreadsheet would take for
// a formula, because of the sign it begins with, gets an apostrophe before it; control characters
// are shown, not sent.
std::string csv_cell(std::string_view text);

// What to get, for a spreadsheet: a head and a row a thing, each ended by CR LF; weights in grams.
// What is not known is empty.
std::string to_csv(const Sheet& sheet);

}  // namespace maslin::report
