// SPDX-License-Identifier: Apache-2.0
#include "report/measure.hpp"

#include <fmt/format.h>

#include "language/amounts.hpp"

namespace maslin::report {
namespace {

constexpr int every_place = 6;

}  // namespace

Measure measure_of(const language::Limit& limit) {
  using language::Property;
  if (limit.property == Property::ph) return {2, 1, "", ""};
  if (limit.property == Property::water_activity) return {3, 1, "", ""};
  if (limit.property == Property::stability_index) return {1, 1, "", " points"};
  return {2, 100, " %", " points"};
}

std::string Measure::text(const Bounds& values) const {
  const std::string low = (values.low * scale).to_decimal(places);
  const std::string high = (values.high * scale).to_decimal(places);
  return (low == high ? low : low + " .. " + high) + unit;
}

std::string Measure::allowed(const language::Limit& limit) const {
  const std::string low = (limit.range.low * scale).to_decimal(every_place);
  const std::string high = (limit.range.high * scale).to_decimal(every_place);
  if (limit.has_low && limit.has_high) return fmt::format("{} .. {}{}", low, high, unit);
  return limit.has_low ? fmt::format("at least {}{}", low, unit)
                       : fmt::format("at most {}{}", high, unit);
}

std::string Measure::margin(const Rational& difference) const {
  return (difference * scale).to_decimal(places) + of_margin;
}

std::string limit_name(const language::Program& program, const language::Limit& limit) {
  std::string text =
      limit.property ? std::string(language::name_of(*limit.property)) : limit.share_of.name;
  if (limit.whole == language::Whole::prepared_produce) text += ", of prepared produce";
  if (limit.whole == language::Whole::produce_and_water) text += ", of vegetables and water";
  if (limit.whole == language::Whole::volatile_matter) text += ", of what boils away";
  if (language::is_of_finished(limit)) text += ", finished";
  if (limit.route.valid()) text += fmt::format(" (floor of {})", program[limit.route].name);
  return text;
}

}  // namespace maslin::report
