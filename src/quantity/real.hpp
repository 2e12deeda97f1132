// SPDX-License-Identifier: Apache-2.0
// Measured and computed amounts that carry their unit in the type. Where Exact keeps what people
// write and weigh, Real keeps what comes out of powers and exponentials.
#pragma once

#include <compare>

#include "quantity/exact.hpp"

namespace maslin {

// A kind whose values are points on a scale (temperatures, pH): two of them have a difference and
// no sum.
template <class Kind>
concept PointOnScale = requires {
  typename Kind::Difference;
};

template <class Kind>
class Real {
 public:
  constexpr Real() = default;
  // In the unit of Kind.
  constexpr explicit Real(double value) : value_(value) {}
  constexpr double in_unit() const { return value_; }

  friend constexpr auto operator<=>(Real, Real) = default;

  friend constexpr Real operator+(Real a, Real b) requires(!PointOnScale<Kind>) {
    return Real(a.value_ + b.value_);
  }
  friend constexpr Real operator-(Real a, Real b) requires(!PointOnScale<Kind>) {
    return Real(a.value_ - b.value_);
  }
  friend constexpr Real operator*(Real a, double b) requires(!PointOnScale<Kind>) {
    return Real(a.value_ * b);
  }
  friend constexpr Real operator*(double a, Real b) requires(!PointOnScale<Kind>) { return b * a; }
  friend constexpr Real operator/(Real a, double b) requires(!PointOnScale<Kind>) {
    return Real(a.value_ / b);
  }
  // How many times the second goes into the first.
  friend constexpr double operator/(Real a, Real b) requires(!PointOnScale<Kind>) {
    return a.value_ / b.value_;
  }

 private:
  double value_ = 0;
};

template <PointOnScale Kind>
constexpr Real<typename Kind::Difference> operator-(Real<Kind> a, Real<Kind> b) {
  return Real<typename Kind::Difference>(a.in_unit() - b.in_unit());
}
template <PointOnScale Kind>
constexpr Real<Kind> operator+(Real<Kind> a, Real<typename Kind::Difference> b) {
  return Real<Kind>(a.in_unit() + b.in_unit());
}
template <PointOnScale Kind>
constexpr Real<Kind> operator-(Real<Kind> a, Real<typename Kind::Difference> b) {
  return Real<Kind>(a.in_unit() - b.in_unit());
}

namespace kinds {
struct Share {};
struct Kilogram {};
struct KilogramPerHour {};
struct KilogramPerCubicMetre {};
struct Litre {};
struct Mole {};
struct MolePerKilogram {};
struct MolePerLitre {};
struct TemperatureDifference {};
struct Celsius {
  using Difference = TemperatureDifference;
};
struct PhDifference {};
struct PH {
  using Difference = PhDifference;
};
struct Kilopascal {};
struct Metre {};
struct Kilowatt {};
struct KilojoulePerKilogram {};
struct Kilojoule {};
struct Kilocalorie {};
struct Minute {};
struct WaterActivity {};
struct Volatility {};
struct PreservingIndex {};
struct Scoville {};
}  // namespace kinds

using Share = Real<kinds::Share>;        // kg per kg: 1 is all of it
using Kilogram = Real<kinds::Kilogram>;  // weight
using KilogramPerHour = Real<kinds::KilogramPerHour>;
using KilogramPerCubicMetre = Real<kinds::KilogramPerCubicMetre>;  // density
using Litre = Real<kinds::Litre>;
using Mole = Real<kinds::Mole>;
using MolePerKilogram = Real<kinds::MolePerKilogram>;  // the function says: of food, or of water
using MolePerLitre = Real<kinds::MolePerLitre>;
using Celsius = Real<kinds::Celsius>;
using TemperatureDifference = Real<kinds::TemperatureDifference>;  // kelvin
using PH = Real<kinds::PH>;
using PhDifference = Real<kinds::PhDifference>;
using Kilopascal = Real<kinds::Kilopascal>;
using Metre = Real<kinds::Metre>;
using Kilowatt = Real<kinds::Kilowatt>;
using KilojoulePerKilogram = Real<kinds::KilojoulePerKilogram>;
using Kilojoule = Real<kinds::Kilojoule>;
using Kilocalorie = Real<kinds::Kilocalorie>;
using Minute = Real<kinds::Minute>;
using WaterActivity = Real<kinds::WaterActivity>;      // vapour pressure over that of pure water
using Volatility = Real<kinds::Volatility>;            // of one substance, relative to water
using PreservingIndex = Real<kinds::PreservingIndex>;  // points
using Scoville = Real<kinds::Scoville>;                // heat units

constexpr Kilogram operator*(Share share, Kilogram whole) { return whole * share.in_unit(); }
constexpr Share percent(double value) { return Share(value / 100); }
constexpr double in_percent(Share share) { return share.in_unit() * 100; }
inline Kilogram kilograms(Mass mass) { return Kilogram(mass.to_double() / 1000); }
inline Range<Share> shares(const Bounds& bounds) {
  return {Share(bounds.low.to_double()), Share(bounds.high.to_double())};
}
inline Range<PH> ph_range(const Bounds& bounds) {
  return {PH(bounds.low.to_double()), PH(bounds.high.to_double())};
}

template <class Kind>
constexpr Range<Real<Kind>> operator+(const Range<Real<Kind>>& a, const Range<Real<Kind>>& b) {
  return {a.low + b.low, a.high + b.high};
}
template <class Kind>
constexpr Range<Real<Kind>> operator*(const Range<Real<Kind>>& a, double b) {
  return {a.low * b, a.high * b};
}

}  // namespace maslin
