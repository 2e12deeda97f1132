// SPDX-License-Identifier: Apache-2.0
// Exact amounts that carry their dimension, and for weights their basis, in the type.
#pragma once

#include "base/rational.hpp"

namespace maslin {

template <class Kind>
class Exact {
 public:
  constexpr Exact() = default;
  // In the base unit of Kind.
  constexpr explicit Exact(Rational value) : value_(value) {}

  const Rational& in_base() const { return value_; }
  double to_double() const { return value_.to_double(); }
  bool is_zero() const { return value_.is_zero(); }
  bool is_positive() const { return value_.is_positive(); }
  bool is_negative() const { return value_.is_negative(); }
  bool is_defined() const { return value_.is_defined(); }

  friend Exact operator+(Exact a, Exact b) { return Exact(a.value_ + b.value_); }
  friend Exact operator-(Exact a, Exact b) { return Exact(a.value_ - b.value_); }
  friend Exact operator*(Exact a, const Rational& b) { return Exact(a.value_ * b); }
  friend Exact operator*(const Rational& a, Exact b) { return Exact(a * b.value_); }
  friend Rational operator/(Exact a, Exact b) { return a.value_ / b.value_; }
  friend Exact operator/(Exact a, const Rational& b) { return Exact(a.value_ / b); }
  Exact& operator+=(Exact other) { return *this = *this + other; }
  Exact& operator-=(Exact other) { return *this = *this - other; }
  friend bool operator==(Exact a, Exact b) { return a.value_ == b.value_; }
  friend bool operator<(Exact a, Exact b) { return a.value_ < b.value_; }
  friend bool operator>(Exact a, Exact b) { return b < a; }
  friend bool operator<=(Exact a, Exact b) { return a.value_ <= b.value_; }
  friend bool operator>=(Exact a, Exact b) { return b <= a; }

 private:
  Rational value_;
};

// The five weights of one thing. Only trim, salting, reduction and filling turn one into another.
struct Gross {};     // as brought in
struct Prepared {};  // ready for the pan
struct Drained {};   // after salting or brining
struct Ingoing {};   // all that enters the pan
struct Finished {};  // what leaves it
struct Plain {};     // sugar, vinegar, spice: nothing is cut away

template <class Basis>
struct MassKind {};
struct VolumeKind {};
struct DurationKind {};
struct TemperatureKind {};
struct LengthKind {};
struct PowerKind {};
struct DensityKind {};

using GrossMass = Exact<MassKind<Gross>>;        // g
using PreparedMass = Exact<MassKind<Prepared>>;  // g
using FinishedMass = Exact<MassKind<Finished>>;  // g
using IngoingMass = Exact<MassKind<Ingoing>>;    // g
using Mass = Exact<MassKind<Plain>>;             // g
using Volume = Exact<VolumeKind>;                // ml
using Duration = Exact<DurationKind>;            // s
using Temperature = Exact<TemperatureKind>;      // °C
using Length = Exact<LengthKind>;                // mm
using Power = Exact<PowerKind>;                  // W
using Density = Exact<DensityKind>;              // g per ml

inline PreparedMass prepared_from(GrossMass gross, const Rational& edible_share) {
  return PreparedMass(gross.in_base() * edible_share);
}
inline Mass mass_of(Volume volume, Density density) {
  return Mass(volume.in_base() * density.in_base());
}
inline Volume volume_of(Mass mass, Density density) {
  return Volume(mass.in_base() / density.in_base());
}

// A closed range; one value is a range of no width.
template <class T>
struct Range {
  T low{};
  T high{};

  static Range exactly(T value) { return {value, value}; }
  bool contains(const T& value) const { return low <= value && value <= high; }
  bool is_exact() const { return low == high; }
  friend bool operator==(const Range&, const Range&) = default;
};

using Bounds = Range<Rational>;
inline Rational middle(const Bounds& bounds) {
  return (bounds.low + bounds.high) * Rational(Rational::Wide{1}, Rational::Wide{2});
}

}  // namespace maslin
