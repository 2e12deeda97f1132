// SPDX-License-Identifier: Apache-2.0
#include "label/nutrition_table.hpp"

#include <fmt/format.h>

#include <cmath>

namespace maslin::label {
namespace {

using science::Declared;
using science::Nutrients;

std::optional<std::string> amount_of(Declared nutrient, Share share) {
  const auto rounded = science::declared(nutrient, share);
  if (!rounded) return std::nullopt;
  return fmt::format("{}{:.{}f} g", rounded->negligible ? "< " : "", in_percent(rounded->amount),
                     rounded->decimals);
}

}  // namespace

Nutrients middle_of(const Range<Nutrients>& nutrients) {
  Nutrients result;
  for (const auto member : {&Nutrients::fat, &Nutrients::carbohydrate, &Nutrients::sugars,
                            &Nutrients::polyols, &Nutrients::fibre, &Nutrients::protein,
                            &Nutrients::organic_acids, &Nutrients::alcohol, &Nutrients::salt}) {
    result.*member = (nutrients.low.*member + nutrients.high.*member) / 2;
  }
  return result;
}

std::vector<NutritionRow> nutrition_rows(const Nutrients& nutrients) {
  const science::Energy energy = science::energy_per_100_g(nutrients);
  const std::string both = fmt::format("{} kJ / {} kcal", std::lround(energy.kilojoules.in_unit()),
                                       std::lround(energy.kilocalories.in_unit()));
  return {{"energy", both, false},
          {"fat", amount_of(Declared::fat, nutrients.fat), false},
          // No table here divides fat by kind.
          {"of which saturates", std::nullopt, true},
          {"carbohydrate", amount_of(Declared::carbohydrate, nutrients.carbohydrate), false},
          {"of which sugars", amount_of(Declared::sugars, nutrients.sugars), true},
          {"fibre", amount_of(Declared::fibre, nutrients.fibre), false},
          {"protein", amount_of(Declared::protein, nutrients.protein), false},
          {"salt", amount_of(Declared::salt, nutrients.salt), false}};
}

}  // namespace maslin::label
