// SPDX-License-Identifier: Apache-2.0
#include "science/water_activity.hpp"

#include <algorithm>
#include <cmath>

namespace maslin::science {
namespace {

constexpr double water_molar_mass = 18.015;    // g/mol, IUPAC
constexpr double salt_molar_mass = 58.443;     // g/mol, IUPAC
constexpr double saturated_salt = 6.15;        // mol per kg of water, 25 °C
constexpr double most_solute_per_water = 3.0;  // kg per kg

// A solute of the mixture, and what stands for it at each end.
struct Counted {
  Range<Kilogram> mass;
  const NorrishSolute* at_high_end;
  const NorrishSolute* at_low_end;
};

std::vector<Counted> counted(const Mixture& mixture) {
  using namespace solutes;
  const auto one = [&](Substance substance, const NorrishSolute& solute) {
    return Counted{mixture[substance], &solute, &solute};
  };
  const Range<Kilogram> none_of{Kilogram(0), mixture[Substance::alcohol].high};
  return {one(Substance::sucrose, sucrose),
          one(Substance::maltose, maltose),
          one(Substance::lactose, lactose),
          one(Substance::glucose, glucose),
          one(Substance::fructose, fructose),
          one(Substance::galactose, glucose),
          {mixture[Substance::sugars], &sucrose, &fructose},
          one(Substance::acetic_acid, acetic_acid),
          one(Substance::citric_acid, citric_acid),
          one(Substance::malic_acid, malic_acid),
          one(Substance::tartaric_acid, tartaric_acid),
          one(Substance::lactic_acid, lactic_acid),
          one(Substance::oxalic_acid, oxalic_acid),
          one(Substance::succinic_acid, succinic_acid),
          {mixture[Substance::organic_acids], &citric_acid, &malic_acid},
          {mixture[Substance::polyols], &mannitol, &sorbitol},
          {none_of, &alcohol, &alcohol}};
}

enum class End : std::uint8_t { low, high };

Computed<WaterActivity> at_end(const Mixture& mixture, End end) {
  const bool high = end == End::high;
  const Range<Kilogram> there = mixture[Substance::water];
  const Kilogram water = high ? there.high : there.low;
  if (!(water > Kilogram(0))) {
    return Failure{
        OutOfRange{"water, kg", water.in_unit(), 0.000'001, mixture.mass().high.in_unit()}};
  }
  double product = 1;
  for (const Counted& each : counted(mixture)) {
    const Kilogram mass = high ? each.mass.low : each.mass.high;
    const auto one = norrish(high ? *each.at_high_end : *each.at_low_end, Share(mass / water));
    if (!one) return one;
    product *= one->in_unit();
  }
  const Range<Kilogram> salt = mixture[Substance::salt];
  const Kilogram ions = high ? salt.low : salt.high + mixture[Substance::ash].high;
  const auto salted = salt_solution(MolePerKilogram(ions / water * 1000 / salt_molar_mass));
  if (!salted) return salted;
  return WaterActivity(product * salted->in_unit());
}

}  // namespace

Computed<WaterActivity> norrish(const NorrishSolute& solute, Share per_water) {
  const double kilograms = per_water.in_unit();
  if (const auto error =
          outside("dissolved, kg per kg of water", kilograms, 0, most_solute_per_water)) {
    return Failure{*error};
  }
  const double of_solute = kilograms / solute.molar_mass;
  const double of_water = 1 / water_molar_mass;
  const double x = of_solute / (of_solute + of_water);
  return WaterActivity((1 - x) * std::exp(-solute.constant * x * x));
}

Computed<WaterActivity> salt_solution(MolePerKilogram molality) {
  const double m = molality.in_unit();
  if (const auto error = outside("salt, mol per kg of water", m, 0, saturated_salt)) {
    return Failure{*error};
  }
  // Pitzer & Mayorga 1973, from memory; a one-to-one salt with b = 1.2 and alpha = 2.
  constexpr double debye = 0.3915;
  constexpr double beta0 = 0.0765;
  constexpr double beta1 = 0.2664;
  constexpr double c = 0.00127;
  const double root = std::sqrt(m);
  const double osmotic =
      1 - debye * root / (1 + 1.2 * root) + m * (beta0 + beta1 * std::exp(-2 * root)) + m * m * c;
  return WaterActivity(std::exp(-2 * osmotic * m * water_molar_mass / 1000));
}

Computed<Range<WaterActivity>> water_activity(const Mixture& mixture) {
  const auto low = at_end(mixture, End::low);
  if (!low) return Failure{low.error()};
  const auto high = at_end(mixture, End::high);
  if (!high) return Failure{high.error()};
  return Range<WaterActivity>{*low, *high};
}

}  // namespace maslin::science
