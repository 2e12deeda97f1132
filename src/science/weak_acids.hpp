// SPDX-License-Identifier: Apache-2.0
// What acids and water bring into a balance of charges at a pH. For the sources of acidity.hpp.
#pragma once

#include <array>

#include "science/acidity.hpp"

namespace maslin::science {

inline constexpr double least_ph = 0;
inline constexpr double most_ph = 14;

// One amount or charge for each weak acid.
using PerAcid = std::array<double, weak_acid_count>;
inline std::size_t index_of(WeakAcid acid) { return static_cast<std::size_t>(acid); }

// Charges one molecule carries on average: 0 in strong acid, its protons in strong alkali. Rises
// with pH.
double mean_charge(const AcidConstants& acid, double ph);
PerAcid mean_charges(double ph);

// Hydrogen less hydroxide, mol per litre of water, 25 °C. Falls as pH rises.
double free_charge(double ph);

// What acids and water leave over of a net strong charge; none at the pH they have together.
struct Charged {
  double charge = 0;  // mol
  double water = 0;   // kg, taken as litres
  PerAcid moles{};
};
// Falls as pH rises. `free` and `charges` are those of the pH.
double balance(const Charged& charged, double free, const PerAcid& charges);

}  // namespace maslin::science
