// SPDX-License-Identifier: Apache-2.0
// The limits of the framework, at the unfavourable end of every figure, and how far to boil down.
#include <algorithm>
#include <cmath>

#include "language/amounts.hpp"
#include "language/contents.hpp"
#include "language/membership.hpp"
#include "plan/verify_parts.hpp"

namespace maslin::plan {
namespace {

using language::Limit;
using language::Property;

// A figure that no table has may be anything: it counts as none from below and as all from above.
Bounds figure_of(const Case& given, Property property, const Taken& taken) {
  const auto share = share_of(given.program, property, {taken.ingredient, taken.acidity});
  return share.value_or(Bounds{0, 1});
}

Bounds sum_in_pan(const Case& given, const Limit& limit) {
  Bounds sum;
  for (const Entry& entry : given.pan) {
    const Taken& taken = *entry.taken;
    Bounds figure;
    if (limit.property) {
      figure = figure_of(given, *limit.property, taken);
    } else if (takes(given.program, limit.share_of, taken.ingredient)) {
      figure = Bounds::exactly(1);
    }
    sum.low += taken.weight * figure.low;
    sum.high += taken.weight * figure.high;
  }
  return sum;
}

bool is_judged_finished(const Limit& limit) { return is_linear(limit) && is_of_finished(limit); }

// What leaves the pan, of the draft or of another finished weight; nothing when it cannot be.
std::optional<language::Contents> pan_of(const Case& given,
                                         const std::optional<Rational>& finished) {
  std::vector<language::InPan> parts;
  constexpr double grams_in_kilogram = 1000;
  for (const Entry& entry : given.pan) {
    const Taken& taken = *entry.taken;
    parts.push_back({{taken.ingredient, taken.acidity},
                     Kilogram(taken.weight.to_double() / grams_in_kilogram),
                     {entry.list, taken.slot}});
  }
  std::optional<Kilogram> left;
  if (finished) left = Kilogram(finished->to_double() / grams_in_kilogram);
  auto pan = language::Contents::of(given.program, given.framework, parts, left);
  if (!pan) return std::nullopt;
  return std::move(pan.value());
}

// To six decimals, away from the limits: what is shown is never better than what was found.
Bounds outwards(const Range<double>& range) {
  constexpr double scale = 1e6;
  const auto exact = [&](double scaled) {
    return Rational(Rational::Wide(static_cast<long long>(scaled)), Rational::Wide(1000000));
  };
  return {exact(std::floor(range.low * scale)), exact(std::ceil(range.high * scale))};
}

Bounds curved_value(const Limit& limit, const std::optional<language::Contents>& pan) {
  const Bounds unknown{Rational::undefined(), Rational::undefined()};
  if (!pan) return unknown;
  const auto value = pan->value_of(limit);
  if (!value || !std::isfinite(value->low) || !std::isfinite(value->high)) return unknown;
  return outwards(*value);
}

Bounds linear_value(const Case& given, const Limit& limit) {
  Rational whole = given.total.in_base();
  for (const Entry& entry : given.pan) {
    if (entry.list == SlotKind::produce) continue;
    if (joins_whole(given.program, limit, entry.taken->ingredient)) whole += entry.taken->weight;
  }
  if (is_of_finished(limit)) whole = given.draft.finished.value_or(Rational::undefined());
  const Bounds sum = sum_in_pan(given, limit);
  return {sum.low / whole, sum.high / whole};
}

std::string name_of_limit(const Limit& limit) {
  return limit.property ? std::string(language::name_of(*limit.property)) : limit.share_of.name;
}

// What cannot boil away, at the least: all beside water, acetic acid and alcohol.
FinishedMass solids_in_pan(const Case& given) {
  Rational sum;
  for (const Entry& entry : given.pan) {
    sum += entry.taken->weight * figure_of(given, Property::total_solids, *entry.taken).low;
  }
  return FinishedMass(sum);
}

// From the solids that stay, to all that went in, cut down by every limit of what leaves the pan.
FinishWindow window_of(const Case& given) {
  Rational least = solids_in_pan(given).in_base();
  Rational most = given.ingoing.in_base();
  for (const Limit& limit : given.framework.limits) {
    if (!is_judged_finished(limit)) continue;
    const Bounds sum = sum_in_pan(given, limit);
    // A share of at least nothing is always met, and one of at most nothing only by nothing.
    if (limit.has_low && !limit.range.low.is_zero())
      most = least_of(most, sum.low / limit.range.low);
    if (!limit.has_high) continue;
    if (limit.range.high.is_zero()) {
      if (!sum.high.is_zero()) most = Rational(-1);
    } else {
      least = most_of(least, sum.high / limit.range.high);
    }
  }
  return {FinishedMass(least), FinishedMass(most)};
}

}  // namespace

std::vector<LimitValue> check_limits(const Case& given, Breaches& breaches) {
  std::vector<LimitValue> values;
  const auto pan = pan_of(given, given.draft.finished);
  for (std::size_t i = 0; i < given.framework.limits.size(); ++i) {
    const Limit& limit = given.framework.limits[i];
    if (!is_computed(limit)) continue;
    LimitValue value;
    value.limit = i;
    value.value = is_linear(limit) ? linear_value(given, limit) : curved_value(limit, pan);
    if (limit.has_low) value.margin.low = value.value.low - limit.range.low;
    if (limit.has_high) value.margin.high = limit.range.high - value.value.high;
    values.push_back(value);
    const bool known = value.value.low.is_defined() && value.value.high.is_defined();
    if (known && value.margin.low >= Rational(0) && value.margin.high >= Rational(0)) continue;
    breaches.push_back({Breach::Kind::limit, i,
                        name_of_limit(limit) + ": " + value.value.low.to_decimal(6) + " to " +
                            value.value.high.to_decimal(6) + " of the whole"});
  }
  return values;
}

std::optional<FinishWindow> check_finished(const Case& given, Breaches& breaches) {
  const auto& limits = given.framework.limits;
  const bool is_asked = std::any_of(limits.begin(), limits.end(), is_judged_finished);
  const auto& finished = given.draft.finished;
  if (is_asked != finished.has_value()) {
    breaches.push_back({Breach::Kind::finished, 0,
                        is_asked ? "a limit is of the finished product, and no weight is given"
                                 : "no limit says how far to boil down"});
    return std::nullopt;
  }
  if (!is_asked) return std::nullopt;
  const FinishWindow window = window_of(given);
  const FinishedMass weight(*finished);
  const FinishedMass whole(given.ingoing.in_base());
  if (!weight.is_positive() || !(weight <= whole) || !(weight >= solids_in_pan(given))) {
    breaches.push_back({Breach::Kind::finished, 0,
                        finished->to_decimal(3) + " g cannot be what is left of " +
                            whole.in_base().to_decimal(3) + " g"});
  }
  // The same as the limits above say, by another road.
  if (!(window.least <= weight && weight <= window.most)) {
    breaches.push_back({Breach::Kind::finished, 0,
                        finished->to_decimal(3) + " g is not between " +
                            window.least.in_base().to_decimal(3) + " g and " +
                            window.most.in_base().to_decimal(3) + " g"});
  }
  return window;
}

}  // namespace maslin::plan
