// SPDX-License-Identifier: Apache-2.0
// Whether a plan still is what its source tested, and the minutes that go with that. Every reason
// against is kept: minutes follow where there is none.
#pragma once

#include <vector>

#include "diagnostic/diagnostic.hpp"
#include "language/tested.hpp"
#include "plan/verify.hpp"

namespace maslin::plan {

// A weight may be this far from what the source says, since no scales meet it exactly; acid never
// below. The same as is called met elsewhere (common practice, no source).
inline const Rational as_tested(Rational::Wide{5}, Rational::Wide{100});

// A row of the table, at the altitude of the kitchen.
struct ProcessTime {
  const language::Process* row = nullptr;
  Duration time;
};

struct Tested {
  std::vector<language::Lapse> of_the_mix;      // by its text, or by what is weighed out
  std::vector<language::Lapse> of_the_kitchen;  // jars or altitude outside the table
  const language::RouteClaim* claim = nullptr;  // none: the source's process is not claimed
  std::vector<ProcessTime> times;               // for the jars there are; smallest first
  std::vector<language::JarStock> left_out;     // larger than any in the table, and not filled

  bool holds() const { return of_the_mix.empty() && of_the_kitchen.empty(); }
};

// Nothing where the framework neither calls itself tested nor claims a tested process. Takes jars
// that are too large for the table out of `stock`, where others remain.
std::optional<Tested> judge_tested(const language::Program& program, const VerifiedPlan& plan,
                                   std::vector<language::JarStock>& stock);

void report_tested(const language::Program& program, const VerifiedPlan& plan, const Tested& tested,
                   Diagnostics& diagnostics);

}  // namespace maslin::plan
