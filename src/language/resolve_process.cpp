// SPDX-License-Identifier: Apache-2.0
// Tables of tested processes, as a route holds them and as a framework claims one.
#include <fmt/format.h>

#include <algorithm>

#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

std::optional<Process::Step> read_step(Context& context, View step) {
  const auto time = read_plain(context, step.child(Kind::quantity), dimensions::time, "a process",
                               "10 min up to 300 m");
  if (!time) return std::nullopt;
  Process::Step result{Duration(*time), {}};
  if (const View up_to = step.child(Kind::up_to_altitude)) {
    const auto height = read_plain(context, up_to.child(Kind::quantity), dimensions::length,
                                   "an altitude", "300 m");
    if (!height) return std::nullopt;
    result.up_to = Length(*height);
  }
  return result;
}

// Higher up water boils less hot: the time never falls, and the bands follow one another.
bool follows(const std::vector<Process::Step>& steps, const Process::Step& next) {
  if (steps.empty()) return true;
  const Process::Step& last = steps.back();
  return last.up_to && last.time <= next.time && (!next.up_to || *last.up_to < *next.up_to);
}

std::vector<std::string_view> products_of(const Route& route) {
  std::vector<std::string_view> products;
  for (const Process& process : route.processes) {
    if (std::find(products.begin(), products.end(), process.product) == products.end()) {
      products.push_back(process.product);
    }
  }
  return products;
}

void report_unknown_product(Context& context, const Route& route, const RouteClaim& claim) {
  auto& found = context.report(
      Code::unknown_name, claim.product_span,
      fmt::format("the route {} has no tested process for `{}`", route.name, claim.product));
  const auto products = products_of(route);
  const auto near = nearest(claim.product, products, 2);
  if (near.empty()) {
    found.with_mend(products.empty()
                        ? "none of its processes is known here: leave this out"
                        : "it has those for " + one_of({products.begin(), products.end()}));
    return;
  }
  found.with_mend(fmt::format("did you mean {}?", one_of(near)));
  for (const std::string& each : near) {
    found.with_fix(
        {Fix::Kind::suggested, fmt::format("write `{}`", each), {{claim.product_span, each}}});
  }
}

}  // namespace

std::optional<Process> read_process(Context& context, View statement) {
  Process result;
  result.product = normal_name(statement.child(Kind::tested_product).child(Kind::name));
  result.span = statement.span();
  for (const View child : statement) {
    if (!child.is(Kind::process_step)) continue;
    const auto step = read_step(context, child);
    if (!step) return std::nullopt;
    if (!follows(result.steps, *step)) {
      context
          .report(Code::process_falls, child.span(),
                  "a process gets no shorter the higher the kitchen lies")
          .with_why("higher up water boils less hot")
          .with_mend("write the bands from the lowest altitude to the highest");
      return std::nullopt;
    }
    result.steps.push_back(*step);
  }
  const auto size = read_plain(context, statement.child(Kind::largest_jar).child(Kind::quantity),
                               dimensions::volume, "the size of a jar", "500 ml");
  if (!size) return std::nullopt;
  result.largest_jar = Volume(*size);
  result.source = text_of(text_child(statement.child(Kind::origin)));
  return result;
}

void add_process(Context& context, Process process, Route& route) {
  for (const Process& other : route.processes) {
    if (other.product != process.product || !(other.largest_jar == process.largest_jar)) continue;
    report_duplicate(context, Code::duplicate, "the process for", process.product, process.span,
                     other.span, "leave one out, or say for which other jars it is");
    return;
  }
  route.processes.push_back(std::move(process));
}

std::optional<Recipe> read_recipe(Context& context, View statement) {
  const View block = statement.child(Kind::recipe_block);
  Recipe result;
  result.product = normal_name(statement.child(Kind::tested_product).child(Kind::name));
  result.span = statement.child(Kind::tested_product).span();
  if (!read_recipe_amounts(context, block, result)) return std::nullopt;
  for (const View each : block) {
    if (each.is(Kind::note)) read_texts_into(each, result.notes);
    if (each.is(Kind::source)) read_texts_into(each, result.sources);
    if (!each.is(Kind::headspace)) continue;
    const auto height =
        read_plain(context, each.child(Kind::quantity), dimensions::length, "a headspace", "13 mm");
    if (!height) return std::nullopt;
    result.headspace = Length(*height);
  }
  if (!result.shares.empty()) return result;
  context
      .report(Code::no_produce, result.span,
              fmt::format("the recipe for `{}` does not say of what produce it is made",
                          result.product))
      .with_mend("add a block: `produce { onion 12 .. 20 % … }`");
  return std::nullopt;
}

void add_recipe(Context& context, Recipe recipe, Route& route) {
  for (const Recipe& other : route.recipes) {
    if (other.product != recipe.product) continue;
    report_duplicate(context, Code::duplicate, "the recipe for", recipe.product, recipe.span,
                     other.span, "leave one out");
    return;
  }
  route.recipes.push_back(std::move(recipe));
}

void check_claimed_processes(Context& context, std::size_t first_framework) {
  for (std::size_t i = first_framework; i < context.program.frameworks.size(); ++i) {
    Framework& framework = context.program.frameworks[i];
    const RouteClaim* first = nullptr;
    for (const RouteClaim& claim : framework.routes) {
      if (claim.product.empty()) continue;
      const Route& route = context.program[claim.route];
      const auto products = products_of(route);
      if (std::find(products.begin(), products.end(), claim.product) == products.end()) {
        report_unknown_product(context, route, claim);
        framework.poisoned = true;
      } else if (first != nullptr) {
        context.report(Code::duplicate, claim.span, "a second tested process is claimed")
            .with_because(first->span, "first here")
            .with_mend("a recipe was tested in one way: leave one out");
        framework.poisoned = true;
      } else {
        first = &claim;
      }
    }
  }
}

}  // namespace maslin::language
