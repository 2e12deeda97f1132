// SPDX-License-Identifier: Apache-2.0
// How acid a mixture is, from a balance of charges.
//
// [H] + net strong charge = charge of the weak acids + [OH], as in Butler & Cogley, Ionic
// Equilibrium (1998) p. 123, quoted by USDA-ARS. Activity coefficients are taken as 1 and the
// temperature as 25 °C; a pH meter reads activity, so for weak acids alone this is the right
// comparison. It does not hold for strong brines.
//
// A predicted pH may refuse; it never passes. The finished batch is measured.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "science/mixture.hpp"

namespace maslin::science {

enum class WeakAcid : std::uint8_t { acetic, citric, malic, tartaric, oxalic, lactic, succinic };
inline constexpr std::size_t weak_acid_count = 7;

struct AcidConstants {
  WeakAcid acid{};
  Substance substance{};
  double molar_mass = 0;  // g/mol, IUPAC
  int protons = 0;
  double pk[3]{};  // 25 °C, no added salt
  std::string_view source;
};
const AcidConstants& constants_of(WeakAcid acid);

struct Dissolved {
  WeakAcid acid{};
  MolePerLitre concentration{};
};

// pH of weak acids in water with a net strong charge (strong cations less strong anions, mol/L).
// Range of validity: concentrations 0 to 10 mol/L, charge -1 to 1 mol/L. Error: outside of these.
// Rises with the charge, falls with every acid.
Computed<PH> ph_of_solution(const std::vector<Dissolved>& acids, MolePerLitre strong_charge);

// Protons the acids give up between two pH values, mol/L: the area under the buffer curve.
MolePerLitre protons_between(const std::vector<Dissolved>& acids, PH low, PH high);

// How far the expected pH may lie from a measured one. Published finished foods whose ingredients
// are all known (tests/science/finished_ph.csv) lie up to 0.33 away, tomato ketchup the furthest;
// those recipes are other makers' than those of the foods measured. Published models with fitted
// buffers reach 0.1 to 0.15.
inline constexpr PhDifference claimed_uncertainty{0.35};
// The same where the pH of some part is not known: the four sauces of that table, with a rest that
// is not stated, lie up to 0.65 away.
inline constexpr PhDifference claimed_uncertainty_with_unknown{0.7};

// One ingredient of a mixture as far as its acid goes.
struct AcidPart {
  const Composition* composition = nullptr;  // always there
  Kilogram mass{};
  std::optional<Range<PH>> published_ph;
  // Net strong charge by titration of the ash, mol per kg of the food, where a table gives it.
  std::optional<Range<MolePerKilogram>> ash_alkalinity;
  // The acid that sets its pH, where it is known and the composition does not show it.
  std::optional<WeakAcid> main_acid;
  // Of its acetic acid, what boiling left before the pH is asked for; 0 to 1.
  Range<Share> acetic_acid_kept{Share(1), Share(1)};
};

// The acid a part is given in a balance.
struct GivenAcid {
  WeakAcid acid{};
  Range<Share> share;  // of the part's weight
};
// The main acid that a part is counted with (below), over all readings of its figures: for produce
// the acid that its minerals and its pH call for, to be held against tables of acids. Where no
// table names a main acid it is malic acid here. Error: as below.
Computed<GivenAcid> given_acid(const AcidPart& part);

// The assumption that widens the upper end of a pH most.
enum class PhAssumption : std::uint8_t { published_ph, unknown_ph, minerals, acid_content };

struct MixturePh {
  Range<PH> range;            // over every reading of every figure
  PH expected{};              // with each figure at its middle
  std::size_t driver{};       // index of the part that widens the upper end most
  PhAssumption assumption{};  // and what about it does
};

// pH of ingredients in equilibrium with each other.
//
// Produce: its net strong charge comes from its potassium, times 0.7 to 1.4 (without potassium,
// from nothing to all its ash as potassium carbonate; without ash, the same of what its figures
// leave over), widened to hold a published alkalinity of the ash. It is then given as much of its
// main acid (malic or citric, whichever is worse, where no table shows it) as makes its own pH the
// published one. Acid tables are often zero for vegetables, and a carrot without acids could not
// resist vinegar.
// What is bought for its acid (2 % and more as acetic): its acids are those of its composition, and
// its charge makes its own pH the published one; without one, its charge comes from its minerals.
// A part whose pH is not published counts at the unfavourable end as the least acid produce there
// is (7.5), and at the other end as having the acids of its table.
//
// The upper end is exact over all readings: every part's share in the balance is monotone in each
// of its figures and falls with pH, so the greatest over the ends of the figures falls with pH too,
// and its root is the highest pH there can be. More buffering is the worse end for a part less acid
// than the mixture, less buffering for a part more acid: the balance decides, part by part.
//
// Error: no water left, or no balance between pH 0 and 14.
Computed<MixturePh> mixture_ph(const std::vector<AcidPart>& parts,
                               Kilogram water_boiled_away = Kilogram(0));

// What a kilogram of a part brings into the balance of charges at this pH, mol, over every reading
// of its figures (its `mass` does not count). The pH of a mixture is below `at` whenever the high
// ends, each times its weight, add up to less than nothing. pH 0 to 14.
Range<MolePerKilogram> charge_at(const AcidPart& part, PH at);

}  // namespace maslin::science
