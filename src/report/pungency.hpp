// SPDX-License-Identifier: Apache-2.0
// How hot what is finished is by its chillies: what tables say of their kinds.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "language/program.hpp"
#include "plan/make.hpp"
#include "quantity/real.hpp"

namespace maslin::report {

struct Pungency {
  Range<Scoville> finished;
  std::vector<std::string> pods;  // that make it hot
};

// Of chillies alone; nothing where the hottest pod is a sweet pepper.
std::optional<Pungency> pungency_of(const language::Program& program, const plan::Plan& plan);
// "190 to 620", to two figures, outwards.
std::string text_of(const Range<Scoville>& range);

}  // namespace maslin::report
