// SPDX-License-Identifier: Apache-2.0
// What has to be bought, as a shop sells it.
#pragma once

#include <optional>

#include "language/program.hpp"
#include "plan/draft.hpp"

namespace maslin::report {

struct Purchase {
  language::IngredientId ingredient;
  std::optional<Rational> acidity;
  Rational weight;      // g as in the shop, by the middle of the published edible share
  bool gross = false;   // whether something is cut away from it
  bool listed = false;  // `to buy` in the basket or store; else only asked for by the framework
  std::optional<Rational> pack;   // g
  std::optional<Rational> packs;  // whole packs
  std::optional<Rational> cost;   // of the packs, or of the weight where it is sold loose
};

Purchase purchase_of(const language::Program& program, const language::Basket& basket,
                     const language::Kitchen* kitchen, const plan::Taken& taken);

}  // namespace maslin::report
