// SPDX-License-Identifier: Apache-2.0
// Framework, basket and kitchen as one linear programme, in kilograms. Every row knows the
// statement it came from.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "blend/boiling.hpp"
#include "blend/linear_program.hpp"
#include "blend/supply.hpp"
#include "diagnostic/diagnostic.hpp"
#include "language/program.hpp"

namespace maslin::blend {

enum class Role : std::uint8_t {
  produce,
  addition,
  substitute,
  credit,
  evaporated,
  total,
  deviation
};

struct ColumnInfo {
  Role role{};
  std::size_t slot = 0;    // index of the share, addition or substitution
  std::size_t supply = 0;  // for produce, addition and substitute
};

enum class StatementKind : std::uint8_t { supply, share, addition, substitution, limit, aim };

struct StatementInfo {
  StatementKind kind{};
  std::size_t index = 0;  // of the supply, share, addition, substitution or limit
  Span span;
};

enum class GoalKind : std::uint8_t { most, prepared, finished };
struct Goal {
  GoalKind kind = GoalKind::most;
  double kilograms = 0;
};

// How a linear programme is to be made where the language leaves a choice.
struct Setting {
  Goal goal;
  // For each `full` substitution: whether what is brought reaches the cap.
  std::vector<bool> at_cap;
  // Kilograms by which rows keep clear of their bounds where they can, so that rounding stays
  // inside.
  double margin = 0;
  // The prepared produce expected, so that no margin takes more than a part of a narrow range.
  double expected_total = 0;
  // Columns already decided, in kilograms (credits in kilograms or litres).
  std::map<ColumnIndex, double> decided;
  // Kilograms by which a plain ratio may be missed: what is left of a supply comes in whole steps.
  double ratio_slack = 0;
  // Kilograms by which the finished weight may be beside the aim once the produce is weighed out.
  double aim_slack = 0;
  // What is expected of boiling; until something is, limits that depend on it are left out.
  std::optional<Boiling> boiling;
  // To find out whether nothing fits because the method boils down before enough is in the pan.
  bool may_run_dry = false;
  // Additions already measured out: a plain ratio may be off by a step of the scales, and its row
  // must not make the rest impossible.
  std::vector<std::size_t> settled;
};

struct Blend {
  LinearProgram program;
  std::vector<ColumnInfo> columns;  // beside program.columns
  std::vector<Supply> supplies;
  std::vector<StatementInfo> statements;
  ColumnIndex total = 0;
  std::optional<ColumnIndex> evaporated;  // where a limit says how far to boil down
  std::size_t full_substitutions = 0;
};

struct Grounding {
  const language::Program& program;
  const language::Framework& framework;
  const language::Basket& basket;
  const language::Kitchen* kitchen = nullptr;
};

// What must be at hand and is not, or cannot be reckoned with: told at the basket. False when no
// blend can be made.
bool check_grounding(const Grounding& grounding, Diagnostics& diagnostics);

Blend ground(const Grounding& grounding, const Setting& setting);

}  // namespace maslin::blend
