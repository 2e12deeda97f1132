// SPDX-License-Identifier: Apache-2.0
// The steps of resolving, one a kind of declaration. Each reads one node that its declaration step
// has already given a name and an id.
#pragma once

#include "language/context.hpp"
#include "language/values.hpp"

namespace maslin::language {

// Names first, so that the order of declarations does not matter.
void declare_units(Context& context, syntax::View file);
void resolve_units(Context& context, syntax::View file);
void declare_things(Context& context, syntax::View file);
void declare_frameworks(Context& context, syntax::View file);
void declare_routes(Context& context, syntax::View file);
void declare_lets(Context& context, syntax::View file);

void resolve_class(Context& context, syntax::View declaration, Class& result);
void resolve_ingredient(Context& context, syntax::View declaration, Ingredient& result);
// Before any framework is resolved: a child comes after its parent.
void find_parent(Context& context, syntax::View declaration, Framework& result);
void resolve_framework(Context& context, syntax::View declaration, Framework& result);
void resolve_basket(Context& context, syntax::View declaration, Basket& result);
void resolve_kitchen(Context& context, syntax::View declaration, Kitchen& result);
void resolve_batch(Context& context, syntax::View declaration, Batch& result);
// What a line tells: what there is, or what went into a boil. Of that there may be none, and its
// strength stands on the line it was taken from.
enum class LineOf : std::uint8_t { stock, batch };
// The lines of a block; false where one of them could not be understood, or there are more than are
// taken.
bool resolve_lines(Context& context, syntax::View block, std::vector<Line>& lines, LineOf of);
// `24 of 282 ml`; nothing after a report.
std::optional<JarStock> read_jar_count(Context& context, syntax::View jar);
// The place right before a block's closing brace, or its end where that is missing.
Span close_of(syntax::View block);
// What a basket or kitchen is called; its keyword where nothing is said.
std::string title_of(syntax::View declaration, std::string_view keyword);
void resolve_route(Context& context, syntax::View declaration, Route& result);
Standard resolve_standard(Context& context, syntax::View declaration);
// The amounts of a tested recipe; nothing after a report.
std::optional<Recipe> read_recipe(Context& context, syntax::View statement);
void add_recipe(Context& context, Recipe recipe, Route& route);
// `produce` and `per kilogram` of a recipe; false after a report.
bool read_recipe_amounts(Context& context, syntax::View block, Recipe& result);
// A row of a tested table; nothing after a report.
std::optional<Process> read_process(Context& context, syntax::View statement);
// One row for each product and size of jar.
void add_process(Context& context, Process process, Route& route);
// `route boiling water, process for apple butter`; false after a report.
bool read_route_claim(Context& context, syntax::View claim, Framework& result);
// Once every route is read: the processes claimed are there, one a framework.
void check_claimed_processes(Context& context, std::size_t first_framework);
// The floors of the routes that a framework claims become limits of its own.
void take_on_floors(Program& program, std::size_t first_framework);
void report_unknown_framework(Context& context, syntax::View name);
// `as of 2018`, `as of 2026-06-14`: false after a report.
bool read_as_of(Context& context, syntax::View statement, std::optional<Date>& result);

// What a measure says it is a share of, or per.
std::optional<Whole> read_whole(Context& context, const Measure& measure);
// Whether a measure is a percentage, or one quantity per another.
bool is_share(Context& context, const Measure& measure, std::string_view example);
void report_no_percent(Context& context, const Measure& measure, std::string_view example);
// Whose limit it is: a standard may ask for shares that no plan is solved for.
enum class LimitOf : std::uint8_t { framework, route, standard };
// Nothing after a report.
std::optional<Limit> read_limit(Context& context, syntax::View statement, LimitOf of);
// After every share, addition and substitution: the steps name them. False after a report.
bool read_method(Context& context, syntax::View statement, Framework& result);

std::vector<Target> resolve_targets(Context& context, syntax::View parent, Wanted wanted);
std::optional<Target> resolve_target(Context& context, syntax::View name, Wanted wanted);

// `cut 8 .. 10 mm`, `cut "in slices"`. Nothing where there is no clause, or after a report.
std::optional<CutSize> read_cut(Context& context, syntax::View cut);

// The texts in quotes of a statement, after those that are there.
void read_texts_into(syntax::View statement, std::vector<std::string>& texts);

void report_duplicate(Context& context, Code code, std::string_view what, const std::string& name,
                      Span again, Span first,
                      std::string_view mend = "leave one out, or give it another name");

}  // namespace maslin::language
