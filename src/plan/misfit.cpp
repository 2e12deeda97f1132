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
constexpr std::size_t most_conflicts = 5;

Rational grams_of(double kilograms) {
  return Rational(static_cast<long>(std::lround(kilograms * grams_in_kilogram)));
}

// What may be left out of the reasons first. Where several sets of reasons would do, the answer
// then speaks of what is in the basket and of the shares, rather than of the store.
int rank(const blend::Blend& blend, Statement statement) {
  const StatementInfo& info = blend.statements[statement];
  switch (info.kind) {
    case StatementKind::supply:
      return blend.supplies[info.index].origin == language::Origin::basket ? 6 : 0;
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

std::vector<Statement> to_try_first(const blend::Blend& blend) {
  std::vector<Statement> order(blend.statements.size());
  for (Statement s = 0; s < order.size(); ++s) order[s] = s;
  std::stable_sort(order.begin(), order.end(),
                   [&](Statement a, Statement b) { return rank(blend, a) < rank(blend, b); });
  return order;
}

// Without the statements of a conflict, so that the next one is independent of it. The aim stays:
// it is what was asked, and part of nearly every conflict.
void drop(blend::LinearProgram& program, const blend::Blend& blend,
          const std::vector<Statement>& conflict) {
  const auto dropped = [&](Statement statement) {
    return statement != blend::background &&
           blend.statements[statement].kind != StatementKind::aim &&
           std::find(conflict.begin(), conflict.end(), statement) != conflict.end();
  };
  program.rows.erase(std::remove_if(program.rows.begin(), program.rows.end(),
                                    [&](const blend::Row& row) { return dropped(row.statement); }),
                     program.rows.end());
}

class MisfitReporter {
 public:
  MisfitReporter(const blend::Grounding& grounding, const Task& task, const Misfit& misfit,
                 const std::vector<Mend>& mends, Diagnostics& diagnostics)
      : given_(grounding),
        mends_(mends),
        program_(grounding.program),
        framework_(grounding.framework),
        task_(task),
        misfit_(misfit),
        blend_(misfit.solved.blend),
        diagnostics_(diagnostics) {}

  void report(const std::vector<Statement>& conflict) {
    auto main =
        std::find_if(conflict.begin(), conflict.end(), [&](Statement s) { return is_mended(s); });
    if (main == conflict.end()) {
      main = std::find_if(conflict.begin(), conflict.end(),
                          [&](Statement s) { return info(s).kind == StatementKind::supply; });
    }
    const bool short_of = main != conflict.end();
    Diagnostic& found = short_of ? report_too_little(*main, conflict) : report_clash(conflict);
    for (const Statement statement : conflict) {
      if (statement == (short_of ? *main : conflict.front())) continue;
      // For a finished weight every addition counts; naming each would bury the rest.
      const bool addition = info(statement).kind == StatementKind::addition;
      if (short_of && addition && task_.aim.kind == AimKind::finished) continue;
      explain(statement, found);
    }
  }

 private:
  // Whether the best mend that changes the basket changes this line.
  bool is_mended(Statement statement) const {
    if (info(statement).kind != StatementKind::supply) return false;
    const blend::LineReference reference = supply_of(statement).lines.front();
    const auto& lines = reference.in_store ? given_.kitchen->store : given_.basket.lines;
    const auto mend = std::find_if(mends_.begin(), mends_.end(),
                                   [](const Mend& each) { return !each.edits.empty(); });
    return mend != mends_.end() && mend->edits.front().span == lines[reference.index].amount_span;
  }

  const StatementInfo& info(Statement statement) const { return blend_.statements[statement]; }
  const blend::Supply& supply_of(Statement statement) const {
    return blend_.supplies[info(statement).index];
  }

  std::string size_of_batch() const {
    if (!misfit_.asked) return "any batch";
    const bool finished = task_.aim.kind == AimKind::finished;
    return weight_text(task_.aim.weight) +
           (finished ? " of finished product" : " of prepared produce");
  }

  std::string at_hand(Statement statement) const {
    const blend::Supply& supply = supply_of(statement);
    const std::string weight = weight_text(*supply.available);
    switch (supply.origin) {
      case language::Origin::store:
        return weight + " in the store";
      case language::Origin::to_buy:
        return weight + " may be bought";
      default:
        return weight + " ready for the pan";
    }
  }

  Diagnostic& report_too_little(Statement main, const std::vector<Statement>& conflict) {
    const blend::Supply& supply = supply_of(main);
    const std::string name = program_[supply.ingredient].name;
    const bool several = std::count_if(conflict.begin(), conflict.end(), [&](Statement s) {
                           return info(s).kind == StatementKind::supply;
                         }) > 1;
    return diagnostics_.report(
        Code::too_little, info(main).span,
        several ? fmt::format("what there is does not suffice for {}", size_of_batch())
                : fmt::format("{} of {} is too little for {}", weight_text(*supply.available), name,
                              size_of_batch()),
        at_hand(main));
  }

  Diagnostic& report_clash(const std::vector<Statement>& conflict) {
    return diagnostics_.report(Code::does_not_fit, info(conflict.front()).span,
                               conflict.size() == 1
                                   ? "this cannot be met with what is at hand"
                                   : "these statements cannot all be met with what is at hand",
                               meaning(conflict.front()));
  }

  void explain(Statement statement, Diagnostic& found) const {
    const StatementInfo& each = info(statement);
    if (each.kind == StatementKind::aim) return;
    const Span span =
        each.kind == StatementKind::share ? framework_.shares[each.index].range_span : each.span;
    found.with_because(span, meaning(statement));
  }

  // What a statement asks of a batch of this size, in weights.
  std::string meaning(Statement statement) const {
    const StatementInfo& each = info(statement);
    switch (each.kind) {
      case StatementKind::supply:
        return at_hand(statement);
      case StatementKind::share:
        return share_meaning(framework_.shares[each.index]);
      case StatementKind::addition:
        return fmt::format("what is added of {}", framework_.additions[each.index].target.name);
      case StatementKind::substitution:
        return substitution_meaning(framework_.substitutions[each.index]);
      case StatementKind::limit:
        return limit_meaning(framework_.limits[each.index]);
      case StatementKind::aim:
        break;
    }
    return {};
  }

  bool speaks_of_weights() const {
    return misfit_.asked && misfit_.solved.setting.goal.kind == blend::GoalKind::prepared;
  }
  std::string part(const Rational& share) const {
    return weight_text(grams_of(share.to_double() * misfit_.solved.setting.goal.kilograms));
  }

  std::string share_meaning(const language::Share& share) const {
    std::string text = fmt::format("{} of the produce", range_text(share.range));
    if (speaks_of_weights()) {
      text += fmt::format(": {} to {}", part(share.range.low), part(share.range.high));
    }
    return text;
  }

  std::string limit_meaning(const language::Limit& limit) const {
    if (limit.property || !limit.has_high || !speaks_of_weights() ||
        limit.whole != language::Whole::prepared_produce) {
      return "the limit";
    }
    return fmt::format("at most {} of {}, so at least {} of other produce", part(limit.range.high),
                       limit.share_of.name, part(Rational(1) - limit.range.high));
  }

  static std::string substitution_meaning(const language::Substitution& substitution) {
    if (!substitution.cap) return "what may stand for it";
    return fmt::format("{} may stand for at most {} of the {}", substitution.donor.name,
                       percent_text(*substitution.cap), substitution.replaced.name);
  }

  const blend::Grounding& given_;
  const std::vector<Mend>& mends_;
  const language::Program& program_;
  const language::Framework& framework_;
  const Task& task_;
  const Misfit& misfit_;
  const blend::Blend& blend_;
  Diagnostics& diagnostics_;
};

}  // namespace

std::vector<StatementInfo> Misfit::statements() const {
  std::vector<StatementInfo> result;
  for (const auto& conflict : conflicts) {
    for (const Statement statement : conflict) {
      result.push_back(solved.blend.statements[statement]);
    }
  }
  return result;
}

Misfit find_misfit(const blend::Grounding& grounding, const Task& task, const Attempt& attempt) {
  Misfit misfit;
  misfit.asked = task.aim.kind != AimKind::most;
  misfit.solved = attempt.solved;
  if (attempt.outcome == Outcome::nothing) {
    // A batch of nothing fits; ask for a small one and see what stands against it.
    constexpr double part = 0.1;
    constexpr double least = 0.1;
    double at_hand = 0;
    for (const language::Line& line : grounding.basket.lines) {
      at_hand += blend::prepared_weight(grounding.program, line).to_double() / grams_in_kilogram;
    }
    blend::Setting setting;
    setting.goal = {blend::GoalKind::prepared, std::max(part * at_hand, least)};
    misfit.solved = solve_best(grounding, setting);
  }
  blend::LinearProgram program = misfit.solved.blend.program;
  const auto order = to_try_first(misfit.solved.blend);
  while (misfit.conflicts.size() < most_conflicts) {
    auto conflict = blend::smallest_conflict(program, order);
    if (conflict.empty()) break;
    drop(program, misfit.solved.blend, conflict);
    misfit.conflicts.push_back(std::move(conflict));
  }
  return misfit;
}

void report_misfit(const blend::Grounding& grounding, const Task& task, const Misfit& misfit,
                   const std::vector<Mend>& mends, Diagnostics& diagnostics) {
  if (misfit.conflicts.empty()) {
    diagnostics.report(Code::unsolved, grounding.framework.span,
                       "no plan could be worked out for this");
    return;
  }
  MisfitReporter reporter(grounding, task, misfit, mends, diagnostics);
  for (const auto& conflict : misfit.conflicts) reporter.report(conflict);
}

}  // namespace maslin::plan
