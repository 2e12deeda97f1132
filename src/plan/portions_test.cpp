// SPDX-License-Identifier: Apache-2.0
#include "plan/portions.hpp"

#include <gtest/gtest.h>

#include <vector>

namespace maslin::plan {
namespace {

constexpr long plenty = 1000000;

Bounds per_cent(int low, int high) {
  return {Rational(low) / Rational(100), Rational(high) / Rational(100)};
}

Portion portion(std::size_t share, const Rational& exact, long available = plenty) {
  return {share, share, exact, Rational(available), false, 0};
}

Rational whole(const std::vector<Portion>& portions) {
  Rational sum;
  for (const Portion& each : portions) sum += each.weight;
  return sum;
}

TEST(Portions, AreWholeSteps) {
  const Weighing weighing{{per_cent(40, 60), per_cent(40, 60)}, {}, 5, false};
  std::vector<Portion> portions = {portion(0, 503), portion(1, 502)};
  ASSERT_TRUE(weigh_out(weighing, portions));
  EXPECT_EQ(whole(portions), Rational(1005));
  for (const Portion& each : portions) EXPECT_TRUE((each.weight / 5).is_integer());
}

// All that there is of the first is 503 g; the second takes the step that is left over.
TEST(Portions, TakeNoMoreThanThereIs) {
  const Weighing weighing{{per_cent(0, 100), per_cent(0, 100)}, {}, 5, false};
  std::vector<Portion> portions = {portion(0, 503, 503), portion(1, 502)};
  ASSERT_TRUE(weigh_out(weighing, portions));
  EXPECT_EQ(portions[0].weight, Rational(500));
  EXPECT_EQ(portions[1].weight, Rational(505));
}

// A share at its least whose supply ends inside a step: the whole has to be smaller.
TEST(Portions, MakeTheWholeSmallerForAShare) {
  const Weighing weighing{{per_cent(50, 100), per_cent(0, 50)}, {}, 10, false};
  std::vector<Portion> portions = {portion(0, 507, 507), portion(1, 507)};
  ASSERT_TRUE(weigh_out(weighing, portions));
  EXPECT_EQ(portions[0].weight, Rational(500));
  EXPECT_EQ(portions[1].weight, Rational(500));
}

// A plain ratio is met to a step.
TEST(Portions, MeetAPlainRatioToAStep) {
  const Weighing weighing{{per_cent(47, 47), per_cent(53, 53)}, {}, 5, false};
  std::vector<Portion> portions = {portion(0, Rational(4711) / 10),
                                   portion(1, Rational(5312) / 10)};
  ASSERT_TRUE(weigh_out(weighing, portions));
  EXPECT_LE(absolute(portions[0].weight - whole(portions) * 47 / 100), Rational(5));
}

TEST(Portions, KeepACap) {
  Weighing weighing{{per_cent(0, 100), per_cent(0, 100)}, {}, 20, false};
  weighing.caps.push_back({{true, false}, Rational(79) / Rational(100)});
  std::vector<Portion> portions = {portion(0, 2203), portion(1, 585, 585)};
  ASSERT_TRUE(weigh_out(weighing, portions));
  EXPECT_LE(portions[0].weight, whole(portions) * 79 / 100);
  EXPECT_EQ(portions[1].weight, Rational(580));
}

TEST(Portions, ReachAFinishedWeightFromAbove) {
  Weighing weighing{{per_cent(0, 100)}, {}, 5, true};
  std::vector<Portion> portions = {portion(0, 501)};
  ASSERT_TRUE(weigh_out(weighing, portions));
  EXPECT_EQ(portions[0].weight, Rational(505));
}

// Forty-one to forty-two hundredths of about a kilogram, in steps of 50 g.
TEST(Portions, FailWhereNoWholeNearByWillDo) {
  const Weighing weighing{{per_cent(41, 42), per_cent(58, 59)}, {}, 50, false};
  std::vector<Portion> portions = {portion(0, 415), portion(1, 585)};
  EXPECT_FALSE(weigh_out(weighing, portions));
}

}  // namespace
}  // namespace maslin::plan
