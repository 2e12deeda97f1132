// SPDX-License-Identifier: Apache-2.0
#include "plan/attempt.hpp"

#include <array>
#include <cmath>

#include "plan/round.hpp"

namespace maslin::plan {
namespace {

constexpr double grams_in_kilogram = 1000;

// Steps of the scales by which a plan keeps clear of its bounds, tried in turn: as little as rounds
// well.
constexpr std::array<double, 8> clearances = {0, 0.05, 0.2, 0.5, 1, 2, 4, 8};

// Fewer steps of the scales than this are no batch.
constexpr double least_steps = 20;

bool fits(const Solved& solved) { return solved.solution.status == blend::Status::optimal; }

std::vector<Limiting> limiting(const Solved& solved) {
  std::vector<Limiting> result;
  constexpr double least = 1e-7;
  const auto& rows = solved.blend.program.rows;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (rows[i].statement == blend::background ||
        std::abs(solved.solution.first_row_prices[i]) < least) {
      continue;
    }
    Limiting each{solved.blend.statements[rows[i].statement], std::nullopt};
    if (each.statement.kind == blend::StatementKind::supply) {
      each.ingredient = solved.blend.supplies[each.statement.index].ingredient;
    }
    result.push_back(each);
  }
  return result;
}

// Whether rounding stays inside when the rows keep clear of their bounds by some steps.
bool plan_clear_of_bounds(const blend::Grounding& grounding, const Task& task,
                          blend::Setting setting, double step, Attempt& attempt) {
  for (const double clearance : clearances) {
    setting.margin = clearance * step;
    const Solved solved = solve_again(grounding, setting);
    if (!fits(solved)) continue;
    const auto draft = round_plan(grounding, task, solved);
    if (!draft) continue;
    auto verified = verify(grounding.program, *draft);
    if (!verified) {
      attempt.breaches = verified.error();
      continue;
    }
    attempt.outcome = Outcome::planned;
    attempt.plan = Plan{std::move(verified.value()), {}, {}, {}};
    if (task.aim.kind == AimKind::most) attempt.plan->limiting = limiting(attempt.solved);
    return true;
  }
  return false;
}

}  // namespace

double total_of(const Solved& solved) { return solved.solution.columns[solved.blend.total]; }

double finished_of(const Solved& solved) {
  double kilograms = 0;
  for (std::size_t i = 0; i < solved.blend.columns.size(); ++i) {
    const blend::Role role = solved.blend.columns[i].role;
    if (role == blend::Role::produce || role == blend::Role::addition ||
        role == blend::Role::substitute) {
      kilograms += solved.solution.columns[i];
    }
  }
  if (solved.blend.evaporated) kilograms -= solved.solution.columns[*solved.blend.evaporated];
  return kilograms;
}

Attempt attempt_plan(const blend::Grounding& grounding, const Task& task) {
  Attempt attempt;
  const Tools tools = tools_of(grounding.program, task.kitchen);
  const double step = tools.scale_step.to_double() / grams_in_kilogram;
  blend::Setting setting;
  setting.goal = goal_of(task.aim);
  attempt.solved = solve_best(grounding, setting);
  if (!fits(attempt.solved)) {
    attempt.outcome = Outcome::misfit;
    return attempt;
  }
  // Nothing at all always fits; that is no plan.
  if (total_of(attempt.solved) < least_steps * step) {
    attempt.outcome = Outcome::nothing;
    return attempt;
  }
  setting.at_cap = attempt.solved.setting.at_cap;
  setting.boiling = attempt.solved.setting.boiling;
  setting.expected_total = total_of(attempt.solved);
  attempt.outcome = Outcome::too_fine;
  if (plan_clear_of_bounds(grounding, task, setting, step, attempt)) return attempt;
  if (task.aim.kind != AimKind::finished) return attempt;
  // The finished weight cannot be met to the gram; a pan is not stopped that closely either.
  constexpr double close = 0.005;
  setting.aim_slack = close * setting.goal.kilograms;
  plan_clear_of_bounds(grounding, task, setting, step, attempt);
  return attempt;
}

}  // namespace maslin::plan
