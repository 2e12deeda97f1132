// SPDX-License-Identifier: Apache-2.0
// What stands in a kitchen: the pan, the hob and the jars.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/exact.hpp"
#include "source/source.hpp"

namespace maslin::language {

struct Pan {
  Volume holds;                  // brimful
  std::optional<Length> across;  // inside
  std::optional<Mass> weighs;    // empty
  std::string material;          // as written; empty where it is not stated
  bool reacts_with_acid = false;
  Span span;
};

enum class HobKind : std::uint8_t { not_stated, electric, induction, gas };

// How fast a boiling pan loses weight on a hob, by weighing it twice.
struct WeighedTwice {
  Mass lost;
  Duration between;
  Span span;
};

struct Hob {
  Power power;  // as rated
  HobKind kind = HobKind::not_stated;
  std::optional<WeighedTwice> weighed_twice;
  Span span;
};

// Jars of one size.
struct JarStock {
  long count = 0;
  Volume holds;  // brimful
  Span span;
  std::optional<Rational> price = std::nullopt;  // of one, with its lid
};

// Whether bare metal of this kind is eaten by acid, and taints or poisons what is in the pan;
// nothing where the material is not known. Bare aluminium, copper, brass and iron are (common
// practice, no source); a lining or coating that is whole keeps the acid off.
std::optional<bool> reacts_with_acid(std::string_view material);
std::vector<std::string_view> pan_materials();

std::optional<HobKind> hob_named(std::string_view name);
std::vector<std::string_view> hob_names();
std::string_view name_of(HobKind kind);  // "a hob of a kind not stated" where it is not

}  // namespace maslin::language
