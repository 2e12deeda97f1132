// SPDX-License-Identifier: Apache-2.0
#include "science/nutrition.hpp"

#include <cmath>

namespace maslin::science {
namespace {

constexpr double salt_per_sodium = 2.5;
constexpr double sodium_of_salt = 22.990 / 58.443;

struct Factor {
  Share Nutrients::*share;
  double kilojoules;  // per gram
  double kilocalories;
};
constexpr Factor factors[] = {{&Nutrients::carbohydrate, 17, 4}, {&Nutrients::polyols, 10, 2.4},
                              {&Nutrients::protein, 17, 4},      {&Nutrients::fat, 37, 9},
                              {&Nutrients::alcohol, 29, 7},      {&Nutrients::organic_acids, 13, 3},
                              {&Nutrients::fibre, 8, 2}};

enum class End : std::uint8_t { low, high };

Nutrients at_end(const Mixture& mixture, End end) {
  const bool low = end == End::low;
  const auto share = [&](const Range<Kilogram>& part) {
    return low ? Share(part.low / mixture.mass().high) : Share(part.high / mixture.mass().low);
  };
  Nutrients result;
  result.fat = share(mixture[Substance::fat]);
  result.sugars = share(sugars(mixture));
  result.carbohydrate = result.sugars + share(mixture[Substance::starch]);
  result.polyols = share(mixture[Substance::polyols]);
  result.fibre = share(mixture[Substance::fibre]);
  result.protein = share(mixture[Substance::protein]);
  result.organic_acids = share(fixed_acids(mixture) + mixture[Substance::acetic_acid]);
  result.alcohol = share(mixture[Substance::alcohol]);
  result.salt = salt_of_sodium(share(mixture[Substance::sodium]) +
                               share(mixture[Substance::salt]) * sodium_of_salt);
  return result;
}

// Grams in 100 g.
struct Steps {
  double negligible;  // at or below
  double whole_from;  // from here on to the coarser step
  int coarse_decimals;
  int fine_decimals;
  double printed;  // for what is negligible
};

Steps steps_of(Declared nutrient) {
  switch (nutrient) {
    case Declared::salt:
      return {0.0125, 1, 1, 2, 0.01};
    case Declared::saturates:
      return {0.1, 10, 0, 1, 0.1};
    default:
      return {0.5, 10, 0, 1, 0.5};
  }
}

}  // namespace

Range<Nutrients> nutrients(const Mixture& mixture) {
  return {at_end(mixture, End::low), at_end(mixture, End::high)};
}

Energy energy_per_100_g(const Nutrients& nutrients) {
  Energy energy;
  for (const Factor& each : factors) {
    const double grams = in_percent(nutrients.*each.share);
    energy.kilojoules = energy.kilojoules + Kilojoule(grams * each.kilojoules);
    energy.kilocalories = energy.kilocalories + Kilocalorie(grams * each.kilocalories);
  }
  return energy;
}

Share salt_of_sodium(Share sodium) { return sodium * salt_per_sodium; }

Computed<Rounded> declared(Declared nutrient, Share share) {
  if (const auto error = outside("share", share.in_unit(), 0, 1)) return Failure{*error};
  const Steps steps = steps_of(nutrient);
  const double grams = in_percent(share);
  // A half that came out of decimals as binary numbers may lie a hair below.
  constexpr double rounding = 1e-9;
  if (grams <= steps.negligible + rounding) {
    return Rounded{percent(steps.printed), steps.fine_decimals, true};
  }
  const int decimals =
      grams >= steps.whole_from - rounding ? steps.coarse_decimals : steps.fine_decimals;
  const double scale = std::pow(10, decimals);
  return Rounded{percent(std::floor(grams * scale + 0.5 + rounding) / scale), decimals, false};
}

}  // namespace maslin::science
