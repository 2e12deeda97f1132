// SPDX-License-Identifier: Apache-2.0
// Where amounts exist, a plan is found that scales and spoons can give: over random baskets, and
// over the corners that once had none. MASLIN_FULL=1 makes the campaigns long.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <string>

#include "property/amounts.hpp"
#include "property/random_case.hpp"

namespace maslin::test {
namespace {

class Fitting : public testing::Test {
 protected:
  std::mt19937 random{5112026};
};

bool solved(const Planned& planned) {
  const plan::Solved optimum = planned.optimum();
  return optimum.solution.status == blend::Status::optimal;
}

bool is_too_fine(const Planned& planned) {
  const auto codes = planned.codes();
  return std::find(codes.begin(), codes.end(), "too-fine") != codes.end();
}

struct Campaign {
  int fitted = 0;
  int too_fine = 0;
  std::string examples;

  void take(const RandomCase& the_case, const Planned& planned) {
    if (planned.session().diagnostics().has_errors() && !is_too_fine(planned)) return;
    if (planned.fits()) {
      ++fitted;
      EXPECT_TRUE(plan::verify(planned.program(), planned.draft()).ok());
      return;
    }
    ++too_fine;
    if (solved(planned)) examples += text_of(the_case) + planned.messages();
  }

  // Some mixes have a single point where every limit meets, which no scales can weigh.
  void expect_few(double part) const {
    EXPECT_LE(too_fine, part * (fitted + too_fine) + 1) << examples;
  }
};

constexpr double few = 0.002;

TEST_F(Fitting, AsMuchAsThereIs) {
  Campaign campaign;
  for (int i = 0; i < rounds(1500, 20000); ++i) {
    const RandomCase the_case = random_case(random);
    campaign.take(the_case, Planned(text_of(the_case)));
  }
  EXPECT_GT(campaign.fitted, rounds(800, 10000));
  campaign.expect_few(few);
}

TEST_F(Fitting, AnAimOfPreparedProduce) {
  Campaign campaign;
  for (int i = 0; i < rounds(1000, 15000); ++i) {
    const RandomCase the_case = random_case(random);
    const auto grams = static_cast<long>(the_case.batch * 0.8);
    campaign.take(the_case, Planned(text_of(the_case), prepared_aim(grams)));
  }
  EXPECT_GT(campaign.fitted, rounds(500, 7500));
  campaign.expect_few(few);
}

TEST_F(Fitting, AnAimOfWhatLeavesThePan) {
  Campaign campaign;
  for (int i = 0; i < rounds(1000, 15000); ++i) {
    const RandomCase the_case = random_case(random);
    const auto grams = static_cast<long>(the_case.batch * 0.8);
    const Planned planned(text_of(the_case), finished_aim(grams));
    campaign.take(the_case, planned);
    if (!planned.fits() || !planned.draft().finished) continue;
    // A pan is not stopped more closely than to a hundredth.
    EXPECT_NEAR(planned.draft().finished->to_double(), static_cast<double>(grams),
                0.01 * static_cast<double>(grams) + 20 * the_case.step);
  }
  EXPECT_GT(campaign.fitted, rounds(200, 3000));
  constexpr double some = 0.02;  // the window of solids may be narrower than a step
  campaign.expect_few(some);
}

TEST_F(Fitting, SmallBatchesOnFineScales) {
  Campaign campaign;
  RandomKind small;
  small.smallest = 200;
  small.largest = 500;
  small.coarse_scales = false;
  for (int i = 0; i < rounds(500, 10000); ++i) {
    const RandomCase the_case = random_case(random, small);
    campaign.take(the_case, Planned(text_of(the_case)));
  }
  constexpr double more = 0.01;  // a step is a larger part of a share
  campaign.expect_few(more);
}

// ---- Corners ------------------------------------------------------------------------------------

std::string store_of(const std::string& lines) {
  return "kitchen \"here\" { scales to 5 g\n store { " + lines + " } }\n";
}

// Three plain ratios whose weights are no whole steps.
TEST(Corner, SharesThatFixEverything) {
  const Planned planned(
      "framework one { produce { apple 47 %; carrot 31 %; onion 22 % }\n"
      "per kilogram { sugar 150 g } }\n"
      "basket { apple 1003 g prepared; carrot 700 g prepared; onion 500 g prepared }\n" +
      store_of("sugar 2 kg"));
  ASSERT_TRUE(planned.fits()) << planned.messages();
  EXPECT_NEAR(planned.weight("apple") / planned.total(), 0.47, 5 / planned.total());
  EXPECT_NEAR(planned.weight("onion") / planned.total(), 0.22, 5 / planned.total());
}

TEST(Corner, OneIngredientAlone) {
  const Planned planned(
      "framework one { produce { beetroot 100 % }\nper kilogram { vinegar 300 ml; salt 10 g } }\n"
      "basket { beetroot 1237 g prepared }\n");
  ASSERT_TRUE(planned.fits()) << planned.messages();
  EXPECT_EQ(planned.total(), 1237);
}

// The cap on what counts is reached, and the sugar to add is no whole step.
TEST(Corner, CreditAtItsCapWithCoarseScales) {
  for (const char* extent : {"full", "optional"}) {
    for (const char* sugar : {"137 g", "130 .. 145 g"}) {
      const Planned planned(
          fmt::format("framework one {{ produce {{ apple 100 % }}\n"
                      "per kilogram {{ sugar {}; raisin 123 g }}\n"
                      "substitute {{ raisin for sugar by sugars {} up to 37 % }}\n"
                      "limits {{ low acid <= 60 % of prepared produce }} }}\n"
                      "basket {{ apple 3127 g prepared; raisin 1 kg }}\n",
                      sugar, extent) +
          store_of("sugar 2 kg"));
      ASSERT_TRUE(planned.fits()) << extent << sugar << planned.messages();
      const double credit = planned.draft().credits.front().to_double();
      const double wanted = planned.weight("sugar") + credit;
      EXPECT_NEAR(credit, 0.37 * wanted, 5) << extent << sugar;
    }
  }
}

// Two credits against one ratio, each counted as far as it goes: neither, one or both at their
// caps.
TEST(Corner, SeveralFullCreditsOnOneRatio) {
  struct Case {
    const char* raisin;
    const char* honey;
  };
  for (const Case& each : {Case{"up to 90 %", "up to 90 %"}, Case{"up to 10 %", "up to 90 %"},
                           Case{"up to 10 %", "up to 5 %"}}) {
    const Planned planned(
        fmt::format("framework one {{ produce {{ apple 100 % }}\n"
                    "per kilogram {{ sugar 300 .. 320 g; raisin 80 g; honey 30 g }}\n"
                    "substitute {{ raisin for sugar by sugars full {}\n"
                    "honey for sugar by sugars full {} }} }}\n"
                    "basket {{ apple 3 kg prepared; raisin 1 kg; honey 1 kg }}\n",
                    each.raisin, each.honey) +
        store_of("sugar 3 kg"));
    ASSERT_TRUE(planned.fits()) << each.raisin << each.honey << planned.messages();
    double wanted = planned.weight("sugar");
    for (const auto& credit : planned.draft().credits) wanted += credit.to_double();
    EXPECT_GE(wanted, 0.3 * planned.total() - 5) << each.raisin << each.honey;
    EXPECT_LE(wanted, 0.32 * planned.total() + 5) << each.raisin << each.honey;
    ASSERT_EQ(planned.draft().credits.size(), 2U);
    EXPECT_GT(planned.draft().credits[0].to_double(), 0);
    EXPECT_GT(planned.draft().credits[1].to_double(), 0);
    EXPECT_TRUE(plan::verify(planned.program(), planned.draft()).ok());
  }
}

// Bought in whole packs: as many as the weight takes as in the shop, and paid for whole.
TEST(Corner, WholePacks) {
  const Planned planned(
      "framework one { produce { apple 60 %; onion 40 % }\nper kilogram { vinegar 400 ml } }\n"
      "basket { apple 3 kg prepared; onion to buy, packs of 750 g, at 2 per kg }\n" +
          store_of("cider vinegar 3 l, 5 % acidity"),
      prepared_aim(3000));
  ASSERT_TRUE(planned.fits()) << planned.messages();
  EXPECT_NEAR(planned.weight("onion"), 1200, 5);
  // 1.2 kg of what 90 % is left of are 1333 g as in the shop: two packs, 1.5 kg, 3.00.
  const std::string sheet = planned.sheet();
  EXPECT_NE(sheet.find("2 of 750 g"), std::string::npos) << sheet;
  EXPECT_NE(sheet.find("3.00"), std::string::npos) << sheet;
}

// What is in the store ends inside a step of the scales.
TEST(Corner, StoreThatEndsInsideAStep) {
  const Planned planned(
      "framework one { produce { apple 100 % }\nper kilogram { sugar 250 g } }\n"
      "basket { apple 9 kg prepared }\n" +
      store_of("sugar 501 g"));
  ASSERT_TRUE(planned.fits()) << planned.messages();
  EXPECT_LE(planned.weight("sugar"), 501);
  EXPECT_NEAR(planned.total(), 2004, 20);
}

// Own and to buy of the same, and a bottle of each strength.
TEST(Corner, TwoSuppliesOfOneThing) {
  const Planned planned(
      "framework one { produce { apple 60 %; onion 40 % }\nper kilogram { vinegar 500 ml }\n"
      "substitute { vinegar for vinegar by acetic acid } }\n"
      "basket { apple 1013 g prepared; apple to buy, at most 777 g, at 2 per kg\n"
      "onion 1200 g prepared }\n" +
      store_of("cider vinegar 403 g, 5 % acidity; cider vinegar 2 l, 6 % acidity"));
  ASSERT_TRUE(planned.fits()) << planned.messages();
  // What is bought is bought whole: 83.5 % of 777 g is ready for the pan.
  EXPECT_NEAR(planned.weight("apple"), 1013 + 0.835 * 777, 8);
  EXPECT_NEAR(planned.weight("onion"), planned.total() * 0.4, 6);
}

// An aim that is no whole step of the scales.
TEST(Corner, AimBetweenTwoSteps) {
  for (const long grams : {2003L, 2007L, 1999L}) {
    const Planned planned(
        "framework one { produce { apple 50 .. 70 %; onion 30 .. 50 % }\n"
        "per kilogram { sugar 200 g } }\n"
        "basket { apple 4 kg prepared; onion 4 kg prepared }\n" +
            store_of("sugar 2 kg"),
        prepared_aim(grams));
    ASSERT_TRUE(planned.fits()) << grams << planned.messages();
    EXPECT_NEAR(planned.total(), static_cast<double>(grams), 5);
  }
}

TEST(Corner, TinyAndHugeBatches) {
  const auto text = [](const std::string& apple, const std::string& onion,
                       const std::string& scales) {
    return "framework one { produce { apple 55 .. 80 %; onion 20 .. 45 % }\n"
           "per kilogram { vinegar 400 .. 500 ml; sugar 250 g; salt 10 g; ground allspice 1 tsp\n"
           "whole clove 2 }\n"
           "limits { low acid <= 40 % of prepared produce; soluble solids 30 .. 45 % } }\n"
           "basket { apple " +
           apple + " prepared; onion " + onion + " prepared }\nkitchen \"k\" { scales to " +
           scales + "; spoons to 1/4 tsp }\n";
  };
  const Planned tiny(text("220 g", "150 g", "1 g"));
  ASSERT_TRUE(tiny.fits()) << tiny.messages();
  const Planned huge(text("290 kg", "200 kg", "100 g"));
  ASSERT_TRUE(huge.fits()) << huge.messages();
  EXPECT_GT(huge.total(), 470000);
}

}  // namespace
}  // namespace maslin::test
