// SPDX-License-Identifier: Apache-2.0
#include "language/tested.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

#include "language/amounts.hpp"
#include "language/membership.hpp"
#include "language/recipe.hpp"

namespace maslin::language {
namespace {

bool is_one_thing(const Program& program, const Target& target) {
  return target.ingredient.valid() || members(program, target).size() == 1;
}

// What a bottle's strength is stated of: any vinegar of that strength is what was tested.
bool goes_by_strength(const Program& program, const Target& target) {
  const auto all = members(program, target);
  return !all.empty() && std::all_of(all.begin(), all.end(),
                                     [&](IngredientId id) { return needs_strength(program[id]); });
}

template <class Slot>
void add_lapses(const std::vector<Slot>& slots, const Program& program, bool may_go_by_strength,
                std::vector<Lapse>& lapses) {
  for (const Slot& slot : slots) {
    if (!slot.range.is_exact()) {
      lapses.push_back(
          {fmt::format("`{}` is stated as a range", slot.target.name), slot.range_span});
    }
    const bool named = is_one_thing(program, slot.target) ||
                       (may_go_by_strength && goes_by_strength(program, slot.target));
    if (!named) {
      lapses.push_back(
          {fmt::format("`{}` could be several things", slot.target.name), slot.target.span});
    }
  }
}

}  // namespace

std::vector<Lapse> lapses_of(const Program& program, const Framework& framework) {
  if (framework.refines.valid()) {
    const std::string& parent = program[framework.refines].name;
    return {{fmt::format("it refines `{}`, and was not tested itself", parent), framework.span}};
  }
  if (framework.status != Status::tested) {
    return {{"its status is not `tested`", framework.span}};
  }
  std::vector<Lapse> lapses;
  if (framework.status_source.empty()) {
    lapses.push_back({"it does not say what source tested it", framework.status_span});
  }
  if (!framework.taste.empty()) {
    lapses.push_back(
        {fmt::format("it is made to the taste `{}`", framework.taste), framework.status_span});
  }
  const Method& method = framework.method;
  if (claimed_process(framework) != nullptr && method.is_stated() && !method.filling) {
    lapses.push_back({"its method fills no jars", method.span});
  }
  add_lapses(framework.shares, program, false, lapses);
  add_lapses(framework.additions, program, true, lapses);
  if (const RouteClaim* claim = claimed_process(framework)) {
    auto apart = beside_recipe(program, framework, *claim);
    std::move(apart.begin(), apart.end(), std::back_inserter(lapses));
  }
  return lapses;
}

const RouteClaim* claimed_process(const Framework& framework) {
  const auto found = std::find_if(framework.routes.begin(), framework.routes.end(),
                                  [](const RouteClaim& claim) { return !claim.product.empty(); });
  return found == framework.routes.end() ? nullptr : &*found;
}

std::vector<const Process*> rows_for(const Route& route, const std::string& product) {
  std::vector<const Process*> rows;
  for (const Process& process : route.processes) {
    if (process.product == product) rows.push_back(&process);
  }
  std::stable_sort(rows.begin(), rows.end(), [](const Process* a, const Process* b) {
    return a->largest_jar < b->largest_jar;
  });
  return rows;
}

const Process* row_for(const Route& route, const std::string& product, Volume jar) {
  for (const Process* row : rows_for(route, product)) {
    if (jar <= row->largest_jar) return row;
  }
  return nullptr;
}

std::optional<Duration> time_at(const Process& row, Length altitude) {
  for (const Process::Step& step : row.steps) {
    if (!step.up_to || altitude <= *step.up_to) return step.time;
  }
  return std::nullopt;
}

}  // namespace maslin::language
