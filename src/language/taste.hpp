// SPDX-License-Identifier: Apache-2.0
// Variants of taste: the same framework with more or less of some additions.
#pragma once

#include "language/context.hpp"
#include "language/program.hpp"

namespace maslin::language {

// One variant of a `taste` block; nothing after a report. Every addition must be known already.
std::optional<Variant> resolve_variant(Context& context, syntax::View view,
                                       const Framework& framework);

// The framework with its additions multiplied; its limits hold as before.
Framework with_taste(const Framework& framework, const Variant& variant);

}  // namespace maslin::language
