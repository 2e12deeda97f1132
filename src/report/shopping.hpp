// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "report/sheet.hpp"

namespace maslin::report {

// What to get, for a shopping bag: what is needed less what is at hand, in whole packs, with costs
// where prices are given. Plain text.
std::string to_shopping(const Sheet& sheet);

}  // namespace maslin::report
