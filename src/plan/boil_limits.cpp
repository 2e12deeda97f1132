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

Rational grams_in(const BoilItem& item, long boil) {
  const bool first = boil <= item.dealt.first_boils;
  return (first ? item.dealt.first : item.dealt.others) * item.grams_per_unit;
}

std::optional<BoilMiss> outside(const Bounds& range, bool has_low, bool has_high,
                                const Bounds& reached) {
  BoilMiss miss;
  if (has_low && reached.low < range.low) {
    miss.value = reached.low;
    miss.by = range.low - reached.low;
  } else if (has_high && reached.high > range.high) {
    miss.value = reached.high;
    miss.by = reached.high - range.high;
  } else {
    return std::nullopt;
  }
  return miss;
}

std::optional<BoilMiss> miss_of(const language::Program& program, const Draft& draft,
                                const Boils& boils, const Limit& limit, long boil) {
  Rational produce;
  Bounds sum;
  for (const BoilItem& item : boils.items) {
    const Rational weight = grams_in(item, boil);
    const bool is_produce = item.taken.list == language::SlotKind::produce;
    const bool joins = joins_whole(program, limit, taken_of(draft, item.taken).ingredient);
    if (is_produce || joins) produce += weight;
    const Bounds share = counted(program, limit, taken_of(draft, item.taken));
    sum = {sum.low + weight * share.low, sum.high + weight * share.high};
  }
  auto miss =
      outside(limit.range, limit.has_low, limit.has_high, {sum.low / produce, sum.high / produce});
  if (!miss) return std::nullopt;
  const Rational& line = miss->value < limit.range.low ? limit.range.low : limit.range.high;
  miss->breaks_limit = miss->by > line * as_poured;
  return miss;
}

// A share is what the author wants, and a step of the scales beside it breaks nothing.
std::optional<BoilMiss> miss_of(const language::Program& program, const Draft& draft,
                                const Boils& boils, std::size_t share, long boil) {
  Rational produce;
  Rational sum;
  for (const BoilItem& item : boils.items) {
    if (item.taken.list != language::SlotKind::produce) continue;
    const Rational weight = grams_in(item, boil);
    produce += weight;
    if (taken_of(draft, item.taken).slot == share) sum += weight;
  }
  const Bounds& range = program[draft.task.framework].shares[share].range;
  return outside(range, true, true, Bounds::exactly(sum / produce));
}

}  // namespace

std::vector<BoilMiss> missed_by_boils(const language::Program& program, const Draft& draft,
                                      const Boils& boils) {
  std::vector<BoilMiss> misses;
  if (boils.count < 2 || boils.too_many) return misses;
  const auto worst_of = [&](const auto& of) {
    std::optional<BoilMiss> worst;
    for (long boil = 1; boil <= boils.count; ++boil) {
      auto miss = miss_of(program, draft, boils, of, boil);
      if (!miss || (worst && miss->by <= worst->by)) continue;
      miss->boil = boil;
      worst = miss;
    }
    return worst;
  };
  const language::Framework& framework = program[draft.task.framework];
  for (std::size_t i = 0; i < framework.limits.size(); ++i) {
    if (!is_computed(framework.limits[i]) || is_of_finished(framework.limits[i])) continue;
    if (auto worst = worst_of(framework.limits[i])) {
      worst->limit = i;
      misses.push_back(*worst);
    }
  }
  for (std::size_t i = 0; i < framework.shares.size(); ++i) {
    if (auto worst = worst_of(i)) {
      worst->share = i;
      misses.push_back(*worst);
    }
  }
  return misses;
}

Span span_of(const language::Framework& framework, const BoilMiss& miss) {
  return miss.limit ? framework.limits[*miss.limit].span : framework.shares[miss.share].range_span;
}

}  // namespace maslin::plan
