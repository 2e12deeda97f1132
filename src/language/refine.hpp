// SPDX-License-Identifier: Apache-2.0
// A framework that refines another: it may narrow, and nothing else.
#pragma once

#include "language/context.hpp"
#include "language/program.hpp"

namespace maslin::language {

// A child before its own statements are read: all that its parent says, under its own name. Shares
// and additions are left out, so that the child's own are read by themselves.
void begin_child(const Framework& parent, Framework& child);

// The child's shares and additions laid over its parent's. Each must lie inside what the parent
// has; only dry spice may be new. False after a report.
bool narrow_parent(Context& context, const Framework& parent, Framework& child);

// What the child says beside that: substitutions and limits. False after a report.
bool check_child(Context& context, const Framework& parent, const Framework& child);

}  // namespace maslin::language
