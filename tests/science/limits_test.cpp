// SPDX-License-Identifier: Apache-2.0
// Where the science declines to answer, and what it makes of figures that are missing.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "science/acidity.hpp"
#include "science/boiling.hpp"
#include "science/brine.hpp"
#include "science/evaporation.hpp"
#include "science/fruit.hpp"
#include "science/heat.hpp"
#include "science/keeping.hpp"
#include "science/nutrition.hpp"
#include "science/pungency.hpp"
#include "science/sugar_solution.hpp"
#include "science/water_activity.hpp"

namespace maslin::test {
namespace {

using namespace science;

const double nan = std::numeric_limits<double>::quiet_NaN();

Bounds hundredths(int low, int high) {
  return {Rational(low) / Rational(100), Rational(high) / Rational(100)};
}
Bounds hundredths(int value) { return hundredths(value, value); }

Composition watery() {
  Composition result;
  result[Substance::water] = hundredths(90);
  result[Substance::glucose] = hundredths(5);
  return result;
}

template <class Computed>
std::string refused(const Computed& computed) {
  return computed.ok() ? "computed" : std::string(computed.error().what);
}

TEST(ScienceLimits, AWeightThatIsNoneIsNotMixed) {
  const Composition one = watery();
  EXPECT_EQ(refused(Mixture::of({})), "weight of the whole, kg");
  EXPECT_EQ(refused(Mixture::of({{&one, Kilogram(0)}})), "weight of the whole, kg");
  EXPECT_EQ(refused(Mixture::of({{&one, Kilogram(-1)}})), "weight, kg");
  EXPECT_EQ(refused(Mixture::of({{&one, Kilogram(nan)}})), "weight, kg");
  EXPECT_EQ(refused(Mixture::of({{&one, Kilogram(1)}})), "computed");
}

TEST(ScienceLimits, OutsideOfTheSourceIsAnErrorAndNotItsEdge) {
  EXPECT_EQ(refused(pressure_at(Metre(9001))), "altitude, m");
  EXPECT_EQ(refused(pressure_at(Metre(nan))), "altitude, m");
  EXPECT_EQ(refused(boiling_point(Kilopascal(0.6))), "pressure, kPa");
  EXPECT_EQ(refused(vapour_pressure(Celsius(374))), "temperature, °C");
  EXPECT_EQ(refused(boiling_rise(percent(76), Share(0), Kilopascal(101))), "solids, kg per kg");
  EXPECT_EQ(refused(setting_point(Metre(7000), percent(65))), "pressure, kPa");
  EXPECT_EQ(refused(sucrose_activity(percent(81), Celsius(20))), "sucrose, kg per kg");
  EXPECT_EQ(refused(norrish(solutes::sucrose, Share(3.1))), "dissolved, kg per kg of water");
  EXPECT_EQ(refused(salt_solution(MolePerKilogram(6.2))), "salt, mol per kg of water");
  EXPECT_EQ(refused(dissociated_acetic(PH(15))), "pH");
  EXPECT_EQ(refused(stability_index(AqueousShares{Share(1.1), {}, {}, {}}, PH(4))),
            "share of the aqueous phase");
  EXPECT_EQ(refused(sweet_pickle_acetic(percent(81))), "sugar");
  EXPECT_EQ(refused(class_of_food({PH(4), WaterActivity(1.1), false, false})), "water activity");
  EXPECT_EQ(refused(sucrose_density(percent(76))), "sucrose, kg per kg");
  EXPECT_EQ(refused(sucrose_solubility(Celsius(101))), "temperature, °C");
  EXPECT_EQ(refused(declared(Declared::fat, Share(-0.1))), "share");
}

TEST(ScienceLimits, TheEdgesThemselvesAreInside) {
  EXPECT_EQ(refused(pressure_at(Metre(-500))), "computed");
  EXPECT_EQ(refused(pressure_at(Metre(9000))), "computed");
  EXPECT_EQ(refused(sucrose_density(percent(75))), "computed");
  EXPECT_NEAR(sucrose_density(percent(75))->in_unit() / 998.70, 1.383342, 1e-9);
  EXPECT_EQ(refused(boiling_rise(percent(75), Share(1), Kilopascal(50))), "computed");
  EXPECT_NEAR(boiling_rise(Share(0), Share(0), Kilopascal(101.325))->in_unit(), 0, 1e-9);
  EXPECT_EQ(refused(holding_time(PH(4.6), Celsius(85))), "computed");
}

TEST(ScienceLimits, HeatIsOnlyReadWhereItWasMeasured) {
  EXPECT_EQ(refused(holding_time(PH(4.61), Celsius(80))), "equilibrium pH");
  EXPECT_EQ(refused(holding_time(PH(4.0), Celsius(59.9))), "temperature, °C");
  EXPECT_EQ(refused(holding_time(PH(4.0), Celsius(85.1))), "temperature, °C");
  // The cooler of two readings counts, and what is below 60 °C counts nothing.
  const auto at = [](double minute, double celsius) {
    return CoreReading{Minute(minute), Celsius(celsius)};
  };
  EXPECT_EQ(refused(process_lethality(PH(4), {at(0, 70)})), "readings");
  EXPECT_EQ(refused(process_lethality(PH(4), {at(1, 70), at(1, 70)})),
            "time between readings, min");
  EXPECT_EQ(refused(process_lethality(PH(4.7), {at(0, 20), at(9, 20)})), "equilibrium pH");
  EXPECT_EQ(*process_lethality(PH(4), {at(0, 20), at(9, 59), at(20, 75)}), 0);
  const double steady = *process_lethality(PH(4), {at(0, 70), at(5, 70)});
  EXPECT_NEAR(*process_lethality(PH(4), {at(0, 75), at(5, 70)}), steady, 1e-12);
}

TEST(ScienceLimits, AReductionThatCannotBeIsRefused) {
  const Composition one = watery();
  const Mixture mixture = *Mixture::of({{&one, Kilogram(2)}});
  const auto expected = Range<Volatility>::exactly(acetic_acid_expected);
  EXPECT_EQ(refused(reduce_to_weight(mixture, Kilogram(0.1), expected)), "finished weight, kg");
  EXPECT_EQ(refused(reduce_to_weight(mixture, Kilogram(2), expected)), "finished weight, kg");
  EXPECT_EQ(refused(reduce_to_total_solids(mixture, percent(10), expected)), "finished weight, kg");
  EXPECT_EQ(refused(reduce_to_total_solids(mixture, Share(1), expected)),
            "solids aimed at, kg per kg");
  EXPECT_EQ(
      refused(reduce_to_weight(mixture, Kilogram(1), Range<Volatility>::exactly(Volatility(3)))),
      "volatility relative to water");
  EXPECT_EQ(refused(acid_kept(Kilogram(1), Kilogram(1.1), acetic_acid_expected)),
            "water after, kg");
}

TEST(ScienceLimits, APanWeighedTwiceGivesARange) {
  const auto rate = calibrated_rate({Kilogram(5), Kilogram(4.8), Minute(15), Kilogram(0.005)});
  ASSERT_TRUE(rate.ok());
  EXPECT_NEAR(rate->low.in_unit(), 0.195 * 4, 1e-9);
  EXPECT_NEAR(rate->high.in_unit(), 0.205 * 4, 1e-9);
  const auto time = evaporation_time(Kilogram(1.6), *rate);
  EXPECT_NEAR(time->high.in_unit(), 1.6 / 0.78 * 60, 1e-9);
  EXPECT_LT(time->low, time->high);
  EXPECT_EQ(refused(calibrated_rate({Kilogram(5), Kilogram(4.995), Minute(15), Kilogram(0.005)})),
            "weight lost, kg");
  EXPECT_EQ(refused(calibrated_rate({Kilogram(5), Kilogram(4), Minute(0), Kilogram(0.005)})),
            "time between weighings, min");
}

TEST(ScienceLimits, WhatNoTableGivesIsAnythingBetweenNoneAndTheRest) {
  Composition unknown;
  unknown[Substance::fibre] = hundredths(30);
  const Mixture mixture = *Mixture::of({{&unknown, Kilogram(1)}});
  EXPECT_EQ(mixture[Substance::water].low, Kilogram(0));
  EXPECT_NEAR(mixture[Substance::water].high.in_unit(), 0.7, 1e-12);
  EXPECT_NEAR(sugars(mixture).high.in_unit(), 0.7, 1e-12);
  EXPECT_EQ(mixture[Substance::malic_acid].high, Kilogram(0));
  EXPECT_EQ(refused(water_activity(mixture)), "water, kg");
}

TEST(ScienceLimits, ATotalOfSugarsAndItsKindsAgree) {
  Composition one = watery();
  one[Substance::glucose] = hundredths(2, 4);
  one[Substance::sucrose] = hundredths(2, 3);
  for (const Bounds& total : {hundredths(3), hundredths(5), hundredths(9)}) {
    one[Substance::sugars] = total;
    const Mixture mixture = *Mixture::of({{&one, Kilogram(1)}});
    const Range<Share> whole = shares(*sugars(one));
    EXPECT_NEAR(sugars(mixture).low.in_unit(), whole.low.in_unit(), 1e-12);
    EXPECT_NEAR(sugars(mixture).high.in_unit(), whole.high.in_unit(), 1e-12);
  }
}

TEST(ScienceLimits, AcidityIsThatOfTheComposition) {
  Composition one = watery();
  for (const Substance acid :
       {Substance::citric_acid, Substance::malic_acid, Substance::tartaric_acid,
        Substance::oxalic_acid, Substance::lactic_acid, Substance::succinic_acid,
        Substance::acetic_acid, Substance::organic_acids}) {
    one[acid] = hundredths(1);
  }
  const Mixture mixture = *Mixture::of({{&one, Kilogram(1)}});
  EXPECT_NEAR(acidity_as_acetic(mixture).low.in_unit(), acidity_as_acetic(one).low.to_double(),
              0.00002);
}

TEST(ScienceLimits, UnknownSugarsCountWhereTheyAreWorthLeast) {
  Composition unknown;
  unknown[Substance::water] = hundredths(50);
  unknown[Substance::sugars] = hundredths(50);
  Composition sucrose = unknown;
  sucrose[Substance::sugars].reset();
  sucrose[Substance::sucrose] = hundredths(50);
  Composition hexose = unknown;
  hexose[Substance::sugars].reset();
  hexose[Substance::fructose] = hundredths(50);
  const auto mixed = [](const Composition& of) { return *Mixture::of({{&of, Kilogram(1)}}); };
  const auto activity = *water_activity(mixed(unknown));
  EXPECT_EQ(activity.high, water_activity(mixed(sucrose))->high);
  EXPECT_EQ(activity.low, water_activity(mixed(hexose))->low);
  const auto ph = Range<PH>::exactly(PH(3.5));
  const auto index = *stability_index(mixed(unknown), ph);
  EXPECT_NEAR(index.low.in_unit(), stability_index(mixed(sucrose), ph)->low.in_unit(), 1e-9);
  EXPECT_NEAR(index.high.in_unit(), stability_index(mixed(hexose), ph)->high.in_unit(), 1e-9);
}

TEST(ScienceLimits, ThePhNamesThePartThatDrivesIt) {
  const Composition vegetable = [] {
    Composition result = watery();
    result[Substance::potassium] = Bounds::exactly(Rational(3) / 1000);
    return result;
  }();
  Composition vinegar;
  vinegar[Substance::water] = hundredths(95);
  vinegar[Substance::acetic_acid] = hundredths(5);
  vinegar[Substance::glucose] = Bounds{};
  const AcidPart sour{&vinegar, Kilogram(0.3), Range<PH>{PH(2.4), PH(2.5)}, {}, {}};
  AcidPart plain{&vegetable, Kilogram(1), {}, {}, {}};
  const auto unknown = mixture_ph({sour, plain});
  ASSERT_TRUE(unknown.ok());
  EXPECT_EQ(unknown->driver, 1U);
  EXPECT_EQ(unknown->assumption, PhAssumption::unknown_ph);
  plain.published_ph = Range<PH>{PH(5.9), PH(6)};
  const auto known = mixture_ph({sour, plain});
  EXPECT_EQ(known->driver, 1U);
  EXPECT_EQ(known->assumption, PhAssumption::minerals);
  EXPECT_LT(known->range.high, unknown->range.high);
  // More alkali in the ash than its potassium tells.
  plain.ash_alkalinity = Range<MolePerKilogram>::exactly(MolePerKilogram(0.142));
  EXPECT_GT(mixture_ph({sour, plain})->range.high, known->range.high);
}

TEST(ScienceLimits, APhIsNotComputedOfNothing) {
  const Composition vegetable = watery();
  const AcidPart part{&vegetable, Kilogram(1), Range<PH>{PH(5), PH(6)}, {}, {}};
  EXPECT_EQ(refused(mixture_ph({})), "water left, kg");
  EXPECT_EQ(refused(mixture_ph({part}, Kilogram(1))), "water left, kg");
  AcidPart gaining = part;
  gaining.acetic_acid_kept = {Share(1), Share(1.1)};
  EXPECT_EQ(refused(mixture_ph({gaining})), "acetic acid kept");
  AcidPart reversed = part;
  reversed.published_ph = Range<PH>{PH(6), PH(5)};
  EXPECT_EQ(refused(mixture_ph({reversed})), "published pH");
  EXPECT_EQ(refused(ph_of_solution({{WeakAcid::acetic, MolePerLitre(-1)}}, MolePerLitre(0))),
            "acid, mol/L");
}

TEST(ScienceLimits, SaltFruitAndPodsAskForPossibleFigures) {
  EXPECT_EQ(refused(dry_salting(Kilogram(0.1), Kilogram(0))), "vegetables, kg");
  EXPECT_EQ(refused(brine_strength(Kilogram(0.5), Kilogram(1))), "salt of the brine");
  EXPECT_EQ(refused(equilibrium_salt({}, SaltBasis::everything)), "what shares the salt, kg");
  EXPECT_NEAR(brine_for(Kilogram(1), Kilogram(1), percent(2.5))->in_unit(), 0.05, 1e-12);
  EXPECT_EQ(refused(brine_for(Kilogram(10), Kilogram(1), percent(5))), "salt of the brine");
  EXPECT_EQ(refused(mixed_minimum({})), "fruit, kg");
  EXPECT_EQ(refused(gross_for(Kilogram(1), Share(1))), "refuse");
  const Pods pods{Kilogram(0.02), Range<Share>::exactly(Share(0.12)), pungency_of(Pod::unknown)};
  EXPECT_EQ(refused(pungency({pods}, Kilogram(0.01))), "batch, kg");
  // Nothing is known of the kind: anything from sweet to the hottest.
  const auto hot = pungency({pods}, Kilogram(1));
  EXPECT_EQ(hot->low, Scoville(0));
  EXPECT_NEAR(hot->high.in_unit(), 0.0024 * 1'463'700, 1e-6);
}

TEST(ScienceLimits, ALabelCountsWhatIsInTheMixture) {
  Composition one = watery();
  one[Substance::fat] = hundredths(1);
  one[Substance::acetic_acid] = hundredths(2);
  one[Substance::salt] = hundredths(1);
  const Range<Nutrients> found = nutrients(*Mixture::of({{&one, Kilogram(3)}}));
  EXPECT_NEAR(in_percent(found.low.carbohydrate), 5, 1e-9);
  EXPECT_NEAR(in_percent(found.low.organic_acids), 2, 1e-9);
  EXPECT_NEAR(in_percent(found.low.salt), 2.5 * 0.3934, 1e-4);
  const Energy energy = energy_per_100_g(found.low);
  EXPECT_NEAR(energy.kilojoules.in_unit(), 5 * 17 + 37 + 2 * 13, 1e-9);
  EXPECT_NEAR(energy.kilocalories.in_unit(), 5 * 4 + 9 + 2 * 3, 1e-9);
}

}  // namespace
}  // namespace maslin::test
