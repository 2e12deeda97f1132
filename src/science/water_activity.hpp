// SPDX-License-Identifier: Apache-2.0
// How much of the water is at the disposal of what would grow in it.
#pragma once

#include <string_view>

#include "science/mixture.hpp"

namespace maslin::science {

// Norrish: aw = Xw exp(-K Xs²), X mole fractions. Form: Baeza and others, Food Bioprocess Technol.
// 3 (2010) 87.
struct NorrishSolute {
  std::string_view name;
  double molar_mass = 0;  // g/mol
  double constant = 0;    // K
  std::string_view source;
};
namespace solutes {
inline constexpr std::string_view chirife = "Chirife, Ferro Fontán & Benmergui 1980, from memory";
inline constexpr NorrishSolute sucrose{"sucrose", 342.30, 6.47, chirife};
inline constexpr NorrishSolute maltose{"maltose", 342.30, 4.54, chirife};
inline constexpr NorrishSolute lactose{"lactose", 342.30, 10.2, chirife};
inline constexpr NorrishSolute glucose{"glucose", 180.16, 2.25, chirife};
inline constexpr NorrishSolute fructose{"fructose", 180.16, 2.15, chirife};
inline constexpr NorrishSolute citric_acid{"citric acid", 192.12, 6.17, chirife};
inline constexpr NorrishSolute tartaric_acid{"tartaric acid", 150.09, 4.68, chirife};
inline constexpr NorrishSolute malic_acid{"malic acid", 134.09, 1.82, chirife};
inline constexpr NorrishSolute lactic_acid{"lactic acid", 90.08, -1.59, chirife};
// Raoult's law: no constant is known.
inline constexpr NorrishSolute acetic_acid{"acetic acid", 60.05, 0, "Raoult's law"};
inline constexpr NorrishSolute oxalic_acid{"oxalic acid", 90.03, 0, "Raoult's law"};
inline constexpr NorrishSolute succinic_acid{"succinic acid", 118.09, 0, "Raoult's law"};
inline constexpr NorrishSolute alcohol{"alcohol", 46.07, 0, "Raoult's law"};
inline constexpr NorrishSolute sorbitol{"sorbitol", 182.17, 1.65, "PMC2836749 table 3"};
inline constexpr NorrishSolute mannitol{"mannitol", 182.17, 0.906, "PMC2836749 table 3"};
inline constexpr NorrishSolute glycerol{"glycerol", 92.09, 1.16, "PMC2836749 table 3"};
}  // namespace solutes

// One solute alone in water, 25 °C. `solute` in kg per kg of water, 0 to 3 (three quarters of the
// solution). Falls as the solute rises.
Computed<WaterActivity> norrish(const NorrishSolute& solute, Share per_water);

// Common salt alone in water, 25 °C, by Pitzer's equation; mol per kg of water, 0 to 6.15
// (saturated). Constants from memory; at 6 mol/kg it gives the 0.760 of Robinson & Stokes 1965.
Computed<WaterActivity> salt_solution(MolePerKilogram molality);

// A mixture, by Ross's product of its solutes, each alone in all the water (Ross, Food Technol.
// 29(3) 1975 26, from memory). 25 °C.
// High end, for verdicts: least of each solute in most water, sugars of unknown kind as sucrose
// (which lowers it least), unknown acids as citric, polyols as mannitol, no alcohol, no minerals.
// Low end: the contrary; unknown sugars as fructose, minerals as if they were salt.
// No sucrose is taken to have inverted: inverting lowers it. Error: outside the ranges above.
Computed<Range<WaterActivity>> water_activity(const Mixture& mixture);

}  // namespace maslin::science
