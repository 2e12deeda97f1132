// SPDX-License-Identifier: Apache-2.0
// How sour the liquor is that covers what is packed, and what of that is left in the jar.
#pragma once

#include <optional>

#include "plan/tested.hpp"
#include "plan/timeline.hpp"

namespace maslin::plan {

// Acetic acid, over the ranges of the tables; shares by weight.
struct Liquor {
  Bounds acidity;    // g in a ml of the vinegar and water poured, before sugar and salt go in
  Bounds poured;     // in the liquor as it is poured
  Bounds whole_jar;  // in all that is in the jar, once liquor and produce are alike throughout
  Rational water;    // share of water that is added to the liquor
  Rational cover;    // g of liquor for each g of what is packed
  Mass weight;       // of what is poured, in all
};

// Pieces packed tight leave a third of a jar to the liquor (common practice, no source).
inline const Rational least_cover(Rational::Wide{1}, Rational::Wide{2});
// Too little to cover what is packed, as a finding; what ferments makes its own brine.
void report_cover(const language::Program& program, const VerifiedPlan& plan, const Liquor& liquor,
                  Diagnostics& diagnostics);

// False after a report: weaker than a route that is claimed asks, and not as it was tested.
bool check_liquor(const language::Program& program, const VerifiedPlan& plan, const Liquor& liquor,
                  const std::optional<Tested>& tested, Diagnostics& diagnostics);

// Nothing where the method packs nothing, or the pan holds no liquor.
std::optional<Liquor> liquor_of(const language::Program& program, const VerifiedPlan& plan,
                                const Timeline& timeline);

}  // namespace maslin::plan
