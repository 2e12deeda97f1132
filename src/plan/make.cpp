// SPDX-License-Identifier: Apache-2.0
#include "plan/make.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "plan/misfit.hpp"
#include "plan/round.hpp"
#include "plan/solve.hpp"
#include "plan/weights.hpp"

namespace maslin::plan {
namespace {

constexpr double grams_in_kilogram = 1000;

// Steps of the scales by which a plan keeps clear of its bounds, tried in turn: as little as rounds
// well.
constexpr std::array<double, 6> clearances = {0, 0.5, 1, 2, 4, 8};

double total_of(const Solved& solved) { return solved.solution.columns[solved.blend.total]; }

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

class Maker {
 public:
  Maker(const blend::Grounding& grounding, const Task& task, Diagnostics& diagnostics)
      : given_(grounding), task_(task), diagnostics_(diagnostics) {}

  std::optional<Plan> run() {
    if (!check_grounding(given_, diagnostics_)) return std::nullopt;
    const Tools tools = tools_of(given_.program, task_.kitchen);
    const double step = tools.scale_step.to_double() / grams_in_kilogram;
    blend::Setting setting;
    setting.goal = goal_of(task_.aim);
    const Solved free = solve_best(given_, setting);
    if (!fits(free)) {
      report_misfit(given_, task_, free, task_.aim.kind != AimKind::most, diagnostics_);
      return std::nullopt;
    }
    // Nothing at all always fits; that is no plan.
    constexpr double least_steps = 20;
    if (total_of(free) < least_steps * step) return explain_nothing(step);
    setting.at_cap = free.setting.at_cap;
    setting.expected_total = total_of(free);
    for (const double clearance : clearances) {
      setting.margin = clearance * step;
      const Solved solved = clearance == 0 ? free : solve_again(given_, setting);
      if (!fits(solved)) continue;
      if (auto plan = try_one(solved)) {
        if (task_.aim.kind == AimKind::most) plan->limiting = limiting(free);
        return plan;
      }
    }
    report_too_fine();
    return std::nullopt;
  }

 private:
  std::optional<Plan> try_one(const Solved& solved) {
    const auto draft = round_plan(given_, task_, solved);
    if (!draft) return std::nullopt;
    auto verified = verify(given_.program, *draft);
    if (!verified) {
      breaches_ = verified.error();
      return std::nullopt;
    }
    return Plan{std::move(verified.value()), {}};
  }

  // A basket of which nothing fits: ask for a small batch and say what stands against it.
  std::optional<Plan> explain_nothing(double step) {
    constexpr double part = 0.1;
    double at_hand = 0;
    for (const language::Line& line : given_.basket.lines) {
      at_hand += blend::prepared_weight(given_.program, line).to_double() / grams_in_kilogram;
    }
    blend::Setting setting;
    setting.goal = {blend::GoalKind::prepared, std::max(part * at_hand, 100 * step)};
    const Solved solved = solve_best(given_, setting);
    if (fits(solved)) {
      report_too_fine();
    } else {
      report_misfit(given_, task_, solved, false, diagnostics_);
    }
    return std::nullopt;
  }

  void report_too_fine() {
    std::string broken;
    for (const Breach& breach : breaches_) broken += (broken.empty() ? "" : "; ") + breach.text;
    auto& found = diagnostics_.report(
        Code::too_fine, given_.framework.span,
        "there is a plan, but not one that the scales can weigh inside every range");
    if (!broken.empty()) found.with_why("after rounding: " + broken);
    found.with_mend("make a larger batch, or use finer scales");
  }

  const blend::Grounding& given_;
  const Task& task_;
  Diagnostics& diagnostics_;
  std::vector<Breach> breaches_;
};

}  // namespace

std::optional<Plan> make_plan(const language::Program& program, const Task& task,
                              Diagnostics& diagnostics) {
  const language::Kitchen* kitchen = task.kitchen.valid() ? &program[task.kitchen] : nullptr;
  const blend::Grounding grounding{program, program[task.framework], program[task.basket], kitchen};
  return Maker(grounding, task, diagnostics).run();
}

}  // namespace maslin::plan
