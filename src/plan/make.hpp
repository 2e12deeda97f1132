// SPDX-License-Identifier: Apache-2.0
// From a task to a verified plan, or to the reasons why there is none.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "blend/ground.hpp"
#include "diagnostic/diagnostic.hpp"
#include "language/program.hpp"
#include "plan/afternoon.hpp"
#include "plan/verify.hpp"

namespace maslin::plan {

// What keeps the batch from being larger.
struct Limiting {
  blend::StatementInfo statement;
  std::optional<language::IngredientId> ingredient;  // where it is something at hand
};

// A change that makes a plan possible. It was solved, rounded and verified before it was offered.
struct Mend {
  std::string text;         // in words: "add 380 g of onion (gross)"
  std::vector<Edit> edits;  // to the texts; none where the aim itself is changed
  std::optional<Aim> aim;   // a batch of another size instead
  // g it asks for, or the batch is smaller by; twice that where another thing is to be bought.
  // Less is better.
  Rational asked;
};

struct Plan {
  VerifiedPlan verified;
  std::vector<Limiting> limiting;
  // What more would use up what is left over; empty where nothing is, or nothing would.
  std::string use_up;
  // What it becomes in the kitchen.
  Afternoon afternoon;
};

struct Made {
  std::optional<Plan> plan;
  std::vector<Mend> mends;  // where there is no plan; best first
};

// Without a plan, `diagnostics` says why, and what would mend it.
Made make_plan(const language::Program& program, const Task& task, Diagnostics& diagnostics);

}  // namespace maslin::plan
