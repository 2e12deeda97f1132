// SPDX-License-Identifier: Apache-2.0
// What is boiled into the jars there are. Exact, in whole millilitres.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "language/equipment.hpp"
#include "quantity/exact.hpp"

namespace maslin::plan {

// Inside of a jar's neck: lids of 63 mm leave about 56 mm (measured on common jars, from memory).
inline const Length neck_inside{Rational(56)};
// Of one more millilitre than this no plan is sought in which every jar is full.
inline constexpr long most_millilitres = 50000;

// Where the method says nothing: what jars of chutney and pickle are left (USDA home-canning guide,
// half an inch).
inline const Length usual_headspace{Rational(13)};
// And of jam (the same, a quarter of an inch; from memory).
inline const Length headspace_of_jam{Rational(6)};

struct Headspace {
  Length height;
  bool assumed = false;  // the method says nothing of it
};

// What goes into a jar of this size below the headspace, in whole ml; at least one.
long filled_to(Volume brimful, Length headspace);

struct JarSize {
  Volume holds;    // brimful
  long fill = 0;   // ml below the headspace
  long count = 0;  // how many there are
};
// Largest first; sizes that are listed twice are one.
std::vector<JarSize> jar_sizes(const std::vector<language::JarStock>& stock, Length headspace);

// How some volume goes into jars.
struct Filling {
  std::vector<long> full;                // by size
  std::optional<std::size_t> part_size;  // the size of the jar that is not full
  long part_ml = 0;                      // what is in it
  long left_ml = 0;                      // what finds no jar

  friend bool operator==(const Filling&, const Filling&) = default;
};

// First as little as can be without a jar; then no jar that is not full, if any choice of jars does
// that, else one; then as many of the largest as can be, then of the next, and so on; the one that
// is not full the smallest that holds what is left. What is left over and no more than a taste
// counts as nothing. Sizes largest first, `fill` from 1.
Filling fill_jars(long millilitres, const std::vector<JarSize>& sizes, long taste = 0);

// A run of boils that are filled alike.
struct FilledBoils {
  long first = 1;  // counted from 1
  long last = 1;
  Filling filling;
};

struct JarPlan {
  std::vector<JarSize> sizes;
  Length headspace;
  bool headspace_assumed = false;
  Range<long> expected_ml;  // of each boil
  std::vector<FilledBoils> boils;
  std::vector<long> used;      // by size, all boils, part-filled ones too
  std::vector<long> to_spare;  // by size: warmed beside them, in case there is more
  long left_ml = 0;            // what finds no jar, of all boils
};

// Less than this share of a boil is tasted, not filled into a jar of its own (common practice, no
// source); the volume is not known as closely as that.
inline const Rational tasted(Rational::Wide{2}, Rational::Wide{100});

// Each boil is filled while it is hot, from the jars that the one before left. `expected` is of
// each boil; jars are chosen for its middle, and enough are warmed beside for its high end and one
// more.
JarPlan plan_jars(const std::vector<language::JarStock>& stock, const Headspace& headspace,
                  const Range<Volume>& expected, long boils);

}  // namespace maslin::plan
