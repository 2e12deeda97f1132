// SPDX-License-Identifier: Apache-2.0
// The statements of a framework: a draft that breaks one is refused for it.
#include <gtest/gtest.h>

#include <functional>
#include <string>
#include <vector>

#include "plan/verify.hpp"
#include "plan/verify_test_kitchen.hpp"

namespace maslin::plan {
namespace {

using language::Origin;
using language::Program;
using testing::expect_breach;
using testing::expect_passes;
using testing::number;
using testing::read;
using testing::things;
using testing::village_draft;
using testing::village_program;
using testing::weighed;
using Kind = Breach::Kind;

const Rational undefined = Rational::undefined();
const Rational a_thousandth(Rational::Wide{1}, Rational::Wide{1000});

void weigh(Taken& taken, int grams) {
  taken.weight = grams;
  taken.amount = grams;
}

class VerifyRules : public ::testing::Test {
 protected:
  void expect_refused(Kind kind, const std::string& what,
                      const std::function<void(Draft&)>& make) const {
    Draft draft = village_draft(program_);
    make(draft);
    expect_breach(program_, draft, kind, what);
  }

  const Program program_ = village_program();
};

TEST_F(VerifyRules, SharesOutsideTheirRange) {
  expect_refused(Kind::share, "onion low", [](Draft& d) { weigh(d.produce[0], 790); });
  expect_refused(Kind::share, "onion high", [](Draft& d) { weigh(d.produce[0], 810); });
  // A range that a step fits into holds exactly.
  expect_refused(Kind::share, "squash high", [](Draft& d) { weigh(d.produce[3], 1005); });
  expect_refused(Kind::share, "squash low", [](Draft& d) { weigh(d.produce[3], 300); });
  expect_refused(Kind::share, "apple low", [](Draft& d) { weigh(d.produce[2], 1290); });
  for (std::size_t i : {0U, 3U}) {
    expect_refused(Kind::share, "none of " + std::to_string(i), [&](Draft& d) {
      d.produce.erase(d.produce.begin() + static_cast<std::ptrdiff_t>(i));
    });
  }
}

TEST_F(VerifyRules, ANarrowShareMayBeMissedByAStepForEachAmount) {
  Program narrow = program_;
  language::ProduceShare& apple = narrow.frameworks[0].shares[1];
  apple.range = {number("0.5501"), number("0.5520")};  // 2200.4 g and 2208 g
  expect_passes(narrow, village_draft(program_), "0.4 g are missing, of two amounts of 5 g");
  apple.range = {number("0.5501"), number("0.56")};  // wide enough for two steps
  expect_breach(narrow, village_draft(program_), Kind::share);
  apple.range = {number("0.5524"), number("0.5530")};
  expect_passes(narrow, village_draft(program_), "9.6 g are missing");
  apple.range = {number("0.5526"), number("0.5530")};
  expect_breach(narrow, village_draft(program_), Kind::share, "10.4 g are missing");
}

TEST_F(VerifyRules, AdditionsOutsideTheirRange) {
  expect_refused(Kind::addition, "vinegar low", [](Draft& d) { weigh(d.additions[0], 1620); });
  expect_refused(Kind::addition, "vinegar high", [](Draft& d) { weigh(d.additions[0], 2030); });
  expect_refused(Kind::addition, "sugar low", [](Draft& d) { weigh(d.additions[1], 930); });
  expect_refused(Kind::addition, "sugar high", [](Draft& d) { weigh(d.additions[1], 950); });
  expect_refused(Kind::addition, "sultana low", [](Draft& d) { weigh(d.additions[2], 315); });
  expect_refused(Kind::addition, "salt low", [](Draft& d) { weigh(d.additions[3], 30); });
  expect_refused(Kind::addition, "salt high", [](Draft& d) { weigh(d.additions[3], 50); });
  expect_refused(Kind::addition, "spice high", [](Draft& d) {
    d.additions[4].amount = number("22.5");
    d.additions[4].weight = 9;
  });
  expect_refused(Kind::addition, "cloves low", [](Draft& d) {
    d.additions[5].amount = 6;
    d.additions[5].weight = number("0.6");
  });
  for (std::size_t i = 0; i < 6; ++i) {
    expect_refused(Kind::addition, "none of " + std::to_string(i), [&](Draft& d) {
      d.additions.erase(d.additions.begin() + static_cast<std::ptrdiff_t>(i));
    });
  }
}

TEST_F(VerifyRules, ANarrowAdditionMayBeMissedByAStep) {
  Program narrow = program_;
  Bounds& salt = narrow.frameworks[0].additions[3].range;
  salt = {number("10.5"), number("11.5")};  // 42 to 46 g
  expect_passes(narrow, village_draft(program_), "2 g are missing");
  salt = {number("10.5"), number("11.8")};  // 42 to 47.2 g: a step of 5 g fits
  expect_breach(narrow, village_draft(program_), Kind::addition);
  salt = {number("11.3"), number("11.5")};
  expect_breach(narrow, village_draft(program_), Kind::addition, "5.2 g are missing");
}

TEST_F(VerifyRules, CreditsThatAreNotAsStated) {
  const auto refuse = [&](const std::string& what, std::size_t index, const Rational& credit) {
    expect_refused(Kind::credit, what, [&](Draft& d) { d.credits[index] = credit; });
  };
  refuse("sugar a little less", 0, Rational(260) - a_thousandth);
  refuse("sugar a little more", 0, Rational(260) + a_thousandth);
  refuse("sugar undefined", 0, undefined);
  refuse("acid below nothing", 1, -a_thousandth);
  refuse("acid above what is brought", 1, number("75.041"));
  refuse("acid undefined", 1, undefined);
  refuse("another strength", 2, a_thousandth);
  refuse("another strength, undefined", 2, undefined);
  expect_refused(Kind::credit, "fewer sultanas", [](Draft& d) { weigh(d.additions[2], 395); });
  expect_refused(Kind::credit, "no lemon juice", [](Draft& d) { d.substitutes.clear(); });
}

TEST_F(VerifyRules, CapsOnCredits) {
  // A fifth of 1200 g of sugar, and no more, though the sultanas bring 260 g.
  Program capped = program_;
  capped.frameworks[0].substitutions[0].cap = number("0.2");
  expect_breach(capped, village_draft(program_), Kind::credit, "more than the cap");
  Draft draft = village_draft(program_);
  draft.credits[0] = 240;
  weigh(draft.additions[1], 960);
  expect_passes(capped, draft, "at the cap");
  // What may be credited is a share of what there is in all, 1877 ml.
  capped.frameworks[0].substitutions[1].cap = number("0.04");
  expect_passes(capped, draft, "75 of 75.08 ml");
  capped.frameworks[0].substitutions[1].cap = number("0.0399");
  expect_breach(capped, draft, Kind::credit, "75 of 74.9 ml");
}

TEST_F(VerifyRules, WhatStandsInForOneThingIsCreditedForItAlone) {
  // The 100 g of lemon juice, put in for vinegar, hold 2 g of sugar.
  Program more = program_;
  language::Framework& framework = more.frameworks[0];
  language::Substitution sweet = framework.substitutions[1];
  sweet.replaced = framework.additions[1].target;
  sweet.addition = 1;
  sweet.by = language::Property::sugars;
  framework.substitutions.push_back(sweet);
  Draft draft = village_draft(program_);
  draft.credits.emplace_back(0);
  expect_passes(more, draft, "not credited for sugar");
  draft.credits[3] = 2;
  expect_breach(more, draft, Kind::credit, "credited for sugar too");
}

TEST_F(VerifyRules, AThingIsNotCreditedForItself) {
  Program more = program_;
  language::Framework& framework = more.frameworks[0];
  language::Substitution circle = framework.substitutions[1];
  circle.donor = language::Target{};
  circle.donor.name = "plain vinegar";
  circle.donor.ingredient = testing::ingredient(program_, "plain vinegar");
  circle.only.clear();
  framework.substitutions.push_back(circle);
  Draft draft = village_draft(program_);
  draft.credits.emplace_back(0);
  expect_passes(more, draft, "nothing credited");
  draft.credits[3] = 100;
  expect_breach(more, draft, Kind::credit, "the vinegar counted twice");
}

TEST_F(VerifyRules, AFullCreditAgainstARangeIsMetWithinAStep) {
  Program ranged = program_;
  ranged.frameworks[0].additions[1].range = {290, 310};
  Draft draft = village_draft(program_);
  expect_passes(ranged, draft);
  draft.credits[0] = 255;
  expect_passes(ranged, draft, "a step less");
  draft.credits[0] = number("254.999");
  expect_breach(ranged, draft, Kind::credit, "more than a step less");
  draft.credits[0] = number("260.001");
  expect_breach(ranged, draft, Kind::credit, "more than is brought");
}

TEST_F(VerifyRules, AllMayBeCredited) {
  // Sugar 65 g per kilogram: the sultanas bring it all.
  Program sweet = program_;
  language::Framework& framework = sweet.frameworks[0];
  framework.additions[1].range = Bounds::exactly(65);
  framework.substitutions[0].cap.reset();
  framework.limits.pop_back();
  Draft draft = village_draft(program_);
  draft.finished.reset();
  draft.additions.erase(draft.additions.begin() + 1);
  expect_passes(sweet, draft, "no sugar to weigh");
  framework.additions[1].range = Bounds::exactly(66);
  expect_passes(sweet, draft, "less than a step of sugar to weigh");
  framework.additions[1].range = Bounds::exactly(67);
  expect_breach(sweet, draft, Kind::addition, "8 g of sugar to weigh");
}

TEST_F(VerifyRules, AFigureThatNobodyHasIsCreditedWithNothing) {
  Program unknown = program_;
  for (language::Ingredient& each : unknown.ingredients) {
    if (each.name == "sultana") each.composition = {};
  }
  expect_breach(unknown, village_draft(program_), Kind::credit, "sugar of no table");
  Draft draft = village_draft(program_);
  draft.credits[0] = 0;
  weigh(draft.additions[1], 1200);
  unknown.frameworks[0].limits.pop_back();
  draft.finished.reset();
  expect_passes(unknown, draft, "none counted");
}

TEST_F(VerifyRules, LimitsHoldExactly) {
  expect_refused(Kind::limit, "low acid", [](Draft& d) { weigh(d.produce[0], 805); });
  Program strict = program_;
  std::vector<language::Limit>& limits = strict.frameworks[0].limits;
  limits[1].range = Bounds::exactly(number("0.02252"));
  expect_passes(strict, village_draft(program_), "22.525 g of acetic acid per kilogram");
  limits[1].range = Bounds::exactly(number("0.02253"));
  expect_breach(strict, village_draft(program_), Kind::limit, "acetic acid");
}

TEST_F(VerifyRules, AFigureThatNobodyHasIsUnfavourable) {
  Program unknown = program_;
  for (language::Ingredient& each : unknown.ingredients) {
    if (each.name == "squash") each.composition = {};
  }
  // 30 g of its soluble solids are missing from below, 960 g are too many from above.
  unknown.frameworks[0].limits[2].has_low = false;
  expect_breach(unknown, village_draft(program_), Kind::limit, "from above alone");
  unknown.frameworks[0].limits[2].has_low = true;
  unknown.frameworks[0].limits[2].has_high = false;
  expect_breach(unknown, village_draft(program_), Kind::limit, "from below alone");
  Draft lower = village_draft(program_);
  lower.finished = 4130;  // 1489 g are 36.05 % of it
  expect_passes(unknown, lower, "none of the squash counted");
}

TEST_F(VerifyRules, TheFinishIsInsideItsWindow) {
  const auto result = verify(program_, village_draft(program_));
  ASSERT_TRUE(result.ok());
  const Rational least = result->window()->least.in_base();
  const Rational most = result->window()->most.in_base();
  Draft draft = village_draft(program_);
  for (const Rational& inside : {least, most, (least + most) / 2}) {
    draft.finished = inside;
    expect_passes(program_, draft, inside.to_decimal(3));
  }
  for (const Rational& outside : {least - a_thousandth, most + a_thousandth, Rational(0),
                                  Rational(-4200), Rational(7309), undefined}) {
    draft.finished = outside;
    expect_breach(program_, draft, Kind::limit, outside.to_decimal(3));
    expect_breach(program_, draft, Kind::finished, outside.to_decimal(3));
  }
  draft.finished.reset();
  expect_breach(program_, draft, Kind::finished, "none given");
  Program no_limit = program_;
  no_limit.frameworks[0].limits.pop_back();
  expect_breach(no_limit, village_draft(program_), Kind::finished, "none asked for");
}

TEST_F(VerifyRules, SolidsDoNotBoilAway) {
  // By hand, in g: onion 88, apple 308, squash 100, sugar 940, sultanas 328, salt 40, lemon juice
  // 8, allspice 7.36, cloves 0.736; of the vinegar nothing.
  Program open = program_;
  open.frameworks[0].limits[2].has_high = false;
  Draft draft = village_draft(program_);
  const Rational solids = number("1820.096");
  draft.finished = solids;
  expect_passes(open, draft, "no water is left");
  const auto result = verify(open, draft);
  ASSERT_TRUE(result.ok());
  EXPECT_EQ(result->window()->least, FinishedMass(solids));
  draft.finished = solids - a_thousandth;
  expect_breach(open, draft, Kind::finished, "less than dry");
  // And nothing comes in while it boils.
  open.frameworks[0].limits[2].has_low = false;
  draft.finished = result->ingoing().in_base();
  expect_passes(open, draft, "nothing boiled away");
  draft.finished = result->ingoing().in_base() + a_thousandth;
  expect_breach(open, draft, Kind::finished, "more than went in");
}

TEST_F(VerifyRules, TheAimIsReached) {
  Draft draft = village_draft(program_);
  const auto aim = [&](AimKind kind, const Rational& weight) {
    draft.task.aim = {kind, weight};
    return draft;
  };
  // Four amounts of produce by 5 g.
  expect_passes(program_, aim(AimKind::prepared, 4020));
  expect_passes(program_, aim(AimKind::prepared, 3980));
  expect_breach(program_, aim(AimKind::prepared, 4021), Kind::aim);
  expect_breach(program_, aim(AimKind::prepared, 3979), Kind::aim);
  expect_breach(program_, aim(AimKind::prepared, undefined), Kind::aim);
  // Eleven amounts by 5 g, which is more than a hundredth.
  expect_passes(program_, aim(AimKind::finished, 4255));
  expect_breach(program_, aim(AimKind::finished, 4256), Kind::aim);
  expect_breach(program_, aim(AimKind::finished, 4144), Kind::aim);
  expect_breach(program_, aim(AimKind::finished, undefined), Kind::aim);
  Program fine = program_;
  fine.kitchens[0].scale_step = Mass(1);
  expect_passes(fine, aim(AimKind::finished, 4242), "a hundredth");
  expect_breach(fine, aim(AimKind::finished, 4243), Kind::aim);
}

TEST(VerifyAlone, WhatIsNowhereListedIsWhatTheFrameworkNames) {
  const Program program = read(std::string(things) + R"(
ingredient dark vinegar is vinegar {
  composition  water 95 g, acetic acid 5 g
  density      1.01 g per ml
}
framework sour mix {
  produce { onion 50 %; carrot 50 % }
  per kilogram { onion 100 g; vinegar 100 g }
  substitute { vinegar for vinegar by acetic acid }
}
basket one { onion 550 g prepared; carrot 500 g prepared }
)");
  Draft draft;
  draft.task = testing::task();
  draft.task.kitchen = {};
  draft.credits = {0};
  draft.produce = {weighed(program, 0, "onion", Origin::basket, "450"),
                   weighed(program, 1, "carrot", Origin::basket, "450")};
  draft.additions = {weighed(program, 0, "onion", Origin::basket, "90"),
                     weighed(program, 1, "plain vinegar", Origin::to_have, "90")};
  draft.additions[1].acidity = number("0.05");
  expect_passes(program, draft, "the usual vinegar");
  const auto refuse = [&](const std::string& what, const Taken& vinegar, const Taken& onion) {
    Draft other = draft;
    other.additions[1] = vinegar;
    other.produce[0] = onion;
    expect_breach(program, other, Kind::available, what);
  };
  Taken vinegar = weighed(program, 1, "dark vinegar", Origin::to_have, "90");
  vinegar.acidity = number("0.05");
  refuse("another member of the class", vinegar, draft.produce[0]);
  vinegar = draft.additions[1];
  vinegar.acidity = number("0.06");
  refuse("a strength made up", vinegar, draft.produce[0]);
  refuse("produce made up", draft.additions[1],
         weighed(program, 0, "onion", Origin::to_have, "450"));
  Program bare = program;
  bare.baskets[0].lines.erase(bare.baskets[0].lines.begin());
  draft.additions[0].origin = Origin::to_have;
  draft.produce[0].origin = Origin::to_have;
  expect_breach(bare, draft, Kind::available, "produce that is nowhere listed");
}

TEST(VerifyAlone, WithoutAKitchenTheScalesShowGrams) {
  const Program program = read(std::string(things) + R"(
framework plain mix { produce { onion 50 %; carrot 50 % } }
basket one { onion 500 g prepared; carrot 501 g prepared }
)");
  Draft draft;
  draft.task = testing::task();
  draft.task.kitchen = {};
  draft.produce = {weighed(program, 0, "onion", Origin::basket, "500"),
                   weighed(program, 1, "carrot", Origin::basket, "501")};
  expect_passes(program, draft);
  draft.produce[1] = weighed(program, 1, "carrot", Origin::basket, "499.5");
  expect_breach(program, draft, Kind::tool, "half a gram");
  draft.produce[1] = weighed(program, 1, "carrot", Origin::store, "500");
  expect_breach(program, draft, Kind::available, "no store");
  // Sums that are too large to be reckoned with never pass.
  const Rational vast = Rational(Rational::Wide{1} << 125, Rational::Wide{1});
  for (Taken& each : draft.produce) {
    each.origin = Origin::basket;
    each.weight = vast;
    each.amount = vast;
  }
  EXPECT_FALSE(verify(program, draft).ok());
}

}  // namespace
}  // namespace maslin::plan
