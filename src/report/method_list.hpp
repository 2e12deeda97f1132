// SPDX-License-Identifier: Apache-2.0
// The method on a page: each stage a few lines that run on, the weights in bold.
#pragma once

#include <string>
#include <string_view>

#include "report/markup.hpp"
#include "report/sheet.hpp"

namespace maslin::report {

// A number stays beside its unit where a line is broken.
std::string unbroken(std::string_view text);

// From the table of a section about the method.
Element method_steps(const Table& table);

}  // namespace maslin::report
