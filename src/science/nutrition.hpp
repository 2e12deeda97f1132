// SPDX-License-Identifier: Apache-2.0
// What a label says of 100 g: Regulation (EU) 1169/2011, as retained in the United Kingdom too.
#pragma once

#include <optional>

#include "science/mixture.hpp"

namespace maslin::science {

// Mass shares of a food. Carbohydrate is what the body uses: sugars and starch, without fibre and
// polyols.
struct Nutrients {
  Share fat{};
  Share carbohydrate{};
  Share sugars{};
  Share polyols{};
  Share fibre{};
  Share protein{};
  Share organic_acids{};
  Share alcohol{};
  Share salt{};  // sodium times 2.5, by definition (annex I)
};

// Each at its least, and each at its most. The sodium of salt is 0.3934 of it (molar masses,
// IUPAC), so the declared salt of a kilogram of salt is 984 g. A food whose table gives sodium and
// salt is taken to have both.
Range<Nutrients> nutrients(const Mixture& mixture);

struct Energy {
  Kilojoule kilojoules{};
  Kilocalorie kilocalories{};
};
// Of 100 g, by the factors of annex XIV. The two are computed apart and do not convert into each
// other. Rises with each share.
Energy energy_per_100_g(const Nutrients& nutrients);

Share salt_of_sodium(Share sodium);

// Commission guidance on tolerances (December 2012), per 100 g. `saturates` and `salt` have their
// own limits.
enum class Declared : std::uint8_t { fat, saturates, carbohydrate, sugars, fibre, protein, salt };
struct Rounded {
  Share amount{};           // what is printed; the limit where negligible
  int decimals = 0;         // of grams in 100 g
  bool negligible = false;  // "0 g" or "< amount"
};
// Half away from zero. 9.96 g is rounded by what it was, below 10: 10.0 g. Share 0 to 1.
Computed<Rounded> declared(Declared nutrient, Share share);

}  // namespace maslin::science
