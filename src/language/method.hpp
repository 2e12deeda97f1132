// SPDX-License-Identifier: Apache-2.0
// How a framework is made: stages in order, and in each the steps as they are done.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "quantity/exact.hpp"
#include "source/source.hpp"

namespace maslin::language {

enum class SlotKind : std::uint8_t {
  produce,     // a share of the produce
  addition,    // what is added per kilogram
  substitute,  // the donor of a substitution, where it is put in for nothing else
};

// Something of the framework that a step can name.
struct Slot {
  SlotKind kind{};
  std::size_t index = 0;  // of the share, addition or substitution

  friend bool operator==(const Slot&, const Slot&) = default;
};

// `onion`, `all spice`, `1/2 of vinegar`, `the rest of sugar`.
struct Part {
  std::string name;
  std::vector<Slot> slots;  // several after `all`
  Rational fraction = 1;    // of the whole, unless it is the rest
  bool rest = false;        // what no step before has named
  Span span;
};

enum class StepKind : std::uint8_t {
  add,       // parts, into the pan
  pack,      // parts, into the jars as they are; what is in the pan covers them
  take_out,  // parts that have given their flavour
  soak,      // parts in `in`; both go into the pan when the parts are added
  macerate,  // parts in `in`, until they stand in their own juice
  dry_salt,  // parts in `in`, which stays; or at `strength`, rinsed off and not part of the batch
  brine,     // parts under a brine of `strength`, poured off and not part of the batch
  strain,    // what is in the pan, of which `amount` is kept
  simmer,
  boil,
  reduce,   // by boiling, to `target`
  ferment,  // at `heat`
};

enum class Lid : std::uint8_t { not_stated, covered, uncovered };

// A stretch of time; `or_longer` where only the least of it is stated.
struct Lasting {
  Range<Duration> time;
  bool or_longer = false;
};

struct Step {
  StepKind kind{};
  std::vector<Part> parts;
  std::optional<Part> in;            // soak, macerate, dry_salt
  std::optional<Rational> strength;  // g of salt per g: of produce (dry_salt), of brine (brine)
  std::optional<Lasting> lasting;    // for `reduce` the least
  std::optional<Range<Temperature>> heat;
  Lid lid = Lid::not_stated;
  std::optional<Rational> solids;  // reduce: to this share of soluble solids
  std::optional<Rational> weight;  // reduce: to this share of what is in the pan
  std::optional<Bounds> kept;      // strain: share of what was in the pan
  std::optional<Bounds> lost;      // dry_salt, brine: water drawn, as a share of the produce
  std::string until;               // the cook's own test
  Span span;
};

struct Stage {
  std::string name;
  long days_before = 0;  // 0: on the day itself
  std::vector<Step> steps;
  Span span;
};

struct Filling {
  bool hot = false;
  std::optional<Temperature> heat;
  std::optional<Length> headspace;
  Span span;
};

struct Method {
  std::vector<Stage> stages;
  std::optional<Filling> filling;
  Span span;  // of the keyword

  bool is_stated() const { return !stages.empty() || filling.has_value(); }
};

// Whether a step keeps what is in the pan at the boil. A simmer may stay below it: beans held near
// 80 °C grow more poisonous, not less (FDA, Bad Bug Book, on kidney beans).
inline bool is_at_the_boil(StepKind kind) {
  return kind == StepKind::boil || kind == StepKind::reduce;
}
// Share of its weight that a pan may lose in one simmer or boil: more the longer it lasts, little
// under a lid. Common practice, no source.
Rational most_lost(const Step& step);
// The share of soluble solids that the last boiling down stops at, where it says one.
std::optional<Rational> solids_at_the_end(const Method& method);
// Whether it is done on the hob.
inline bool is_heat(StepKind kind) { return is_at_the_boil(kind) || kind == StepKind::simmer; }
// Whether anything of it is; where no method is written it is taken to be cooked.
bool is_heated(const Method& method);
bool ferments(const Method& method);
// Whether it is heated by its method and nowhere boiled down.
bool only_simmers(const Method& method);

}  // namespace maslin::language
