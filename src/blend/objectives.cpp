// SPDX-License-Identifier: Apache-2.0
// What a plan aims at, one after another.
#include <algorithm>

#include "blend/layout.hpp"
#include "language/method.hpp"

namespace maslin::blend {
namespace {

using language::Addition;
using language::Limit;
using language::ProduceShare;

class ObjectiveMaker {
 public:
  ObjectiveMaker(const Grounding& given, const Goal& goal, const Layout& layout, Blend& blend)
      : given_(given), framework_(given.framework), goal_(goal), layout_(layout), blend_(blend) {}

  void run() {
    if (goal_.kind == GoalKind::most) add_most();
    add_use_first();
    add_bought();
    add_preferred();
    add_least_added();
    add_finish();
    add_tie_break();
  }

 private:
  ColumnIndex add_column(std::string name) {
    blend_.columns.push_back({Role::deviation});
    return blend_.program.add_column({std::move(name), 0, infinity, background});
  }

  void add_row(std::string name, std::vector<Term> terms) {
    blend_.program.add_row({std::move(name), 0, 0, std::move(terms), background});
  }

  void add_objective(std::string name, Direction direction, std::vector<Term> terms) {
    if (terms.empty()) return;
    blend_.program.objectives.push_back({std::move(name), direction, std::move(terms)});
  }

  template <class Wanted>
  std::vector<Term> terms_where(Wanted wanted) const {
    std::vector<Term> terms;
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (!is_weight(blend_, column)) continue;
      const ColumnInfo& info = blend_.columns[column];
      if (wanted(info, blend_.supplies[info.supply])) terms.push_back({column, 1});
    }
    return terms;
  }

  void add_most() {
    add_objective("most of the basket", Direction::maximise,
                  terms_where([](const ColumnInfo& info, const Supply& supply) {
                    return info.role == Role::produce && supply.origin != Origin::to_buy;
                  }));
    // Where everything is to be bought there is nothing to use up: as much as may be bought.
    if (blend_.program.objectives.empty()) {
      add_objective("most", Direction::maximise, {{blend_.total, 1}});
    }
  }

  void add_use_first() {
    add_objective("use first", Direction::maximise,
                  terms_where([](const ColumnInfo& info, const Supply& supply) {
                    return info.role == Role::produce && supply.use_first;
                  }));
  }

  void add_bought() {
    auto terms = terms_where(
        [](const ColumnInfo&, const Supply& supply) { return supply.origin == Origin::to_buy; });
    const bool priced = std::all_of(terms.begin(), terms.end(), [&](const Term& term) {
      return blend_.supplies[blend_.columns[term.column].supply].price.has_value();
    });
    if (priced) {
      for (Term& term : terms) {
        const Supply& supply = blend_.supplies[blend_.columns[term.column].supply];
        term.coefficient = supply.price->to_double() * grams_in_kilogram;
      }
    }
    add_objective("bought", Direction::minimise, std::move(terms));
  }

  // |amount - preferred * total| as the sum of what is above and what is below.
  void add_deviation(const std::string& name, std::vector<Term> terms, double preferred,
                     double scale, std::vector<Term>& objective) {
    const ColumnIndex above = add_column("above " + name);
    const ColumnIndex below = add_column("below " + name);
    terms.push_back({blend_.total, -preferred});
    terms.push_back({above, -1});
    terms.push_back({below, 1});
    add_row("prefer " + name, std::move(terms));
    objective.push_back({above, scale});
    objective.push_back({below, scale});
  }

  void add_preferred() {
    std::vector<Term> objective;
    for (const std::size_t index : layout_.share_order) {
      const ProduceShare& share = framework_.shares[index];
      if (!share.prefer || layout_.produce[index].empty()) continue;
      add_deviation(share.target.name, ones(layout_.produce[index]), share.prefer->to_double(), 1,
                    objective);
    }
    for (const std::size_t index : layout_.addition_order) {
      const Addition& addition = framework_.additions[index];
      if (!addition.prefer || layout_.added[index].empty()) continue;
      // Back from litres or pieces to kilograms, so that all deviations weigh alike.
      const Supply& supply = blend_.supplies[blend_.columns[layout_.added[index].front()].supply];
      const double scale =
          1 / amount_per_gram(given_.program, addition, stuff_of(supply)).to_double();
      add_deviation(addition.target.name, amount_of(given_, blend_, layout_, index),
                    addition.prefer->to_double() / grams_in_kilogram, scale, objective);
    }
    add_objective("nearest to what is preferred", Direction::minimise, std::move(objective));
  }

  void add_least_added() {
    std::vector<Term> terms;
    for (const std::size_t index : layout_.addition_order) {
      if (framework_.additions[index].prefer) continue;
      for (const ColumnIndex column : layout_.added[index]) terms.push_back({column, 1});
    }
    for (const auto& columns : layout_.donated) {
      for (const ColumnIndex column : columns) terms.push_back({column, 1});
    }
    add_objective("least added", Direction::minimise, std::move(terms));
  }

  // Where the method says how far to boil down, that; else the middle of the range; with one end
  // only, that end.
  double wanted_share(const Limit& limit) const {
    if (limit.property == language::Property::soluble_solids) {
      if (const auto solids = language::solids_at_the_end(framework_.method)) {
        return solids->to_double();
      }
    }
    constexpr double half = 0.5;
    if (limit.has_low && limit.has_high) {
      return half * (limit.range.low + limit.range.high).to_double();
    }
    return (limit.has_low ? limit.range.low : limit.range.high).to_double();
  }

  // What simmers and is not boiled down loses a little, whatever range its limits leave.
  void add_finish_of_a_simmer() {
    double left = 1;
    for (const language::Stage& stage : framework_.method.stages) {
      for (const language::Step& step : stage.steps) {
        if (is_heat(step.kind)) left *= 1 - language::most_lost(step).to_double() / 2;
      }
    }
    std::vector<Term> terms;
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (is_weight(blend_, column)) terms.push_back({column, left - 1});
    }
    terms.push_back({*blend_.evaporated, 1});
    minimise_distance(std::move(terms));
  }

  // From where the terms come to nothing.
  void minimise_distance(std::vector<Term> terms) {
    const ColumnIndex above = add_column("above the finish");
    const ColumnIndex below = add_column("below the finish");
    terms.push_back({above, -1});
    terms.push_back({below, 1});
    add_row("finish", std::move(terms));
    add_objective("finish", Direction::minimise, {{above, 1}, {below, 1}});
  }

  void add_finish() {
    if (only_simmers(framework_.method)) {
      if (blend_.evaporated) add_finish_of_a_simmer();
      return;
    }
    for (const Limit& limit : framework_.limits) {
      if (!is_linear(limit) || !is_of_finished(limit) || !limit.property) continue;
      if (!limit.has_low && !limit.has_high) continue;
      constexpr double half = 0.5;
      const double wanted = wanted_share(limit);
      std::vector<Term> terms;
      for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
        if (!is_weight(blend_, column)) continue;
        const double share = half * (share_at(given_, blend_, limit, column, true) +
                                     share_at(given_, blend_, limit, column, false));
        if (share != wanted) terms.push_back({column, share - wanted});
      }
      terms.push_back({*blend_.evaporated, wanted});
      minimise_distance(std::move(terms));
    }
  }

  // Where all that leaves a choice, the earlier name is taken first.
  void add_tie_break() {
    std::vector<ColumnIndex> columns;
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (is_weight(blend_, column)) columns.push_back(column);
    }
    std::stable_sort(columns.begin(), columns.end(), [&](ColumnIndex a, ColumnIndex b) {
      return blend_.program.columns[a].name < blend_.program.columns[b].name;
    });
    std::vector<Term> terms;
    double rank = 1;
    for (const ColumnIndex column : columns) {
      terms.push_back({column, rank / static_cast<double>(columns.size())});
      rank += 1;
    }
    if (blend_.evaporated) terms.push_back({*blend_.evaporated, 2});
    add_objective("by name", Direction::minimise, std::move(terms));
  }

  const Grounding& given_;
  const language::Framework& framework_;
  const Goal& goal_;
  const Layout& layout_;
  Blend& blend_;
};

}  // namespace

void add_objectives(const Grounding& given, const Goal& goal, const Layout& layout, Blend& blend) {
  ObjectiveMaker(given, goal, layout, blend).run();
}

}  // namespace maslin::blend
