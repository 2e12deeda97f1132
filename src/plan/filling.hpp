// SPDX-License-Identifier: Apache-2.0
// The heat at which jars are filled: whether the kitchen reaches it, and how long it would have to
// last by what is published.
#pragma once

#include <optional>

#include "diagnostic/diagnostic.hpp"
#include "plan/clock.hpp"

namespace maslin::plan {

// On a day of low pressure water boils this much lower, for some 3 % less of it (common practice,
// no source).
inline const Temperature weather{Rational(1)};

// The least heat that is asked for at filling, by the method or by a reading of a route.
struct FillingHeat {
  Temperature heat;
  Span span;
};
std::optional<FillingHeat> filling_heat(const language::Program& program,
                                        const language::Framework& framework);

// What is filled boils at this in this kitchen: water's boiling point and the rise of its soluble
// solids, at the least, on a day of low pressure. To a tenth of a degree.
Temperature boils_at(const language::Program& program, const VerifiedPlan& plan,
                     const Height& height);

// A kitchen too high for the heat that is asked for, as a finding.
void report_filling_heat(const language::Program& program, const VerifiedPlan& plan,
                         const std::optional<Height>& height, Diagnostics& diagnostics);

// How long the coldest point would have to stay at the heat the method fills at, for a 5-log fall
// of acid-resistant bacteria (`science/heat.hpp`), up to a tenth of a minute. For a fill hotter
// than the published range, at its upper end, 85 °C.
struct Holding {
  Temperature heat;
  Duration to_4_1;  // where the pH that is read is 4.1 or less
  Duration to_4_6;  // above that, to 4.6
};
// Nothing where the method does not say a heat, or one below the published range.
std::optional<Holding> holding_of(const language::Method& method);

}  // namespace maslin::plan
