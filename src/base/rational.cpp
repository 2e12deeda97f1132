// SPDX-License-Identifier: Apache-2.0
#include "base/rational.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace maslin {
namespace {

using Wide = Rational::Wide;

constexpr Wide widest = (Wide{1} << 126) - 1 + (Wide{1} << 126);

Wide magnitude(Wide a) { return a < 0 ? -a : a; }

// Nearly every number of a kitchen fits into 64 bits, where division is several times faster.
Wide common_divisor(Wide a, Wide b) {
  constexpr Wide narrow = std::numeric_limits<std::uint64_t>::max();
  if (a <= narrow && b <= narrow) {
    return static_cast<Wide>(
        std::gcd(static_cast<std::uint64_t>(a), static_cast<std::uint64_t>(b)));
  }
  while (b != 0) {
    const Wide rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

Wide floor_divide(Wide a, Wide b) {
  const Wide quotient = a / b;
  return (a % b != 0 && a < 0) ? quotient - 1 : quotient;
}

}  // namespace

Rational::Rational(Wide numerator, Wide denominator) {
  // The most negative value has no magnitude, so it counts as too large.
  if (denominator == 0 || numerator < -widest || denominator < -widest) {
    denominator_ = 0;
    return;
  }
  if (denominator < 0) {
    numerator = -numerator;
    denominator = -denominator;
  }
  const Wide divisor = denominator == 1 ? 1 : common_divisor(magnitude(numerator), denominator);
  numerator_ = divisor == 1 ? numerator : numerator / divisor;
  denominator_ = divisor == 1 ? denominator : denominator / divisor;
}

Rational Rational::undefined() { return {Wide{0}, Wide{0}}; }

std::optional<Rational> Rational::from_decimal(std::string_view text) {
  Wide numerator = 0;
  Wide denominator = 1;
  int digits = 0;
  bool point = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c == '.') {
      if (point || i == 0 || i + 1 == text.size()) return std::nullopt;
      point = true;
    } else if (c >= '0' && c <= '9') {
      if (++digits > 18) return std::nullopt;
      numerator = numerator * 10 + (c - '0');
      if (point) denominator *= 10;
    } else {
      return std::nullopt;
    }
  }
  if (digits == 0) return std::nullopt;
  return Rational(numerator, denominator);
}

double Rational::to_double() const {
  if (!is_defined()) return std::numeric_limits<double>::quiet_NaN();
  return static_cast<double>(static_cast<long double>(numerator_) /
                             static_cast<long double>(denominator_));
}

std::string Rational::to_decimal(int places, bool fixed) const {
  if (!is_defined()) return "?";
  Wide scale = 1;
  for (int i = 0; i < places; ++i) scale *= 10;
  const Rational scaled = (*this * Rational(scale, 1)).round_to(1);
  if (!scaled.is_defined()) return "?";
  Wide rest = magnitude(scaled.numerator_);
  std::string text;
  int written = 0;
  do {
    if (written == places && places > 0) text += '.';
    text += static_cast<char>('0' + static_cast<int>(rest % 10));
    rest /= 10;
    ++written;
  } while (rest != 0 || written <= places);
  if (scaled.numerator_ < 0) text += '-';
  std::reverse(text.begin(), text.end());
  if (!fixed && places > 0) {
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
  }
  return text;
}

bool Rational::is_decimal(int places) const {
  Wide scale = 1;
  for (int i = 0; i < places; ++i) scale *= 10;
  return (*this * Rational(scale, 1)).is_integer();
}

Rational Rational::floor_to(const Rational& step) const {
  const Rational count = *this / step;
  if (!count.is_defined()) return undefined();
  return Rational(floor_divide(count.numerator_, count.denominator_), 1) * step;
}

Rational Rational::ceil_to(const Rational& step) const { return -((-*this).floor_to(step)); }

Rational Rational::round_to(const Rational& step) const {
  const Rational half = step * Rational(Wide{1}, Wide{2});
  return is_negative() ? (*this - half).ceil_to(step) : (*this + half).floor_to(step);
}

Rational Rational::operator-() const {
  Rational result = *this;
  result.numerator_ = -result.numerator_;
  return result;
}

Rational operator+(const Rational& a, const Rational& b) {
  if (!a.is_defined() || !b.is_defined()) return Rational::undefined();
  if (a.denominator_ == 1 && b.denominator_ == 1) {
    Wide whole = 0;
    if (__builtin_add_overflow(a.numerator_, b.numerator_, &whole)) return Rational::undefined();
    return {whole, 1};
  }
  const Wide divisor = common_divisor(a.denominator_, b.denominator_);
  const Wide a_factor = b.denominator_ / divisor;
  const Wide b_factor = a.denominator_ / divisor;
  Wide left = 0;
  Wide right = 0;
  Wide sum = 0;
  Wide denominator = 0;
  if (__builtin_mul_overflow(a.numerator_, a_factor, &left) ||
      __builtin_mul_overflow(b.numerator_, b_factor, &right) ||
      __builtin_add_overflow(left, right, &sum) ||
      __builtin_mul_overflow(a.denominator_, a_factor, &denominator)) {
    return Rational::undefined();
  }
  return {sum, denominator};
}

Rational operator-(const Rational& a, const Rational& b) { return a + (-b); }

Rational operator*(const Rational& a, const Rational& b) {
  if (!a.is_defined() || !b.is_defined()) return Rational::undefined();
  const Wide first = common_divisor(magnitude(a.numerator_), b.denominator_);
  const Wide second = common_divisor(magnitude(b.numerator_), a.denominator_);
  Wide numerator = 0;
  Wide denominator = 0;
  if (__builtin_mul_overflow(a.numerator_ / first, b.numerator_ / second, &numerator) ||
      __builtin_mul_overflow(a.denominator_ / second, b.denominator_ / first, &denominator)) {
    return Rational::undefined();
  }
  return {numerator, denominator};
}

Rational operator/(const Rational& a, const Rational& b) {
  if (!b.is_defined() || b.numerator_ == 0) return Rational::undefined();
  return a * Rational(b.denominator_, b.numerator_);
}

bool operator==(const Rational& a, const Rational& b) {
  return a.is_defined() && b.is_defined() && a.numerator_ == b.numerator_ &&
         a.denominator_ == b.denominator_;
}

bool operator<(const Rational& a, const Rational& b) { return (a - b).is_negative(); }

}  // namespace maslin
