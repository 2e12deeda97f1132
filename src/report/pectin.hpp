// SPDX-License-Identifier: Apache-2.0
// How the fruit of a plan sets, by groups of ripe fruit: no table has the pectin of the fruit at
// hand.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "language/program.hpp"
#include "plan/draft.hpp"

namespace maslin::report {

struct PectinGroup {
  std::string_view name;  // "rich", "middling", "poor"
  Rational share;         // of the produce that is in a group
  std::vector<std::string> fruit;
};

// Richest first, those that something is taken of; none where no fruit is in a group.
std::vector<PectinGroup> pectin_groups(const language::Program& program, const plan::Draft& draft);
std::string pectin_text(const std::vector<PectinGroup>& groups);

}  // namespace maslin::report
