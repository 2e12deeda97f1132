// SPDX-License-Identifier: Apache-2.0
// What a sheet draws, as plain values. Tables and sentences of the sheet say the same in words.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "quantity/exact.hpp"

namespace maslin::report {

// A share of the prepared produce against what the framework allows; all as parts of one.
struct ShareBar {
  std::string name;
  Rational reached;
  Bounds allowed;
  std::optional<Rational> preferred;
};

// The last boiling down, of one boil.
struct BoilingDown {
  Range<IngoingMass> from;  // in the pan when it begins
  FinishedMass stop;
  std::optional<Range<FinishedMass>> window;  // within which the limits hold
  std::optional<Range<Duration>> time;        // from the boil to the stop
};

// Jars of one size that are filled alike.
struct Jars {
  Volume capacity;  // brimful
  int count = 0;
  Rational filled = 1;  // part of the capacity, 0 to 1
  bool part_filled = false;
};

struct JarRow {
  std::vector<Jars> jars;  // in the order of filling
};

// How deep the pan's content stands, from its bottom.
struct DepthStrip {
  Length start;
  Length stop;
};

}  // namespace maslin::report
