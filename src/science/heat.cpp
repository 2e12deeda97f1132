// SPDX-License-Identifier: Apache-2.0
#include "science/heat.hpp"

#include <algorithm>
#include <cmath>

namespace maslin::science {
namespace {

constexpr double coolest = 60;  // °C, 140 °F: the first row of the printed table
constexpr double hottest = 85;  // °C, 185 °F

double fahrenheit(Celsius temperature) { return temperature.in_unit() * 9 / 5 + 32; }

}  // namespace

Computed<Minute> holding_time(PH equilibrium_ph, Celsius temperature) {
  const double ph = equilibrium_ph.in_unit();
  if (const auto error = outside("equilibrium pH", ph, 0, 4.6)) return Failure{*error};
  // Fahrenheit turned into Celsius and back is off in the last digit.
  constexpr double rounding = 1e-9;
  if (const auto error = outside("temperature, °C", temperature.in_unit(), coolest - rounding,
                                 hottest + rounding)) {
    return Failure{*error};
  }
  const bool acid = ph <= 4.1;
  const double at_160_fahrenheit = acid ? 1.2 : 5.6;
  const double z = acid ? 19.5 : 16.7;
  return Minute(at_160_fahrenheit * std::pow(10, (160 - fahrenheit(temperature)) / z));
}

Computed<double> process_lethality(PH equilibrium_ph, const std::vector<CoreReading>& readings) {
  if (readings.size() < 2) {
    return Failure{OutOfRange{"readings", static_cast<double>(readings.size()), 2, 1e6}};
  }
  double sum = 0;
  for (std::size_t i = 1; i < readings.size(); ++i) {
    const double step = (readings[i].at - readings[i - 1].at).in_unit();
    if (const auto error = outside("time between readings, min", step, 1e-6, 1e6)) {
      return Failure{*error};
    }
    const Celsius cooler = std::min(readings[i - 1].temperature, readings[i].temperature);
    const bool counts = cooler >= Celsius(coolest);
    const auto time = holding_time(equilibrium_ph, counts ? cooler : Celsius(coolest));
    if (!time) return Failure{time.error()};
    if (counts) sum += step / time->in_unit();
  }
  return sum;
}

std::vector<HotFillLack> hot_fill_lacks(const HotFill& fill) {
  std::vector<HotFillLack> lacks;
  if (!(fill.ph < PH(4.0))) lacks.push_back(HotFillLack::acid);
  if (!(fill.filling >= Celsius(85))) lacks.push_back(HotFillLack::filling_heat);
  if (!(fill.jar >= Celsius(60))) lacks.push_back(HotFillLack::jar_heat);
  if (!(fill.held >= Minute(3))) lacks.push_back(HotFillLack::holding);
  return lacks;
}

}  // namespace maslin::science
