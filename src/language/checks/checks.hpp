// SPDX-License-Identifier: Apache-2.0
// What can be said of a program before there is a basket. One rule a file.
#pragma once

#include "diagnostic/diagnostic.hpp"
#include "language/program.hpp"

namespace maslin::language {

void run_checks(const Program& program, Diagnostics& diagnostics);

namespace checks {

// The least shares fit into 100 %, and the most fill it.
void shares(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// Every slot has something that could fill it.
void classes(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// No class stands above itself.
void class_cycles(const Program& program, Diagnostics& diagnostics);
// Volumes have densities, counts have piece weights, limits and credits have their figures.
void figures(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// Substitutions go towards more acid and less low-acid produce, or are capped.
void directions(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// Whether all that an addition could be may be counted on as acid.
bool acidifies(const Program& program, const Addition& addition);
// Nothing is credited twice against the same addition.
void credits(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// What is asked for is what the routes claimed take, and no limit is looser than their floors.
void routes(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// What calls itself tested is stated as a test would be: no range, no class, no refinement.
void tested(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// What covers a pack is as sour as the routes claimed ask, however the ranges are used.
void liquor(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// The jars are filled as hot as the routes claimed read.
void filling(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// The jars are filled as far below the rim as the routes claimed say.
void headspace(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// A route or standard of the user's own says whose rule it is and what is to be read.
void unsourced(const Program& program, Diagnostics& diagnostics);
// What is added can bring the acid that a limit asks for.
void reach(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// Every share and addition goes into the pan exactly once.
void method_amounts(const Framework& framework, Diagnostics& diagnostics);
// What makes ill when raw gets its boiling, wherever in the method it goes in.
void raw_hazards(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// No limit is worked out of what a strainer keeps back.
void strained_away(const Framework& framework, Diagnostics& diagnostics);
// Something wet is in the pan when it is first heated.
void dry_stage(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// Tough produce is cooked before all of the acid is in.
void acid_before_soft(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// Fruit is soft before a syrup comes to it.
void sugar_before_soft(const Program& program, const Framework& framework,
                       Diagnostics& diagnostics);
// Ground spice is not boiled for long.
void spice_form(const Program& program, const Framework& framework, Diagnostics& diagnostics);
// A ferment stands as warm and as long as is published.
void ferment_heat(const Framework& framework, Diagnostics& diagnostics);
// Compositions add up to no more than the whole.
void compositions(const Program& program, Diagnostics& diagnostics);

}  // namespace checks

// The strictest floor of a liquor among the routes claimed; none where they ask for none.
struct ClaimedFloor {
  const LiquorFloor* floor = nullptr;
  const RouteClaim* claim = nullptr;
};
std::optional<ClaimedFloor> liquor_floor(const Program& program, const Framework& framework);
// Reports a liquor of this acidity, g per ml, below the floor; `thinned`: water is in it.
Diagnostic& report_weak_liquor(const Program& program, const ClaimedFloor& floor,
                               const Rational& acidity, bool thinned, Span span,
                               Diagnostics& diagnostics);

// Whether it must be boiled for a stated time before it is eaten.
bool is_unsafe_raw(const Ingredient& ingredient);
// How long a slot boils by the method, at the least, wherever a part of it goes in; nothing at all
// when it is packed as it is.
Duration boiled_for(const Framework& framework, const Slot& slot);
// Adds to a message about too little boiling where it goes in, why, and what mends it.
void explain_boiling(const Framework& framework, const Slot& slot, const Ingredient& ingredient,
                     Diagnostic& found);

}  // namespace maslin::language
