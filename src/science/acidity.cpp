// SPDX-License-Identifier: Apache-2.0
#include "science/acidity.hpp"

#include <array>
#include <cmath>

#include "science/bisection.hpp"
#include "science/weak_acids.hpp"

namespace maslin::science {
namespace {

constexpr double water_constant = 1e-14;  // (mol/L)², 25 °C

constexpr std::string_view harned = "4.76 published; third decimal Harned & Ehlers, from memory";
constexpr std::string_view handbook = "handbooks of chemistry, from memory";
constexpr AcidConstants table[weak_acid_count] = {
    {WeakAcid::acetic, Substance::acetic_acid, 60.052, 1, {4.756, 0, 0}, harned},
    {WeakAcid::citric, Substance::citric_acid, 192.124, 3, {3.13, 4.76, 6.40}, handbook},
    {WeakAcid::malic, Substance::malic_acid, 134.087, 2, {3.40, 5.11, 0}, handbook},
    {WeakAcid::tartaric, Substance::tartaric_acid, 150.087, 2, {3.04, 4.37, 0}, handbook},
    {WeakAcid::oxalic, Substance::oxalic_acid, 90.034, 2, {1.25, 4.27, 0}, handbook},
    {WeakAcid::lactic, Substance::lactic_acid, 90.078, 1, {3.86, 0, 0}, handbook},
    {WeakAcid::succinic, Substance::succinic_acid, 118.088, 2, {4.21, 5.64, 0}, handbook}};

double hydrogen_at(double ph) { return std::pow(10, -ph); }

// mol/L of each proton. A pH is found in many steps, and powers are slow.
using Dissociations = std::array<std::array<double, 3>, weak_acid_count>;
const Dissociations& dissociations() {
  static const Dissociations all = [] {
    Dissociations result{};
    for (std::size_t i = 0; i < weak_acid_count; ++i) {
      for (std::size_t j = 0; j < 3; ++j) result[i][j] = std::pow(10, -table[i].pk[j]);
    }
    return result;
  }();
  return all;
}

double mean_charge(std::size_t acid, double hydrogen) {
  double weight = 1;
  double weights = 1;
  double charges = 0;
  for (int i = 0; i < table[acid].protons; ++i) {
    weight *= dissociations()[acid][static_cast<std::size_t>(i)] / hydrogen;
    weights += weight;
    charges += (i + 1) * weight;
  }
  return charges / weights;
}

}  // namespace

const AcidConstants& constants_of(WeakAcid acid) { return table[index_of(acid)]; }

double mean_charge(const AcidConstants& acid, double ph) {
  return mean_charge(index_of(acid.acid), hydrogen_at(ph));
}

PerAcid mean_charges(double ph) {
  const double hydrogen = hydrogen_at(ph);
  PerAcid result{};
  for (std::size_t i = 0; i < weak_acid_count; ++i) result[i] = mean_charge(i, hydrogen);
  return result;
}

double free_charge(double ph) {
  const double hydrogen = hydrogen_at(ph);
  return hydrogen - water_constant / hydrogen;
}

double balance(const Charged& charged, double free, const PerAcid& charges) {
  double sum = charged.charge + charged.water * free;
  for (std::size_t i = 0; i < weak_acid_count; ++i) sum -= charged.moles[i] * charges[i];
  return sum;
}

Computed<PH> ph_of_solution(const std::vector<Dissolved>& acids, MolePerLitre strong_charge) {
  Charged solution;
  solution.charge = strong_charge.in_unit();
  solution.water = 1;
  if (const auto error = outside("net strong charge, mol/L", solution.charge, -1, 1)) {
    return Failure{*error};
  }
  for (const Dissolved& each : acids) {
    const double moles = each.concentration.in_unit();
    if (const auto error = outside("acid, mol/L", moles, 0, 10)) return Failure{*error};
    solution.moles[index_of(each.acid)] += moles;
  }
  const auto ph = crossing(least_ph, most_ph, [&](double at) {
    return balance(solution, free_charge(at), mean_charges(at));
  });
  if (!ph) return Failure{OutOfRange{"pH", 0, least_ph, most_ph}};
  return PH(*ph);
}

MolePerLitre protons_between(const std::vector<Dissolved>& acids, PH low, PH high) {
  double sum = 0;
  for (const Dissolved& each : acids) {
    const AcidConstants& acid = constants_of(each.acid);
    sum += each.concentration.in_unit() *
           (mean_charge(acid, high.in_unit()) - mean_charge(acid, low.in_unit()));
  }
  return MolePerLitre(sum);
}

}  // namespace maslin::science
