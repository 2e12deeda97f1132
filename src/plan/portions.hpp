// SPDX-License-Identifier: Apache-2.0
// Produce weighed out: every amount a weight of the scales, the whole as near as can be to what it
// should be, and every share inside its range.
#pragma once

#include <cstddef>
#include <vector>

#include "quantity/exact.hpp"

namespace maslin::plan {

struct Portion {
  std::size_t share = 0;
  std::size_t supply = 0;
  Rational exact;      // g, as worked out
  Rational available;  // g, all there is of the supply
  bool low_acid = false;
  Rational weight;  // g, as weighed out
};

// What some of the produce may come to together, as a share of the whole: low-acid produce.
struct Cap {
  std::vector<bool> counts;  // by portion
  Rational most;
};

struct Weighing {
  std::vector<Bounds> shares;  // of the whole, 0 to 1
  std::vector<Cap> caps;
  Rational step;            // g
  bool from_above = false;  // whether the whole may not fall short of what was worked out
};

// Fills the weights: the largest whole that keeps every range and cap exactly, and every plain
// ratio within a step for each portion. False where no whole near the one worked out does.
bool weigh_out(const Weighing& weighing, std::vector<Portion>& portions);

}  // namespace maslin::plan
