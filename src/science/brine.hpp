// SPDX-License-Identifier: Apache-2.0
// Salt when vegetables and brine have come to agree. "5 % salt" means three things: of the
// vegetables (dry salting), of the brine that is poured, of all of it in the end.
#pragma once

#include "quantity/real.hpp"
#include "science/out_of_range.hpp"

namespace maslin::science {

// Salt over the weight of the vegetables, as recipes for dry salting say it. Salt 0 to the weight
// of the vegetables. Error: no vegetables.
Computed<Share> dry_salting(Kilogram salt, Kilogram vegetables);

// Salt over salt and water, as recipes for brine say it. Error: no water.
Computed<Share> brine_strength(Kilogram salt, Kilogram water);

enum class SaltBasis : std::uint8_t {
  everything,      // salt over vegetables and brine
  salt_and_water,  // salt over all water and salt: what the bacteria meet
};

struct BrinedJar {
  Kilogram vegetables{};
  Share water_of_vegetables{1};  // the less, the stronger on the second basis
  Kilogram brine{};              // with its salt
  Share brine_strength{};        // salt over brine, 0 to 0.2641 (saturated at 20 °C)
};
// Salt once it is everywhere the same. Vegetables are taken to bring none. Error: an empty jar, a
// strength above saturation.
Computed<Share> equilibrium_salt(const BrinedJar& jar, SaltBasis basis);

// The brine that gives this equilibrium, salt over brine. Error: no brine, or a strength above
// saturation.
Computed<Share> brine_for(Kilogram vegetables, Kilogram brine, Share of_everything);

}  // namespace maslin::science
