// SPDX-License-Identifier: Apache-2.0
// Whether every mix that a framework admits can be brought inside its limits and the floors of its
// routes. Sound as far as the tables and the model go: `holds` means that no basket is refused
// because of a limit; `breaks` comes with a mix that is.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "language/program.hpp"
#include "prove/case.hpp"
#include "prove/rays.hpp"

namespace maslin::prove {

enum class Verdict : std::uint8_t {
  holds,      // by calculation, for every mix
  breaks,     // this mix cannot be brought inside the limits
  not_shown,  // neither was found
  no_limits,  // there is nothing to show
};

struct Ingredient {
  language::IngredientId ingredient;
  std::size_t share = 0;
  double part = 0;  // of the prepared produce
};

struct Proof {
  Verdict verdict = Verdict::not_shown;
  // The mix that breaks the limits; where they hold, the one that comes nearest to doing so.
  std::vector<Ingredient> worst;
  std::vector<language::Stuff> additions;  // what is taken for each addition then
  std::vector<std::size_t> limits;         // that clash, or that are nearest
  std::string reason;                      // why nothing was shown
  std::string advice;                      // what would let it be shown; may be empty
};

// Steps that one proof may take: some seconds, of which a framework of the library takes a tenth at
// the most. What takes more is not shown.
inline constexpr std::size_t most_effort = 4'000'000'000;

// `effort` may be shared by several proofs.
Proof prove(const language::Program& program, const language::Framework& framework);
Proof prove(const language::Program& program, const language::Framework& framework, Effort& effort);

}  // namespace maslin::prove
