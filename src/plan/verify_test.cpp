// SPDX-License-Identifier: Apache-2.0
// A draft that is right passes; the same draft with any one thing wrong does not.
#include "plan/verify.hpp"

#include <gtest/gtest.h>

#include <functional>
#include <string>
#include <vector>

#include "plan/verify_test_kitchen.hpp"

namespace maslin::plan {
namespace {

using language::Origin;
using language::Program;
using testing::expect_breach;
using testing::expect_passes;
using testing::ingredient;
using testing::number;
using testing::read;
using testing::village_draft;
using testing::village_program;
using testing::weighed;
using Kind = Breach::Kind;

const Rational undefined = Rational::undefined();

class Verify : public ::testing::Test {
 protected:
  struct Change {
    const char* what;
    Kind kind;
    std::function<void(Draft&)> make;
  };

  void expect_each_refused(const std::vector<Change>& changes) const {
    for (const Change& change : changes) {
      Draft draft = village_draft(program_);
      change.make(draft);
      expect_breach(program_, draft, change.kind, change.what);
    }
  }

  Draft changed(const std::function<void(Draft&)>& make) const {
    Draft draft = village_draft(program_);
    make(draft);
    return draft;
  }

  const Program program_ = village_program();
};

// Sets what the scales show.
void weigh(Taken& taken, int grams) {
  taken.weight = grams;
  taken.amount = grams;
}

constexpr std::size_t taken_count = 11;

std::vector<Taken*> all_taken(Draft& draft) {
  std::vector<Taken*> result;
  for (auto* list : {&draft.produce, &draft.additions, &draft.substitutes}) {
    for (Taken& taken : *list) result.push_back(&taken);
  }
  return result;
}

// ---- What is right ------------------------------------------------------------------------------

TEST_F(Verify, PassesADraftThatIsRight) {
  const auto result = verify(program_, village_draft(program_));
  ASSERT_TRUE(result.ok()) << testing::told(result.error());
  EXPECT_EQ(result->prepared_total(), PreparedMass(4000));
  EXPECT_EQ(result->ingoing(), IngoingMass(number("7308.8")));
  ASSERT_TRUE(result->finished());
  EXPECT_EQ(*result->finished(), FinishedMass(4200));
  Draft judged = result->draft();
  EXPECT_EQ(all_taken(judged).size(), taken_count);
}

TEST_F(Verify, SaysWhatIsReached) {
  const auto result = verify(program_, village_draft(program_));
  ASSERT_TRUE(result.ok()) << testing::told(result.error());
  EXPECT_EQ(result->shares(),
            (std::vector<Rational>{number("0.2"), number("0.55"), number("0.25")}));
  // 1820 g of vinegar at 1.01 g per ml, and 75 ml credited, for 4 kg.
  const Rational vinegar = (Rational(1820) / number("1.01") + 75) / 4;
  EXPECT_EQ(result->additions(), (std::vector<Rational>{vinegar, 300, 100, 10, 5, 2}));
}

TEST_F(Verify, KeepsAnAccountOfEachExchange) {
  const auto result = verify(program_, village_draft(program_));
  ASSERT_TRUE(result.ok()) << testing::told(result.error());
  // None for another strength of the same.
  ASSERT_EQ(result->accounts().size(), 2U);
  const Account& sugar = result->accounts()[0];
  EXPECT_EQ(sugar.substitution, 0U);
  EXPECT_EQ(sugar.wanted, Rational(1200));
  EXPECT_EQ(sugar.brought, (Bounds{240, 280}));
  EXPECT_EQ(sugar.brought_expected, Rational(260));
  EXPECT_EQ(sugar.counted, Rational(260));
  EXPECT_EQ(sugar.to_add, Rational(940));
  const Account& vinegar = result->accounts()[1];
  // 4 g of citric acid count for 0.938 times as much acetic acid, at 5 g in 100 ml.
  EXPECT_EQ(vinegar.brought_expected, number("75.04"));
  EXPECT_EQ(vinegar.wanted, vinegar.to_add + 75);
}

TEST_F(Verify, ShowsLimitsAtTheUnfavourableEnd) {
  const auto result = verify(program_, village_draft(program_));
  ASSERT_TRUE(result.ok()) << testing::told(result.error());
  ASSERT_EQ(result->limits().size(), 3U);
  EXPECT_EQ(result->limits()[0].value, Bounds::exactly(number("0.45")));
  EXPECT_EQ(result->limits()[0].margin, Bounds::exactly(0));
  // Soluble solids in g, by hand: onion 32 to 40, apple 231 to 275 (malic acid 11 of it), squash
  // 30 to 40, sugar 940, sultanas 240 to 280, salt 40, lemon juice 6, allspice 0 to 4, cloves
  // 0.016.
  const Bounds solids{number("1519.016"), number("1625.016")};
  EXPECT_EQ(result->limits()[2].value, (Bounds{solids.low / 4200, solids.high / 4200}));
  EXPECT_EQ(result->limits()[2].margin,
            (Bounds{solids.low / 4200 - number("0.36"), number("0.46") - solids.high / 4200}));
  ASSERT_TRUE(result->window());
  EXPECT_EQ(result->window()->least, FinishedMass(solids.high / number("0.46")));
  EXPECT_EQ(result->window()->most, FinishedMass(solids.low / number("0.36")));
}

TEST_F(Verify, ListsWhatIsLeftOfTheBasketByName) {
  const auto result = verify(program_, village_draft(program_));
  ASSERT_TRUE(result.ok()) << testing::told(result.error());
  std::vector<std::string> left;
  for (const Leftover& each : result->leftovers()) {
    left.push_back(program_[each.ingredient].name + " " + each.left.in_base().to_decimal(1));
  }
  EXPECT_EQ(left, (std::vector<std::string>{"apple 680", "carrot 250", "onion 100", "squash 125"}));
}

TEST_F(Verify, PassesWhatIsWithinAStepOrOnTheLine) {
  const auto less_onion = [](Draft& d) {
    weigh(d.produce[0], 795);
    weigh(d.produce[3], 995);
  };
  expect_passes(program_, changed(less_onion), "3 g of onion are missing");
  expect_passes(program_, changed([](Draft& d) { weigh(d.additions[1], 945); }), "sugar a step up");
  expect_passes(program_, changed([](Draft& d) { weigh(d.additions[3], 45); }), "salt a step up");
  expect_passes(program_, changed([](Draft& d) { weigh(d.additions[0], 2025); }), "vinegar high");
  expect_passes(program_, changed([](Draft& d) { weigh(d.additions[0], 1625); }), "vinegar low");
  expect_passes(program_, changed([](Draft& d) { d.credits[1] = number("75.04"); }),
                "all credited");
  expect_passes(program_, changed([](Draft& d) { d.credits[1] = 0; }), "nothing credited");
}

// Worked question Q1: planned yields from an openly licensed kitchen-maths text's yield-percent
// table; computed from the inputs shown.
TEST(VerifyWorked, TheLargestBatchThatOnionLimits) {
  const Program program = read(R"(
unit g is mass
unit % = 0.01
unit kg = 1000 g, also kilogram
unit ml is volume
ingredient apple { composition water 86 g; edible 76 % }
ingredient onion { composition water 89 g; edible 89 % }
ingredient tomato { composition water 94 g; edible 91 % }
ingredient sugar { composition water 0 g, sugars 100 g }
ingredient vinegar { composition water 95 g, acetic acid 5 g; density 1 g per ml }
ingredient raisin { composition water 18 g }
ingredient salt { composition water 0 g, salt 100 g }
framework three together {
  produce { apple 40 %; tomato 40 %; onion 20 % }
  per kilogram { sugar 350 g; vinegar 450 ml; raisin 150 g; salt 10 g }
}
basket one { apple 3 kg gross; onion 1.2 kg gross; tomato 2.5 kg gross }
kitchen one { scales to 0.1 g }
)");
  Draft draft;
  draft.task = testing::task();
  draft.produce = {weighed(program, 0, "apple", Origin::basket, "2136"),
                   weighed(program, 1, "tomato", Origin::basket, "2136"),
                   weighed(program, 2, "onion", Origin::basket, "1068")};
  draft.additions = {weighed(program, 0, "sugar", Origin::to_have, "1869"),
                     weighed(program, 1, "vinegar", Origin::to_have, "2403"),
                     weighed(program, 2, "raisin", Origin::to_have, "801"),
                     weighed(program, 3, "salt", Origin::to_have, "53.4")};
  draft.additions[1].acidity = number("0.05");
  const auto result = verify(program, draft);
  ASSERT_TRUE(result.ok()) << testing::told(result.error());
  EXPECT_EQ(result->prepared_total(), PreparedMass(5340));
  EXPECT_EQ(result->ingoing(), IngoingMass(number("10466.4")));
  EXPECT_FALSE(result->window());
  ASSERT_EQ(result->leftovers().size(), 2U);  // no onion
  EXPECT_EQ(result->leftovers()[0].left, PreparedMass(144));
  EXPECT_EQ(result->leftovers()[1].left, PreparedMass(139));
  // A tenth of a gram more onion than there is.
  draft.produce[2] = weighed(program, 2, "onion", Origin::basket, "1068.1");
  expect_breach(program, draft, Kind::available);
}

// ---- What is taken ------------------------------------------------------------------------------

TEST_F(Verify, RefusesSlotsAndIngredientsThatAreNotThere) {
  expect_each_refused({
      {"no such share", Kind::malformed, [](Draft& d) { d.produce[0].slot = 3; }},
      {"no such addition", Kind::malformed, [](Draft& d) { d.additions[0].slot = 6; }},
      {"no such substitution", Kind::malformed, [](Draft& d) { d.substitutes[0].slot = 3; }},
      {"no ingredient", Kind::malformed, [](Draft& d) { d.produce[0].ingredient = {}; }},
      {"no framework", Kind::malformed, [](Draft& d) { d.task.framework = {}; }},
      {"no basket", Kind::malformed, [](Draft& d) { d.task.basket = {}; }},
      {"no such kitchen", Kind::malformed,
       [](Draft& d) { d.task.kitchen = language::KitchenId(1); }},
      {"a credit too few", Kind::malformed, [](Draft& d) { d.credits.pop_back(); }},
      {"a credit too many", Kind::malformed, [](Draft& d) { d.credits.emplace_back(0); }},
      {"no produce", Kind::malformed, [](Draft& d) { d.produce.clear(); }},
  });
}

TEST_F(Verify, RefusesEverySwappedIngredient) {
  for (std::size_t i = 0; i < taken_count; ++i) {
    for (std::size_t other = 0; other < program_.ingredients.size(); ++other) {
      Draft draft = village_draft(program_);
      Taken& taken = *all_taken(draft)[i];
      if (taken.ingredient.index == other) continue;
      taken.ingredient = language::IngredientId(other);
      EXPECT_FALSE(verify(program_, draft).ok())
          << program_.ingredients[other].name << " for " << i;
    }
  }
}

TEST_F(Verify, RefusesEveryOtherOriginAndPriority) {
  for (std::size_t i = 0; i < taken_count; ++i) {
    for (const Origin origin : {Origin::basket, Origin::store, Origin::to_buy, Origin::to_have}) {
      Draft draft = village_draft(program_);
      Taken& taken = *all_taken(draft)[i];
      if (taken.origin == origin) continue;
      taken.origin = origin;
      expect_breach(program_, draft, Kind::available, "origin of " + std::to_string(i));
    }
  }
  expect_each_refused({
      {"more early apples than there are", Kind::available,
       [](Draft& d) { d.produce[2].use_first = true; }},
      {"no early onions", Kind::available, [](Draft& d) { d.produce[0].use_first = true; }},
      {"early salt", Kind::available, [](Draft& d) { d.additions[3].use_first = true; }},
  });
}

TEST_F(Verify, RefusesWhatASlotOrAnExchangeDoesNotTake) {
  expect_each_refused({
      {"fresh lemon juice", Kind::malformed,
       [&](Draft& d) { d.substitutes[0].ingredient = ingredient(program_, "fresh lemon juice"); }},
      {"sultanas beside their slot", Kind::malformed,
       [&](Draft& d) {
         d.additions[2] = weighed(program_, 2, "sultana", Origin::to_buy, "380");
         d.substitutes.push_back(weighed(program_, 0, "sultana", Origin::to_buy, "20"));
       }},
      {"vinegar for vinegar", Kind::malformed,
       [](Draft& d) {
         d.additions[0].slot = 2;
         d.substitutes.push_back(d.additions[0]);
         d.additions.erase(d.additions.begin());
       }},
  });
}

TEST_F(Verify, RefusesWeightsThatAreNone) {
  for (std::size_t i = 0; i < taken_count; ++i) {
    for (const Rational& weight : {Rational(0), Rational(-5), undefined}) {
      Draft draft = village_draft(program_);
      Taken& taken = *all_taken(draft)[i];
      taken.weight = weight;
      taken.amount = weight;
      expect_breach(program_, draft, Kind::malformed, "weight of " + std::to_string(i));
    }
  }
}

TEST_F(Verify, RefusesWhatTheToolsCannotGive) {
  for (std::size_t i = 0; i < taken_count; ++i) {
    Draft draft = village_draft(program_);
    all_taken(draft)[i]->amount = undefined;
    expect_breach(program_, draft, Kind::tool, "amount of " + std::to_string(i));
    draft = village_draft(program_);
    all_taken(draft)[i]->weight += number("0.001");
    expect_breach(program_, draft, Kind::tool, "weight of " + std::to_string(i));
    draft = village_draft(program_);
    all_taken(draft)[i]->amount += number("0.001");
    all_taken(draft)[i]->weight += number("0.001");
    expect_breach(program_, draft, Kind::tool, "both of " + std::to_string(i));
  }
  expect_each_refused({
      {"between two steps", Kind::tool, [](Draft& d) { weigh(d.produce[1], 502); }},
      {"an eighth of a spoon", Kind::tool,
       [](Draft& d) {
         d.additions[4].amount = number("20.625");
         d.additions[4].weight = number("8.25");
       }},
      {"half a clove", Kind::tool,
       [](Draft& d) {
         d.additions[5].amount = number("7.5");
         d.additions[5].weight = number("0.75");
       }},
      {"spoons of what has no density", Kind::tool,
       [](Draft& d) { d.additions[3].tool = Tool::spoons; }},
      {"pieces of what has no piece", Kind::tool,
       [](Draft& d) { d.additions[3].tool = Tool::count; }},
  });
  Program no_spoons = program_;
  no_spoons.kitchens[0].spoon_step.reset();
  expect_breach(no_spoons, village_draft(program_), Kind::tool, "no spoons");
}

TEST_F(Verify, RefusesMoreThanThereIs) {
  expect_each_refused({
      {"early apples", Kind::available,
       [](Draft& d) {
         weigh(d.produce[1], 605);
         weigh(d.produce[2], 1595);
       }},
      {"onions kept back", Kind::available, [](Draft& d) { weigh(d.produce[0], 905); }},
      {"squash", Kind::available, [](Draft& d) { weigh(d.produce[3], 1130); }},
      {"sultanas to buy", Kind::available, [](Draft& d) { weigh(d.additions[2], 405); }},
      {"vinegar in two lines", Kind::available,
       [](Draft& d) {
         weigh(d.additions[0], 1600);
         d.additions.push_back(d.additions[0]);
         d.additions.back().acidity.reset();
       }},
  });
  // Without an `at most`, any weight may be bought.
  Program plenty = program_;
  for (language::Line& line : plenty.baskets[0].lines) line.at_most.reset();
  expect_passes(plenty, village_draft(program_), "as much as is wanted");
}

TEST_F(Verify, AnotherStrengthNeedsLeave) {
  const Draft draft = changed([](Draft& d) {
    // 1 l of 6 %: 900 / 1.01 * 6 / 5 = 1069 ml, and 790 g of the other, 782 ml.
    d.additions.push_back(d.additions[0]);
    d.additions.back().acidity = number("0.06");
    weigh(d.additions.back(), 900);
    weigh(d.additions[0], 790);
  });
  expect_passes(program_, draft, "two strengths");
  Program strict = program_;
  strict.frameworks[0].substitutions.pop_back();
  Draft without = draft;
  without.credits.pop_back();
  expect_breach(strict, without, Kind::malformed, "no leave for another strength");
  expect_each_refused({
      {"unknown strength", Kind::malformed, [](Draft& d) { d.additions[0].acidity.reset(); }},
      {"undefined strength", Kind::available, [](Draft& d) { d.additions[0].acidity = undefined; }},
      {"a strength that no bottle has", Kind::available,
       [](Draft& d) { d.additions[0].acidity = number("0.055"); }},
      {"sour salt", Kind::available, [](Draft& d) { d.additions[3].acidity = number("0.05"); }},
  });
}

}  // namespace
}  // namespace maslin::plan
