// SPDX-License-Identifier: Apache-2.0
// The figures by which preserves are judged, worked out over the ranges of the tables, and the
// published lines they are held against. They may refuse and never pass.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "language/program.hpp"
#include "plan/verify.hpp"
#include "science/acidity.hpp"

namespace maslin::report {

struct KeepingFigure {
  std::string_view what;
  Range<double> value;
  double line = 0;
  std::string_view source;         // of the line
  std::string_view meaning;        // what being on its far side means; may be empty
  bool line_is_the_least = false;  // so that the low end is the unfavourable one
  int places = 2;
  std::string_view unit = {};  // behind a value

  double unfavourable_end() const { return line_is_the_least ? value.low : value.high; }
};

struct ExpectedPh {
  double value = 0;
  double off_by = 0;  // what such a figure was found to be off by in finished foods
  std::string widest_through;
  std::string_view assumption;
};

struct KeepingFigures {
  std::vector<KeepingFigure> figures;
  std::optional<ExpectedPh> ph;
  // What could not be worked out: the mix lies outside what the tables or the formula are for.
  std::vector<std::string_view> not_worked_out;
};

// Without any where the weights cannot be.
KeepingFigures keeping_figures(const language::Program& program, const plan::VerifiedPlan& plan);

// "3.41 .. 4.18".
std::string value_text(const KeepingFigure& figure);
// "at 4.5 (British guidance): 0.32 below".
std::string line_text(const KeepingFigure& figure);

}  // namespace maslin::report
