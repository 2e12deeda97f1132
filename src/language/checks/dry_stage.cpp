// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "language/checks/checks.hpp"
#include "language/membership.hpp"
#include "language/uses.hpp"

namespace maslin::language::checks {
namespace {

// Fruit this wet gives juice enough to boil in before it catches: tomatoes, rhubarb, strawberries,
// but neither apples nor pears (common practice, no source for the line).
const Rational juicy(Rational::Wide{90}, Rational::Wide{100});

bool is_wet(const Program& program, IngredientId id) {
  if (is_of_class(program, id, "liquid") || is_of_class(program, id, "soft fruit") ||
      is_of_class(program, id, "citrus")) {
    return true;
  }
  if (!is_of_class(program, id, "fruit") && !is_of_class(program, id, "fruit vegetable")) {
    return false;
  }
  const auto water = figure_of(program[id], Property::water);
  return water && water->low >= juicy;
}

bool brings_liquid(const Program& program, const Target& target) {
  const auto all = members(program, target);
  return !all.empty() &&
         std::all_of(all.begin(), all.end(), [&](IngredientId id) { return is_wet(program, id); });
}

// Sugar and salt draw juice when they are left to; what is rinsed off is gone.
bool draws_juice(const Step& step) {
  return step.kind == StepKind::macerate || (step.kind == StepKind::dry_salt && !step.strength);
}

struct FirstHeat {
  const Stage* stage = nullptr;
  const Step* step = nullptr;
  Place place;
};

std::optional<FirstHeat> first_heat(const Method& method) {
  for (std::size_t i = 0; i < method.stages.size(); ++i) {
    for (std::size_t j = 0; j < method.stages[i].steps.size(); ++j) {
      const Step& step = method.stages[i].steps[j];
      if (is_heat(step.kind)) return FirstHeat{&method.stages[i], &step, {i, j}};
    }
  }
  return std::nullopt;
}

}  // namespace

void dry_stage(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  const auto heat = first_heat(framework.method);
  if (!heat) return;
  const auto uses = uses_of(framework.method);
  std::vector<const Use*> inside;
  for (const Use& use : uses) {
    const Place named{use.stage, use.step};
    if (is_before(named, heat->place) &&
        draws_juice(framework.method.stages[use.stage].steps[use.step])) {
      return;
    }
    const auto entry = entry_of(framework.method, uses, use);
    if (!entry || !is_before(*entry, heat->place)) continue;
    if (brings_liquid(program, target_of(framework, use.slot))) return;
    inside.push_back(&use);
  }
  auto& found = diagnostics.report(
      Code::dry_stage, heat->step->span,
      fmt::format("in the stage `{}` there is nothing in the pan to boil in", heat->stage->name));
  for (const Use* use : inside) found.with_because(use->span, "in the pan, and no liquid");
  found.with_why("what lies dry in a hot pan catches and burns, and the whole batch tastes of it");
  found.with_mend("add part of the vinegar or water in this stage: `1/4 of vinegar`");
}

}  // namespace maslin::language::checks
