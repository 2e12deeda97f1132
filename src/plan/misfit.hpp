// SPDX-License-Identifier: Apache-2.0
// Why nothing fits: the smallest sets of statements that cannot hold together.
#pragma once

#include <vector>

#include "plan/attempt.hpp"

namespace maslin::plan {

struct Misfit {
  Solved solved;  // has no solution
  // Whether the size of the batch was asked for, or chosen here to have something to speak of.
  bool asked = false;
  // Whether the framework's own statements clash, however much there is of what is at hand; the
  // conflicts are then of those alone.
  bool of_the_framework = false;
  // Each irreducible: without any one of its statements the rest of it could be met. No statement
  // is in two of them.
  std::vector<std::vector<blend::Statement>> conflicts;

  // The statements of all conflicts.
  std::vector<blend::StatementInfo> statements() const;
};

// `attempt` had no plan.
Misfit find_misfit(const blend::Grounding& grounding, const Task& task, const Attempt& attempt);

// One report for each conflict; it begins with what the best mend changes.
void report_misfit(const blend::Grounding& grounding, const Task& task, const Misfit& misfit,
                   const std::vector<Mend>& mends, Diagnostics& diagnostics);

}  // namespace maslin::plan
