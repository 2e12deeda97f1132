// SPDX-License-Identifier: Apache-2.0
// What the routes of a framework ask to be read, held against what was read of a boil.
#pragma once

#include <string>
#include <vector>

#include "language/program.hpp"

namespace maslin::label {

// What a meter is taken to be off by where nobody says: of cheap ones, from memory.
inline const Rational usual_meter_error(Rational::Wide{1}, Rational::Wide{10});
// How long what is thick takes until its pH is the same all through, at the least: a day, as those
// who write of it ask.
inline const Duration until_even{Rational(24L * 3600)};
// How long a lid takes to show whether it holds: jars cool for half a day and more before they are
// looked at (USDA home-canning guide, from memory).
inline const Duration until_cold{Rational(12L * 3600)};

struct Readings {
  std::vector<std::string> missing;  // what is not in, or not inside its line, and why
  std::vector<std::string> shown;    // what is in
  // Nothing that is asked is missing, and something is asked. It releases nothing: a person does.
  bool complete() const { return missing.empty() && !shown.empty(); }
};

Readings readings_of(const language::Program& program, const language::Framework& framework,
                     const language::Boil& boil);

}  // namespace maslin::label
