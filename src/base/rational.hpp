// SPDX-License-Identifier: Apache-2.0
// Exact fractions for what people write and weigh. A result too large for 128 bits is *undefined*:
// it stays undefined through every further operation, compares equal to nothing and less than
// nothing, and so can never slip through a check.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace maslin {

class Rational {
 public:
  __extension__ using Wide = __int128;

  constexpr Rational() = default;
  constexpr Rational(int value) : numerator_(value) {}
  constexpr Rational(long value) : numerator_(value) {}
  constexpr Rational(long long value) : numerator_(value) {}
  // A zero denominator gives an undefined value.
  Rational(Wide numerator, Wide denominator);

  // "12", "0.25", "1.500": digits with at most one point between digits, at most 18 digits in all.
  // Nothing for any other text.
  static std::optional<Rational> from_decimal(std::string_view text);
  static Rational undefined();

  bool is_defined() const { return denominator_ != 0; }
  bool is_zero() const { return is_defined() && numerator_ == 0; }
  bool is_negative() const { return is_defined() && numerator_ < 0; }
  bool is_positive() const { return is_defined() && numerator_ > 0; }
  bool is_integer() const { return denominator_ == 1; }

  // Not a number when undefined.
  double to_double() const;
  // Rounded half away from zero to `places` decimals; trailing zeros are dropped unless `fixed`.
  // "?" when undefined.
  std::string to_decimal(int places, bool fixed = false) const;
  // Whether the value is a finite decimal of at most `places` places.
  bool is_decimal(int places) const;

  // The next multiple of `step` (> 0) downwards, upwards, or nearest (half away from zero).
  Rational floor_to(const Rational& step) const;
  Rational ceil_to(const Rational& step) const;
  Rational round_to(const Rational& step) const;

  Rational operator-() const;
  friend Rational operator+(const Rational& a, const Rational& b);
  friend Rational operator-(const Rational& a, const Rational& b);
  friend Rational operator*(const Rational& a, const Rational& b);
  friend Rational operator/(const Rational& a, const Rational& b);  // undefined when b is zero
  Rational& operator+=(const Rational& other) { return *this = *this + other; }
  Rational& operator-=(const Rational& other) { return *this = *this - other; }
  Rational& operator*=(const Rational& other) { return *this = *this * other; }

  friend bool operator==(const Rational& a, const Rational& b);
  friend bool operator<(const Rational& a, const Rational& b);
  friend bool operator>(const Rational& a, const Rational& b) { return b < a; }
  friend bool operator<=(const Rational& a, const Rational& b) { return a < b || a == b; }
  friend bool operator>=(const Rational& a, const Rational& b) { return b <= a; }

 private:
  Wide numerator_ = 0;
  Wide denominator_ = 1;  // positive and without common factor; 0 when undefined
};

// Undefined when either is.
inline Rational smaller(const Rational& a, const Rational& b) {
  if (!a.is_defined() || !b.is_defined()) return Rational::undefined();
  return b < a ? b : a;
}
inline Rational larger(const Rational& a, const Rational& b) {
  if (!a.is_defined() || !b.is_defined()) return Rational::undefined();
  return a < b ? b : a;
}
inline Rational absolute(const Rational& a) { return a.is_negative() ? -a : a; }

}  // namespace maslin
