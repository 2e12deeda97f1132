// SPDX-License-Identifier: Apache-2.0
// What the law of a place asks of a label: `laws.def` as values. Facts of a place and a date, and
// no legal advice.
#pragma once

#include <string_view>
#include <vector>

#include "base/date.hpp"
#include "quantity/real.hpp"

namespace maslin::language {

// One kind of allergen that a law names, and the words that an ingredient may state it with.
struct AllergenKind {
  std::string_view name;
  bool european = false;
  bool american = false;
  std::vector<std::string_view> words;  // singular, lower case
};

struct LeastFruit {
  std::string_view law;
  std::string_view standard;
  int since = 0;  // year of the standard it belongs to
  std::string_view fruit;
  Share least;  // of the finished product
};

// A fruit that may not stand beside others in what bears a European reserved name.
struct UnmixedFruit {
  std::string_view standard;
  std::string_view fruit;
};

struct ReservedName {
  std::string_view law;
  std::string_view name;
  std::string_view source;
};

struct Asked {
  std::string_view law;
  std::string_view standard;  // the one whose name the food bears; empty: asked of every food
  int since = 0;              // year of that standard
  std::string_view what;
  std::string_view why;
};

struct Law {
  std::string_view name;
  Share water_ignored;           // added water is not listed up to this, of the finished product
  bool says_quantities = false;  // of ingredients that the name of the food names
  bool table_per_100_g = false;  // nutrition
  bool says_ounces = false;      // net weight, beside grams
  Share sulphites;               // declared above this, as sulphur dioxide
  Date since;                    // no table is here of what it asked before
  std::string_view source;
};

const std::vector<Law>& laws();
// Nothing for a place of which no table is known.
const Law* law_named(std::string_view name);
// All of them, as a message lists them.
std::string_view known_laws();

const std::vector<AllergenKind>& allergen_kinds();
// Whether what an ingredient states is of this kind.
bool is_of_kind(std::string_view stated, const AllergenKind& kind);
bool is_known_allergen(std::string_view stated);
// Whether the law asks for the kind on a label. Without a law every kind counts.
bool asks_for(const Law* law, const AllergenKind& kind);

const std::vector<LeastFruit>& least_fruits();
const std::vector<UnmixedFruit>& unmixed_fruits();
const std::vector<ReservedName>& reserved_names();
const std::vector<Asked>& asked();

}  // namespace maslin::language
