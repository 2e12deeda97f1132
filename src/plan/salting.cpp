// SPDX-License-Identifier: Apache-2.0
#include "plan/salting.hpp"

#include <algorithm>

namespace maslin::plan {
namespace {

using language::StepKind;

bool is_salting(const language::Step& step) {
  return step.kind == StepKind::brine || step.kind == StepKind::dry_salt;
}

// How much of a thing the step names, as a share of all that is taken of it.
Rational share_salted(const Draft& draft, const language::Step& step, const TakenId& id) {
  const language::Slot slot{id.list, taken_of(draft, id).slot};
  Rational share;
  for (const language::Part& part : step.parts) {
    if (std::find(part.slots.begin(), part.slots.end(), slot) != part.slots.end()) {
      share += part.fraction;
    }
  }
  return share;
}

}  // namespace

std::vector<Salting> saltings_of(const Draft& draft, const Timeline& timeline) {
  std::vector<Salting> saltings;
  for (std::size_t i = 0; i < timeline.size(); ++i) {
    for (std::size_t j = 0; j < timeline[i].steps.size(); ++j) {
      const TimelineStep& step = timeline[i].steps[j];
      if (!is_salting(*step.step) || !step.step->strength) continue;
      Rational weight;
      for (const TakenId& id : all_taken(draft)) {
        weight += taken_of(draft, id).weight * share_salted(draft, *step.step, id);
      }
      const Rational salt = weight * *step.step->strength;
      const bool brine = step.step->kind == StepKind::brine;
      saltings.push_back({i, j, Mass(salt), Mass(brine ? weight - salt : Rational(0))});
    }
  }
  return saltings;
}

std::optional<Taken> salt_beside(const language::Program& program,
                                 const std::vector<Salting>& saltings) {
  Rational weight;
  for (const Salting& each : saltings) weight += each.salt.in_base();
  const auto& ingredients = program.ingredients;
  const auto salt = std::find_if(ingredients.begin(), ingredients.end(),
                                 [](const auto& each) { return each.name == "salt"; });
  if (!weight.is_positive() || salt == ingredients.end()) return std::nullopt;
  Taken taken;
  taken.ingredient = language::IngredientId(static_cast<std::size_t>(salt - ingredients.begin()));
  taken.origin = language::Origin::to_have;
  taken.weight = weight;
  taken.amount = weight;
  return taken;
}

Bounds lost_by_salting(const Draft& draft, const Timeline& timeline, const TakenId& taken) {
  Bounds lost;
  for (const TimelineStage& stage : timeline) {
    for (const TimelineStep& step : stage.steps) {
      if (!is_salting(*step.step) || !step.step->lost) continue;
      const Rational share = share_salted(draft, *step.step, taken);
      lost.low += share * step.step->lost->low;
      lost.high += share * step.step->lost->high;
    }
  }
  return lost;
}

}  // namespace maslin::plan
