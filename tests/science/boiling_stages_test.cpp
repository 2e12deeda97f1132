// SPDX-License-Identifier: Apache-2.0
// Acid kept where things go into the pan one after another: against a course of events drawn at
// random and followed step by step, and against the published table of the share kept.
#include "science/boiling_stages.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "science/evaporation.hpp"

namespace maslin::science {
namespace {

constexpr double close = 1e-9;

struct Random {
  std::mt19937 engine;
  double between(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(engine);
  }
  bool coin() { return std::bernoulli_distribution(0.5)(engine); }
};

Composition watery(double water, double acid) {
  const auto exactly = [](double share) {
    return Bounds::exactly(Rational(std::lround(share * 10000)) / 10000);
  };
  Composition result;
  result[Substance::water] = exactly(water);
  result[Substance::acetic_acid] = exactly(acid);
  result[Substance::sucrose] = exactly(std::max(1 - water - acid, 0.0));
  return result;
}

struct Entering {
  Composition composition;
  double weight = 0;
};

// What one stage adds, kg.
struct Kilograms {
  double water = 0;
  double acid = 0;
  double weight = 0;
};
Kilograms of(const Entering& entering) {
  const auto of_it = [&](Substance s) {
    return entering.composition.or_none(s).low.to_double() * entering.weight;
  };
  return {of_it(Substance::water), of_it(Substance::acetic_acid), entering.weight};
}

std::optional<Mixture> mixture_of(const Entering& entering) {
  if (!(entering.weight > 0)) return std::nullopt;
  return *Mixture::of({{&entering.composition, Kilogram(entering.weight)}});
}

// A thousandth of what is lost at a time: each takes acid as d ln acid = v d ln water has it.
double follow(double& water, double& acid, double lost, double volatility) {
  constexpr int steps = 2000;
  const double before = acid;
  for (int i = 0; i < steps; ++i) {
    const double acid_per_water = volatility * acid / water;
    const double of_water = lost / steps / (1 + acid_per_water);
    acid -= of_water * acid_per_water;
    water -= of_water;
  }
  return before > 0 ? acid / before : std::pow(water, 0);
}

TEST(BoilingStages, OneStageKeepsWhatOneBoilingKeeps) {
  // Water 0.8, 0.6, 0.5, 0.4, 0.3 kept at a volatility of 0.70 and 0.90: Rayleigh's equation in the
  // form of a textbook of distillation; the figures are computed by it.
  const struct {
    double water;
    double least;
    double most;
  } table[] = {{0.8, .8181, .8554},
               {0.6, .6314, .6994},
               {0.5, .5359, .6156},
               {0.4, .4384, .5266},
               {0.3, .3384, .4305}};
  // So little acid that what is lost is water.
  const Entering all{watery(0.9, 0.0001), 10};
  for (const auto& row : table) {
    std::vector<BoilingStage> stages(1);
    stages[0].entering = mixture_of(all);
    const auto kept = acid_kept_by_stage(stages, Settling{0, Kilogram(10 - 9 * (1 - row.water))},
                                         acetic_acid_volatility);
    ASSERT_TRUE(kept.ok());
    EXPECT_NEAR(kept->at(0).low.in_unit(), row.least, 2e-4);
    EXPECT_NEAR(kept->at(0).high.in_unit(), row.most, 2e-4);
  }
}

TEST(BoilingStages, WhatGoesInAfterTheLastLosesNothing) {
  std::vector<BoilingStage> stages(2);
  stages[0].entering = mixture_of({watery(0.9, 0.01), 4});
  stages[1].entering = mixture_of({watery(0.94, 0.05), 1});
  const auto kept = acid_kept_by_stage(stages, Settling{0, Kilogram(3)}, acetic_acid_volatility);
  ASSERT_TRUE(kept.ok());
  EXPECT_LT(kept->at(0).high.in_unit(), 0.7);
  EXPECT_EQ(kept->at(1).low.in_unit(), 1);
}

TEST(BoilingStages, MoreToLoseThanThereIsIsAnError) {
  std::vector<BoilingStage> stages(1);
  stages[0].entering = mixture_of({watery(0.5, 0.01), 4});
  EXPECT_FALSE(acid_kept_by_stage(stages, Settling{0, Kilogram(1.9)}, acetic_acid_volatility).ok());
}

TEST(BoilingStages, EveryCourseOfEventsLiesInTheRange) {
  Random random{std::mt19937{41}};
  int courses = 0;
  for (int round = 0; round < 600; ++round) {
    const auto count = static_cast<std::size_t>(1 + random.engine() % 4);
    const std::size_t settling = random.engine() % count;
    const bool settles = random.engine() % 4 != 0;
    std::vector<Entering> entering;
    std::vector<BoilingStage> stages(count + 1);
    for (std::size_t i = 0; i <= count; ++i) {
      const bool something = i == 0 || random.coin();
      entering.push_back({watery(random.between(0.6, 0.95), random.between(0, 0.04)),
                          something ? random.between(0.5, 4) : 0});
      stages[i].entering = mixture_of(entering.back());
      if (i < count) stages[i].loses = {Share(0), Share(random.between(0.01, 0.12))};
    }
    // One course: each simmer loses something, the settling one what is then missing.
    std::vector<double> kept(count + 1, 1.0);
    const double volatility = random.between(0.70, 0.90);
    double water = 0;
    double acid = 0;
    double weight = 0;
    bool runs_dry = false;
    for (std::size_t i = 0; i <= count && !runs_dry; ++i) {
      const Kilograms more = of(entering[i]);
      water += more.water;
      acid += more.acid;
      weight += more.weight;
      if (i == count) break;
      const double lost = settles && i == settling
                              ? random.between(0.1, 0.5) * water
                              : weight * random.between(0, 1) * stages[i].loses.high.in_unit();
      runs_dry = lost > 0.8 * (water + acid);
      const double share = follow(water, acid, lost, volatility);
      weight -= lost;
      for (std::size_t k = 0; k <= i; ++k) kept[k] *= share;
    }
    if (runs_dry || !(acid > 0)) continue;
    std::optional<Settling> stop;
    if (settles) stop = Settling{settling, Kilogram(weight)};
    const auto found = acid_kept_by_stage(stages, stop, acetic_acid_volatility);
    ASSERT_TRUE(found.ok()) << round;
    ++courses;
    for (std::size_t k = 0; k <= count; ++k) {
      constexpr double of_small_steps = 2e-3;
      EXPECT_GE(kept[k], found->at(k).low.in_unit() - of_small_steps) << round << ", stage " << k;
      EXPECT_LE(kept[k], found->at(k).high.in_unit() + of_small_steps) << round << ", stage " << k;
      EXPECT_LE(found->at(k).low.in_unit(), found->at(k).high.in_unit() + close);
    }
  }
  EXPECT_GT(courses, 400);
}

}  // namespace
}  // namespace maslin::science
