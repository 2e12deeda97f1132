// SPDX-License-Identifier: Apache-2.0
#include "plan/misfit.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "language/amounts.hpp"
#include "plan/weights.hpp"

namespace maslin::plan {
namespace {

using blend::Statement;
using blend::StatementInfo;
using blend::StatementKind;

constexpr double grams_in_kilogram = 1000;

class MisfitReporter {
 public:
  MisfitReporter(const blend::Grounding& grounding, const Task& task, const Solved& solved,
                 bool asked, Diagnostics& diagnostics)
      : given_(grounding),
        program_(grounding.program),
        framework_(grounding.framework),
        task_(task),
        solved_(solved),
        asked_(asked),
        diagnostics_(diagnostics) {}

  void run() {
    const auto conflict = blend::smallest_conflict(solved_.blend.program, to_try_first());
    if (conflict.empty()) {
      diagnostics_.report(Code::unsolved, framework_.span, "no plan could be worked out for this");
      return;
    }
    const auto main = std::find_if(conflict.begin(), conflict.end(), [&](Statement s) {
      return info(s).kind == StatementKind::supply;
    });
    const bool short_of = main != conflict.end();
    Diagnostic& found = short_of ? report_too_little(*main, conflict) : report_clash(conflict);
    for (const Statement statement : conflict) {
      if (short_of && statement == *main) continue;
      // For a finished weight every addition counts; naming each would bury the rest.
      const bool addition = info(statement).kind == StatementKind::addition;
      if (short_of && addition && task_.aim.kind == AimKind::finished) continue;
      explain(statement, found);
    }
    offer_more(conflict, found);
    offer_smaller(found);
  }

 private:
  const StatementInfo& info(Statement statement) const {
    return solved_.blend.statements[statement];
  }

  // What may be left out of the reasons first. Where several sets of reasons would do, the answer
  // then speaks of what is in the basket and of the shares, rather than of the store.
  int rank(Statement statement) const {
    switch (info(statement).kind) {
      case StatementKind::supply:
        return supply_of(statement).origin == language::Origin::basket ? 6 : 0;
      case StatementKind::substitution:
        return 1;
      case StatementKind::limit:
        return 2;
      case StatementKind::addition:
        return 3;
      case StatementKind::share:
        return 4;
      case StatementKind::aim:
        return 5;
    }
    return 0;
  }

  std::vector<Statement> to_try_first() const {
    std::vector<Statement> order(solved_.blend.statements.size());
    for (Statement s = 0; s < order.size(); ++s) order[s] = s;
    std::stable_sort(order.begin(), order.end(),
                     [&](Statement a, Statement b) { return rank(a) < rank(b); });
    return order;
  }

  const blend::Supply& supply_of(Statement statement) const {
    return solved_.blend.supplies[info(statement).index];
  }

  std::string size_of_batch() const {
    const Rational weight = asked_ ? task_.aim.weight
                                   : Rational(static_cast<long>(std::lround(
                                         solved_.setting.goal.kilograms * grams_in_kilogram)));
    const bool finished = task_.aim.kind == AimKind::finished && asked_;
    return weight_text(weight) + (finished ? " of finished product" : " of prepared produce");
  }

  Diagnostic& report_too_little(Statement main, const std::vector<Statement>& conflict) {
    const blend::Supply& supply = supply_of(main);
    const std::string name = program_[supply.ingredient].name;
    const bool several = std::count_if(conflict.begin(), conflict.end(), [&](Statement s) {
                           return info(s).kind == StatementKind::supply;
                         }) > 1;
    auto& found = diagnostics_.report(
        Code::too_little, info(main).span,
        several ? fmt::format("what there is does not suffice for {}", size_of_batch())
                : fmt::format("{} of {} is too little for {}", weight_text(*supply.available), name,
                              size_of_batch()),
        fmt::format("{} ready for the pan", weight_text(*supply.available)));
    return found;
  }

  Diagnostic& report_clash(const std::vector<Statement>& conflict) {
    const Statement first = conflict.front();
    return diagnostics_.report(Code::does_not_fit, info(first).span,
                               conflict.size() == 1
                                   ? "this cannot be met with what is in the basket"
                                   : "these statements cannot all be met with this basket");
  }

  void explain(Statement statement, Diagnostic& found) const {
    const StatementInfo& each = info(statement);
    const Span span = each.span;
    switch (each.kind) {
      case StatementKind::supply:
        found.with_because(span, fmt::format("{} ready for the pan",
                                             weight_text(*supply_of(statement).available)));
        break;
      case StatementKind::share:
        explain_share(each, found);
        break;
      case StatementKind::addition:
        found.with_because(
            span, fmt::format("what is added of {}", framework_.additions[each.index].target.name));
        break;
      case StatementKind::substitution:
        found.with_because(span, "the most that may stand for it");
        break;
      case StatementKind::limit:
        found.with_because(span, "the limit");
        break;
      case StatementKind::aim:
        break;
    }
  }

  void explain_share(const StatementInfo& each, Diagnostic& found) const {
    const language::Share& share = framework_.shares[each.index];
    const double total = solved_.setting.goal.kilograms * grams_in_kilogram;
    const auto part = [&](const Rational& bound) {
      return weight_text(Rational(static_cast<long>(std::lround(bound.to_double() * total))));
    };
    std::string text = fmt::format("{} of the produce", range_text(share.range));
    if (solved_.setting.goal.kind == blend::GoalKind::prepared) {
      text += fmt::format(": {} to {}", part(share.range.low), part(share.range.high));
    }
    found.with_because(share.range_span, std::move(text));
  }

  // The least more of one supply that makes everything else possible.
  void offer_more(const std::vector<Statement>& conflict, Diagnostic& found) const {
    for (const Statement statement : conflict) {
      if (info(statement).kind != StatementKind::supply) continue;
      blend::LinearProgram eased = solved_.blend.program;
      const blend::ColumnIndex extra = eased.add_column({"extra", 0, blend::infinity});
      for (blend::Row& row : eased.rows) {
        if (row.statement == statement) row.terms.push_back({extra, -1});
      }
      eased.objectives = {{"extra", blend::Direction::minimise, {{extra, 1}}}};
      const blend::Solution solution = blend::solve(eased);
      if (solution.status != blend::Status::optimal) continue;
      found.with_mend(more_text(supply_of(statement), solution.columns[extra]));
    }
  }

  std::string more_text(const blend::Supply& supply, double kilograms) const {
    const language::Ingredient& ingredient = program_[supply.ingredient];
    const Tools tools = tools_of(program_, task_.kitchen);
    const auto up = [&](double grams) {
      return Rational(static_cast<long>(std::ceil(grams))).ceil_to(tools.scale_step);
    };
    const double prepared = kilograms * grams_in_kilogram;
    const language::Line& line = line_of(supply.lines.front());
    if (line.basis != language::WeighedAs::gross) {
      return fmt::format("add {} of {}", weight_text(up(prepared)), ingredient.name);
    }
    const double share = (prepared_share(program_, line)).to_double();
    return fmt::format("add {} of {} (gross)", weight_text(up(prepared / share)), ingredient.name);
  }

  const language::Line& line_of(blend::LineReference reference) const {
    const auto& lines = reference.in_store ? given_.kitchen->store : given_.basket.lines;
    return lines[reference.index];
  }

  void offer_smaller(Diagnostic& found) const {
    if (!asked_) return;
    blend::Setting setting;
    const Solved most = solve_best(given_, setting);
    if (most.solution.status != blend::Status::optimal) return;
    const Tools tools = tools_of(program_, task_.kitchen);
    double kilograms = most.solution.columns[most.blend.total];
    std::string what = "prepared produce";
    if (task_.aim.kind == AimKind::finished && most.blend.evaporated) {
      kilograms = 0;
      for (std::size_t i = 0; i < most.blend.columns.size(); ++i) {
        const blend::Role role = most.blend.columns[i].role;
        if (role == blend::Role::produce || role == blend::Role::addition ||
            role == blend::Role::substitute) {
          kilograms += most.solution.columns[i];
        }
      }
      kilograms -= most.solution.columns[*most.blend.evaporated];
      what = "finished product";
    }
    // A few steps below the most there could be, so that rounding has room.
    const Rational grams(static_cast<long>(std::floor(kilograms * grams_in_kilogram)));
    const Rational offered = (grams - tools.scale_step * 10).floor_to(tools.scale_step);
    if (offered.is_positive() && offered < task_.aim.weight) {
      found.with_mend(fmt::format("or make no more than {} of {}", weight_text(offered), what));
    }
  }

  const blend::Grounding& given_;
  const language::Program& program_;
  const language::Framework& framework_;
  const Task& task_;
  const Solved& solved_;
  bool asked_;
  Diagnostics& diagnostics_;
};

}  // namespace

void report_misfit(const blend::Grounding& grounding, const Task& task, const Solved& solved,
                   bool asked, Diagnostics& diagnostics) {
  MisfitReporter(grounding, task, solved, asked, diagnostics).run();
}

}  // namespace maslin::plan
