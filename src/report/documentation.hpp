// SPDX-License-Identifier: Apache-2.0
// The `##` lines before a declaration, read from its text when somebody asks: the library's take no
// part in any plan and need not be at hand at every start.
#pragma once

#include <string>
#include <vector>

#include "source/source.hpp"

namespace maslin::report {

// `name` is the span of the declared name.
std::vector<std::string> documentation_of(const Sources& sources, Span name);
// The same as one text.
std::string documentation_text(const Sources& sources, Span name);

}  // namespace maslin::report
