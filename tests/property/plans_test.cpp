// SPDX-License-Identifier: Apache-2.0
// What must hold of every plan, over random frameworks and baskets of the library's own produce.
// MASLIN_FULL=1 makes the campaign long.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <random>
#include <string>
#include <vector>

#include "plan/solve.hpp"
#include "support/planning.hpp"

namespace maslin::test {
namespace {

const std::vector<std::string> names = {"apple",  "pear",     "onion",   "carrot",
                                        "quince", "beetroot", "cabbage", "butternut squash"};

int rounds(int few, int many) {
  const char* full = std::getenv("MASLIN_FULL");
  return full != nullptr && *full != '\0' ? many : few;
}

// A framework of some of the produce as ranges, and a basket of about as much.
struct Case {
  std::vector<std::string> shares;
  std::vector<std::string> additions;
  std::vector<std::string> lines;  // weights are written by `text`
  std::vector<int> grams;
};

Case random_case(std::mt19937& random) {
  const auto between = [&](int low, int high) {
    return std::uniform_int_distribution<int>(low, high)(random);
  };
  Case result;
  std::vector<std::string> chosen = names;
  std::shuffle(chosen.begin(), chosen.end(), random);
  chosen.resize(static_cast<std::size_t>(between(2, 5)));
  const int even = 100 / static_cast<int>(chosen.size());
  for (const std::string& name : chosen) {
    const int low = between(0, even);
    const int high = std::min(100, even + between(5, 40));
    std::string share = fmt::format("{} {} .. {} %", name, low, high);
    if (between(0, 1) == 1) share += fmt::format(" prefer {} %", between(low, high));
    result.shares.push_back(share);
    result.lines.push_back(name);
    result.grams.push_back(between(400, 4000));
  }
  result.additions = {fmt::format("vinegar {} .. {} ml", between(300, 400), between(400, 600)),
                      fmt::format("sugar {} g", between(100, 400)), "salt 10 g"};
  if (between(0, 1) == 1) result.additions.push_back("ground allspice 1 tsp");
  return result;
}

std::string text(const Case& the_case, int times) {
  std::string result = "framework random {\n  produce {\n";
  for (const std::string& share : the_case.shares) result += "    " + share + "\n";
  result += "  }\n  per kilogram {\n";
  for (const std::string& addition : the_case.additions) result += "    " + addition + "\n";
  result += "  }\n}\nbasket {\n";
  for (std::size_t i = 0; i < the_case.lines.size(); ++i) {
    result += fmt::format("  {} {} g prepared\n", the_case.lines[i], the_case.grams[i] * times);
  }
  return result + "}\n";
}

plan::Solved optimum(const Planned& planned) {
  const language::Program& program = planned.program();
  const blend::Grounding grounding{program, program.frameworks.back(), program.baskets.back(),
                                   nullptr};
  return plan::solve_best(grounding, {});
}

// The same amounts of the same things for the same slots.
std::vector<std::string> amounts(const Planned& planned) {
  std::vector<std::string> result;
  const plan::Draft& draft = planned.draft();
  const language::Framework& framework = planned.program()[draft.task.framework];
  for (const plan::Taken& taken : draft.produce) {
    result.push_back(framework.shares[taken.slot].target.name + " " +
                     planned.program()[taken.ingredient].name + " " + taken.weight.to_decimal(6));
  }
  for (const plan::Taken& taken : draft.additions) {
    result.push_back(framework.additions[taken.slot].target.name + " " +
                     planned.program()[taken.ingredient].name + " " + taken.weight.to_decimal(6));
  }
  std::sort(result.begin(), result.end());
  return result;
}

class Plans : public testing::Test {
 protected:
  std::mt19937 random{20261125};
};

TEST_F(Plans, ScaleWithTheBasket) {
  int fitted = 0;
  for (int i = 0; i < rounds(150, 5000); ++i) {
    const Case the_case = random_case(random);
    const Planned once(text(the_case, 1));
    const Planned thrice(text(the_case, 3));
    ASSERT_EQ(once.fits(), thrice.fits()) << text(the_case, 1) << once.messages();
    if (!once.fits()) continue;
    ++fitted;
    const double small = optimum(once).solution.objective_values.front();
    const double large = optimum(thrice).solution.objective_values.front();
    EXPECT_NEAR(large, 3 * small, 1e-6 * (1 + large)) << text(the_case, 1);
    // Rounded to the gram, a plan loses at most some steps of what the optimum has.
    EXPECT_NEAR(once.total(), 1000 * small, 40) << text(the_case, 1);
  }
  EXPECT_GT(fitted, rounds(75, 2500));
}

TEST_F(Plans, DoNotDependOnTheOrderOfStatements) {
  for (int i = 0; i < rounds(100, 2000); ++i) {
    Case the_case = random_case(random);
    const Planned first(text(the_case, 1));
    std::reverse(the_case.shares.begin(), the_case.shares.end());
    std::reverse(the_case.additions.begin(), the_case.additions.end());
    std::reverse(the_case.lines.begin(), the_case.lines.end());
    std::reverse(the_case.grams.begin(), the_case.grams.end());
    const Planned second(text(the_case, 1));
    ASSERT_EQ(first.fits(), second.fits());
    if (first.fits()) {
      EXPECT_EQ(amounts(first), amounts(second)) << text(the_case, 1);
    }
  }
}

TEST_F(Plans, AreNoSmallerWithMoreInTheBasket) {
  for (int i = 0; i < rounds(100, 2000); ++i) {
    Case the_case = random_case(random);
    const Planned before(text(the_case, 1));
    the_case.grams[static_cast<std::size_t>(i) % the_case.grams.size()] += 500;
    const Planned after(text(the_case, 1));
    if (!before.fits()) continue;
    ASSERT_TRUE(after.fits()) << text(the_case, 1);
    const double less = optimum(before).solution.objective_values.front();
    EXPECT_GE(optimum(after).solution.objective_values.front(), less * (1 - 1e-9));
  }
}

// One step of the scales more or less of anything, beyond what rounding may leave, is refused: the
// mutation is of fifty steps, or of one where that already breaks a range.
TEST_F(Plans, MutatedAreRefused) {
  int mutated = 0;
  for (int i = 0; i < rounds(60, 1000); ++i) {
    const Case the_case = random_case(random);
    const Planned planned(text(the_case, 1));
    if (!planned.fits()) continue;
    ASSERT_TRUE(plan::verify(planned.program(), planned.draft()).ok());
    for (std::size_t at = 0; at < planned.draft().additions.size(); ++at) {
      plan::Draft draft = planned.draft();
      plan::Taken& taken = draft.additions[at];
      // A ratio or range of what is added: twice and a kilogram more is outside of every one.
      taken.weight = taken.weight * Rational(2) + Rational(1000);
      taken.amount = taken.weight;
      EXPECT_FALSE(plan::verify(planned.program(), draft).ok()) << text(the_case, 1);
      ++mutated;
    }
    for (std::size_t at = 0; at < planned.draft().produce.size(); ++at) {
      plan::Draft draft = planned.draft();
      // More than there is of it.
      draft.produce[at].weight += Rational(4001);
      draft.produce[at].amount = draft.produce[at].weight;
      EXPECT_FALSE(plan::verify(planned.program(), draft).ok()) << text(the_case, 1);
      ++mutated;
    }
    plan::Draft draft = planned.draft();
    draft.produce.front().weight = Rational::undefined();
    EXPECT_FALSE(plan::verify(planned.program(), draft).ok());
  }
  EXPECT_GT(mutated, 100);
}

TEST_F(Plans, TakeTenThousandLotsAsOne) {
  const std::string framework =
      "framework one { produce { apple 60 %; onion 40 % }\nper kilogram { sugar 100 g } }\n";
  std::string many = framework + "basket {\n  onion 4000 kg prepared\n";
  for (int i = 0; i < 10000; ++i) many += "  apple 300 g prepared\n";
  const Planned split(many + "}\n");
  const Planned whole(framework + "basket { onion 4000 kg prepared; apple 3000 kg prepared }\n");
  ASSERT_TRUE(split.fits() && whole.fits());
  EXPECT_EQ(amounts(split), amounts(whole));
}

}  // namespace
}  // namespace maslin::test
