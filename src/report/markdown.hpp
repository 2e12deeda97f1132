// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "report/sheet.hpp"

namespace maslin::report {

// The sheet as Markdown (CommonMark, with tables). What comes from files is text there, whatever
// it holds: no markup, no HTML, no links.
std::string to_markdown(const Sheet& sheet);

}  // namespace maslin::report
