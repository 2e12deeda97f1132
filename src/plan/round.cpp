// SPDX-License-Identifier: Apache-2.0
#include "plan/round.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "blend/layout.hpp"
#include "language/amounts.hpp"
#include "language/membership.hpp"
#include "plan/portions.hpp"
#include "plan/tool.hpp"

namespace maslin::plan {
namespace {

using blend::ColumnIndex;
using blend::Role;
using language::Addition;
using language::Extent;
using language::Stuff;
using language::Substitution;

constexpr double grams_in_kilogram = 1000;
const Rational thousand(1000);

// Grams, to a hundred-thousandth: finer than the solver is sure of.
Rational grams(double kilograms) {
  constexpr double parts = 1e5;
  return {static_cast<Rational::Wide>(std::llround(kilograms * grams_in_kilogram * parts)),
          static_cast<Rational::Wide>(parts)};
}

class Rounder {
 public:
  Rounder(const blend::Grounding& grounding, const Task& task, const Solved& solved)
      : given_(grounding),
        program_(grounding.program),
        framework_(grounding.framework),
        solved_(solved),
        setting_(solved.setting),
        tools_(tools_of(program_, task.kitchen)) {
    draft_.task = task;
    draft_.credits.resize(framework_.substitutions.size());
  }

  std::optional<Draft> run() {
    if (!round_produce() || !total_.is_positive() || !solve_rest()) return std::nullopt;
    // What is credited against something else is weighed before it. Two slots may draw on one
    // supply: by name, so that the order of statements does not matter.
    const auto additions =
        blend::by_name(framework_.additions, [](const Addition& each) { return each.target.name; });
    for (const std::size_t each : additions) {
      if (!is_replaced(each)) round_addition(each);
    }
    round_substitutes();
    if (!solve_rest()) return std::nullopt;
    settle_credits();
    for (const std::size_t each : additions) {
      if (is_replaced(each)) round_addition(each);
    }
    tighten_credits();
    if (!solve_rest()) return std::nullopt;
    settle_finish();
    std::stable_sort(draft_.additions.begin(), draft_.additions.end(),
                     [&](const Taken& a, const Taken& b) { return place(a) < place(b); });
    return std::move(draft_);
  }

 private:
  const blend::ColumnInfo& info(ColumnIndex column) const { return solved_.blend.columns[column]; }
  const blend::Supply& supply(ColumnIndex column) const {
    return solved_.blend.supplies[info(column).supply];
  }
  Stuff stuff(ColumnIndex column) const {
    return {supply(column).ingredient, supply(column).acidity};
  }
  Rational value(ColumnIndex column) const { return grams(now_->columns[column]); }

  std::vector<ColumnIndex> columns_of(Role role, std::size_t slot) const {
    std::vector<ColumnIndex> columns;
    for (ColumnIndex column = 0; column < solved_.blend.columns.size(); ++column) {
      if (info(column).role == role && info(column).slot == slot) columns.push_back(column);
    }
    return columns;
  }

  void decide(ColumnIndex column, const Rational& weight) {
    setting_.decided[column] = weight.to_double() / grams_in_kilogram;
  }

  Taken taken(ColumnIndex column) const {
    Taken result;
    result.slot = info(column).slot;
    result.ingredient = supply(column).ingredient;
    result.origin = supply(column).origin;
    result.acidity = supply(column).acidity;
    result.use_first = supply(column).use_first;
    result.sulphited = supply(column).sulphited;
    return result;
  }

  // ---- Produce ----------------------------------------------------------------------------------

  bool is_low_acid(language::IngredientId ingredient) const {
    // Without a published pH, or with one above the law's line (UK 4.5).
    const auto& ph = program_[ingredient].ph;
    return !ph || ph->value.high > Rational(Rational::Wide{45}, Rational::Wide{10});
  }

  bool round_produce() {
    now_ = &solved_.solution;
    std::vector<ColumnIndex> columns;
    std::vector<Portion> portions;
    for (ColumnIndex column = 0; column < solved_.blend.columns.size(); ++column) {
      if (info(column).role != Role::produce) continue;
      columns.push_back(column);
      portions.push_back({info(column).slot, info(column).supply, value(column), left_of(column),
                          is_low_acid(supply(column).ingredient), 0});
    }
    // A finished weight is reached from above: less produce may not suffice.
    Weighing weighing;
    weighing.step = tools_.scale_step;
    weighing.from_above = draft_.task.aim.kind == AimKind::finished;
    for (const auto& share : framework_.shares) weighing.shares.push_back(share.range);
    for (const auto& limit : framework_.limits) add_cap(limit, columns, weighing);
    if (!weigh_out(weighing, portions)) return false;
    for (std::size_t i = 0; i < portions.size(); ++i) {
      decide(columns[i], portions[i].weight);
      if (!portions[i].weight.is_positive()) continue;
      total_ += portions[i].weight;
      Taken each = taken(columns[i]);
      each.weight = portions[i].weight;
      each.amount = portions[i].weight;
      draft_.produce.push_back(each);
    }
    return true;
  }

  void add_cap(const language::Limit& limit, const std::vector<ColumnIndex>& columns,
               Weighing& weighing) const {
    if (limit.property || !limit.has_high || limit.whole != language::Whole::prepared_produce) {
      return;
    }
    Cap cap{{}, limit.range.high};
    for (const ColumnIndex column : columns) {
      cap.counts.push_back(takes(program_, limit.share_of, supply(column).ingredient));
    }
    weighing.caps.push_back(std::move(cap));
  }

  // ---- Additions and credits --------------------------------------------------------------------

  // In the order of the framework, what is replaced in part after the rest.
  std::pair<bool, std::size_t> place(const Taken& taken) const {
    return {is_replaced(taken.slot), taken.slot};
  }

  // What is left to choose. Where a supply ends inside a step, a plain ratio may be out of reach by
  // as much.
  bool solve_rest() {
    again_ = solve_again(given_, setting_);
    if (again_.solution.status != blend::Status::optimal) {
      setting_.ratio_slack = tools_.scale_step.to_double() / grams_in_kilogram;
      again_ = solve_again(given_, setting_);
    }
    now_ = &again_.solution;
    return now_->status == blend::Status::optimal;
  }

  bool is_replaced(std::size_t addition) const {
    return std::any_of(framework_.substitutions.begin(), framework_.substitutions.end(),
                       [&](const Substitution& each) {
                         return each.addition == addition && each.donor.name != each.replaced.name;
                       });
  }

  Rational credits_on(std::size_t addition) const {
    Rational sum;
    for (std::size_t i = 0; i < framework_.substitutions.size(); ++i) {
      if (framework_.substitutions[i].addition == addition) sum += draft_.credits[i];
    }
    return sum;
  }

  Rational wanted_per(const Rational& ratio) const { return ratio * total_ / thousand; }

  void round_addition(std::size_t index) {
    const Addition& addition = framework_.additions[index];
    auto columns = columns_of(Role::addition, index);
    if (columns.empty()) return;
    // The largest amount of which there is more is settled last and takes up what rounding the
    // others left.
    std::stable_sort(columns.begin(), columns.end(), [&](ColumnIndex a, ColumnIndex b) {
      const bool a_ends = ends(a);
      const bool b_ends = ends(b);
      return a_ends != b_ends ? a_ends : value(a) < value(b);
    });
    Rational counted = credits_on(index);
    for (std::size_t i = 0; i < columns.size(); ++i) {
      const ColumnIndex column = columns[i];
      const Rational per_gram = amount_per_gram(program_, addition, stuff(column));
      Rational weight = value(column);
      const bool last = i + 1 == columns.size();
      if (last && addition.range.is_exact()) {
        weight = (wanted_per(addition.range.low) - counted) / per_gram;
      }
      Taken each = taken(column);
      Bounds room{0, left_of(column)};
      if (last && !addition.range.is_exact()) {
        room.low = (wanted_per(addition.range.low) - counted) / per_gram;
        room.high = smaller(room.high, (wanted_per(addition.range.high) - counted) / per_gram);
      }
      measure_out(each, weight, addition, room, Role::addition);
      counted += each.weight * per_gram;
      decide(column, each.weight);
      if (each.weight.is_positive()) draft_.additions.push_back(each);
    }
    loosen(index);
  }

  // Whether the supply does not last for a step more.
  bool ends(ColumnIndex column) const {
    return left_of(column) < value(column) + tools_.scale_step;
  }

  // What a supply still holds, and plenty where it holds as much as is wanted.
  Rational left_of(ColumnIndex column) const {
    const Rational plenty(1000000000000L);
    const blend::Supply& from = supply(column);
    if (!from.available) return plenty;
    Rational used;
    for (const auto* list : {&draft_.produce, &draft_.additions, &draft_.substitutes}) {
      for (const Taken& each : *list) {
        if (each.ingredient == from.ingredient && each.origin == from.origin &&
            each.acidity == from.acidity && each.use_first == from.use_first) {
          used += each.weight;
        }
      }
    }
    return *from.available - used;
  }

  void measure_out(Taken& each, const Rational& weight, const Addition& addition,
                   const Bounds& room, Role role) const {
    const language::Ingredient& ingredient = program_[each.ingredient];
    const bool acid = language::is_acid_donor(program_, {each.ingredient, each.acidity});
    // A donor that is put in for something else must suffice for it.
    const bool donor = role == Role::substitute;
    const Direction direction = acid || donor                          ? Direction::up
                                : is_low_acid_produce(each.ingredient) ? Direction::down
                                                                       : Direction::nearest;
    const Tooling tooling = choose_tool(program_, tools_, ingredient, addition, weight);
    measure(tooling, weight, direction, room, each);
  }

  bool is_low_acid_produce(language::IngredientId ingredient) const {
    return program_[ingredient].ph && is_low_acid(ingredient);
  }

  // Rounding may leave a plain ratio by a step; the rows that come after must not fail for it.
  void loosen(std::size_t index) { setting_.settled.push_back(index); }

  void round_substitutes() {
    for (std::size_t i = 0; i < framework_.substitutions.size(); ++i) {
      const Substitution& substitution = framework_.substitutions[i];
      for (const ColumnIndex column : columns_of(Role::substitute, i)) {
        Taken each = taken(column);
        measure_out(each, value(column), framework_.additions[substitution.addition],
                    {0, left_of(column)}, Role::substitute);
        decide(column, each.weight);
        if (each.weight.is_positive()) draft_.substitutes.push_back(each);
      }
    }
  }

  bool donates(const Substitution& substitution, language::IngredientId ingredient) const {
    if (!takes(program_, substitution.donor, ingredient)) return false;
    return substitution.only.empty() ||
           std::any_of(substitution.only.begin(), substitution.only.end(),
                       [&](const auto& target) { return takes(program_, target, ingredient); });
  }

  Rational brought(std::size_t index) const {
    const Substitution& substitution = framework_.substitutions[index];
    Rational sum;
    const auto add = [&](const Taken& each) {
      const Rational worth =
          credit_per_gram(program_, substitution, framework_, {each.ingredient, each.acidity});
      if (donates(substitution, each.ingredient) && worth.is_positive()) sum += worth * each.weight;
    };
    for (const Taken& each : draft_.produce) add(each);
    for (const Taken& each : draft_.additions) {
      if (each.slot != substitution.addition) add(each);
    }
    for (const Taken& each : draft_.substitutes) {
      if (each.slot == index) add(each);
    }
    return sum;
  }

  void settle_credits() {
    for (std::size_t i = 0; i < framework_.substitutions.size(); ++i) {
      const Substitution& substitution = framework_.substitutions[i];
      if (substitution.donor.name == substitution.replaced.name) continue;
      const Addition& addition = framework_.additions[substitution.addition];
      const auto columns = columns_of(Role::credit, i);
      // A plain ratio says what the cap is a share of; a range only once it is chosen.
      Rational whole = wanted_per(addition.range.low);
      if (!addition.range.is_exact()) whole = chosen_amount(substitution.addition);
      Rational credit = smaller(brought(i), substitution.cap.value_or(Rational(1)) * whole);
      if (substitution.extent == Extent::optional && !columns.empty()) {
        credit = smaller(credit, value(columns.front()));
      }
      draft_.credits[i] = credit;
      if (!columns.empty()) decide(columns.front(), credit);
    }
  }

  // What may be credited of a range follows what was weighed out, and that may be a step less.
  void tighten_credits() {
    for (std::size_t i = 0; i < framework_.substitutions.size(); ++i) {
      const Substitution& substitution = framework_.substitutions[i];
      const Addition& addition = framework_.additions[substitution.addition];
      const Rational cap = substitution.cap.value_or(Rational(1));
      if (substitution.extent == Extent::full || addition.range.is_exact() || cap >= Rational(1)) {
        continue;
      }
      Rational others = credits_on(substitution.addition) - draft_.credits[i];
      for (const Taken& each : draft_.additions) {
        if (each.slot != substitution.addition) continue;
        others +=
            each.weight * amount_per_gram(program_, addition, {each.ingredient, each.acidity});
      }
      draft_.credits[i] = smaller(draft_.credits[i], others * cap / (Rational(1) - cap));
      const auto columns = columns_of(Role::credit, i);
      if (!columns.empty()) decide(columns.front(), draft_.credits[i]);
    }
  }

  Rational chosen_amount(std::size_t index) const {
    const Addition& addition = framework_.additions[index];
    Rational sum;
    for (const ColumnIndex column : columns_of(Role::addition, index)) {
      sum += value(column) * amount_per_gram(program_, addition, stuff(column));
    }
    for (std::size_t i = 0; i < framework_.substitutions.size(); ++i) {
      if (framework_.substitutions[i].addition != index) continue;
      for (const ColumnIndex column : columns_of(Role::credit, i)) sum += value(column);
    }
    return sum;
  }

  // ---- The finish -------------------------------------------------------------------------------

  // As near as the scales come to what was worked out, or to the aim, inside the limits of what
  // leaves the pan.
  void settle_finish() {
    if (!solved_.blend.evaporated) return;
    const bool aimed = draft_.task.aim.kind == AimKind::finished;
    const Rational ingoing = in_the_pan([](const Taken&) { return Rational(1); });
    Rational left = draft_.task.aim.weight;
    if (!aimed) left = (ingoing - value(*solved_.blend.evaporated)).round_to(tools_.scale_step);
    const Bounds window = finish_window(ingoing);
    const Rational least = window.low.ceil_to(tools_.scale_step);
    const Rational most = window.high.floor_to(tools_.scale_step);
    if (left < window.low) left = least <= window.high ? least : window.low;
    if (left > window.high) left = most >= window.low ? most : window.high;
    draft_.finished = left;
  }

  template <class PartOf>
  Rational in_the_pan(PartOf part_of) const {
    Rational sum;
    for (const auto* list : {&draft_.produce, &draft_.additions, &draft_.substitutes}) {
      for (const Taken& each : *list) sum += each.weight * part_of(each);
    }
    return sum;
  }

  // What may be left, so that every limit on it holds at the unfavourable end of the figures.
  Bounds finish_window(const Rational& ingoing) const {
    Bounds window{0, ingoing};
    for (const language::Limit& limit : framework_.limits) {
      if (!is_linear(limit) || !is_of_finished(limit)) continue;
      const auto sum = [&](bool low) {
        return in_the_pan([&](const Taken& each) { return share_at(limit, each, low); });
      };
      if (limit.has_low && limit.range.low.is_positive()) {
        window.high = smaller(window.high, sum(true) / limit.range.low);
      }
      if (limit.has_high && limit.range.high.is_positive()) {
        window.low = larger(window.low, sum(false) / limit.range.high);
      }
    }
    return window;
  }

  Rational share_at(const language::Limit& limit, const Taken& each, bool low) const {
    if (!limit.property) {
      return takes(program_, limit.share_of, each.ingredient) ? Rational(1) : Rational(0);
    }
    const auto share = share_of(program_, *limit.property, {each.ingredient, each.acidity});
    if (!share) return low ? Rational(0) : Rational(1);
    return low ? share->low : share->high;
  }

  const blend::Grounding& given_;
  const language::Program& program_;
  const language::Framework& framework_;
  const Solved& solved_;
  blend::Setting setting_;
  Tools tools_;
  Solved again_;
  const blend::Solution* now_ = nullptr;
  Rational total_;
  Draft draft_;
};

}  // namespace

std::optional<Draft> round_plan(const blend::Grounding& grounding, const Task& task,
                                const Solved& solved) {
  return Rounder(grounding, task, solved).run();
}

}  // namespace maslin::plan
