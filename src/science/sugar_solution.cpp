// SPDX-License-Identifier: Apache-2.0
#include "science/sugar_solution.hpp"

#include <array>

namespace maslin::science {
namespace {

// Every 5 %, from none.
constexpr std::array<double, 16> gravity = {
    1,        1.019686, 1.040104, 1.061278, 1.083234, 1.105995, 1.129586, 1.154032,
    1.179358, 1.205589, 1.232748, 1.260861, 1.289952, 1.320046, 1.351168, 1.383342};
constexpr double step = 0.05;
constexpr double water_density = 998.70;  // kg/m³ at 17.5 °C: handbooks, from memory

}  // namespace

Computed<KilogramPerCubicMetre> sucrose_density(Share sucrose) {
  const double share = sucrose.in_unit();
  constexpr double most = 0.75;
  if (const auto error = outside("sucrose, kg per kg", share, 0, most)) return Failure{*error};
  const double place = share / step;
  const std::size_t row = share < most ? static_cast<std::size_t>(place) : gravity.size() - 2;
  const double beyond = place - static_cast<double>(row);
  return KilogramPerCubicMetre(water_density *
                               (gravity[row] + beyond * (gravity[row + 1] - gravity[row])));
}

Computed<Litre> volume_of(Kilogram mass, KilogramPerCubicMetre density) {
  if (const auto error = outside("weight, kg", mass.in_unit(), 0, 100'000)) return Failure{*error};
  if (const auto error = outside("density, kg/m³", density.in_unit(), 1, 20'000)) {
    return Failure{*error};
  }
  constexpr double litres_per_cubic_metre = 1000;
  return Litre(mass.in_unit() / density.in_unit() * litres_per_cubic_metre);
}

Computed<Share> sucrose_solubility(Celsius temperature) {
  const double t = temperature.in_unit();
  if (const auto error = outside("temperature, °C", t, 0, 100)) return Failure{*error};
  return percent(64.18 + 0.1348 * t + 0.000531 * t * t);
}

Computed<bool> crystallises(Kilogram sucrose, Kilogram water, Celsius temperature) {
  const auto dissolved = sucrose_solubility(temperature);
  if (!dissolved) return Failure{dissolved.error()};
  if (const auto error = outside("sucrose, kg", sucrose.in_unit(), 0, 100'000)) {
    return Failure{*error};
  }
  if (const auto error = outside("water, kg", water.in_unit(), 1e-6, 100'000)) {
    return Failure{*error};
  }
  return sucrose / (sucrose + water) > dissolved->in_unit();
}

}  // namespace maslin::science
