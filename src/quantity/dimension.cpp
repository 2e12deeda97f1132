// SPDX-License-Identifier: Apache-2.0
#include "quantity/dimension.hpp"

#include <algorithm>
#include <string_view>

namespace maslin {
namespace {

constexpr std::string_view names[base_count] = {
    "weight", "volume", "time", "temperature", "length", "power", "amount of substance"};

void append(std::string& text, std::size_t base, int power) {
  for (int i = 0; i < power; ++i) {
    if (!text.empty()) text += " times ";
    text += names[base];
  }
}

// No sensible quantity has such a power; a ridiculous product must not wrap round to a sensible
// one.
std::int8_t bounded(int power) { return static_cast<std::int8_t>(std::clamp(power, -100, 100)); }

}  // namespace

Dimension operator*(const Dimension& a, const Dimension& b) {
  Dimension result;
  for (std::size_t i = 0; i < base_count; ++i) {
    result.powers[i] = bounded(a.powers[i] + b.powers[i]);
  }
  return result;
}

Dimension operator/(const Dimension& a, const Dimension& b) {
  Dimension result;
  for (std::size_t i = 0; i < base_count; ++i) {
    result.powers[i] = bounded(a.powers[i] - b.powers[i]);
  }
  return result;
}

std::string describe(const Dimension& dimension) {
  if (dimension.is_number()) return "a plain number";
  std::string above;
  std::string below;
  for (std::size_t i = 0; i < base_count; ++i) {
    append(above, i, dimension.powers[i]);
    append(below, i, -dimension.powers[i]);
  }
  if (above.empty()) above = "number";
  const std::string article = above.starts_with("amount") ? "an " : "a ";
  return article + above + (below.empty() ? "" : " per " + below);
}

}  // namespace maslin
