// SPDX-License-Identifier: Apache-2.0
// The list of ingredients: order, added water, allergens, sulphites. Regulation (EU) 1169/2011,
// annexes II and VII, and what other laws have in common with it.
#pragma once

#include <string>
#include <vector>

#include "language/law.hpp"
#include "language/program.hpp"
#include "quantity/exact.hpp"

namespace maslin::label {

// All that is used of one ingredient.
struct Used {
  language::IngredientId ingredient;
  Mass weight;     // ingoing
  Mass sulphited;  // of that, from lines that say so
};

struct Words {
  std::string text;
  bool emphasised = false;
};
using Phrase = std::vector<Words>;

// Water that was added and is still there: what the finished product weighs more than everything
// else that went in; none where more was boiled off.
FinishedMass added_water(FinishedMass finished, Mass everything_else);

// In descending ingoing weight, the name deciding between equals. Added water has its place by what
// is left of it, and none where that is no more than the law lets pass.
std::vector<Used> in_order(const language::Program& program, std::vector<Used> used,
                           FinishedMass finished, const language::Law* law);

// Sulphur dioxide in what is sulphited, g per g: 1500 to 2000 mg/kg. The upper end is the most that
// dried apricots, peaches, grapes, prunes and figs may hold in the European Union (Regulation (EC)
// 1333/2008, from memory), the lower the usual figure of a pack (common practice, no source). Of
// juice and vinegar it is more than may be.
inline const Bounds usual_sulphites{Rational(Rational::Wide{15}, Rational::Wide{10000}),
                                    Rational(Rational::Wide{20}, Rational::Wide{10000})};
// In the finished product, g per g, nothing lost in boiling. Undefined where nothing is left.
Bounds sulphites_in(Mass sulphited, FinishedMass finished, const Bounds& of_the_sulphited);
// Judged at the high end. Without a law, by 10 mg/kg.
bool declares_sulphites(const Bounds& sulphites, const language::Law* law);

// The name with its allergens emphasised: in the name where it holds the word, else behind it. A
// compound ingredient leaves a blank for its own. `sulphites` adds them where this was sulphited.
Phrase listed(const language::Program& program, const Used& used, bool sulphites,
              const language::Law* law);

// One kind of allergen and what it is in, for those who ask at the stall.
struct CardRow {
  std::string allergen;
  std::vector<std::string> in;  // ingredients; none: not stated for any of what is used
};
// The kinds that the law names, those that are used and known to none behind them.
std::vector<CardRow> card_of(const language::Program& program, const std::vector<Used>& used,
                             bool sulphites, const language::Law* law);
std::vector<std::string> not_stated(const language::Program& program,
                                    const std::vector<Used>& used);

}  // namespace maslin::label
