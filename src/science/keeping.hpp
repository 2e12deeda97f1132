// SPDX-License-Identifier: Apache-2.0
// The published rules by which acid, salt and sugar preserve, as figures to hold against a limit.
// Failing one means that a product does not keep by these alone; it says nothing of other means.
#pragma once

#include <optional>

#include "science/mixture.hpp"

namespace maslin::science {

// Shares of the aqueous phase (water, acids, salt and sugars: our reading of "water phase", the
// cautious one of two). Sources: CIMSCEE Code (1992) as published by Mullan, dairyscience.info
// (2009), and Adams & Moss, Food Microbiology, eqs 9.5 to 9.7. For cold-filled sauces in which
// acetic is the main acid; other acids, sorbate or much protein make the figure misleading.
struct AqueousShares {
  Share acetic{};
  Share salt{};
  Share hexose{};
  Share disaccharide{};
};

// Both must exceed it; 63 itself is outside.
inline constexpr PreservingIndex index_line{63};
inline bool exceeds_line(PreservingIndex index) { return index > index_line; }

// Share of acetic acid that is dissociated, pK 4.76; pH 0 to 14.
Computed<Share> dissociated_acetic(PH ph);

// Without growth at room temperature, even when opened: 15.75 (1-a) A + 3.08 N + H + 0.5 D, all in
// percent. Rises with each share, falls as pH rises. Shares 0 to 1, pH 0 to 14.
Computed<PreservingIndex> stability_index(const AqueousShares& shares, PH ph);
// Pathogens fall off (E. coli by more than 3 log in 72 h at 20 °C): the above + 40 (4.0 - pH).
Computed<PreservingIndex> pathogen_index(const AqueousShares& shares, PH ph);

// The shares of a mixture with each at its least, or each at its most. Sugars of unknown kind count
// as disaccharides at the low end and as hexoses at the high end. No sucrose is taken to have
// inverted, which would raise the index.
Range<AqueousShares> aqueous_shares(const Mixture& mixture);
Computed<Range<PreservingIndex>> stability_index(const Mixture& mixture, const Range<PH>& ph);
Computed<Range<PreservingIndex>> pathogen_index(const Mixture& mixture, const Range<PH>& ph);

// At least 3.6 % acetic acid in what boils away: Adams & Moss eq. 9.3; Practical Action, Chutneys
// and sauces. Only acetic acid counts; manuals that say "total acidity" are the less cautious.
inline constexpr Share acetic_in_volatiles_line{0.036};
// Acidity over what is not solids. `total_solids` 0 to below 1.
Computed<Share> acid_in_volatiles(Share acidity, Share total_solids);
// At or above the line, but for rounding in the last of twelve digits.
bool reaches_acetic_line(Share acetic_in_volatiles);

// A rule of its own, for sweet cucumber pickles: acetic acid on the whole product at least
// (80 - S)/20 %, S the percentage of sugar (Adams & Moss; Bell & Etchells, Food Technol. 6 (1952)
// 468, the meaning of S from memory). `sugar` 0 to 0.8.
Computed<Share> sweet_pickle_acetic(Share sugar);

// 21 CFR 114.3.
enum class FoodClass : std::uint8_t {
  acid,       // natural pH at or below 4.6
  acidified,  // low-acid food with acid added, at or below 4.6
  low_acid,   // above 4.6, water activity above 0.85
  too_dry,    // above 4.6, but water activity not above 0.85: not low-acid
};
struct FoodFacts {
  PH finished_ph{};  // equilibrium
  WaterActivity water_activity{};
  bool of_low_acid_food = false;  // which acid was added to
  bool tomato = false;            // with a finished pH below 4.7 it is not low-acid
};
// pH 0 to 14, water activity 0 to 1.
Computed<FoodClass> class_of_food(const FoodFacts& facts);

// Above this a food is low-acid: 4.5 in the United Kingdom, 4.6 in the United States (Lund & Peck
// 2000, quoted).
enum class Jurisdiction : std::uint8_t { united_kingdom, united_states };
PH low_acid_line(Jurisdiction where);

}  // namespace maslin::science
