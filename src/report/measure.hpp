// SPDX-License-Identifier: Apache-2.0
// What a limit is written in: a share in percent, a pH, a water activity, points of an index.
#pragma once

#include <string>

#include "language/program.hpp"

namespace maslin::report {

struct Measure {
  int places = 2;
  Rational scale = 1;     // of the number shown
  std::string unit;       // behind a value
  std::string of_margin;  // behind a difference

  std::string text(const Bounds& values) const;
  // "at least 0.65 %", with every digit that was written.
  std::string allowed(const language::Limit& limit) const;
  std::string margin(const Rational& difference) const;
};

Measure measure_of(const language::Limit& limit);
// "acetic acid, of prepared produce (floor of acid alone)"
std::string limit_name(const language::Program& program, const language::Limit& limit);

}  // namespace maslin::report
