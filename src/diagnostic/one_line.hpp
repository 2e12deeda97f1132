// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "diagnostic/diagnostic.hpp"
#include "source/source.hpp"

namespace maslin {

// For editors: `file:line:column: error: message [code]`, with its line end.
std::string one_line(const Sources& sources, const Diagnostic& diagnostic);

}  // namespace maslin
