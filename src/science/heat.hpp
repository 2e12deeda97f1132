// SPDX-License-Identifier: Apache-2.0
// How long acidified food is held at what heat, by what is published. For small acid packs whose
// coldest point is measured; the times are never scaled to another jar.
#pragma once

#include <vector>

#include "quantity/real.hpp"
#include "science/out_of_range.hpp"

namespace maslin::science {

// Minutes at one temperature for a 5-log fall of acid-resistant pathogens, 60 to 85 °C:
//   equilibrium pH to 4.1: 1.2 * 10^((160 - °F)/19.5), Breidt, Sandeep & Arritt, Food Prot. Trends
//   30 (2010) 268; the printed table ends at 178 °F (81 °C);
//   above 4.1 to 4.6: 5.6 min at 160 °F, z 16.7 °F, Breidt and others, Food Prot. Trends 34 (2014)
//   132.
// Error: pH above 4.6 (no such process is enough), temperature outside. Falls with temperature.
Computed<Minute> holding_time(PH equilibrium_ph, Celsius temperature);

// Acidified vegetables above pH 3.3 need it at all (same source, 2010).
inline constexpr PH heat_needed_above{3.3};

struct CoreReading {
  Minute at{};
  Celsius temperature{};
};
// How many times over the readings of the coldest point make up the holding time: between two
// readings the cooler one counts, and below 60 °C nothing. At least 1 is asked for.
// Error: fewer than two readings, times that do not rise, above 85 °C, pH above 4.6.
Computed<double> process_lethality(PH equilibrium_ph, const std::vector<CoreReading>& readings);

// CSIRO, small-scale preservation of acid foods: for products below pH 4, filled at 85 °C and more
// into jars of 60 °C and more, closed at once, held 3 min before cooling.
struct HotFill {
  PH ph{};
  Celsius filling{};
  Celsius jar{};
  Minute held{};
};
enum class HotFillLack : std::uint8_t { acid, filling_heat, jar_heat, holding };
// What falls short of the above; empty when it is all met.
std::vector<HotFillLack> hot_fill_lacks(const HotFill& fill);

}  // namespace maslin::science
