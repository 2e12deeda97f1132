// SPDX-License-Identifier: Apache-2.0
#include "science/brine.hpp"

namespace maslin::science {
namespace {

constexpr double heaviest = 100'000;  // kg
constexpr double lightest = 1e-6;     // kg
constexpr double saturated = 0.2641;  // kg per kg of brine, 20 °C: handbooks, from memory

}  // namespace

Computed<Share> dry_salting(Kilogram salt, Kilogram vegetables) {
  const double whole = vegetables.in_unit();
  if (const auto error = outside("vegetables, kg", whole, lightest, heaviest)) {
    return Failure{*error};
  }
  if (const auto error = outside("salt, kg", salt.in_unit(), 0, whole)) return Failure{*error};
  return Share(salt / vegetables);
}

Computed<Share> brine_strength(Kilogram salt, Kilogram water) {
  if (const auto error = outside("water, kg", water.in_unit(), lightest, heaviest)) {
    return Failure{*error};
  }
  if (const auto error = outside("salt, kg", salt.in_unit(), 0, heaviest)) return Failure{*error};
  const Share strength(salt / (salt + water));
  if (const auto error = outside("salt of the brine", strength.in_unit(), 0, saturated)) {
    return Failure{*error};
  }
  return strength;
}

Computed<Share> equilibrium_salt(const BrinedJar& jar, SaltBasis basis) {
  if (const auto error = outside("vegetables, kg", jar.vegetables.in_unit(), 0, heaviest)) {
    return Failure{*error};
  }
  if (const auto error = outside("brine, kg", jar.brine.in_unit(), 0, heaviest)) {
    return Failure{*error};
  }
  if (const auto error =
          outside("water of the vegetables", jar.water_of_vegetables.in_unit(), 0, 1)) {
    return Failure{*error};
  }
  if (const auto error = outside("salt of the brine", jar.brine_strength.in_unit(), 0, saturated)) {
    return Failure{*error};
  }
  const bool everything = basis == SaltBasis::everything;
  const Kilogram of_vegetables =
      everything ? jar.vegetables : jar.water_of_vegetables * jar.vegetables;
  const Kilogram whole = of_vegetables + jar.brine;
  if (const auto error =
          outside("what shares the salt, kg", whole.in_unit(), lightest, 2 * heaviest)) {
    return Failure{*error};
  }
  return Share(jar.brine_strength * jar.brine / whole);
}

Computed<Share> brine_for(Kilogram vegetables, Kilogram brine, Share of_everything) {
  if (const auto error = outside("vegetables, kg", vegetables.in_unit(), 0, heaviest)) {
    return Failure{*error};
  }
  if (const auto error = outside("brine, kg", brine.in_unit(), lightest, heaviest)) {
    return Failure{*error};
  }
  const Share strength(of_everything * (vegetables + brine) / brine);
  if (const auto error = outside("salt of the brine", strength.in_unit(), 0, saturated)) {
    return Failure{*error};
  }
  return strength;
}

}  // namespace maslin::science
