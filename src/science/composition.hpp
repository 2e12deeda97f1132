// SPDX-License-Identifier: Apache-2.0
// What a food is made of, and what follows from it. Knows nothing of the language.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

#include "quantity/exact.hpp"

namespace maslin::science {

enum class Substance : std::uint8_t {
#define MASLIN_SUBSTANCE(identifier, name) identifier,
#include "science/substances.def"
#undef MASLIN_SUBSTANCE
};
inline constexpr std::size_t substance_count = 0
#define MASLIN_SUBSTANCE(identifier, name) +1
#include "science/substances.def"
#undef MASLIN_SUBSTANCE
    ;

std::string_view name_of(Substance substance);
std::optional<Substance> substance_named(std::string_view name);

// Mass share of each substance in the edible part (1 = all of it); absent where no table gives it.
// `sodium`, `potassium` and `calcium` are parts of `ash`, not beside it; `sugars` and
// `organic_acids` are totals used where the kinds are not known.
class Composition {
 public:
  std::optional<Bounds>& operator[](Substance s) { return shares_[static_cast<std::size_t>(s)]; }
  const std::optional<Bounds>& operator[](Substance s) const {
    return shares_[static_cast<std::size_t>(s)];
  }
  // Absent counts as none.
  Bounds or_none(Substance s) const;

 private:
  std::array<std::optional<Bounds>, substance_count> shares_{};
};

// Sugars of every kind, as a mass share. Source: definition (mono- and disaccharides), as in the
// tables of composition; the total where the kinds are not given.
std::optional<Bounds> sugars(const Composition& composition);

// Every acid but acetic, as a mass share of the acids themselves; none where no table gives one.
Bounds fixed_acids(const Composition& composition);

// What a refractometer would read, as a mass share: sugars, polyols, acids that do not boil away,
// salt and minerals. Absent when the sugars are unknown. The reading itself is on the sucrose
// scale and differs by some tenths of a percent (common practice, no source).
std::optional<Bounds> soluble_solids(const Composition& composition);

// All that does not boil away, as a mass share: what is left beside water, acetic acid and
// alcohol. Absent when the water is unknown.
std::optional<Bounds> total_solids(const Composition& composition);

// Titratable acidity as acetic acid, as a mass share: each acid by its equivalents (acetic 60.05
// g/mol for one; citric 192.12 for three; malic 134.09 and tartaric 150.09 for two; lactic 90.08
// for one; molar masses of the elements, IUPAC).
Bounds acidity_as_acetic(const Composition& composition);

// What the figures add up to, as a mass share; near 1 for a complete entry. Minerals within ash
// are not counted twice.
Bounds total(const Composition& composition);

}  // namespace maslin::science
