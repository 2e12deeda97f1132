// SPDX-License-Identifier: Apache-2.0
// What the commands that plan have in common: their choices, and the plan they lead to.
#pragma once

#include <optional>

#include "command/command.hpp"
#include "driver/session.hpp"
#include "plan/make.hpp"

namespace maslin::command {

// Framework, basket, kitchen, aim and taste, as chosen; nothing after a report.
std::optional<plan::Task> make_task(Session& session, const PlanOptions& options);

// As much as fits, or as fills the jars asked for.
plan::Made make_plan(Session& session, plan::Task task);

}  // namespace maslin::command
