// SPDX-License-Identifier: Apache-2.0
// Syrup: how heavy it is, and how much sugar stays dissolved.
#pragma once

#include "quantity/real.hpp"
#include "science/out_of_range.hpp"

namespace maslin::science {

// Density at 17.5 °C; kg of sucrose per kg of solution, 0 to 0.75, linear between the rows of
// Gerlach's table (in Cooley's Cyclopaedia), which is of specific gravity 17.5/17.5, times the
// density of water there. A degree warmer is 0.3 kg/m³ lighter. Rises with the sugar. Preserves
// hold more than sucrose: their density is within some 2 % of it (common practice, no source).
Computed<KilogramPerCubicMetre> sucrose_density(Share sucrose);

// Room that so much of it takes. Weight 0 to 100 000 kg.
Computed<Litre> volume_of(Kilogram mass, KilogramPerCubicMetre density);

// Sucrose that stays dissolved in water alone, kg per kg of solution; 0 to 100 °C. Herzfeld's
// equation, from memory; gives the published rows for 0, 10, 20, 30, 40 and 100 °C. Rises with
// temperature.
Computed<Share> sucrose_solubility(Celsius temperature);

// Whether sucrose will come out of solution in the end: more of it, over sucrose and water, than
// stays dissolved. Glucose and fructose beside it hinder that and are not counted.
Computed<bool> crystallises(Kilogram sucrose, Kilogram water, Celsius temperature);

}  // namespace maslin::science
