// SPDX-License-Identifier: Apache-2.0
// The acid that produce is given in a balance of charges, from its minerals and its published pH,
// against the acid that tables of composition give it (USDA SR28, Ciqual 2020, IFCT 2017, as the
// library names them). The two share no figure.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>

#include "science/acidity.hpp"
#include "support/planning.hpp"

namespace maslin::test {
namespace {

using namespace science;

// How many times one range lies away from the other; 1 where they meet.
double factor_between(const Range<Share>& a, const Range<Share>& b) {
  const Share least(0.0001);  // below a hundredth of a percent a table says nothing
  const double above = std::max(a.low, least) / std::max(b.high, least);
  const double below = std::max(b.low, least) / std::max(a.high, least);
  return std::max({above, below, 1.0});
}

TEST(GivenAcid, IsOfTheSizeThatTablesOfAcidsGive) {
  const Planned planned("basket { onion 1 kg gross }");
  int compared = 0;
  int meeting = 0;
  int within_two = 0;
  std::cout << fmt::format("{:22}{:>16}{:>16}  apart\n", "g in 100 g", "by its pH", "by its table");
  for (const language::Ingredient& each : planned.program().ingredients) {
    const Composition& composition = each.composition;
    const Bounds table = fixed_acids(composition);
    const bool sour = acidity_as_acetic(composition).low >= Rational(2) / Rational(100);
    const bool produce = composition.or_none(Substance::water).low >= Rational(1) / Rational(2) &&
                         !composition[Substance::salt] && !composition[Substance::acetic_acid];
    if (!each.ph || !table.low.is_positive() || sour || !produce) continue;
    if (!composition[Substance::potassium]) continue;
    const auto given = given_acid(
        {&composition, Kilogram(1), ph_range(each.ph->value), std::nullopt, std::nullopt});
    ASSERT_TRUE(given.ok()) << each.name;
    const double apart = factor_between(given->share, shares(table));
    std::cout << fmt::format("{:22}{:8.2f} {:7.2f}{:8.2f} {:7.2f}{:7.1f}\n", each.name,
                             in_percent(given->share.low), in_percent(given->share.high),
                             table.low.to_double() * 100, table.high.to_double() * 100, apart);
    ++compared;
    if (apart <= 1) ++meeting;
    // Of acid fruit the tables are good. Of vegetables some name next to none, and then more is
    // given than they say, never much less.
    if (each.ph->value.high <= Rational(46) / Rational(10)) {
      EXPECT_LE(apart, 2) << each.name;
    }
    EXPECT_GE(given->share.high, shares(table).low * 0.5) << each.name;
    if (apart <= 2) ++within_two;
  }
  std::cout << fmt::format("{} compared, {} meet, {} within a factor of two\n", compared, meeting,
                           within_two);
  EXPECT_GE(compared, 25);
  EXPECT_GE(within_two * 5, compared * 4);
}

}  // namespace
}  // namespace maslin::test
