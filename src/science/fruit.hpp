// SPDX-License-Identifier: Apache-2.0
// How much fruit the law asks for in jam and fruit butter. The minima themselves are figures of a
// law with a place and a date, and come from the caller.
#pragma once

#include <vector>

#include "quantity/real.hpp"
#include "science/out_of_range.hpp"

namespace maslin::science {

// A fruit of a mixture, and what the law asks of jam made of it alone.
struct FruitMinimum {
  Kilogram fruit{};
  Share minimum{};  // fruit over finished product, 0 to 1
};
// Mixed fruit: the minima in proportion to the weights used (Directive 2001/113/EC, annex I).
// Error: no fruit, a minimum outside 0 to 1.
Computed<Share> mixed_minimum(const std::vector<FruitMinimum>& fruits);

// "At least 45 parts of fruit to each 55 parts of sweetener" (21 CFR 150.160).
struct Parts {
  double fruit = 0;
  double sweetener = 0;
};
inline constexpr Parts jam_group_one{47, 55};
inline constexpr Parts jam_group_two{45, 55};
inline constexpr Parts fruit_butter{5, 2};  // 21 CFR 150.110

// The least fruit for so much sweetener (solids). Error: parts or weight not above none.
Computed<Kilogram> least_fruit(Kilogram sweetener, const Parts& parts);

// 21 CFR 150.110: the weight of fruit behind soluble solids of its own (without the sweetener's),
// by the factor of the fruit: the kilograms of fruit that hold one of soluble solids. Procedure
// from memory.
enum class ButterFruit : std::uint8_t { apple, apricot, grape, peach, pear, plum, prune, quince };
double fruit_factor(ButterFruit fruit);
Computed<Kilogram> fruit_behind(Kilogram soluble_solids, ButterFruit fruit);

// What to buy for so much prepared weight, and what comes of so much bought. `refuse` is the share
// cut away, 0 to 0.95.
Computed<Kilogram> gross_for(Kilogram prepared, Share refuse);
Computed<Kilogram> prepared_of(Kilogram gross, Share refuse);

}  // namespace maslin::science
