// SPDX-License-Identifier: Apache-2.0
#include "plan/misfit.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "language/amounts.hpp"
#include "plan/meaning.hpp"
#include "plan/weights.hpp"

namespace maslin::plan {
namespace {

using blend::Statement;
using blend::StatementInfo;
using blend::StatementKind;
using Conflict = std::vector<Statement>;

constexpr double grams_in_kilogram = 1000;
constexpr std::size_t most_conflicts = 5;

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

blend::LinearProgram without_supplies(const blend::Blend& blend) {
  blend::LinearProgram program = blend.program;
  const auto is_supply = [&](const blend::Row& row) {
    return row.statement != blend::background &&
           blend.statements[row.statement].kind == StatementKind::supply;
  };
  program.rows.erase(std::remove_if(program.rows.begin(), program.rows.end(), is_supply),
                     program.rows.end());
  return program;
}

// Each independent of those before it.
std::vector<Conflict> find_conflicts(const blend::Blend& blend, blend::LinearProgram program) {
  const auto order = to_try_first(blend);
  std::vector<Conflict> conflicts;
  while (conflicts.size() < most_conflicts) {
    auto conflict = blend::smallest_conflict(program, order);
    if (conflict.empty()) break;
    drop(program, blend, conflict);
    conflicts.push_back(std::move(conflict));
  }
  return conflicts;
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
        meaning_(grounding, task, misfit),
        diagnostics_(diagnostics) {}

  void report(const Conflict& conflict) {
    const Statement main = main_of(conflict);
    const bool short_of = info(main).kind == StatementKind::supply;
    Diagnostic& found = short_of ? report_too_little(main, conflict) : report_clash(main, conflict);
    const bool every_addition_counts = is_of_finished_weight(conflict);
    for (const Statement statement : conflict) {
      if (statement == main) continue;
      // Naming each would bury the rest.
      const bool addition = info(statement).kind == StatementKind::addition;
      if (addition && every_addition_counts) continue;
      explain(statement, conflict, found);
    }
    if (mends_.empty()) found.with_mend(no_mend());
  }

 private:
  // What the best mend changes, else something at hand, else a limit: that is what a cook asks for.
  Statement main_of(const Conflict& conflict) const {
    const auto first = [&](auto wanted) {
      return std::find_if(conflict.begin(), conflict.end(), wanted);
    };
    auto main = first([&](Statement s) { return is_mended(s); });
    for (const StatementKind kind : {StatementKind::supply, StatementKind::limit}) {
      if (main != conflict.end()) break;
      main = first([&](Statement s) { return info(s).kind == kind; });
    }
    return main != conflict.end() ? *main : conflict.front();
  }

  // For a finished weight every addition counts; of a clash about what leaves the pan each says
  // why.
  bool is_of_finished_weight(const Conflict& conflict) const {
    const auto of_finished = [&](Statement s) {
      return info(s).kind == StatementKind::limit &&
             is_of_finished(framework_.limits[info(s).index]);
    };
    return task_.aim.kind == AimKind::finished &&
           (!misfit_.of_the_framework ||
            std::none_of(conflict.begin(), conflict.end(), of_finished));
  }

  std::string no_mend() const {
    return misfit_.of_the_framework
               ? "more of what is here does not mend this: bring something else that the framework "
                 "takes, or change one of these lines of it"
               : "no change of the basket or of the batch that was tried mends this";
  }

  const Mend* best_change() const {
    const auto mend = std::find_if(mends_.begin(), mends_.end(),
                                   [](const Mend& each) { return !each.edits.empty(); });
    return mend == mends_.end() ? nullptr : &*mend;
  }
  std::size_t mended_lines() const {
    return best_change() == nullptr ? 0 : best_change()->edits.size();
  }
  // Whether the best mend that changes the basket changes this line.
  bool is_mended(Statement statement) const {
    if (info(statement).kind != StatementKind::supply || best_change() == nullptr) return false;
    const blend::LineReference reference = supply_of(statement).lines.front();
    const auto& lines = reference.in_store ? given_.kitchen->store : given_.basket.lines;
    return best_change()->edits.front().span == lines[reference.index].amount_span;
  }

  const StatementInfo& info(Statement statement) const { return blend_.statements[statement]; }
  const blend::Supply& supply_of(Statement statement) const {
    return blend_.supplies[info(statement).index];
  }

  Diagnostic& report_too_little(Statement main, const Conflict& conflict) {
    const blend::Supply& supply = supply_of(main);
    const std::string batch = meaning_.size_of_batch();
    const auto supplies = std::count_if(conflict.begin(), conflict.end(), [&](Statement s) {
      return info(s).kind == StatementKind::supply;
    });
    const std::string weight = weight_text(*supply.available);
    const std::string& name = program_[supply.ingredient].name;
    std::string message = fmt::format("{} of {} is too little for {}", weight, name, batch);
    if (supplies > 1 && is_mended(main) && mended_lines() == 1) {
      message += ", with what there is of the rest";
    } else if (supplies > 1) {
      message = fmt::format("what there is does not suffice for {}", batch);
    }
    Diagnostic& found = diagnostics_.report(Code::too_little, info(main).span, std::move(message),
                                            meaning_.at_hand(main));
    const std::string sum = meaning_.together(conflict);
    if (!sum.empty()) found.with_why(sum);
    return found;
  }

  Diagnostic& report_clash(Statement main, const Conflict& conflict) {
    std::string message = conflict.size() == 1 ? "this cannot be met with what is at hand"
                                               : "these cannot all be met with what is at hand";
    if (misfit_.of_the_framework) message += ", however much there is of it";
    Diagnostic& found = diagnostics_.report(Code::does_not_fit, info(main).span, std::move(message),
                                            meaning_.of(main, conflict));
    const std::string unknown = without_composition(conflict);
    if (!unknown.empty()) {
      found.with_why(
          fmt::format("no composition is known of {}: what is dissolved in it does not "
                      "count",
                      unknown));
      found.with_mend(
          "give it where the ingredient is declared, as a table of foods has it: `composition "
          "water 74.5 g, sugars 10.6 g`");
    }
    return found;
  }

  // What is at hand that a limit on the whole composition can make nothing of.
  std::string without_composition(const Conflict& conflict) const {
    const bool goes_by_it = std::any_of(conflict.begin(), conflict.end(), [&](Statement s) {
      if (info(s).kind != StatementKind::limit) return false;
      const auto property = framework_.limits[info(s).index].property;
      return property == language::Property::water_activity ||
             property == language::Property::stability_index;
    });
    std::string names;
    for (const blend::Supply& supply : blend_.supplies) {
      if (!goes_by_it || language::has_composition(program_, supply.ingredient)) continue;
      names += (names.empty() ? "" : ", ") + program_[supply.ingredient].name;
    }
    return names;
  }

  void explain(Statement statement, const Conflict& conflict, Diagnostic& found) const {
    const StatementInfo& each = info(statement);
    if (each.kind == StatementKind::aim) return;
    const Span span =
        each.kind == StatementKind::share ? framework_.shares[each.index].range_span : each.span;
    found.with_because(span, meaning_.of(statement, conflict));
  }

  const blend::Grounding& given_;
  const std::vector<Mend>& mends_;
  const language::Program& program_;
  const language::Framework& framework_;
  const Task& task_;
  const Misfit& misfit_;
  const blend::Blend& blend_;
  Meaning meaning_;
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
  // What clashes however much there is of everything comes first: no more of anything mends it.
  const blend::Blend& blend = misfit.solved.blend;
  misfit.conflicts = find_conflicts(blend, without_supplies(blend));
  misfit.of_the_framework = !misfit.conflicts.empty();
  if (!misfit.of_the_framework) misfit.conflicts = find_conflicts(blend, blend.program);
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
