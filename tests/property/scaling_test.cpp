// SPDX-License-Identifier: Apache-2.0
// How a plan grows with its basket. MASLIN_FULL=1 makes the campaigns long.
#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <string>

#include "property/amounts.hpp"
#include "property/random_case.hpp"

namespace maslin::test {
namespace {

class Scaling : public testing::Test {
 protected:
  std::mt19937 random{20261125};
};

double best(const Planned& planned) {
  const plan::Solved optimum = planned.optimum();
  return optimum.solution.status == blend::Status::optimal
             ? optimum.solution.objective_values.front()
             : 0;
}

TEST_F(Scaling, TwiceTheBasketMakesTwiceTheBatch) {
  int fitted = 0;
  for (int i = 0; i < rounds(300, 8000); ++i) {
    const RandomCase the_case = random_case(random);
    Writing twice;
    twice.times = 2;
    const Planned once(text_of(the_case));
    const Planned doubled(text_of(the_case, twice));
    SCOPED_TRACE(text_of(the_case));
    const double small = best(once);
    const double large = best(doubled);
    ASSERT_EQ(once.optimum().solution.status, doubled.optimum().solution.status);
    ASSERT_NEAR(large, 2 * small, 1e-6 * (1 + std::abs(large)));
    if (!once.fits() || !doubled.fits()) continue;
    ++fitted;
    EXPECT_NEAR(doubled.total(), 2 * once.total(),
                lost_to_rounding(once, the_case.step) + lost_to_rounding(doubled, the_case.step));
  }
  EXPECT_GT(fitted, rounds(150, 4000));
}

TEST_F(Scaling, TwiceTheAimTakesTwiceTheProduce) {
  int fitted = 0;
  for (int i = 0; i < rounds(200, 5000); ++i) {
    const RandomCase the_case = random_case(random);
    Writing twice;
    twice.times = 2;
    const long step = std::lround(the_case.step);
    const long grams = std::lround(the_case.batch / 2) / step * step;
    const Planned once(text_of(the_case), prepared_aim(grams));
    const Planned doubled(text_of(the_case, twice), prepared_aim(2 * grams));
    if (!once.fits() || !doubled.fits()) continue;
    SCOPED_TRACE(text_of(the_case));
    ++fitted;
    const auto& values = once.optimum().solution.objective_values;
    const auto& large = doubled.optimum().solution.objective_values;
    ASSERT_EQ(values.size(), large.size());
    for (std::size_t at = 0; at < values.size(); ++at) {
      EXPECT_NEAR(large[at], 2 * values[at], 1e-5 * (1 + std::abs(large[at]))) << at;
    }
    EXPECT_NEAR(doubled.total(), 2 * once.total(),
                lost_to_rounding(once, the_case.step) + lost_to_rounding(doubled, the_case.step));
  }
  EXPECT_GT(fitted, rounds(100, 2500));
}

// Of a line of the basket, of the store, or of what may be bought.
TEST_F(Scaling, MoreOfAnythingMakesNoSmallerBatch) {
  int fitted = 0;
  for (int i = 0; i < rounds(300, 8000); ++i) {
    RandomCase the_case = random_case(random);
    const Planned before(text_of(the_case));
    SCOPED_TRACE(text_of(the_case));
    auto& list = i % 3 == 0 && !the_case.store.empty() ? the_case.store : the_case.lines;
    RandomLine& line = list[static_cast<std::size_t>(i) % list.size()];
    if (line.grams > 0) {
      line.grams *= 1.5;
    } else if (line.at_most > 0) {
      line.at_most *= 1.5;
    }
    const Planned after(text_of(the_case));
    if (!before.fits()) continue;
    ++fitted;
    EXPECT_GE(best(after), best(before) * (1 - 1e-9) - 1e-9);
    ASSERT_TRUE(after.fits()) << text_of(the_case) << after.messages();
    EXPECT_GE(after.total(), before.total() - lost_to_rounding(after, the_case.step))
        << text_of(the_case);
  }
  EXPECT_GT(fitted, rounds(150, 4000));
}

}  // namespace
}  // namespace maslin::test
