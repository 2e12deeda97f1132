// SPDX-License-Identifier: Apache-2.0
// What the batch costs, how hot it is and how it sets, against sums by hand and published lists.
#include <gtest/gtest.h>

#include <algorithm>

#include "language/membership.hpp"
#include "report/cost.hpp"
#include "report/pectin.hpp"
#include "report/pungency.hpp"
#include "science/pungency.hpp"
#include "support/planning.hpp"

namespace maslin::report {
namespace {

using test::Planned;

Rational decimal(long hundredths) {
  return Rational(Rational::Wide{hundredths}, Rational::Wide{100});
}

Planned planned(const std::string& text) {
  return Planned({{"/week.maslin", text}}, "/week.maslin");
}

const language::Ingredient& named(const language::Program& program, const std::string& name) {
  const auto found =
      std::find_if(program.ingredients.begin(), program.ingredients.end(),
                   [&](const language::Ingredient& each) { return each.name == name; });
  EXPECT_NE(found, program.ingredients.end()) << name;
  return *found;
}

const std::string raw_relish = R"(
framework relish {
  produce { onion 50 %; apple 50 % }
  per kilogram { cider vinegar 500 g; sugar 100 g; salt 10 g }
}
)";

TEST(Cost, IsOfWhatGoesInAndOfTheJars) {
  // By hand: 1 kg of onion is 1.25 kg gross at 0.80; 500 g of sugar of a 2 kg bag at 1.20 a
  // kilogram is not the bag; vinegar and salt have no price; the jars hold less than all of it.
  const Planned plan = planned(raw_relish + R"(
basket { onion 1.25 kg gross, trim 20 %, at 0.80 per kg; apple 1 kg prepared, at 1 per kg }
kitchen {
  pan   9 l
  jars  20 of 282 ml at 0.50 each
  store { sugar to buy, packs of 2 kg, at 1.20 per kg }
}
)");
  ASSERT_TRUE(plan.fits()) << plan.messages();
  const auto cost = cost_of(plan.program(), plan.plan());
  ASSERT_TRUE(cost);
  EXPECT_EQ(cost->contents, decimal(100 + 100 + 24));
  EXPECT_EQ(cost->unpriced, (std::vector<std::string>{"cider vinegar", "salt"}));
  ASSERT_EQ(cost->by_jar.size(), 1U);
  const JarCost& jar = cost->by_jar[0];
  EXPECT_EQ(cost->jars, Rational(jar.count) * decimal(50));
  EXPECT_EQ(cost->in_all(), cost->contents + *cost->jars);
  // All full jars together hold no more than what went in, and all but one of them most of it.
  const Rational cent = decimal(1) * Rational(jar.count);
  EXPECT_LE((Rational(jar.count) - Rational(1)) * jar.contents, cost->contents + cent);
  EXPECT_GE(Rational(jar.count) * jar.contents + cent, cost->contents);
}

TEST(Cost, IsNotToldWhereNothingHasAPrice) {
  const Planned plan = planned(raw_relish + "basket { onion 1 kg prepared; apple 1 kg prepared }");
  ASSERT_TRUE(plan.fits()) << plan.messages();
  EXPECT_FALSE(cost_of(plan.program(), plan.plan()));
}

// One size at two prices counts as the dearer; a size without one is named.
TEST(Cost, OfJarsIsTheDearerAndNamesWhatHasNone) {
  const Planned plan = planned(raw_relish + R"(
basket { onion 2 kg prepared; apple 2 kg prepared }
kitchen { pan 15 l; jars 2 of 720 ml, 2 of 282 ml at 0.5 each, 30 of 282 ml at 0.6 each }
)");
  ASSERT_TRUE(plan.fits()) << plan.messages();
  const auto cost = cost_of(plan.program(), plan.plan());
  ASSERT_TRUE(cost);
  EXPECT_EQ(cost->contents, Rational(0));
  ASSERT_EQ(cost->by_jar.size(), 2U);
  EXPECT_FALSE(cost->by_jar[0].jar);
  EXPECT_EQ(cost->by_jar[1].jar, decimal(60));
  EXPECT_EQ(cost->unpriced.back(), "jars of 720 ml");
}

// Scoville heat units of the dry pod: several published lists agree, and stand in src/science; the
// library's entries were typed apart from them.
TEST(Pungency, OfTheLibraryIsThatOfTheLists) {
  const Planned plan = planned(raw_relish + "basket { onion 1 kg prepared; apple 1 kg prepared }");
  const std::pair<const char*, science::Pod> pods[] = {
      {"sweet pepper", science::Pod::sweet},
      {"red pepper", science::Pod::sweet},
      {"jalapeno", science::Pod::jalapeno},
      {"cayenne", science::Pod::cayenne},
      {"bird's eye chilli", science::Pod::birds_eye},
      {"Scotch bonnet", science::Pod::habanero},
      {"chilli", science::Pod::unknown},
      {"dried chilli", science::Pod::unknown}};
  for (const auto& [name, pod] : pods) {
    const auto& figure = named(plan.program(), name).pungency;
    ASSERT_TRUE(figure) << name;
    EXPECT_EQ(figure->value.low.to_double(), science::pungency_of(pod).low.in_unit()) << name;
    EXPECT_EQ(figure->value.high.to_double(), science::pungency_of(pod).high.in_unit()) << name;
  }
}

// A factor of dilution: by weight, of the dry part. 20 g of pods with 12 % of dry matter at 5000
// and 5 g with 90 % at 40 000 in 1000 g come to 192; worked out apart, as in tests/science.
TEST(Pungency, OfABatchIsByWeightOfWhatIsDry) {
  const Planned plan = planned(R"(
ingredient fiery pod { composition water 88 g; pungency 5000; allergen none }
ingredient fiery dust { composition water 10 g; pungency 40000; allergen none }
framework relish {
  produce { apple 100 % }
  per kilogram { salt 225 g; fiery pod 20 g; fiery dust 5 g }
}
basket { apple 800 g prepared }
)");
  ASSERT_TRUE(plan.fits()) << plan.messages();
  // For 800 g of produce 180 g, 16 g and 4 g: 1000 g in all, and the pods are four fifths.
  const auto found = pungency_of(plan.program(), plan.plan());
  ASSERT_TRUE(found);
  EXPECT_EQ(found->pods, (std::vector<std::string>{"fiery dust", "fiery pod"}));
  EXPECT_NEAR(found->finished.low.in_unit(), 192 * 0.8, 1e-9);
  EXPECT_GE(found->finished.high, found->finished.low);
}

TEST(Pungency, OfSweetPeppersIsNotTold) {
  const Planned plan = planned(
      "framework relish { produce { sweet pepper 100 % } per kilogram { vinegar 500 ml } }\n"
      "basket { sweet pepper 1 kg prepared }");
  ASSERT_TRUE(plan.fits()) << plan.messages();
  EXPECT_FALSE(pungency_of(plan.program(), plan.plan()));
}

TEST(Pungency, IsShownToTwoFiguresOutwards) {
  EXPECT_EQ(text_of({Scoville(192.3), Scoville(617)}), "190 to 620");
  EXPECT_EQ(text_of({Scoville(0), Scoville(11'701)}), "0 to 12000");
}

// Groups of ripe fruit of a US extension handbook (University of Georgia): the first sets, the
// second may want acid or pectin, the third wants it. Rhubarb is from memory.
TEST(Pectin, GroupsAreThoseOfTheHandbook) {
  const Planned plan = planned(raw_relish + "basket { onion 1 kg prepared; apple 1 kg prepared }");
  const std::pair<const char*, std::vector<const char*>> groups[] = {
      {"pectin-rich fruit",
       {"crab apple", "blackcurrant", "redcurrant", "gooseberry", "loganberry", "plum", "quince",
        "lemon", "cranberry"}},
      {"pectin-middling fruit",
       {"apple", "blackberry", "sour cherry", "elderberry", "orange", "grapefruit"}},
      {"pectin-poor fruit",
       {"strawberry", "raspberry", "pear", "peach", "apricot", "fig", "blueberry", "rhubarb"}}};
  const auto& program = plan.program();
  for (const auto& [of_class, fruit] : groups) {
    for (const char* name : fruit) {
      const auto id = language::IngredientId(
          static_cast<std::size_t>(&named(program, name) - program.ingredients.data()));
      for (const auto& [other, ignored] : groups) {
        EXPECT_EQ(is_of_class(program, id, other), other == of_class) << name;
      }
    }
  }
}

TEST(Pectin, SharesAreOfTheFruitThatIsInAGroup) {
  const Planned plan = planned(
      "framework jam { produce { fruit 100 % } per kilogram { sugar 1 kg } }\n"
      "basket { quince 250 g prepared; strawberry 750 g prepared }");
  ASSERT_TRUE(plan.fits()) << plan.messages();
  const auto groups = pectin_groups(plan.program(), plan.plan().verified.draft());
  ASSERT_EQ(groups.size(), 2U);
  EXPECT_EQ(groups[0].name, "rich");
  EXPECT_EQ(groups[0].share, decimal(25));
  EXPECT_EQ(groups[1].fruit, std::vector<std::string>{"strawberry"});
  EXPECT_NE(pectin_text(groups).find("More than half"), std::string::npos);
}

}  // namespace
}  // namespace maslin::report
