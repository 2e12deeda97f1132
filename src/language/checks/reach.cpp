// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "language/amounts.hpp"
#include "language/checks/checks.hpp"
#include "language/membership.hpp"

namespace maslin::language::checks {
namespace {

// The most acetic acid that an addition brings, g per kilogram of prepared produce.
Rational most_acetic(const Program& program, const Addition& addition) {
  const auto all = members(program, addition.target);
  const bool acetic = std::any_of(all.begin(), all.end(),
                                  [&](IngredientId id) { return needs_strength(program[id]); });
  if (!acetic) return 0;
  if (addition.measured == Measured::by_volume)
    return addition.range.high * stated_strength(addition);
  return addition.range.high;  // by weight: no more than all of it
}

}  // namespace

void reach(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  for (const Limit& limit : framework.limits) {
    if (limit.property != Property::acetic_acid || limit.whole != Whole::prepared_produce ||
        !limit.has_low) {
      continue;
    }
    Rational most;
    const Addition* source = nullptr;
    for (const Addition& addition : framework.additions) {
      const Rational each = most_acetic(program, addition);
      if (each.is_positive()) source = &addition;
      most += each;
    }
    const Rational wanted = limit.range.low * 1000;
    if (most >= wanted) continue;
    auto& found = diagnostics.report(
        Code::limit_out_of_reach, limit.span,
        fmt::format("{} g of acetic acid per kilogram is asked for, and what is added brings at "
                    "most {} g",
                    wanted.to_decimal(1), most.to_decimal(1)));
    if (source != nullptr) {
      found.with_because(source->range_span, "the most of it");
      found.with_mend(fmt::format("raise the most to {} ml, or lower the limit",
                                  (wanted / stated_strength(*source)).to_decimal(0)));
    } else {
      found.with_mend("add vinegar under `per kilogram`");
    }
  }
}

}  // namespace maslin::language::checks
