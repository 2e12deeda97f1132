// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "diagnostic/diagnostic.hpp"
#include "syntax/tree.hpp"

namespace maslin::syntax {

// Reports what in a tree fits no form: one report a cause.
void report_problems(const SyntaxTree& tree, Diagnostics& diagnostics);

}  // namespace maslin::syntax
