// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "report/sheet.hpp"

namespace maslin::report {

// One page of HTML5 without script that fetches nothing, to be read on a screen or printed on one
// side of A4. What the hands need comes first and largest.
std::string to_html(const Sheet& sheet);

}  // namespace maslin::report
