// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include "language/checks/checks.hpp"
#include "language/membership.hpp"
#include "language/uses.hpp"

namespace maslin::language {
namespace {

std::string minutes(const Duration& time) {
  return (time.in_base() / Rational(60)).to_decimal(0) + " min";
}

}  // namespace

bool is_unsafe_raw(const Ingredient& ingredient) {
  return ingredient.raw == RawHazard::unsafe && ingredient.boil_first.is_positive();
}

Duration boiled_for(const Framework& framework, const Slot& slot) {
  const Method& method = framework.method;
  const auto uses = uses_of(method);
  std::optional<Duration> least;
  for (const Use& use : uses) {
    if (!(use.slot == slot) || use.fraction.is_zero()) continue;
    const auto entry = entry_of(method, uses, use);
    if (!entry) continue;
    Duration time;
    const bool packed = method.stages[use.stage].steps[use.step].kind == StepKind::pack;
    if (!packed) time = heated_between(method, *entry, end_of(method), is_at_the_boil);
    if (!least || time < *least) least = time;
  }
  return least.value_or(Duration());
}

void explain_boiling(const Framework& framework, const Slot& slot, const Ingredient& ingredient,
                     Diagnostic& found) {
  for (const Use& use : uses_of(framework.method)) {
    if (use.slot == slot) found.with_because(use.span, "it goes in here");
  }
  found.with_because(ingredient.span, "where its boiling is declared");
  found.with_why(fmt::format(
      "{}; only `boil` and `reduce … at least` count, since a simmer may stay below the "
      "boil",
      ingredient.raw_reason.empty() ? "it can make ill when raw" : ingredient.raw_reason));
  found.with_mend(
      fmt::format("after it is in the pan, `boil {}` or longer", minutes(ingredient.boil_first)));
}

namespace checks {
namespace {

// The members of a slot that make ill when raw and want the longest boiling.
struct Hazards {
  IngredientId worst;
  std::size_t count = 0;    // of such members
  std::size_t members = 0;  // in all
};

Hazards hazards_of(const Program& program, const Target& target) {
  Hazards result;
  for (const IngredientId id : members(program, target)) {
    ++result.members;
    if (!is_unsafe_raw(program[id])) continue;
    ++result.count;
    if (!result.worst.valid() || program[result.worst].boil_first < program[id].boil_first) {
      result.worst = id;
    }
  }
  return result;
}

void check(const Program& program, const Framework& framework, const Slot& slot,
           Diagnostics& diagnostics) {
  const Target& target = target_of(framework, slot);
  const Hazards hazards = hazards_of(program, target);
  if (!hazards.worst.valid()) return;
  const Ingredient& worst = program[hazards.worst];
  const Duration boiled = boiled_for(framework, slot);
  if (boiled >= worst.boil_first) return;
  // A class that holds others too is only warned of: the plan tells when it takes such a one.
  const bool certain = hazards.count == hazards.members;
  auto& found = diagnostics.report(
      certain ? Code::unboiled : Code::may_be_unboiled, target.span,
      certain
          ? fmt::format("{} is boiled for {}, and {} is not to be eaten unless boiled for {}",
                        target.name, minutes(boiled), worst.name, minutes(worst.boil_first))
          : fmt::format("{} could be {}, which is not to be eaten unless boiled for {}; here it "
                        "boils for {}",
                        target.name, worst.name, minutes(worst.boil_first), minutes(boiled)));
  explain_boiling(framework, slot, worst, found);
}

}  // namespace

void raw_hazards(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  for (std::size_t i = 0; i < framework.shares.size(); ++i) {
    check(program, framework, {SlotKind::produce, i}, diagnostics);
  }
  for (std::size_t i = 0; i < framework.additions.size(); ++i) {
    check(program, framework, {SlotKind::addition, i}, diagnostics);
  }
}

}  // namespace checks

}  // namespace maslin::language
