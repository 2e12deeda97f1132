// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "language/amounts.hpp"
#include "language/checks/checks.hpp"
#include "language/membership.hpp"
#include "language/tested.hpp"

namespace maslin::language {
namespace {

bool packs(const Method& method) {
  return std::any_of(method.stages.begin(), method.stages.end(), [](const Stage& stage) {
    return std::any_of(stage.steps.begin(), stage.steps.end(),
                       [](const Step& step) { return step.kind == StepKind::pack; });
  });
}

// What is poured, at its weakest: ml per kilogram of prepared produce, g of acetic acid in them.
struct Weakest {
  Rational volume;
  Rational acid;
  const Addition* by = nullptr;  // the water, else the vinegar
  bool thinned = false;
};

// By weight where it is stated so: a millilitre of vinegar or water taken as a gram.
Weakest weakest_liquor(const Program& program, const Framework& framework) {
  Weakest sum;
  for (const Addition& addition : framework.additions) {
    if (addition.measured == Measured::by_count) continue;
    const auto all = members(program, addition.target);
    const bool acid = !all.empty() && std::all_of(all.begin(), all.end(), [&](IngredientId id) {
      return needs_strength(program[id]);
    });
    const bool liquid = std::any_of(all.begin(), all.end(), [&](IngredientId id) {
      return is_of_class(program, id, "liquid");
    });
    if (acid) {
      sum.volume += addition.range.low;
      sum.acid += addition.range.low * stated_strength(addition);
      if (sum.by == nullptr) sum.by = &addition;
    } else if (liquid && addition.range.high.is_positive()) {
      sum.volume += addition.range.high;
      sum.by = &addition;
      sum.thinned = true;
    }
  }
  return sum;
}

}  // namespace

std::optional<ClaimedFloor> liquor_floor(const Program& program, const Framework& framework) {
  std::optional<ClaimedFloor> strictest;
  for (const RouteClaim& claim : framework.routes) {
    const auto& floor = program[claim.route].liquor;
    if (!floor || (strictest && floor->acidity <= strictest->floor->acidity)) continue;
    strictest = ClaimedFloor{&*floor, &claim};
  }
  return strictest;
}

Diagnostic& report_weak_liquor(const Program& program, const ClaimedFloor& floor,
                               const Rational& acidity, bool thinned, Span span,
                               Diagnostics& diagnostics) {
  const auto percent = [](const Rational& value) { return (value * 100).to_decimal(2) + " %"; };
  return diagnostics
      .report(
          Code::liquor_below_floor, span,
          fmt::format("what covers the pack holds {} of acetic acid, and the route {} asks for {}",
                      percent(acidity), program[floor.claim->route].name,
                      percent(floor.floor->acidity)))
      .with_because(floor.floor->span, "the floor")
      .with_because(floor.claim->span, "claimed here")
      .with_why(
          "what is packed raw takes its acid from the liquor alone; half water, half vinegar is "
          "custom, and not tested")
      .with_mend(thinned
                     ? "leave the water out"
                     : fmt::format("pour vinegar of {} or stronger", percent(floor.floor->acidity)))
      .with_mend("or claim the route `cold`, and keep it cold");
}

namespace checks {

void liquor(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  const auto floor = liquor_floor(program, framework);
  // What was tested with so much water may have it.
  if (!floor || !packs(framework.method) || lapses_of(program, framework).empty()) return;
  const Weakest weakest = weakest_liquor(program, framework);
  if (!weakest.volume.is_positive()) return;
  const Rational acidity = weakest.acid / weakest.volume;
  if (acidity >= floor->floor->acidity) return;
  report_weak_liquor(program, *floor, acidity, weakest.thinned, weakest.by->span, diagnostics);
}

}  // namespace checks
}  // namespace maslin::language
