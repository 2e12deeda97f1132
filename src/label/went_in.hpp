// SPDX-License-Identifier: Apache-2.0
// What went into a boil that was made, for which slot of its framework.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "diagnostic/diagnostic.hpp"
#include "language/program.hpp"
#include "plan/make.hpp"

namespace maslin::label {

// One boil of a batch, and what it is read beside.
struct Recording {
  const language::Program& program;
  const language::Batch& batch;
  const language::Boil& boil;
  const plan::Task& task;            // its basket is invalid where none was given
  const plan::Plan* plan = nullptr;  // nothing: none says what this boil was to be

  const language::Kitchen* kitchen() const {
    return task.kitchen.valid() ? &program[task.kitchen] : nullptr;
  }
};

struct WentIn {
  plan::Draft draft;
  std::vector<std::string> from_plan;  // "sugar 640 g": not recorded
};

// What the boil does not state is the plan's; without a plan it must be stated. Nothing after a
// report.
std::optional<WentIn> went_in(const Recording& recording, Diagnostics& diagnostics);

// Says beside the message why the plan does not help.
Diagnostic& report_not_recorded(const Recording& recording, std::string message,
                                Diagnostics& diagnostics);

}  // namespace maslin::label
