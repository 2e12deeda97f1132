// SPDX-License-Identifier: Apache-2.0
#include "science/boiling.hpp"

#include <cmath>

#include "science/bisection.hpp"
#include "science/water_activity.hpp"

namespace maslin::science {
namespace {

constexpr double zero_celsius = 273.15;   // K
constexpr double gas_constant = 8.31446;  // J/(mol K)

// IAPWS-IF97, table 34: the coefficients of region 4.
constexpr double n1 = 0.11670521452767e4;
constexpr double n2 = -0.72421316703206e6;
constexpr double n3 = -0.17073846940092e2;
constexpr double n4 = 0.12020824702470e5;
constexpr double n5 = -0.32325550322333e7;
constexpr double n6 = 0.14915108613530e2;
constexpr double n7 = -0.48232657361591e4;
constexpr double n8 = 0.40511340542057e6;
constexpr double n9 = -0.23855557567849;
constexpr double n10 = 0.65017534844798e3;

constexpr double kilopascals_per_megapascal = 1000;

}  // namespace

Computed<Kilopascal> pressure_at(Metre altitude) {
  const double h = altitude.in_unit();
  if (const auto error = outside("altitude, m", h, -500, 9000)) return Failure{*error};
  return Kilopascal(101.325 * std::pow(1 - 2.25577e-5 * h, 5.25588));
}

Computed<Celsius> boiling_point(Kilopascal pressure) {
  const double p = pressure.in_unit();
  if (const auto error = outside("pressure, kPa", p, 0.611213, 22064)) return Failure{*error};
  const double beta = std::pow(p / kilopascals_per_megapascal, 0.25);
  const double e = beta * beta + n3 * beta + n6;
  const double f = n1 * beta * beta + n4 * beta + n7;
  const double g = n2 * beta * beta + n5 * beta + n8;
  const double d = 2 * g / (-f - std::sqrt(f * f - 4 * e * g));
  const double sum = n10 + d;
  return Celsius((sum - std::sqrt(sum * sum - 4 * (n9 + n10 * d))) / 2 - zero_celsius);
}

Computed<Kilopascal> vapour_pressure(Celsius temperature) {
  const double t = temperature.in_unit();
  if (const auto error = outside("temperature, °C", t, 0, 373.946)) return Failure{*error};
  const double kelvin = t + zero_celsius;
  const double theta = kelvin + n9 / (kelvin - n10);
  const double a = theta * theta + n1 * theta + n2;
  const double b = n3 * theta * theta + n4 * theta + n5;
  const double c = n6 * theta * theta + n7 * theta + n8;
  const double root = 2 * c / (-b + std::sqrt(b * b - 4 * a * c));
  return Kilopascal(std::pow(root, 4) * kilopascals_per_megapascal);
}

Computed<Celsius> boiling_point_at(Metre altitude) {
  const auto pressure = pressure_at(altitude);
  if (!pressure) return Failure{pressure.error()};
  return boiling_point(*pressure);
}

Computed<WaterActivity> sucrose_activity(Share sucrose, Celsius temperature) {
  if (const auto error = outside("sucrose, kg per kg", sucrose.in_unit(), 0, 0.8)) {
    return Failure{*error};
  }
  if (const auto error = outside("temperature, °C", temperature.in_unit(), 0, 120)) {
    return Failure{*error};
  }
  constexpr double water_molar_mass = 18.015;
  constexpr double q = -17638;  // J/mol
  constexpr double a = -1.0038;
  constexpr double b = -0.24653;
  const double of_sucrose = sucrose.in_unit() / solutes::sucrose.molar_mass;
  const double of_water = (1 - sucrose.in_unit()) / water_molar_mass;
  const double x = of_sucrose / (of_sucrose + of_water);
  const double kelvin = temperature.in_unit() + zero_celsius;
  const double log_gamma = q / (gas_constant * kelvin) * x * x * (1 + a * x + b * x * x);
  return WaterActivity((1 - x) * std::exp(log_gamma));
}

Computed<TemperatureDifference> boiling_rise(Share solids, Share inverted, Kilopascal pressure) {
  const double s = solids.in_unit();
  if (const auto error = outside("solids, kg per kg", s, 0, 0.75)) return Failure{*error};
  if (const auto error = outside("inverted share", inverted.in_unit(), 0, 1)) {
    return Failure{*error};
  }
  const double p = pressure.in_unit();
  if (const auto error = outside("pressure, kPa", p, 50, 110)) return Failure{*error};
  // Each sugar stands alone in all the water (Ross).
  const double water = 1 - s;
  const double sucrose = s * (1 - inverted.in_unit());
  const Share each_hexose(s * inverted.in_unit() / 2 / water);
  const double hexoses = norrish(solutes::glucose, each_hexose)->in_unit() *
                         norrish(solutes::fructose, each_hexose)->in_unit();
  const auto excess = [&](double celsius) {
    const double sucrose_part =
        sucrose_activity(Share(sucrose / (sucrose + water)), Celsius(celsius))->in_unit();
    return hexoses * sucrose_part * vapour_pressure(Celsius(celsius))->in_unit() - p;
  };
  const double of_water = boiling_point(pressure)->in_unit();
  const auto boil = crossing(of_water - 1, 120, excess);
  if (!boil) return Failure{OutOfRange{"boiling point, °C", 120, of_water, 120}};
  return Celsius(*boil) - Celsius(of_water);
}

Computed<Range<Celsius>> setting_point(Metre altitude, Share soluble_solids) {
  const auto pressure = pressure_at(altitude);
  if (!pressure) return Failure{pressure.error()};
  const auto low = boiling_rise(soluble_solids, inverted_at_the_set.low, *pressure);
  if (!low) return Failure{low.error()};
  const auto high = boiling_rise(soluble_solids, inverted_at_the_set.high, *pressure);
  if (!high) return Failure{high.error()};
  const Celsius water = *boiling_point(*pressure);
  return Range<Celsius>{water + *low, water + *high};
}

}  // namespace maslin::science
