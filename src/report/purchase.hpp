// SPDX-License-Identifier: Apache-2.0
// What has to be bought, as a shop sells it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "language/program.hpp"
#include "plan/make.hpp"
#include "quantity/exact.hpp"

namespace maslin::report {

struct Purchase {
  language::IngredientId ingredient;
  std::optional<Rational> acidity;
  Rational weight;      // g as in the shop, by the middle of the published edible share
  Rational edible = 1;  // that share
  bool gross = false;   // whether something is cut away from it
  bool listed = false;  // `to buy` in the basket or store; else only asked for by the framework
  std::optional<Rational> pack;   // g
  std::optional<Rational> packs;  // whole packs
  std::optional<Rational> price;  // of a g as in the shop
  std::optional<Rational> cost;   // of the packs, or of the weight where it is sold loose
};

// The salt that produce lies in beforehand, by where it comes from: beside all that is taken.
std::vector<plan::Taken> salt_beside(const language::Program& program, const plan::Plan& plan);

// One a thing to get: what goes into several slots is bought together, so that packs are counted
// once. In the order of the draft.
// Salt that produce lies in beforehand is bought as well.
std::vector<Purchase> purchases_of(const language::Program& program, const plan::Plan& plan);

// A purchase beside what it is for.
struct ShoppingLine {
  std::string what;
  PreparedMass needed;   // by the whole plan
  PreparedMass at_hand;  // of that, from the basket and the store
  Purchase purchase;
};
std::vector<ShoppingLine> shopping_lines(const language::Program& program, const plan::Plan& plan);

}  // namespace maslin::report
