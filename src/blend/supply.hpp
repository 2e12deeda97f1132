// SPDX-License-Identifier: Apache-2.0
// What is at hand, lots alike merged: ten thousand lines cost what a few hundred ingredients do.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "language/program.hpp"

namespace maslin::blend {

using language::Origin;

// Where a line stands: its basket or store, and its place there.
struct LineReference {
  bool in_store = false;
  std::uint32_t index = 0;
};

struct Supply {
  language::IngredientId ingredient;
  Origin origin{};
  std::optional<Rational> available;  // g ready for the pan; nothing: as much as is wanted
  std::optional<Rational> acidity;    // g of acetic acid per ml, for vinegars
  bool use_first = false;
  bool sulphited = false;
  std::optional<Rational> price;  // per g ready for the pan
  std::vector<LineReference> lines;
};

// Prepared weight that a line leaves for the pan: spoiled and kept back taken off, then trimmed by
// its own trim or the ingredient's edible share (the middle of the published range, an estimate).
PreparedMass prepared_weight(const language::Program& program, const language::Line& line);

// Sorted by name, origin, strength, priority and price: the order of lines does not matter.
std::vector<Supply> supplies(const language::Program& program, const language::Basket& basket,
                             const language::Kitchen* kitchen);

}  // namespace maslin::blend
