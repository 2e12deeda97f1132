// SPDX-License-Identifier: Apache-2.0
// How much is in it of what the name of the food names. Regulation (EU) 1169/2011, article 22 and
// annex VIII: ingoing weight over finished weight.
#pragma once

#include <string>
#include <vector>

#include "label/ingredients.hpp"

namespace maslin::label {

struct Named {
  std::string what;  // as the title has it, lower case
  Mass ingoing;
  std::vector<std::string> kinds;  // what counts for it under a longer name: `cooking apple`
};

// The ingredients, and classes of them, that are named in a title.
std::vector<Named> named_in(const language::Program& program, const std::string& title,
                            const std::vector<Used>& used);

// "115 g of tomato per 100 g". Never rounded up.
std::string per_100_g(const Named& named, FinishedMass finished);
// "apple 54 %"; where one of them, or all together, would be more than 100 %, per 100 g of each.
// Never rounded up.
std::vector<std::string> quantities_of(const std::vector<Named>& named, FinishedMass finished);

}  // namespace maslin::label
