// SPDX-License-Identifier: Apache-2.0
// One thing for a person to read: what it is, its numbers and where they come from.
#pragma once

#include <string>

#include "report/meanings.hpp"
#include "source/source.hpp"

namespace maslin::report {

// Begins with the name and the kind of thing it is.
std::string explain_text(const Sources& sources, const language::Program& program,
                         const Meaning& meaning);

}  // namespace maslin::report
