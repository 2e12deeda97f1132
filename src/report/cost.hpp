// SPDX-License-Identifier: Apache-2.0
// What a batch costs, by the prices that its basket, store and jars give; in the money they are
// written in. Neither fuel nor work.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "language/program.hpp"
#include "plan/make.hpp"

namespace maslin::report {

struct JarCost {
  Volume holds;                 // brimful
  long count = 0;               // used, part-filled ones too
  Rational contents;            // of a full one
  std::optional<Rational> jar;  // with its lid; nothing where the kitchen gives no price

  Rational in_all() const { return contents + jar.value_or(Rational(0)); }
};

struct Cost {
  Rational contents;                  // of what goes in, not of whole packs
  std::vector<std::string> unpriced;  // what goes in and has no price, by name
  std::optional<Rational> jars;       // of those used that have a price; nothing where none has
  std::vector<JarCost> by_jar;        // largest first

  Rational in_all() const { return contents + jars.value_or(Rational(0)); }
};

// To the hundredth. Nothing where nothing has a price.
std::optional<Cost> cost_of(const language::Program& program, const plan::Plan& plan);

// "The batch comes to 11.76: 5.26 for what goes in and 6.50 for jars. By the full jar: 0.91 of
// 282 ml." Where a price is missing, of what has one.
std::string cost_text(const Cost& cost);

}  // namespace maslin::report
