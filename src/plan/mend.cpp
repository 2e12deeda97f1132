// SPDX-License-Identifier: Apache-2.0
#include "plan/mend.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "language/amounts.hpp"
#include "plan/attempt.hpp"
#include "plan/fill.hpp"
#include "plan/line_text.hpp"
#include "plan/weights.hpp"
#include "plan/worth_buying.hpp"

namespace maslin::plan {
namespace {

using blend::StatementInfo;
using blend::StatementKind;
using language::IngredientId;
using language::Line;
using language::Origin;

constexpr double grams_in_kilogram = 1000;
constexpr std::size_t most_candidates = 8;
constexpr std::size_t enough = 2;  // changes to choose from

class MendFinder {
 public:
  MendFinder(const language::Program& program, const Task& task, const Misfit& misfit)
      : original_(program),
        changed_(program),
        task_(task),
        misfit_(misfit),
        hard_(misfit.solved.blend),
        tools_(tools_of(program, task.kitchen)) {}

  std::vector<Mend> run() {
    const bool asked = task_.aim.kind != AimKind::most;
    const bool clash = !misfit_.conflicts.empty();
    // Conflicts share no statement: one supply can be in all of them only where there is one.
    if (asked && misfit_.conflicts.size() == 1) {
      for (const std::size_t supply : supplies_in_conflict()) try_more(supply);
    }
    if (!asked && clash) try_more_in_store();
    try_buying_each();
    if (asked) try_smaller_batch();
    if (!has_change() && asked && clash) try_together();
    std::stable_sort(mends_.begin(), mends_.end(),
                     [](const Mend& a, const Mend& b) { return a.asked < b.asked; });
    return std::move(mends_);
  }

 private:
  std::size_t changes() const {
    return static_cast<std::size_t>(std::count_if(
        mends_.begin(), mends_.end(), [](const Mend& mend) { return !mend.edits.empty(); }));
  }
  std::vector<std::size_t> supplies_in_conflict() const {
    std::vector<std::size_t> result;
    for (const StatementInfo& info : misfit_.statements()) {
      if (info.kind == StatementKind::supply) result.push_back(info.index);
    }
    return result;
  }
  bool has_change() const { return changes() > 0; }
  blend::Grounding grounding() const {
    const language::Kitchen* kitchen = task_.kitchen.valid() ? &changed_[task_.kitchen] : nullptr;
    return {changed_, changed_[task_.framework], changed_[task_.basket], kitchen};
  }
  void restore() {
    changed_.baskets[task_.basket.index] = original_[task_.basket];
    if (task_.kitchen.valid()) changed_.kitchens[task_.kitchen.index] = original_[task_.kitchen];
  }

  std::optional<Plan> attempt(const Task& task) {
    if (!check_grounding(grounding(), unheard_)) return std::nullopt;
    return attempt_plan(grounding(), task).plan;
  }

  // With more at hand the mix may change, and with it what the jars that were asked for take.
  Task followed() const {
    Task task = task_;
    if (!task.jars.empty()) task.aim = aim_to_fill(changed_, task);
    return task;
  }

  Line& line_at(blend::LineReference reference) {
    return reference.in_store ? changed_.kitchens[task_.kitchen.index].store[reference.index]
                              : changed_.baskets[task_.basket.index].lines[reference.index];
  }

  // ---- More of what is at hand ------------------------------------------------------------------

  // Rows that say how much of a supply there is, with one column more for what would be added.
  blend::ColumnIndex ease(blend::LinearProgram& program, std::size_t supply) const {
    const blend::ColumnIndex extra = program.add_column({"extra", 0, blend::infinity});
    for (blend::Row& row : program.rows) {
      if (row.statement == blend::background) continue;
      const StatementInfo& info = hard_.statements[row.statement];
      if (info.kind == StatementKind::supply && info.index == supply) {
        row.terms.push_back({extra, -1});
      }
    }
    return extra;
  }

  bool can_grow(const blend::Supply& supply) const {
    return supply.available && !supply.lines.empty();
  }

  void try_more(std::size_t index) {
    const blend::Supply& supply = hard_.supplies[index];
    if (!can_grow(supply)) return;
    blend::LinearProgram eased = hard_.program;
    const blend::ColumnIndex extra = ease(eased, index);
    eased.objectives = {{"extra", blend::Direction::minimise, {{extra, 1}}}};
    const blend::Solution solution = blend::try_to_solve(eased);
    if (solution.status != blend::Status::optimal) return;
    offer_more({{index, solution.columns[extra]}});
  }

  struct More {
    std::size_t supply;
    double kilograms;  // ready for the pan
  };

  // What the exact answer asks for, and a little above it where rounding needs room.
  void offer_more(const std::vector<More>& more) {
    constexpr std::array<long, 4> steps_above = {1, 5, 25, 100};
    for (const long steps : steps_above) {
      Mend mend;
      for (const More& each : more) {
        add_to_line(each, tools_.scale_step * Rational(steps), mend);
      }
      const bool works = attempt(followed()).has_value();
      restore();
      if (!works) continue;
      mends_.push_back(std::move(mend));
      return;
    }
  }

  void add_to_line(const More& more, const Rational& room, Mend& mend) {
    const blend::Supply& supply = hard_.supplies[more.supply];
    Line& line = line_at(supply.lines.front());
    // A mend of several kilograms needs more room than a few steps: a thousandth for each step.
    const Rational exact(static_cast<long>(std::ceil(more.kilograms * grams_in_kilogram)));
    const Rational thousandth(Rational::Wide{1}, Rational::Wide{1000});
    const Rational prepared = exact + room + exact * thousandth * (room / tools_.scale_step);
    // Whole grams at least: that is how a weight is written.
    const Rational step = larger(tools_.scale_step, 1);
    if (supply.origin == Origin::to_buy) {
      raise_at_most(line, prepared, step, mend);
      return;
    }
    const Rational added = (prepared / prepared_share(changed_, line)).ceil_to(step);
    *line.weight += added;
    mend.edits.push_back({line.amount_span, amount_text(changed_, line)});
    mend.asked += added;
    const bool gross = line.basis == language::WeighedAs::gross;
    mend.text += fmt::format("{}{} of {}{}", mend.text.empty() ? "add " : ", ", weight_text(added),
                             changed_[line.ingredient].name, gross ? " (gross)" : "");
  }

  // What may be bought is weighed as in the shop, in whole packs where it comes in packs.
  void raise_at_most(Line& line, const Rational& prepared, const Rational& step, Mend& mend) const {
    const auto& edible = original_[line.ingredient].edible;
    const Rational share = edible ? middle(edible->value) : Rational(1);
    const Rational before = *line.at_most;
    line.at_most = (before + prepared / share).ceil_to(line.pack ? *line.pack : step);
    mend.edits.push_back({line.at_most_span, weight_text(*line.at_most)});
    mend.asked += *line.at_most - before;
    mend.text += fmt::format("{}buy up to {} of {} instead of {}", mend.text.empty() ? "" : ", ",
                             weight_text(*line.at_most), original_[line.ingredient].name,
                             weight_text(before));
  }

  // Without an aim there is no least amount to ask for: what the store lacks is doubled.
  void try_more_in_store() {
    if (!task_.kitchen.valid()) return;
    for (const std::size_t index : supplies_in_conflict()) {
      const blend::Supply& supply = hard_.supplies[index];
      if (supply.origin != Origin::store) continue;
      offer_more({{index, supply.available->to_double() / grams_in_kilogram}});
    }
  }

  void try_together() {
    blend::LinearProgram eased = hard_.program;
    std::vector<std::pair<std::size_t, blend::ColumnIndex>> extras;
    blend::Objective objective{"extra", blend::Direction::minimise, {}};
    for (std::size_t i = 0; i < hard_.supplies.size(); ++i) {
      if (!can_grow(hard_.supplies[i])) continue;
      extras.emplace_back(i, ease(eased, i));
      objective.terms.push_back({extras.back().second, 1});
    }
    if (extras.empty()) return;
    eased.objectives = {objective};
    const blend::Solution solution = blend::try_to_solve(eased);
    if (solution.status != blend::Status::optimal) return;
    std::vector<More> more;
    constexpr double least = 1e-6;
    for (const auto& [supply, column] : extras) {
      if (solution.columns[column] > least) more.push_back({supply, solution.columns[column]});
    }
    if (!more.empty()) offer_more(more);
  }

  // ---- Buying -----------------------------------------------------------------------------------

  bool is_at_hand(IngredientId id) const {
    return std::any_of(
        hard_.supplies.begin(), hard_.supplies.end(),
        [&](const blend::Supply& supply) { return supply.ingredient == id && can_grow(supply); });
  }

  // Only where more of what there is does not help: that is what a cook thinks of first.
  void try_buying_each() {
    if (has_change()) return;
    const auto lists = worth_buying(original_, task_, misfit_.statements());
    std::vector<IngredientId> tried;
    for (const auto& list : lists) {
      for (const IngredientId id : list) {
        const bool again = std::find(tried.begin(), tried.end(), id) != tried.end();
        // More of what there is already was tried by itself.
        if (again || is_at_hand(id) || tried.size() == most_candidates) continue;
        if (changes() == enough) return;
        tried.push_back(id);
        // Where one of a class does not fit by any amount, its like hardly will.
        if (!try_buying({id})) break;
      }
    }
    for (std::size_t choice = 0; choice < 2 && !has_change(); ++choice) {
      std::vector<IngredientId> one_of_each;
      for (const auto& list : lists) {
        if (choice < list.size()) one_of_each.push_back(list[choice]);
      }
      if (one_of_each.size() > 1) try_buying(one_of_each);
    }
  }

  // Whether there are amounts with which these fit.
  bool try_buying(const std::vector<IngredientId>& ids) {
    for (const IngredientId id : ids) {
      changed_.baskets[task_.basket.index].lines.push_back(line_to_buy(id));
    }
    const bool good = check_grounding(grounding(), unheard_);
    const Attempt tried = good ? attempt_plan(grounding(), followed()) : Attempt{};
    restore();
    if (!good || tried.outcome == Outcome::misfit || tried.outcome == Outcome::nothing)
      return false;
    const auto& plan = tried.plan;
    if (!plan) return true;
    Mend mend;
    std::string lines;
    std::vector<std::string> written;
    for (const IngredientId id : ids) {
      const Rational bought = bought_of(*plan, id);
      if (!bought.is_positive()) continue;
      const auto& edible = original_[id].edible;
      const Rational gross = edible ? bought / middle(edible->value) : bought;
      // Another thing to fetch asks more of a cook than more of what there is.
      mend.asked += gross * Rational(2);
      mend.text += fmt::format("{}{} of {}{}", mend.text.empty() ? "buy " : " and ",
                               weight_text(gross.ceil_to(larger(tools_.scale_step, 1))),
                               original_[id].name, edible ? " (gross)" : "");
      const std::string name = written_name(original_[id].name);
      lines += fmt::format("{}`{} to buy`", lines.empty() ? "" : ", ", name);
      const bool strength = needs_strength(original_[id]);
      written.push_back(name + " to buy" + (strength ? ", 5 % acidity" : ""));
    }
    if (written.size() < ids.size()) return true;
    mend.text += ": " + lines;
    mend.edits.push_back(new_lines_edit(original_[task_.basket], written));
    mends_.push_back(std::move(mend));
    return true;
  }

  // A quick look, before all objectives are solved and rounded: whether any amounts fit.
  bool may_fit() const {
    for (const bool at_cap : {false, true}) {
      blend::Setting setting;
      setting.goal = goal_of(task_.aim);
      setting.at_cap.assign(original_[task_.framework].substitutions.size(), at_cap);
      blend::LinearProgram program = blend::ground(grounding(), setting).program;
      program.objectives.clear();
      if (blend::try_to_solve(program).status == blend::Status::optimal) return true;
    }
    return false;
  }

  Line line_to_buy(IngredientId id) const {
    Line line;
    line.ingredient = id;
    line.name = original_[id].name;
    line.to_buy = true;
    if (needs_strength(original_[id])) {
      line.acidity = Rational(Rational::Wide{5}, Rational::Wide{100});
    }
    return line;
  }

  static Rational bought_of(const Plan& plan, IngredientId id) {
    Rational sum;
    const Draft& draft = plan.verified.draft();
    for (const auto* list : {&draft.produce, &draft.additions, &draft.substitutes}) {
      for (const Taken& taken : *list) {
        if (taken.ingredient == id && taken.origin == Origin::to_buy) sum += taken.weight;
      }
    }
    return sum;
  }

  // ---- A smaller batch --------------------------------------------------------------------------

  // What the basket gives at the most, whether credits stay below their caps or reach them.
  std::optional<double> most_reached(bool finished) {
    std::optional<double> most;
    for (const bool at_cap : {false, true}) {
      Solved solved;
      solved.setting.at_cap.assign(original_[task_.framework].substitutions.size(), at_cap);
      solved.blend = blend::ground(grounding(), solved.setting);
      solved.blend.program.objectives.resize(1);
      solved.solution = blend::try_to_solve(solved.blend.program);
      if (solved.solution.status == blend::Status::optimal) {
        const double reached = finished ? finished_of(solved) : total_of(solved);
        most = std::max(most.value_or(0), reached);
      }
      if (hard_.full_substitutions == 0) break;
    }
    return most;
  }

  void try_smaller_batch() {
    const bool finished = task_.aim.kind == AimKind::finished;
    const auto kilograms = most_reached(finished);
    if (!kilograms) return;
    const Rational reached(static_cast<long>(std::floor(*kilograms * grams_in_kilogram)));
    // At the very most every bound is met at once, which rounds badly.
    constexpr std::array<long, 3> steps_below = {2, 10, 40};
    for (const long steps : steps_below) {
      Task smaller_batch = task_;
      smaller_batch.aim.weight =
          (reached - tools_.scale_step * Rational(steps)).floor_to(tools_.scale_step);
      if (!smaller_batch.aim.weight.is_positive() || smaller_batch.aim.weight >= task_.aim.weight ||
          !attempt(smaller_batch)) {
        continue;
      }
      Mend mend;
      mend.aim = smaller_batch.aim;
      mend.asked = task_.aim.weight - smaller_batch.aim.weight;
      mend.text = fmt::format("make no more than {} of {}", weight_text(smaller_batch.aim.weight),
                              finished ? "finished product" : "prepared produce");
      if (!task_.jars.empty()) {
        mend.text +=
            fmt::format(", with `--aim \"{} {}\"` instead of `--fill`",
                        weight_text(smaller_batch.aim.weight), finished ? "finished" : "prepared");
      }
      mends_.push_back(std::move(mend));
      return;
    }
  }

  const language::Program& original_;
  language::Program changed_;
  const Task& task_;
  const Misfit& misfit_;
  const blend::Blend& hard_;  // with no solution
  Tools tools_;
  std::vector<Mend> mends_;
  Diagnostics unheard_;
};

}  // namespace

std::vector<Mend> find_mends(const language::Program& program, const Task& task,
                             const Misfit& misfit) {
  return MendFinder(program, task, misfit).run();
}

}  // namespace maslin::plan
