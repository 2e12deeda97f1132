// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "language/amounts.hpp"
#include "language/checks/checks.hpp"
#include "language/uses.hpp"

namespace maslin::language::checks {
namespace {

// What keeps back less than this is taken for skins and stones: what leaves the pan is then worked
// out as if all of it went through.
const Rational hardly_anything(Rational::Wide{9}, Rational::Wide{10});

bool keeps_much_back(const Step& step) {
  return step.kind == StepKind::strain && !(step.kept && step.kept->low >= hardly_anything);
}

bool produce_is_in(const Framework& framework, const std::vector<Use>& uses, const Place& place) {
  return std::any_of(uses.begin(), uses.end(), [&](const Use& use) {
    const auto entry = entry_of(framework.method, uses, use);
    return use.slot.kind == SlotKind::produce && entry && is_before(*entry, place);
  });
}

bool boils_to_solids(const Stage& stage, std::size_t from) {
  return std::any_of(stage.steps.begin() + static_cast<std::ptrdiff_t>(from), stage.steps.end(),
                     [](const Step& step) { return step.solids.has_value(); });
}

// What counts on all that went in being there still.
const Span* counted_on(const Framework& framework, const Place& place) {
  for (const Limit& limit : framework.limits) {
    if (is_of_finished(limit) || (is_computed(limit) && !is_linear(limit))) return &limit.span;
  }
  const auto& stages = framework.method.stages;
  for (std::size_t i = place.stage; i < stages.size(); ++i) {
    if (boils_to_solids(stages[i], i == place.stage ? place.step : 0)) return &stages[i].span;
  }
  return nullptr;
}

}  // namespace

void strained_away(const Framework& framework, Diagnostics& diagnostics) {
  const auto uses = uses_of(framework.method);
  for (std::size_t i = 0; i < framework.method.stages.size(); ++i) {
    const auto& steps = framework.method.stages[i].steps;
    for (std::size_t j = 0; j < steps.size(); ++j) {
      const Place place{i, j};
      if (!keeps_much_back(steps[j]) || !produce_is_in(framework, uses, place)) continue;
      const Span* counts = counted_on(framework, place);
      if (counts == nullptr) continue;
      auto& found = diagnostics.report(
          Code::strained_away, steps[j].span,
          "nobody knows what solids and acid stay behind in the strainer, so what leaves the pan "
          "cannot be worked out");
      found.with_because(*counts, "counts on all that went in");
      found.with_mend(
          "strain first and plan with the juice: read its soluble solids and its pH, declare it as "
          "an ingredient, and weigh it into the basket");
      found.with_mend("where only skins and stones are kept back, say so: `strain keeping 95 %`");
      return;
    }
  }
}

}  // namespace maslin::language::checks
