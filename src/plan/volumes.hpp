// SPDX-License-Identifier: Apache-2.0
// How much room a plan takes, in the pan and in the jars. Ranges: no table gives the volume of a
// chutney, and it decides nothing but pans and jars.
#pragma once

#include "plan/timeline.hpp"
#include "quantity/exact.hpp"

namespace maslin::plan {

// A gram of solids takes up less room than a gram of water, by this much in ml. Solutions of
// sucrose at 20 °C, g in 100 g to g per ml: 20 to 1.081, 40 to 1.176, 65 to 1.317 (ICUMSA tables,
// from memory), which is 0.372 to 0.375; wider here for fibre, starch and salt.
inline const Bounds room_saved{Rational(Rational::Wide{35}, Rational::Wide{100}),
                               Rational(Rational::Wide{39}, Rational::Wide{100})};
// Near the boil water takes up 3 to 4 % more room than cold: steam tables, from memory.
inline const Bounds hot_swelling{Rational(1), Rational(Rational::Wide{104}, Rational::Wide{100})};
// Raw produce holds air that boiling drives out: apples most, about a fifth (from memory).
inline const Bounds raw_swelling{Rational(1), Rational(Rational::Wide{120}, Rational::Wide{100})};
// What sticks to pan, spoon and funnel: up to 3 % (common practice, no source).
inline const Rational sticks(Rational::Wide{3}, Rational::Wide{100});

// Of all that goes into the pan, raw. Solids that no table gives may be anything.
Range<Volume> ingoing_volume(const language::Program& program, const Draft& draft,
                             const std::vector<Item>& items);

// g of what does not boil away, over the ranges of the tables.
Bounds solids_in(const language::Program& program, const Draft& draft);

// Of what is left when `finished` is on the scales, boiling hot.
Range<Volume> hot_volume(const Bounds& solids, const Range<FinishedMass>& finished);

}  // namespace maslin::plan
