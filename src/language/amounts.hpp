// SPDX-License-Identifier: Apache-2.0
// What a gram of something counts for: the exact facts that planning and verifying both stand on.
#pragma once

#include <optional>

#include "language/program.hpp"

namespace maslin::language {

// Something at hand, as far as its figures go: a bottle has a strength of its own.
struct Stuff {
  IngredientId ingredient;
  std::optional<Rational> acidity;  // g of acetic acid per ml
};

// The strength at which an addition of acid is stated, g of acetic acid per ml: what the framework
// says, else 5 g in 100 ml.
Rational stated_strength(const Addition& addition);

// How much of an addition (g, ml or pieces, an acid at the stated strength) a gram stands for.
// Undefined when a density or piece weight is missing.
Rational amount_per_gram(const Program& program, const Addition& addition, const Stuff& stuff);

// How much of what is replaced (g or ml) a gram of a donor is worth, at the end of its figures that
// is sure to be there. Undefined when a figure is missing.
Rational credit_per_gram(const Program& program, const Substitution& substitution,
                         const Framework& framework, const Stuff& stuff);

// A property as a mass share; nothing when it is not known.
std::optional<Bounds> share_of(const Program& program, Property property, const Stuff& stuff);

// Whether the donor is in the pan anyway (and is only credited), or is put in for this.
bool is_in_the_pan_anyway(const Program& program, const Framework& framework,
                          const Substitution& substitution, IngredientId ingredient);

// Whether a statement `X for X by acetic acid` lets another strength stand for this addition.
bool allows_other_strength(const Framework& framework, std::size_t addition);

// The strengths that such a statement lets stand, g of acetic acid per ml: from four fifths of what
// is stated to twice it, as vinegar is sold (common practice, no source). Essence is none of them:
// it is thinned first, and its strength then written down.
Bounds other_strengths(const Addition& addition);
// Whether a bottle of this strength may stand for an addition.
bool takes_strength(const Framework& framework, std::size_t addition, const Rational& acidity);

// Whether it may stand for acid: a declared strength, or an ingredient of the acid kind with a
// titratable acidity of at least 2 g in 100 g (weaker than any vinegar or juice on sale).
bool is_acid_donor(const Program& program, const Stuff& stuff);

// Whether its strength differs from bottle to bottle and must be given: anything with acetic acid
// in it.
bool needs_strength(const Ingredient& ingredient);

// What it is made of: as the tables have it, but with the acid its bottle states, and with what
// stands in the entry as a total (water by total solids, sugars by soluble solids).
science::Composition composition_of(const Program& program, const Stuff& stuff);

// Whether that says how much water is in it; what is dissolved in water goes by it.
bool has_composition(const Program& program, IngredientId ingredient);

// Whether a limit is linear in what goes into the pan, and nothing of it boils away: then it is
// reckoned exactly.
bool is_linear(const Limit& limit);

// Whether a plan takes this limit into account at all. What is not linear is reckoned by
// `src/science`.
bool is_computed(const Limit& limit);

// Whether some limit says how far to boil down.
bool says_how_far(const Framework& framework);

// Whether this is weighed into the whole of a limit beside the produce: water, in a brine.
bool joins_whole(const Program& program, const Limit& limit, IngredientId addition);

// Whether a limit speaks of what leaves the pan.
bool is_of_finished(const Limit& limit);

}  // namespace maslin::language
