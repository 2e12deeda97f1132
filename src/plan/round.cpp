// SPDX-License-Identifier: Apache-2.0
#include "plan/round.hpp"

#include <algorithm>
#include <cmath>

#include "language/amounts.hpp"
#include "language/membership.hpp"
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
    setting_.margin = 0;
    round_produce();
    if (!total_.is_positive() || !solve_rest()) return std::nullopt;
    // What is credited against something else is weighed before it.
    for (std::size_t i = 0; i < framework_.additions.size(); ++i) {
      if (!is_replaced(i)) round_addition(i);
    }
    round_substitutes();
    if (!solve_rest()) return std::nullopt;
    settle_credits();
    for (std::size_t i = 0; i < framework_.additions.size(); ++i) {
      if (is_replaced(i)) round_addition(i);
    }
    if (!solve_rest()) return std::nullopt;
    settle_finish();
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
    return result;
  }

  // ---- Produce ----------------------------------------------------------------------------------

  struct Portion {
    ColumnIndex column;
    Rational weight;     // rounded down to the scales
    Rational remainder;  // what that leaves out
    bool low_acid = false;
  };

  bool is_low_acid(language::IngredientId ingredient) const {
    // Without a published pH, or with one above the law's line (UK 4.5).
    const auto& ph = program_[ingredient].ph;
    return !ph || ph->value.high > Rational(Rational::Wide{45}, Rational::Wide{10});
  }

  void round_produce() {
    now_ = &solved_.solution;
    std::vector<Portion> portions;
    for (ColumnIndex column = 0; column < solved_.blend.columns.size(); ++column) {
      if (info(column).role != Role::produce) continue;
      const Rational exact = value(column);
      Portion portion{column, exact.floor_to(tools_.scale_step), 0,
                      is_low_acid(supply(column).ingredient)};
      portion.remainder = exact - portion.weight;
      portions.push_back(portion);
      total_ += portion.weight;
    }
    hand_out(portions);
    for (const Portion& portion : portions) {
      decide(portion.column, portion.weight);
      if (!portion.weight.is_positive()) continue;
      Taken each = taken(portion.column);
      each.weight = portion.weight;
      each.amount = portion.weight;
      draft_.produce.push_back(each);
    }
  }

  // Steps of the scales that rounding down left over go first to shares that would fall below their
  // least, then to acid produce before low-acid produce, largest remainder first, so that the whole
  // is what it should be. A finished weight is reached from above: less produce may not suffice.
  void hand_out(std::vector<Portion>& portions) {
    const Rational exact = grams(now_->columns[solved_.blend.total]);
    const bool up = draft_.task.aim.kind == AimKind::finished;
    const Rational wanted =
        up ? exact.ceil_to(tools_.scale_step) : exact.floor_to(tools_.scale_step);
    while (total_ < wanted) {
      Portion* best = nullptr;
      for (Portion& portion : portions) {
        if (!has_room(portion, portions) || fills_its_share(portion, portions, wanted)) continue;
        if (best == nullptr || comes_before(portion, *best, portions, wanted)) best = &portion;
      }
      if (best == nullptr) return;
      best->weight += tools_.scale_step;
      best->remainder -= tools_.scale_step;
      total_ += tools_.scale_step;
    }
  }

  Rational weight_of_share(std::size_t slot, const std::vector<Portion>& portions) const {
    Rational sum;
    for (const Portion& portion : portions) {
      if (info(portion.column).slot == slot) sum += portion.weight;
    }
    return sum;
  }

  bool lacks(const Portion& portion, const std::vector<Portion>& portions,
             const Rational& wanted) const {
    const std::size_t slot = info(portion.column).slot;
    return weight_of_share(slot, portions) < framework_.shares[slot].range.low * wanted;
  }

  // One step more would be too much for a share that is a range.
  bool fills_its_share(const Portion& portion, const std::vector<Portion>& portions,
                       const Rational& wanted) const {
    const std::size_t slot = info(portion.column).slot;
    const Bounds& range = framework_.shares[slot].range;
    return !range.is_exact() &&
           weight_of_share(slot, portions) + tools_.scale_step > range.high * wanted;
  }

  bool comes_before(const Portion& a, const Portion& b, const std::vector<Portion>& portions,
                    const Rational& wanted) const {
    const bool a_lacks = lacks(a, portions, wanted);
    const bool b_lacks = lacks(b, portions, wanted);
    if (a_lacks != b_lacks) return a_lacks;
    const bool a_has = a.remainder.is_positive();
    const bool b_has = b.remainder.is_positive();
    if (a_has != b_has) return a_has;
    if (a.low_acid != b.low_acid) return b.low_acid;
    return a.remainder > b.remainder;
  }

  bool has_room(const Portion& portion, const std::vector<Portion>& portions) const {
    const auto& available = supply(portion.column).available;
    if (!available) return true;
    Rational used = tools_.scale_step;
    for (const Portion& other : portions) {
      if (info(other.column).supply == info(portion.column).supply) used += other.weight;
    }
    return used <= *available;
  }

  // ---- Additions and credits --------------------------------------------------------------------

  bool solve_rest() {
    again_ = solve_again(given_, setting_);
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
    // The largest amount is settled last and takes up what rounding the others left.
    std::stable_sort(columns.begin(), columns.end(),
                     [&](ColumnIndex a, ColumnIndex b) { return value(a) < value(b); });
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
      if (last) {
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

  // What a supply still holds; a ton where it holds as much as is wanted.
  Rational left_of(ColumnIndex column) const {
    const Rational ton(1000000);
    const blend::Supply& from = supply(column);
    if (!from.available) return ton;
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

  void settle_finish() {
    if (!solved_.blend.evaporated) return;
    if (draft_.task.aim.kind == AimKind::finished) {
      draft_.finished = draft_.task.aim.weight;
      return;
    }
    Rational ingoing;
    for (const auto* list : {&draft_.produce, &draft_.additions, &draft_.substitutes}) {
      for (const Taken& each : *list) ingoing += each.weight;
    }
    const Rational left = ingoing - value(*solved_.blend.evaporated);
    const Rational rounded = left.round_to(tools_.scale_step);
    draft_.finished = rounded > ingoing ? ingoing : rounded;
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
