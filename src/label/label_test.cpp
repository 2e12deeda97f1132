// SPDX-License-Identifier: Apache-2.0
// Worked numbers of labels, through the label's own functions. The rules: Regulation (EU)
// 1169/2011, annexes II, VII, VIII, XIV, XV; Directive 2001/113/EC, annex I.
#include <gtest/gtest.h>

#include "label/ingredients.hpp"
#include "label/nutrition_table.hpp"
#include "label/quantities.hpp"
#include "label/reserved.hpp"
#include "label/title_words.hpp"

namespace maslin::label {
namespace {

using language::IngredientId;
using language::Program;

Rational number(const char* text) { return *Rational::from_decimal(text); }

// Ingredients by themselves, their allergens stated as none.
Program program_of(const std::vector<std::string>& names) {
  Program program;
  for (const std::string& name : names) {
    language::Ingredient each;
    each.name = name;
    each.allergens_stated = true;
    program.ingredients.push_back(each);
  }
  program.classes_of.assign(names.size(), {});
  return program;
}

Used used(std::uint32_t ingredient, int grams) {
  return {IngredientId(ingredient), Mass(grams), Mass()};
}

std::string text_of(const Phrase& phrase) {
  std::string text;
  for (const Words& words : phrase) {
    text += words.emphasised ? "[" + words.text + "]" : words.text;
  }
  return text;
}

const language::Law* britain() { return language::law_named("Great Britain"); }
const language::Law* america() { return language::law_named("United States"); }

// Factors of annex XIV: 816 + 7.4 + 13.6 + 12 + 23.4 kJ, 192 + 1.8 + 3.2 + 3 + 5.4 kcal.
TEST(Label, EnergyIsReckonedApartInBothUnits) {
  science::Nutrients of;
  of.carbohydrate = percent(48);
  of.fat = percent(0.2);
  of.protein = percent(0.8);
  of.fibre = percent(1.5);
  of.organic_acids = percent(1.8);
  of.salt = percent(1.46);
  const auto rows = nutrition_rows(of);
  ASSERT_EQ(rows.size(), 8U);
  EXPECT_EQ(rows[0].amount, "872 kJ / 205 kcal");
  // Commission guidance on tolerances, December 2012.
  EXPECT_EQ(rows[1].amount, "< 0.5 g");
  EXPECT_EQ(rows[2].amount, std::nullopt) << "saturates: no table here gives them";
  EXPECT_EQ(rows[3].amount, "48 g");
  EXPECT_EQ(rows[5].amount, "1.5 g");
  EXPECT_EQ(rows[6].amount, "0.8 g");
  EXPECT_EQ(rows[7].amount, "1.5 g");
  of.salt = percent(0.456);
  EXPECT_EQ(nutrition_rows(of)[7].amount, "0.46 g");
}

// Annex VIII 3 (a): 3 kg in 2.6 kg is 115.38 %, and 1.4 kg in 2.6 kg is 53.8 %, never rounded up.
TEST(Label, QuantitiesAreOfWhatIsFinishedAndNeverRoundedUp) {
  const FinishedMass finished(2600);
  EXPECT_EQ(quantities_of({{"tomato", Mass(3000), {}}}, finished),
            std::vector<std::string>{"prepared with 115 g of tomato per 100 g"});
  EXPECT_EQ(quantities_of({{"tomato", Mass(1400), {}}}, finished),
            std::vector<std::string>{"tomato 53 %"});
  // Each below 100 %, and together above.
  const std::vector<std::string> both = {"prepared with 53 g of apple per 100 g",
                                         "prepared with 57 g of onion per 100 g"};
  EXPECT_EQ(quantities_of({{"apple", Mass(1400), {}}, {"onion", Mass(1500), {}}}, finished), both);
}

TEST(Label, ALongerNameIsNotCountedAsAShorterOne) {
  const Program program = program_of({"tomato", "green tomato", "onion"});
  const auto named =
      named_in(program, "Green tomatos and onion", {used(0, 100), used(1, 300), used(2, 50)});
  ASSERT_EQ(named.size(), 2U);
  EXPECT_EQ(named[0].ingoing, Mass(300));
  EXPECT_EQ(named[1].what, "onion");
}

TEST(Label, WordsOfATitleAreFoundWhateverStandsBetweenThem) {
  for (const char* title : {"Apple jam", "Jam, apple", "JAM: apple", "Apple jams", "Apple (jam)",
                            "Apple-jam!", "apple/jam", "Apple\u2013jam", "\u201CApple jam\u201D"}) {
    EXPECT_TRUE(holds_words(title, "jam")) << title;
  }
  for (const char* title : {"Jambalaya", "Apple jamboree", "Pyjam", ""}) {
    EXPECT_FALSE(holds_words(title, "jam")) << title;
  }
  EXPECT_TRUE(holds_words("Plum extra-jam", "extra jam"));
  EXPECT_FALSE(holds_words("Jam, extra", "extra jam"));
}

TEST(Label, AKindOfWhatIsNamedCountsForIt) {
  Program program = program_of({"apple", "cooking apple", "pineapple", "onion"});
  const std::vector<std::uint32_t> families = {0, 0, 1, 2};
  for (std::size_t i = 0; i < families.size(); ++i) {
    program.ingredients[i].parents = {language::ClassId(families[i])};
  }
  const auto named = named_in(program, "Apple and onion chutney",
                              {used(1, 300), used(0, 100), used(2, 50), used(3, 20)});
  ASSERT_EQ(named.size(), 2U);
  EXPECT_EQ(named[0].ingoing, Mass(400));
  EXPECT_EQ(named[0].kinds, std::vector<std::string>{"cooking apple"});
}

// Annex VII A: 2600 g less 5230 g is no water, however much vinegar held.
TEST(Label, WaterThatIsBoiledOffIsNotListed) {
  const Program program =
      program_of({"salt", "onion", "tomato", "sugar", "water", "distilled vinegar"});
  const std::vector<Used> all = {used(0, 30),  used(1, 600), used(2, 3000),
                                 used(3, 900), used(4, 500), used(5, 700)};
  std::vector<std::string> names;
  for (const Used& each : in_order(program, all, FinishedMass(2600), britain())) {
    names.push_back(program[each.ingredient].name);
  }
  EXPECT_EQ(names,
            (std::vector<std::string>{"tomato", "sugar", "distilled vinegar", "onion", "salt"}));
}

// The same: up to 5 % of the finished product may be left out in Europe; American law has no such
// line (from memory).
TEST(Label, WaterThatIsLeftHasItsPlaceByWhatIsLeft) {
  const Program program = program_of({"cabbage", "water", "salt"});
  const std::vector<Used> all = {used(0, 930), used(1, 500), used(2, 20)};
  const auto count = [&](int finished, const language::Law* law) {
    return in_order(program, all, FinishedMass(finished), law).size();
  };
  EXPECT_EQ(count(1000, britain()), 2U);  // 50 g of 1000 g: no more than 5 %
  EXPECT_EQ(count(1000, america()), 3U);
  EXPECT_EQ(count(1001, britain()), 3U);
  const auto list = in_order(program, all, FinishedMass(1001), britain());
  EXPECT_EQ(program[list[1].ingredient].name, "water");
  EXPECT_EQ(list[1].weight, Mass(51));
  EXPECT_EQ(added_water(FinishedMass(900), Mass(950)), FinishedMass(0));
}

// Annex II 12: above 10 mg/kg. 40 g at 1500 mg/kg in a kilogram is 60 mg/kg; 5 g is 7.5.
TEST(Label, SulphitesAreDeclaredAboveTenMilligrams) {
  const Bounds usual = Bounds::exactly(number("0.0015"));
  const Bounds much = sulphites_in(Mass(40), FinishedMass(1000), usual);
  EXPECT_EQ(much, Bounds::exactly(number("0.00006")));
  EXPECT_TRUE(declares_sulphites(much, britain()));
  const Bounds little = sulphites_in(Mass(5), FinishedMass(1000), usual);
  EXPECT_EQ(little, Bounds::exactly(number("0.0000075")));
  EXPECT_FALSE(declares_sulphites(little, britain()));
  EXPECT_FALSE(declares_sulphites(little, nullptr));
  // At the line, and by the higher figure just above it.
  const Bounds line = sulphites_in(Mass(5), FinishedMass(1000), usual_sulphites);
  EXPECT_FALSE(declares_sulphites(line, britain()));
  const Bounds above = sulphites_in(Mass(number("5.01")), FinishedMass(1000), usual_sulphites);
  EXPECT_TRUE(declares_sulphites(above, britain()));
  EXPECT_TRUE(declares_sulphites(sulphites_in(Mass(1), FinishedMass(0), usual), britain()));
}

// Directive 2001/113/EC, annex I: blackcurrant 250 g, others 350 g. Halves 300, a fifth 330.
TEST(Label, MixedFruitHasItsMinimumInProportion) {
  const Program program = program_of({"blackcurrant", "apple"});
  const auto standard = [](const char* name, const char* place, int year) {
    language::Standard result;
    result.name = name;
    result.place = place;
    result.as_of = Date{year, 0, 0};
    return result;
  };
  const auto least = [&](int blackcurrant, int apple) {
    return least_of(program, {used(0, blackcurrant), used(1, apple)},
                    standard("jam", "Great Britain", 2018), percent(35))
        .in_unit();
  };
  EXPECT_NEAR(least(500, 500), 0.300, 1e-12);
  EXPECT_NEAR(least(200, 800), 0.330, 1e-12);
  EXPECT_NEAR(
      least_of(program, {used(0, 1)}, standard("extra jam", "Great Britain", 2018), percent(45))
          .in_unit(),
      0.350, 1e-12);
  EXPECT_NEAR(
      least_of(program, {used(0, 1)}, standard("jam", "elsewhere", 2018), percent(35)).in_unit(),
      0.350, 1e-12);
  // Of one place in two years.
  EXPECT_NEAR(least_of(program, {used(0, 1)}, standard("jam", "European Union", 2001), percent(35))
                  .in_unit(),
              0.250, 1e-12);
  EXPECT_NEAR(least_of(program, {used(0, 1)}, standard("jam", "European Union", 2026), percent(45))
                  .in_unit(),
              0.350, 1e-12);
}

// Annex II and American law differ: wheat in both, mustard, celery and barley in Europe alone.
TEST(Label, AllergensAreEmphasisedAsTheLawOfThePlaceAsks) {
  Program program = program_of({"malt vinegar", "celery seed", "soy sauce", "kiwi jam"});
  program.ingredients[0].allergens = {"barley"};
  program.ingredients[1].allergens = {"celery"};
  program.ingredients[2].allergens = {"soya", "wheat"};
  program.ingredients[2].compound = true;
  program.ingredients[3].allergens = {"kiwi"};
  const auto line = [&](std::uint32_t id, const language::Law* law) {
    return text_of(listed(program, used(id, 10), false, law));
  };
  EXPECT_EQ(line(0, britain()), "malt vinegar ([barley])");
  EXPECT_EQ(line(0, america()), "malt vinegar");
  EXPECT_EQ(line(0, nullptr), "malt vinegar ([barley])");
  EXPECT_EQ(line(1, britain()), "[celery] seed");
  EXPECT_EQ(line(1, america()), "celery seed");
  EXPECT_EQ(line(2, america()), "soy sauce ([soya], [wheat]) (______)");
  EXPECT_EQ(line(3, america()), "[kiwi] jam")
      << "what no law here names is emphasised all the same";
}

// Annex VII, part E: its ingredients in brackets, in their own order.
TEST(Label, WhatACompoundIsMadeOfStandsBehindIt) {
  Program program = program_of({"brown sauce"});
  program.ingredients[0].compound = true;
  program.ingredients[0].made_of = {"tomato", "malt vinegar", "wheat", "salt"};
  program.ingredients[0].allergens = {"barley"};
  const auto line = [&](const language::Law* law) {
    return text_of(listed(program, used(0, 10), false, law));
  };
  EXPECT_EQ(line(britain()), "brown sauce (tomato, malt vinegar, [wheat], salt, [barley])");
  EXPECT_EQ(line(america()), "brown sauce (tomato, malt vinegar, [wheat], salt)");
}

TEST(Label, SulphitesStandBehindWhatBringsThem) {
  const Program program = program_of({"dried apricot", "apple"});
  Used apricot = used(0, 40);
  apricot.sulphited = Mass(40);
  EXPECT_EQ(text_of(listed(program, apricot, true, britain())), "dried apricot ([sulphites])");
  EXPECT_EQ(text_of(listed(program, apricot, false, britain())), "dried apricot");
  EXPECT_EQ(text_of(listed(program, used(1, 40), true, britain())), "apple");
}

TEST(Label, WhatIsNotStatedIsNeverNone) {
  Program program = program_of({"curry powder", "apple"});
  program.ingredients[0].allergens_stated = false;
  const std::vector<Used> all = {used(0, 10), used(1, 100)};
  EXPECT_EQ(not_stated(program, all), std::vector<std::string>{"curry powder"});
  EXPECT_EQ(card_of(program, all, false, britain()).size(), 14U);
  EXPECT_EQ(card_of(program, all, false, america()).size(), 10U);
}

}  // namespace
}  // namespace maslin::label
