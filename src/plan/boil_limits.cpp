// SPDX-License-Identifier: Apache-2.0
#include "plan/boil_limits.hpp"

#include <optional>

#include "language/amounts.hpp"
#include "language/membership.hpp"

namespace maslin::plan {
namespace {

using language::Limit;

// The share of one thing that counts for a limit; what no table gives counts unfavourably.
Bounds counted(const language::Program& program, const Limit& limit, const Taken& taken) {
  if (!limit.property) {
    const bool counts = takes(program, limit.share_of, taken.ingredient);
    return Bounds::exactly(counts ? 1 : 0);
  }
  return share_of(program, *limit.property, {taken.ingredient, taken.acidity})
      .value_or(Bounds{0, 1});
}

std::optional<BoilMiss> miss_of(const language::Program& program, const Draft& draft,
                                const Boils& boils, const Limit& limit, long boil) {
  Rational produce;
  Bounds sum;
  for (const BoilItem& item : boils.items) {
    const Taken& taken = taken_of(draft, item.taken);
    const bool first = boil <= item.dealt.first_boils;
    const Rational weight = (first ? item.dealt.first : item.dealt.others) * item.grams_per_unit;
    if (item.taken.list == language::SlotKind::produce) produce += weight;
    const Bounds share = counted(program, limit, taken);
    sum = {sum.low + weight * share.low, sum.high + weight * share.high};
  }
  const Rational low = sum.low / produce;
  const Rational high = sum.high / produce;
  if (limit.has_low && low < limit.range.low * (Rational(1) - as_poured)) {
    return BoilMiss{0, boil, low, limit.range.low - low};
  }
  if (limit.has_high && high > limit.range.high * (Rational(1) + as_poured)) {
    return BoilMiss{0, boil, high, high - limit.range.high};
  }
  return std::nullopt;
}

}  // namespace

std::vector<BoilMiss> missed_by_boils(const language::Program& program, const Draft& draft,
                                      const Boils& boils) {
  std::vector<BoilMiss> misses;
  const auto& limits = program[draft.task.framework].limits;
  for (std::size_t i = 0; i < limits.size() && boils.count > 1 && !boils.too_many; ++i) {
    if (!is_computed(limits[i]) || is_of_finished(limits[i])) continue;
    std::optional<BoilMiss> worst;
    for (long boil = 1; boil <= boils.count; ++boil) {
      const auto miss = miss_of(program, draft, boils, limits[i], boil);
      if (miss && (!worst || miss->by > worst->by)) worst = miss;
    }
    if (!worst) continue;
    worst->limit = i;
    misses.push_back(*worst);
  }
  return misses;
}

}  // namespace maslin::plan
