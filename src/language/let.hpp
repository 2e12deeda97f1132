// SPDX-License-Identifier: Apache-2.0
// Named values and the arithmetic on them.
#pragma once

#include <optional>

#include "language/context.hpp"

namespace maslin::language {

// The value of an `expression` node, or nothing after a report.
std::optional<Quantity> evaluate(Context& context, syntax::View expression);

// Works out every `let` that nothing used, so that its mistakes are told, and says it is unused.
void check_unused_lets(Context& context);

}  // namespace maslin::language
