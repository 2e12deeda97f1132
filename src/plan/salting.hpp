// SPDX-License-Identifier: Apache-2.0
// Salt that produce lies in before it is cooked or packed, and that is poured or rinsed off: on top
// of what is weighed out, with its own line on the shopping list and its trace on the label.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "plan/timeline.hpp"

namespace maslin::plan {

struct Salting {
  std::size_t stage = 0;  // of the method
  std::size_t step = 0;
  Mass salt;   // for the whole batch
  Mass water;  // of a brine as heavy as the produce in it (1:1, as in tested crock pickles)
};

std::vector<Salting> saltings_of(const Draft& draft, const Timeline& timeline);

// All of their salt as one thing to have at hand; nothing where there is none, or no ingredient is
// called `salt`. It belongs to no slot of the framework.
std::optional<Taken> salt_beside(const language::Program& program,
                                 const std::vector<Salting>& saltings);

// What share of its weight a thing has lost as water by the time it goes in; 0 to 1.
Bounds lost_by_salting(const Draft& draft, const Timeline& timeline, const TakenId& taken);

}  // namespace maslin::plan
