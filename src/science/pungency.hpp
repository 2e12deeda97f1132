// SPDX-License-Identifier: Apache-2.0
// How hot a preserve is, from the pods in it.
#pragma once

#include <string_view>
#include <vector>

#include "quantity/real.hpp"
#include "science/out_of_range.hpp"

namespace maslin::science {

// Scoville heat units of the dry pods, as several published lists agree. One cultivar spans three-
// to tenfold, so results are ranges. A pod of unknown kind is any of them.
enum class Pod : std::uint8_t {
  sweet,
  cherry,
  anaheim,
  poblano,
  jalapeno,
  serrano,
  de_arbol,
  cayenne,
  birds_eye,
  habanero,
  red_savina,
  ghost,
  unknown,
};
std::string_view name_of(Pod pod);
Range<Scoville> pungency_of(Pod pod);

// A millionth of capsaicin in the dry matter is 16 units.
inline constexpr Scoville per_millionth_of_capsaicin{16};

struct Pods {
  Kilogram mass{};
  Range<Share> dry_matter;  // of that mass
  Range<Scoville> dry;      // of the dry matter
};
// Of a batch, as it is eaten: weighted by mass, since the unit is a factor of dilution. Rises with
// each figure. Error: a batch of no weight or lighter than its pods, shares outside 0 to 1, units
// outside 0 to 16 million (pure capsaicin).
Computed<Range<Scoville>> pungency(const std::vector<Pods>& pods, Kilogram batch);

}  // namespace maslin::science
