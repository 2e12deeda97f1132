// SPDX-License-Identifier: Apache-2.0
// What the commands that plan have in common: their choices, and the plan they lead to.
#pragma once

#include <optional>

#include "command/command.hpp"
#include "driver/session.hpp"
#include "plan/make.hpp"

namespace maslin::command {

// Whether a task may do without a basket where the files declare none.
enum class Baskets : std::uint8_t { asked, optional };

// Framework, basket, kitchen, aim and taste, as chosen; nothing after a report.
std::optional<plan::Task> make_task(Session& session, const PlanOptions& options,
                                    Baskets baskets = Baskets::asked);

// The batch that a label is made of; nothing where there is none, or after a report. Sets the
// framework that it is of.
struct BatchChoice {
  std::optional<language::BatchId> batch;
  bool good = true;
};
BatchChoice choose_batch(Session& session, const std::string& wanted, PlanOptions& options);

// As much as fits, or as fills the jars asked for.
plan::Made make_plan(Session& session, plan::Task task);

}  // namespace maslin::command
