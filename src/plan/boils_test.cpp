// SPDX-License-Identifier: Apache-2.0
// Equal boils, each a boil of its own: nothing is lost between them, and no tool is asked for more
// than it can do.
#include "plan/boils.hpp"

#include <gtest/gtest.h>

#include <random>

namespace maslin::plan {
namespace {

// 23 kg of plums at no more than 2 kg a boil: 12 boils of 1917 g, not 11 of 2 kg and one of 1 kg
// (worked question 12 of the trade's list, computed).
TEST(Boils, AreEqual) {
  const Dealt dealt = deal(23000, 1, 12);
  EXPECT_EQ(dealt.first_boils, 8);
  EXPECT_EQ(dealt.first, Rational(1917));
  EXPECT_EQ(dealt.others, Rational(1916));
}

TEST(Boils, OfOneAreTheWhole) {
  const Dealt dealt = deal(435, 5, 1);
  EXPECT_EQ(dealt.first_boils, 1);
  EXPECT_EQ(dealt.first, Rational(435));
}

TEST(Boils, DivideWhateverIsDividedExactly) {
  std::mt19937 random(7);
  const auto any = [&](long low, long high) {
    return std::uniform_int_distribution<long>(low, high)(random);
  };
  for (int round = 0; round < 2000; ++round) {
    const Rational step(Rational::Wide{any(1, 20)}, Rational::Wide{any(1, 4)});
    const Rational amount = step * Rational(any(0, 3000));
    const long boils = any(1, 40);
    const Dealt dealt = deal(amount, step, boils);
    EXPECT_EQ(dealt.first * Rational(dealt.first_boils) +
                  dealt.others * Rational(boils - dealt.first_boils),
              amount);
    EXPECT_TRUE((dealt.first / step).is_integer());
    EXPECT_TRUE((dealt.others / step).is_integer());
    EXPECT_LE(absolute(dealt.first - dealt.others), step);
    std::vector<Rational> shares;
    Rational left = 1;
    for (long i = any(0, 3); i > 0; --i) {
      shares.push_back(left * Rational(Rational::Wide{any(0, 4)}, Rational::Wide{4}));
      left -= shares.back();
    }
    shares.push_back(left);
    Rational sum;
    const auto parts = divide(dealt.first, step, shares);
    for (std::size_t i = 0; i < parts.size(); ++i) {
      sum += parts[i];
      EXPECT_TRUE((parts[i] / step).is_integer());
      EXPECT_LT(absolute(parts[i] - dealt.first * shares[i]), step);
    }
    EXPECT_EQ(sum, dealt.first);
  }
}

// Sucrose solutions at 20 °C, g per ml: 20 % 1.081, 40 % 1.176, 65 % 1.317 (ICUMSA tables, from
// memory); jam 1.33, chutney 1.10 to 1.25 (the trade's list, from memory).
TEST(Volumes, HoldTheDensitiesOfTables) {
  struct Row {
    long solids;  // g in a kilogram
    double low;   // g per ml
    double high;
  };
  for (const Row& row : {Row{200, 1.081, 1.081}, Row{400, 1.176, 1.176}, Row{650, 1.317, 1.317},
                         Row{670, 1.33, 1.33}, Row{450, 1.10, 1.25}}) {
    const Rational solids(row.solids);
    const Range<Volume> volume =
        hot_volume(Bounds::exactly(solids), Range<FinishedMass>::exactly(FinishedMass(1000)));
    EXPECT_LE(volume.low.to_double(), 1000 / row.low) << row.solids;
    EXPECT_GE(volume.high.to_double(), 1000 / row.high) << row.solids;
    EXPECT_LE(volume.high / volume.low, Rational(Rational::Wide{11}, Rational::Wide{10}));
  }
}

}  // namespace
}  // namespace maslin::plan
