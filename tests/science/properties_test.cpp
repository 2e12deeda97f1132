// SPDX-License-Identifier: Apache-2.0
// What is true of every mixture, held against random ones.
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "science/acidity.hpp"
#include "science/evaporation.hpp"
#include "science/keeping.hpp"
#include "science/water_activity.hpp"

namespace maslin::test {
namespace {

using namespace science;

constexpr int rounds = 300;
constexpr double close = 1e-9;

class Random {
 public:
  explicit Random(unsigned seed) : engine_(seed) {}
  double between(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(engine_);
  }
  bool coin() { return between(0, 1) < 0.5; }
  // A range of shares in ten-thousandths, so that fractions stay short.
  Bounds share(double low, double high) {
    const auto part = [&](double value) {
      return Rational(static_cast<Rational::Wide>(std::llround(value * 10000)),
                      static_cast<Rational::Wide>(10000));
    };
    const double a = between(low, high);
    const double b = between(low, high);
    return {part(std::min(a, b)), part(std::max(a, b))};
  }

 private:
  std::mt19937 engine_;
};

Composition vinegar() {
  Composition result;
  result[Substance::water] = Bounds::exactly(Rational(95) / 100);
  result[Substance::glucose] = Bounds{};
  result[Substance::acetic_acid] = Bounds::exactly(Rational(5) / 100);
  return result;
}

Composition sugar() {
  Composition result;
  result[Substance::water] = Bounds{};
  result[Substance::sucrose] = Bounds::exactly(1);
  return result;
}

// Something between an apple and a cabbage; at times a figure is missing.
Composition produce(Random& random) {
  Composition result;
  result[Substance::water] = random.share(0.80, 0.90);
  if (random.coin()) result[Substance::glucose] = random.share(0, 0.03);
  if (random.coin()) result[Substance::sucrose] = random.share(0, 0.03);
  if (random.coin()) result[Substance::sugars] = random.share(0, 0.06);
  if (random.coin()) result[Substance::malic_acid] = random.share(0, 0.01);
  result[Substance::ash] = random.share(0.003, 0.01);
  result[Substance::potassium] = random.share(0.001, 0.004);
  result[Substance::fibre] = random.share(0.01, 0.03);
  return result;
}

// A pan of produce, vinegar and sugar that can be taken apart.
struct Pan {
  Composition produce;
  Composition vinegar = test::vinegar();
  Composition sugar = test::sugar();
  Kilogram of_produce, of_vinegar, of_sugar;
  Range<PH> ph;

  explicit Pan(Random& random)
      : produce(test::produce(random)),
        of_produce(random.between(0.5, 5)),
        of_vinegar(random.between(0.1, 2)),
        of_sugar(random.between(0.05, 2)),
        ph{PH(random.between(3, 5)), PH(random.between(5, 6.5))} {}

  std::vector<Part> parts() const {
    return {{&produce, of_produce}, {&vinegar, of_vinegar}, {&sugar, of_sugar}};
  }
  Mixture mixture() const { return *Mixture::of(parts()); }
  std::vector<AcidPart> acid_parts(double times = 1) const {
    return {{&produce, of_produce * times, ph, {}, {}},
            {&vinegar, of_vinegar * times, Range<PH>{PH(2.4), PH(3.4)}, {}, {}},
            {&sugar, of_sugar * times, {}, {}, {}}};
  }
};

void expect_same(const Range<Share>& a, const Range<Share>& b) {
  EXPECT_NEAR(a.low.in_unit(), b.low.in_unit(), close);
  EXPECT_NEAR(a.high.in_unit(), b.high.in_unit(), close);
}

TEST(ScienceProperties, MoreVinegarOfOneStrengthNeverLowersTheAcidOfAKilogram) {
  Random random(1);
  for (int i = 0; i < rounds; ++i) {
    Pan pan(random);
    const Mixture less = pan.mixture();
    pan.of_vinegar = pan.of_vinegar + Kilogram(random.between(0.001, 1));
    const Mixture more = pan.mixture();
    EXPECT_GE(acetic_of_everything(more).low, acetic_of_everything(less).low);
    EXPECT_GE(acetic_of_volatiles(more).low, acetic_of_volatiles(less).low);
  }
}

TEST(ScienceProperties, MoreSugarNeverRaisesTheWaterActivity) {
  Random random(2);
  for (int i = 0; i < rounds; ++i) {
    Pan pan(random);
    const auto less = water_activity(pan.mixture());
    pan.of_sugar = pan.of_sugar + Kilogram(random.between(0.001, 0.5));
    const auto more = water_activity(pan.mixture());
    ASSERT_TRUE(less.ok());
    ASSERT_TRUE(more.ok());
    EXPECT_LE(more->high, less->high);
    EXPECT_LE(more->low, less->low);
    EXPECT_LE(more->low, more->high);
  }
}

TEST(ScienceProperties, AMixtureScalesAndIsTheSumOfItsHalves) {
  Random random(3);
  for (int i = 0; i < rounds; ++i) {
    const Pan pan(random);
    const Mixture whole = pan.mixture();
    const Mixture half = *Mixture::of({{&pan.produce, pan.of_produce * 0.5},
                                       {&pan.vinegar, pan.of_vinegar * 0.5},
                                       {&pan.sugar, pan.of_sugar * 0.5}});
    for (const Mixture& same : {half, half + half}) {
      expect_same(soluble_solids(same), soluble_solids(whole));
      expect_same(total_solids(same), total_solids(whole));
      expect_same(acetic_of_aqueous_phase(same), acetic_of_aqueous_phase(whole));
      expect_same(acidity_as_citric(same), acidity_as_citric(whole));
      EXPECT_NEAR(water_activity(same)->high.in_unit(), water_activity(whole)->high.in_unit(),
                  close);
    }
  }
}

TEST(ScienceProperties, ThePhScalesAndDoesNotDependOnHowPartsAreWeighedOut) {
  Random random(4);
  for (int i = 0; i < rounds; ++i) {
    const Pan pan(random);
    const auto whole = mixture_ph(pan.acid_parts());
    const auto scaled = mixture_ph(pan.acid_parts(7));
    std::vector<AcidPart> halves = pan.acid_parts(0.5);
    for (const AcidPart& part : pan.acid_parts(0.5)) halves.push_back(part);
    const auto halved = mixture_ph(halves);
    ASSERT_TRUE(whole.ok() && scaled.ok() && halved.ok());
    for (const auto* same : {&scaled, &halved}) {
      EXPECT_NEAR((*same)->range.low.in_unit(), whole->range.low.in_unit(), close);
      EXPECT_NEAR((*same)->range.high.in_unit(), whole->range.high.in_unit(), close);
    }
    EXPECT_LE(whole->range.low, whole->expected);
    EXPECT_LE(whole->expected, whole->range.high);
  }
}

TEST(ScienceProperties, MoreVinegarNeverRaisesThePhAndMoreProduceNeverLowersIt) {
  Random random(5);
  for (int i = 0; i < rounds; ++i) {
    Pan pan(random);
    pan.ph = {PH(4.5), PH(6)};  // less acid than anything with vinegar in it
    const auto before = mixture_ph(pan.acid_parts());
    ASSERT_TRUE(before.ok());
    Pan sourer = pan;
    sourer.of_vinegar = pan.of_vinegar + Kilogram(0.1);
    EXPECT_LE(mixture_ph(sourer.acid_parts())->range.high.in_unit(),
              before->range.high.in_unit() + close);
    Pan fuller = pan;
    fuller.of_produce = pan.of_produce + Kilogram(0.1);
    EXPECT_GE(mixture_ph(fuller.acid_parts())->range.high.in_unit(),
              before->range.high.in_unit() - close);
  }
}

TEST(ScienceProperties, NarrowerFiguresGiveANarrowerPhInsideTheWider) {
  Random random(6);
  for (int i = 0; i < rounds; ++i) {
    const Pan pan(random);
    const auto wide = mixture_ph(pan.acid_parts());
    Pan narrow = pan;
    const Bounds potassium = *pan.produce[Substance::potassium];
    narrow.produce[Substance::potassium] = Bounds::exactly(middle(potassium));
    const double ph = random.between(pan.ph.low.in_unit(), pan.ph.high.in_unit());
    narrow.ph = Range<PH>::exactly(PH(ph));
    const auto inside = mixture_ph(narrow.acid_parts());
    ASSERT_TRUE(wide.ok() && inside.ok());
    EXPECT_GE(inside->range.low.in_unit(), wide->range.low.in_unit() - close);
    EXPECT_LE(inside->range.high.in_unit(), wide->range.high.in_unit() + close);
    // A published pH that is not known can only make things worse.
    std::vector<AcidPart> unknown = narrow.acid_parts();
    unknown[0].published_ph.reset();
    EXPECT_GE(mixture_ph(unknown)->range.high.in_unit(), inside->range.high.in_unit() - close);
  }
}

TEST(ScienceProperties, AProduceAloneHasItsPublishedPh) {
  Random random(7);
  for (int i = 0; i < rounds; ++i) {
    const Pan pan(random);
    const auto alone = mixture_ph({pan.acid_parts()[0]});
    ASSERT_TRUE(alone.ok());
    EXPECT_NEAR(alone->range.low.in_unit(), pan.ph.low.in_unit(), 1e-6);
    EXPECT_NEAR(alone->range.high.in_unit(), pan.ph.high.in_unit(), 1e-6);
  }
}

TEST(ScienceProperties, WhatIsKeptOfTheAcidMultipliesAlongTheStages) {
  Random random(8);
  for (int i = 0; i < rounds; ++i) {
    const double before = random.between(1, 10);
    const double between = before * random.between(0.3, 1);
    const double after = between * random.between(0.3, 1);
    const Volatility volatility(random.between(0, 2));
    const auto kept = [&](double from, double to) {
      return acid_kept(Kilogram(from), Kilogram(to), volatility)->in_unit();
    };
    EXPECT_NEAR(kept(before, between) * kept(between, after), kept(before, after), close);
  }
}

TEST(ScienceProperties, ReducingByStagesIsReducingAtOnce) {
  Random random(9);
  for (int i = 0; i < rounds; ++i) {
    Pan pan(random);
    // Exact figures: ranges widen at each stage.
    pan.produce = Composition{};
    pan.produce[Substance::water] = Bounds::exactly(Rational(9) / 10);
    pan.produce[Substance::glucose] = Bounds::exactly(Rational(1) / 10);
    const Mixture mixture = pan.mixture();
    const auto volatility = Range<Volatility>::exactly(Volatility(random.between(0.5, 1)));
    const Kilogram away = volatiles(mixture).low * random.between(0.2, 0.6);
    const Kilogram mass = mixture.mass().low;
    const auto once = reduce_to_weight(mixture, mass - away, volatility);
    const auto first = reduce_to_weight(mixture, mass - away * 0.5, volatility);
    ASSERT_TRUE(once.ok() && first.ok());
    const auto second = reduce_to_weight(first->left, mass - away, volatility);
    ASSERT_TRUE(second.ok());
    EXPECT_NEAR(second->left[Substance::acetic_acid].low.in_unit(),
                once->left[Substance::acetic_acid].low.in_unit(), close);
    EXPECT_NEAR(first->acid_kept.low.in_unit() * second->acid_kept.low.in_unit(),
                once->acid_kept.low.in_unit(), close);
    // The balance closes: what is left and what went is what there was.
    EXPECT_NEAR((once->left.mass().low + once->boiled_away.low).in_unit(), mass.in_unit(), close);
    EXPECT_NEAR((volatiles(once->left).low + away).in_unit(), volatiles(mixture).low.in_unit(),
                close);
  }
}

TEST(ScienceProperties, AcidAsVolatileAsWaterKeepsItsShareOfTheVolatiles) {
  Random random(10);
  for (int i = 0; i < rounds; ++i) {
    const Composition one = vinegar();
    const Composition other = sugar();
    const Mixture mixture =
        *Mixture::of({{&one, Kilogram(random.between(1, 2))}, {&other, Kilogram(0.5)}});
    const Kilogram finished = mixture.mass().low * random.between(0.5, 0.9);
    const auto at = [&](double volatility) {
      const auto exactly = Range<Volatility>::exactly(Volatility(volatility));
      return acetic_of_volatiles(reduce_to_weight(mixture, finished, exactly)->left).low.in_unit();
    };
    const double before = acetic_of_volatiles(mixture).low.in_unit();
    EXPECT_NEAR(at(1), before, close);
    EXPECT_GT(at(0.7), before);
    EXPECT_GT(at(0.7), at(0.9));
    // Acid that does not boil away is all there still.
    const auto none = Range<Volatility>::exactly(Volatility(0));
    EXPECT_NEAR(reduce_to_weight(mixture, finished, none)->acid_kept.low.in_unit(), 1, close);
  }
}

TEST(ScienceProperties, TheIndicesBehaveAsTheirFormulaeSay) {
  Random random(11);
  for (int i = 0; i < rounds; ++i) {
    const AqueousShares shares{Share(random.between(0.001, 0.05)), Share(random.between(0, 0.1)),
                               Share(random.between(0, 0.3)), Share(random.between(0, 0.3))};
    const PH ph(random.between(2, 5));
    const auto sigma = [](const AqueousShares& of, PH at) {
      return stability_index(of, at)->in_unit();
    };
    const double base = sigma(shares, ph);
    // At pH 4.0 both indices are one.
    EXPECT_NEAR(sigma(shares, PH(4)), pathogen_index(shares, PH(4))->in_unit(), close);
    EXPECT_LT(sigma(shares, ph + PhDifference(0.1)), base);
    AqueousShares changed = shares;
    changed.acetic = Share(0);
    EXPECT_NEAR(sigma(changed, ph), sigma(changed, PH(7)), close);
    changed = shares;
    changed.salt = shares.salt + percent(1);
    EXPECT_NEAR(sigma(changed, ph) - base, 3.08, close);
    // A unit of hexose counts as two of disaccharide.
    changed = shares;
    changed.hexose = shares.hexose + percent(1);
    AqueousShares other = shares;
    other.disaccharide = shares.disaccharide + percent(2);
    EXPECT_NEAR(sigma(changed, ph), sigma(other, ph), close);
  }
}

}  // namespace
}  // namespace maslin::test
