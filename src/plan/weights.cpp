// SPDX-License-Identifier: Apache-2.0
#include "plan/weights.hpp"

namespace maslin::plan {

std::string weight_text(const Rational& grams) {
  const Rational kilogram(1000);
  const Rational little(20);
  if (grams >= kilogram) return (grams / kilogram).to_decimal(3) + " kg";
  return grams.to_decimal(grams < little ? 2 : 0) + " g";
}

std::string percent_text(const Rational& share) { return (share * 100).to_decimal(1) + " %"; }

std::string range_text(const Bounds& shares) {
  if (shares.is_exact()) return percent_text(shares.low);
  return (shares.low * 100).to_decimal(1) + " .. " + percent_text(shares.high);
}

Rational prepared_share(const language::Program& program, const language::Line& line) {
  if (line.basis != language::WeighedAs::gross) return 1;
  if (line.trim) return Rational(1) - *line.trim;
  const auto& edible = program[line.ingredient].edible;
  return edible ? middle(edible->value) : Rational(1);
}

}  // namespace maslin::plan
