// SPDX-License-Identifier: Apache-2.0
// The steps of resolving, one a kind of declaration. Each reads one node that its declaration step
// has already given a name and an id.
#pragma once

#include "language/context.hpp"

namespace maslin::language {

// Names first, so that the order of declarations does not matter.
void declare_units(Context& context, syntax::View file);
void resolve_units(Context& context, syntax::View file);
void declare_things(Context& context, syntax::View file);
void declare_frameworks(Context& context, syntax::View file);
void declare_lets(Context& context, syntax::View file);

void resolve_class(Context& context, syntax::View declaration, Class& result);
void resolve_ingredient(Context& context, syntax::View declaration, Ingredient& result);
void resolve_framework(Context& context, syntax::View declaration, Framework& result);
void resolve_basket(Context& context, syntax::View declaration, Basket& result);
void resolve_kitchen(Context& context, syntax::View declaration, Kitchen& result);
// A line of a basket or a store; nothing after a report.
std::optional<Line> resolve_line(Context& context, syntax::View line);
// Batches, standards and routes: their names and quantities, for now.
void check_names_within(Context& context, syntax::View declaration);

std::vector<Target> resolve_targets(Context& context, syntax::View parent, Wanted wanted);
std::optional<Target> resolve_target(Context& context, syntax::View name, Wanted wanted);

// The `##` lines that stand right before a declaration.
std::string documentation_before(syntax::View file, syntax::View declaration);

void report_duplicate(Context& context, Code code, std::string_view what, const std::string& name,
                      Span again, Span first);

}  // namespace maslin::language
