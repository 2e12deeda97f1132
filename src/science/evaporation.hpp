// SPDX-License-Identifier: Apache-2.0
// What boiling takes away: water, some of the acetic acid, and time.
#pragma once

#include "science/mixture.hpp"

namespace maslin::science {

// Acetic acid relative to water at the boil: how many times as readily it leaves. Measured vapour
// and liquid, older editions of Perry's handbook, from memory: 0.68 to 0.69 in the dilute range.
// Henry's constants extrapolated from 25 °C give 0.91, so every verdict takes 0.90.
inline constexpr Volatility acetic_acid_expected{0.70};
inline constexpr Volatility acetic_acid_unfavourable{0.90};
inline constexpr Range<Volatility> acetic_acid_volatility{acetic_acid_expected,
                                                          acetic_acid_unfavourable};

// Share of the acid left when `before` kg of water are boiled down to `after`: Rayleigh, with the
// relative volatility v constant, kept = (after / before)^v. Volatility 0 to 2. Stage after stage
// the shares multiply. Falls as the volatility rises. Salts and sugars are taken not to change the
// volatility, and the dissociated acid (about 5 % at pH 3.5) to leave as the rest.
Computed<Share> acid_kept(Kilogram before, Kilogram after, Volatility volatility);

struct Reduction {
  Range<Kilogram> boiled_away;  // water and acid together
  Range<Share> acid_kept;
  Mixture left;
};

// Boiled down uncovered until the solids are that share of the whole. Finished weight is solids
// over target; the more solids, the more water is left of what there was, so both ends follow from
// the ends of the solids. The volatility's high end makes the low end of the acid.
// Error: a target at or below the solids there are (it would have to be thinned), or above what is
// left when all water is gone.
Computed<Reduction> reduce_to_total_solids(const Mixture& mixture, Share target,
                                           const Range<Volatility>& volatility);
// The same by what a refractometer reads.
Computed<Reduction> reduce_to_soluble_solids(const Mixture& mixture, Share target,
                                             const Range<Volatility>& volatility);
// The same down to a weight on the scales.
Computed<Reduction> reduce_to_weight(const Mixture& mixture, Kilogram finished,
                                     const Range<Volatility>& volatility);
// What is left at that weight where it is known how much of the acid stayed.
// Error: a finished weight below that of the solids, or above that of the mixture.
Computed<Reduction> reduced_with(const Mixture& mixture, Kilogram finished,
                                 const Range<Share>& acid_kept);

// Heat that turns water at its boil to steam, 85 to 110 °C; linear between 2295 at 85, 2256.5 at
// 100 and 2230 at 110 (IAPWS, from memory; tested against python3-iapws).
Computed<KilojoulePerKilogram> latent_heat(Celsius boiling_point);

// Share of a hob's rated power that reaches the water.
enum class Hob : std::uint8_t { induction, electric, gas };
// Induction 0.80 to 0.90, electric plates 0.70 to 0.80, gas 0.25 to 0.50 (secondary sources; gas at
// the boil measured near a quarter, protonsforbreakfast 2012).
Range<Share> efficiency(Hob hob);

// Time to boil `water` away at a net power that is a range; power above 0 up to 100 kW.
Computed<Range<Minute>> evaporation_time(Kilogram water, const Range<Kilowatt>& net_power,
                                         Celsius boiling_point);

// The pan weighed twice.
struct Weighing {
  Kilogram before{};
  Kilogram after{};
  Minute between{};
  Kilogram scale_step{};  // each weight is right to half of it
};
// How fast this pan loses weight on this hob. Error: no time between, or less lost than the scales
// can tell.
Computed<Range<KilogramPerHour>> calibrated_rate(const Weighing& weighing);
Computed<Range<Minute>> evaporation_time(Kilogram water, const Range<KilogramPerHour>& rate);

}  // namespace maslin::science
