// SPDX-License-Identifier: Apache-2.0
// What a label is made from: what a plan would use, or what one boil of a batch did.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "diagnostic/diagnostic.hpp"
#include "label/label.hpp"
#include "plan/draft.hpp"

namespace maslin::label {

struct Basis {
  plan::Draft draft;                     // what goes in, for which slot
  Range<FinishedMass> finished;          // what is left of it
  std::string mark;                      // that lot marks begin with
  long boils = 1;                        // of a plan
  std::vector<Lots> lots;                // without jars: none are known
  bool part_filled = false;              // a jar among them is not full
  std::optional<Recorded> record;        // where it was made
  const language::Boil* boil = nullptr;  // the same
  std::vector<std::string> notes;
};

Basis basis_of(const language::Program& program, const plan::Plan& plan);

// One for each boil of a batch, by what was used. What a boil does not state is the plan's; without
// a plan it must be stated. Nothing after a report.
std::optional<std::vector<Basis>> bases_of(const language::Program& program,
                                           const language::Batch& batch, const plan::Task& task,
                                           const plan::Plan* plan, Diagnostics& diagnostics);

// The lightest that a full jar may be: little weight in much room. `fill` in ml.
Mass net_of(const language::Program& program, const plan::Draft& draft, FinishedMass finished,
            long fill);
FinishedMass middle_of(const Range<FinishedMass>& finished);

// All that is weighed in, g.
Mass ingoing_of(const plan::Draft& draft);

}  // namespace maslin::label
