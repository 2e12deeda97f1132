// SPDX-License-Identifier: Apache-2.0
// Slips that are known by the look of the statement around the place where reading stopped, and are
// told as what they are rather than by what would have fitted there.
#pragma once

#include <optional>

#include "diagnostic/diagnostic.hpp"
#include "syntax/tree.hpp"

namespace maslin::syntax {

// `around` is the kind of the innermost block. Nothing where the slip is not known.
std::optional<Diagnostic> known_slip(const SyntaxTree& tree, const Misfit& misfit, Kind around);

}  // namespace maslin::syntax
