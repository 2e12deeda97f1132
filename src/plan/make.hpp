// SPDX-License-Identifier: Apache-2.0
// From a task to a verified plan, or to the reasons why there is none.
#pragma once

#include <optional>
#include <vector>

#include "blend/ground.hpp"
#include "diagnostic/diagnostic.hpp"
#include "language/program.hpp"
#include "plan/verify.hpp"

namespace maslin::plan {

// What keeps the batch from being larger.
struct Limiting {
  blend::StatementInfo statement;
  std::optional<language::IngredientId> ingredient;  // where it is something at hand
};

struct Plan {
  VerifiedPlan verified;
  std::vector<Limiting> limiting;
};

// Nothing when no plan fits: then `diagnostics` says why, and what would mend it.
std::optional<Plan> make_plan(const language::Program& program, const Task& task,
                              Diagnostics& diagnostics);

}  // namespace maslin::plan
