// SPDX-License-Identifier: Apache-2.0
// Roots between two brackets.
#pragma once

#include <cmath>
#include <optional>

namespace maslin::science {

// Where a continuous function crosses zero between low and high, to the last bit but a few; nothing
// when it has the same sign at both. Halving is slow and cannot fail.
template <class Function>
std::optional<double> crossing(double low, double high, const Function& function) {
  const double at_low = function(low);
  const double at_high = function(high);
  if (at_low == 0) return low;
  if (at_high == 0) return high;
  if (!(std::signbit(at_low) != std::signbit(at_high))) return std::nullopt;
  constexpr int halvings = 60;
  for (int i = 0; i < halvings; ++i) {
    const double middle = low + (high - low) / 2;
    const double value = function(middle);
    if (value == 0) return middle;
    (std::signbit(value) == std::signbit(at_low) ? low : high) = middle;
  }
  return low + (high - low) / 2;
}

}  // namespace maslin::science
