// SPDX-License-Identifier: Apache-2.0
// Names that a law keeps for what meets its standard, held against what a plan makes.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "label/ingredients.hpp"
#include "language/contents.hpp"
#include "plan/draft.hpp"

namespace maslin::label {

// What is made, as far as a standard asks.
struct Product {
  const language::Program& program;
  const plan::Draft& draft;
  Range<FinishedMass> finished;
};

// One reserved name that stands in a title.
struct Judgement {
  std::string name;
  const language::Standard* standard = nullptr;  // nothing: what is asked of it is not known here
  std::vector<std::string> unmet;                // why it is not met, in words; none: it is
  Mass fruit;  // ingoing, of what the standard asks a least share of
};

// The longest reserved name of the place in the title; nothing where there is none. Every limit is
// held against the unfavourable end; what cannot be worked out is not met.
// By the standard in force on a day; without one, by the latest.
std::optional<Judgement> judge_name(const Product& product, const std::string& title,
                                    const language::Law& law, const std::optional<Date>& as_of);

// Whether it is the standard of this year.
bool is_since(const language::Standard& standard, int year);

// The least that a standard asks of a class, where it asks less of some fruits: in proportion to
// the weights. `general` where no fruit has a least of its own.
Share least_of(const language::Program& program, const std::vector<Used>& counted,
               const language::Standard& standard, Share general);

}  // namespace maslin::label
