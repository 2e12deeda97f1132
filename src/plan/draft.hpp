// SPDX-License-Identifier: Apache-2.0
// A plan before it is verified: exact amounts as a cook would weigh them, and nothing worked out
// from them. Whoever made it, the verifier judges it by this alone.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "language/program.hpp"
#include "quantity/exact.hpp"

namespace maslin::plan {

enum class AimKind : std::uint8_t {
  most,      // as much of the basket as fits
  prepared,  // this much prepared produce
  finished,  // this much when boiled down
};

struct Aim {
  AimKind kind = AimKind::most;
  Rational weight;  // g
};

// What a plan is made from.
struct Task {
  language::FrameworkId framework;
  language::BasketId basket;
  language::KitchenId kitchen;  // invalid: none was given
  Aim aim;
  std::vector<language::JarStock> jars;  // to fill instead of the kitchen's; empty: those
};

enum class Tool : std::uint8_t { scales, spoons, count };

// One thing to weigh, spoon or count out, for one slot of the framework.
struct Taken {
  std::size_t slot = 0;  // index of the share, addition or substitution
  language::IngredientId ingredient;
  language::Origin origin{};
  std::optional<Rational> acidity;  // g of acetic acid per ml
  bool use_first = false;
  bool sulphited = false;  // as its line says; what nothing lists is not known to be
  Rational weight;         // g, ready for the pan
  Tool tool = Tool::scales;
  Rational amount;                  // g on the scales, ml in spoons, or pieces
  bool within_five_percent = true;  // whether the tool can meet what was worked out that closely
};

struct Draft {
  Task task;
  std::vector<Taken> produce;        // by share
  std::vector<Taken> additions;      // by addition
  std::vector<Taken> substitutes;    // by substitution: donors that are not otherwise in the pan
  std::vector<Rational> credits;     // by substitution, in g or ml of what is replaced
  std::optional<Rational> finished;  // g to stop at; nothing where no limit says how far
};

// What scales and spoons can do; assumed where the kitchen does not say.
struct Tools {
  Rational scale_step;  // g
  std::optional<Rational> scale_limit;
  std::optional<Rational> spoon_step;  // ml
  bool assumed = false;
};
Tools tools_of(const language::Program& program, language::KitchenId kitchen);

}  // namespace maslin::plan
