// SPDX-License-Identifier: Apache-2.0
// What kind of thing a written quantity is.
#pragma once

#include <array>
#include <cstdint>
#include <string>

#include "base/rational.hpp"

namespace maslin {

enum class Base : std::uint8_t { mass, volume, time, temperature, length, power, substance };
inline constexpr std::size_t base_count = 7;

// A product of powers of the base dimensions; all zero is a plain number (also a share or ratio).
struct Dimension {
  std::array<std::int8_t, base_count> powers{};

  static constexpr Dimension of(Base base) {
    Dimension dimension;
    dimension.powers[static_cast<std::size_t>(base)] = 1;
    return dimension;
  }
  bool is_number() const { return *this == Dimension{}; }
  friend bool operator==(const Dimension&, const Dimension&) = default;
  friend Dimension operator*(const Dimension& a, const Dimension& b);
  friend Dimension operator/(const Dimension& a, const Dimension& b);
};

namespace dimensions {
inline constexpr Dimension number{};
inline constexpr Dimension mass = Dimension::of(Base::mass);
inline constexpr Dimension volume = Dimension::of(Base::volume);
inline constexpr Dimension time = Dimension::of(Base::time);
inline constexpr Dimension temperature = Dimension::of(Base::temperature);
inline constexpr Dimension length = Dimension::of(Base::length);
inline constexpr Dimension power = Dimension::of(Base::power);
inline constexpr Dimension substance = Dimension::of(Base::substance);  // amount of substance
}  // namespace dimensions

// "a weight", "a volume", "a plain number", "a volume per weight".
std::string describe(const Dimension& dimension);

// Value in base units: g, ml, s, °C, mm, W, mmol.
struct Quantity {
  Rational value;
  Dimension dimension;
};

}  // namespace maslin
