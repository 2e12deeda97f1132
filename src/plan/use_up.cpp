// SPDX-License-Identifier: Apache-2.0
#include "plan/use_up.hpp"

#include <fmt/format.h>

#include <cmath>
#include <vector>

#include "plan/weights.hpp"

namespace maslin::plan {
namespace {

constexpr double grams_in_kilogram = 1000;

// Less than this share of the batch left over is not worth a word.
const Rational little(Rational::Wide{3}, Rational::Wide{100});

bool is_basket_produce(const blend::Blend& blend, const blend::Row& row) {
  if (row.statement == blend::background) return false;
  const blend::StatementInfo& info = blend.statements[row.statement];
  if (info.kind != blend::StatementKind::supply) return false;
  if (blend.supplies[info.index].origin != language::Origin::basket) return false;
  for (const blend::Term& term : row.terms) {
    if (blend.columns[term.column].role == blend::Role::produce) return true;
  }
  return false;
}

std::string more_text(const blend::Grounding& grounding, const blend::Supply& supply,
                      double kilograms) {
  const language::Program& program = grounding.program;
  const language::Line& line = grounding.basket.lines[supply.lines.front().index];
  const Rational prepared(static_cast<long>(std::ceil(kilograms * grams_in_kilogram)));
  const Rational ten(10);
  const Rational amount = (prepared / prepared_share(program, line)).ceil_to(ten);
  const bool gross = line.basis == language::WeighedAs::gross;
  return fmt::format("{} of {}{}", weight_text(amount), program[supply.ingredient].name,
                     gross ? " (gross)" : "");
}

}  // namespace

std::string what_would_use_up(const blend::Grounding& grounding, const Task& task,
                              const Attempt& attempt) {
  const Plan& plan = *attempt.plan;
  if (task.aim.kind != AimKind::most) return {};
  Rational left;
  for (const Leftover& each : plan.verified.leftovers()) left += each.left.in_base();
  if (left <= little * plan.verified.prepared_total().in_base()) return {};
  const blend::Blend& blend = attempt.solved.blend;
  blend::LinearProgram program = blend.program;
  program.objectives = {{"more", blend::Direction::minimise, {}}};
  std::vector<std::pair<std::size_t, blend::ColumnIndex>> extras;
  for (blend::Row& row : program.rows) {
    if (!is_basket_produce(blend, row)) continue;
    // All of it and what is added to it goes into the pan.
    const blend::ColumnIndex extra = program.add_column({"extra", 0, blend::infinity});
    extras.emplace_back(blend.statements[row.statement].index, extra);
    row.lower = row.upper;
    row.terms.push_back({extra, -1});
    program.objectives.front().terms.push_back({extra, 1});
  }
  const blend::Solution solution = blend::solve(program);
  if (solution.status != blend::Status::optimal) return {};
  std::string text;
  constexpr double least = 1e-3;
  for (const auto& [supply, column] : extras) {
    if (solution.columns[column] < least) continue;
    text += (text.empty() ? "" : " and ") +
            more_text(grounding, blend.supplies[supply], solution.columns[column]);
  }
  return text;
}

}  // namespace maslin::plan
