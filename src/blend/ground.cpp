// SPDX-License-Identifier: Apache-2.0
#include "blend/ground.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "language/amounts.hpp"
#include "language/membership.hpp"

namespace maslin::blend {
namespace {

using language::Addition;
using language::Framework;
using language::Limit;
using language::Measured;
using language::Program;
using language::Property;
using language::Share;
using language::Stuff;
using language::Substitution;

constexpr double grams_in_kilogram = 1000;

// Indices in the order of a name, so that the order of statements does not matter.
template <class List, class NameOf>
std::vector<std::size_t> by_name(const List& list, NameOf name_of) {
  std::vector<std::size_t> order(list.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return name_of(list[a]) < name_of(list[b]); });
  return order;
}

Stuff stuff_of(const Supply& supply) { return {supply.ingredient, supply.acidity}; }

class Grounder {
 public:
  Grounder(const Grounding& grounding, const Setting& setting)
      : given_(grounding),
        program_(grounding.program),
        framework_(grounding.framework),
        setting_(setting) {}

  Blend run() {
    blend_.supplies = supplies(program_, given_.basket, given_.kitchen);
    make_columns();
    add_availability();
    add_total();
    add_shares();
    add_additions();
    add_substitutions();
    add_limits();
    add_goal();
    add_objectives();
    for (const auto& [column, value] : setting_.decided) {
      blend_.program.columns[column].lower = value;
      blend_.program.columns[column].upper = value;
    }
    return std::move(blend_);
  }

 private:
  // ---- Columns ----------------------------------------------------------------------------------

  ColumnIndex add_column(std::string name, ColumnInfo info, double upper = infinity) {
    blend_.columns.push_back(info);
    return blend_.program.add_column({std::move(name), 0, upper, background});
  }

  void make_columns() {
    blend_.total = add_column("total", {Role::total});
    const auto share_order =
        by_name(framework_.shares, [](const Share& share) { return share.target.name; });
    produce_.resize(framework_.shares.size());
    for (const std::size_t share : share_order) {
      make_taken(framework_.shares[share].target, {Role::produce, share}, produce_[share]);
    }
    addition_order_ =
        by_name(framework_.additions, [](const Addition& each) { return each.target.name; });
    added_.resize(framework_.additions.size());
    for (const std::size_t addition : addition_order_) {
      const language::Target& target = framework_.additions[addition].target;
      make_taken(target, {Role::addition, addition}, added_[addition]);
      if (added_[addition].empty()) make_assumed(target, addition);
    }
    make_donors();
    const bool boiled = std::any_of(
        framework_.limits.begin(), framework_.limits.end(),
        [](const Limit& limit) { return is_computed(limit) && is_of_finished(limit); });
    if (boiled) blend_.evaporated = add_column("evaporated", {Role::evaporated});
  }

  void make_taken(const language::Target& target, ColumnInfo info,
                  std::vector<ColumnIndex>& columns) {
    const std::size_t count = blend_.supplies.size();
    for (std::size_t i = 0; i < count; ++i) {
      const Supply& supply = blend_.supplies[i];
      if (supply.origin == Origin::to_have || !takes(program_, target, supply.ingredient)) continue;
      info.supply = i;
      columns.push_back(add_column(program_[supply.ingredient].name, info));
    }
  }

  // Nothing of it is listed: what the framework asks for by name is taken to be fetched.
  void make_assumed(const language::Target& target, std::size_t addition) {
    language::IngredientId ingredient = target.ingredient;
    if (target.of_class.valid()) ingredient = program_[target.of_class].usually;
    if (!ingredient.valid()) return;
    Supply supply;
    supply.ingredient = ingredient;
    supply.origin = Origin::to_have;
    if (needs_strength(program_[ingredient])) {
      supply.acidity = stated_strength(framework_.additions[addition]);
    }
    blend_.supplies.push_back(supply);
    added_[addition].push_back(
        add_column(program_[ingredient].name,
                   {Role::addition, addition, blend_.supplies.size() - 1}));
  }

  void make_donors() {
    substitution_order_ = by_name(framework_.substitutions, [](const Substitution& each) {
      return each.donor.name + " for " + each.replaced.name;
    });
    donated_.resize(framework_.substitutions.size());
    credits_.resize(framework_.substitutions.size());
    for (const std::size_t index : substitution_order_) {
      const Substitution& substitution = framework_.substitutions[index];
      if (substitution.donor.name == substitution.replaced.name) continue;
      for (std::size_t i = 0; i < blend_.supplies.size(); ++i) {
        const language::IngredientId ingredient = blend_.supplies[i].ingredient;
        if (blend_.supplies[i].origin == Origin::to_have || !donates(substitution, ingredient) ||
            is_in_the_pan_anyway(program_, framework_, substitution, ingredient)) {
          continue;
        }
        donated_[index].push_back(
            add_column(program_[ingredient].name, {Role::substitute, index, i}));
      }
      credits_[index] = add_column("credit of " + substitution.donor.name, {Role::credit, index});
    }
  }

  bool donates(const Substitution& substitution, language::IngredientId ingredient) const {
    if (!takes(program_, substitution.donor, ingredient)) return false;
    return substitution.only.empty() ||
           std::any_of(substitution.only.begin(), substitution.only.end(),
                       [&](const auto& target) { return takes(program_, target, ingredient); });
  }

  // ---- Rows -------------------------------------------------------------------------------------

  Statement statement(StatementKind kind, std::size_t index, Span span) {
    blend_.statements.push_back({kind, index, span});
    return static_cast<Statement>(blend_.statements.size() - 1);
  }

  void add_row(std::string name, double lower, double upper, std::vector<Term> terms,
               Statement of) {
    blend_.program.add_row({std::move(name), lower, upper, std::move(terms), of});
  }

  const language::Line& line_of(LineReference reference) const {
    const auto& lines = reference.in_store ? given_.kitchen->store : given_.basket.lines;
    return lines[reference.index];
  }

  void add_availability() {
    std::vector<std::vector<Term>> uses(blend_.supplies.size());
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (is_weight(column)) uses[blend_.columns[column].supply].push_back({column, 1});
    }
    for (std::size_t i = 0; i < blend_.supplies.size(); ++i) {
      const Supply& supply = blend_.supplies[i];
      if (!supply.available || uses[i].empty()) continue;
      const Statement of =
          statement(StatementKind::supply, i, line_of(supply.lines.front()).span);
      add_row("have " + program_[supply.ingredient].name, -infinity,
              supply.available->to_double() / grams_in_kilogram, std::move(uses[i]), of);
    }
  }

  bool is_weight(ColumnIndex column) const {
    const Role role = blend_.columns[column].role;
    return role == Role::produce || role == Role::addition || role == Role::substitute;
  }

  std::vector<Term> ones(const std::vector<ColumnIndex>& columns) const {
    std::vector<Term> terms;
    for (const ColumnIndex column : columns) terms.push_back({column, 1});
    return terms;
  }

  void add_total() {
    std::vector<Term> terms;
    for (const auto& columns : produce_) {
      for (const ColumnIndex column : columns) terms.push_back({column, 1});
    }
    terms.push_back({blend_.total, -1});
    add_row("total", 0, 0, std::move(terms), background);
  }

  // Keeps a row clear of its bound by the margin, but by no more than a part of a narrow range.
  double clearance(double share_of_range, std::size_t columns) const {
    constexpr double part = 0.25;
    return std::min(setting_.margin * static_cast<double>(std::max<std::size_t>(columns, 1)),
                    part * share_of_range * setting_.expected_total);
  }

  void add_shares() {
    const auto order =
        by_name(framework_.shares, [](const Share& share) { return share.target.name; });
    for (const std::size_t index : order) {
      const Share& share = framework_.shares[index];
      const double low = share.range.low.to_double();
      const double high = share.range.high.to_double();
      const Statement of = statement(StatementKind::share, index, share.span);
      const double clear = clearance(high - low, produce_[index].size());
      if (low > 0) {
        auto terms = ones(produce_[index]);
        terms.push_back({blend_.total, -low});
        add_row("at least " + share.target.name, clear, infinity, std::move(terms), of);
      }
      if (high < 1) {
        auto terms = ones(produce_[index]);
        terms.push_back({blend_.total, -high});
        add_row("at most " + share.target.name, -infinity, -clear, std::move(terms), of);
      }
    }
  }

  // What an addition amounts to, in kilograms, litres or thousands of pieces, credits included.
  std::vector<Term> amount_of(std::size_t index) const {
    const Addition& addition = framework_.additions[index];
    std::vector<Term> terms;
    for (const ColumnIndex column : added_[index]) {
      const Supply& supply = blend_.supplies[blend_.columns[column].supply];
      terms.push_back({column, amount_per_gram(program_, addition, stuff_of(supply)).to_double()});
    }
    for (std::size_t i = 0; i < framework_.substitutions.size(); ++i) {
      if (framework_.substitutions[i].addition == index && credits_[i]) {
        terms.push_back({*credits_[i], 1});
      }
    }
    return terms;
  }

  void add_additions() {
    for (const std::size_t index : addition_order_) {
      const Addition& addition = framework_.additions[index];
      auto terms = amount_of(index);
      if (terms.empty() || is_settled(index)) continue;
      const Statement of = statement(StatementKind::addition, index, addition.span);
      const double low = addition.range.low.to_double() / grams_in_kilogram;
      const double high = addition.range.high.to_double() / grams_in_kilogram;
      auto below = terms;
      below.push_back({blend_.total, -low});
      add_row("at least " + addition.target.name, 0, infinity, std::move(below), of);
      terms.push_back({blend_.total, -high});
      add_row("at most " + addition.target.name, -infinity, 0, std::move(terms), of);
    }
  }

  bool is_settled(std::size_t addition) const {
    return std::find(setting_.settled.begin(), setting_.settled.end(), addition) !=
           setting_.settled.end();
  }

  // What donors bring, in the measure of what they replace.
  std::vector<Term> brought(std::size_t index) const {
    const Substitution& substitution = framework_.substitutions[index];
    std::vector<Term> terms;
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (!is_weight(column)) continue;
      const ColumnInfo& info = blend_.columns[column];
      if (info.role == Role::substitute && info.slot != index) continue;
      if (info.role == Role::addition && info.slot == substitution.addition) continue;
      const Supply& supply = blend_.supplies[info.supply];
      if (!donates(substitution, supply.ingredient)) continue;
      const double worth =
          credit_per_gram(program_, substitution, framework_, stuff_of(supply)).to_double();
      if (std::isfinite(worth) && worth > 0) terms.push_back({column, worth});
    }
    return terms;
  }

  void add_substitutions() {
    std::size_t full = 0;
    for (const std::size_t index : substitution_order_) {
      if (!credits_[index]) continue;
      const Substitution& substitution = framework_.substitutions[index];
      const Statement of =
          statement(StatementKind::substitution, index, substitution.span);
      auto supply = brought(index);
      supply.push_back({*credits_[index], -1});
      const double cap = substitution.cap ? substitution.cap->to_double() : 1;
      auto share = amount_of(substitution.addition);
      for (Term& term : share) term.coefficient *= -cap;
      for (Term& term : share) {
        if (term.column == *credits_[index]) term.coefficient += 1;
      }
      if (substitution.extent == language::Extent::optional) {
        add_row("brought by " + substitution.donor.name, 0, infinity, std::move(supply), background);
        add_row("cap on " + substitution.donor.name, -infinity, 0, std::move(share), of);
        continue;
      }
      // Full: the credit is the smaller of what is brought and the cap.
      const bool at_cap = full < setting_.at_cap.size() && setting_.at_cap[full];
      ++full;
      add_row("brought by " + substitution.donor.name, 0, at_cap ? infinity : 0, std::move(supply),
              background);
      add_row("cap on " + substitution.donor.name, at_cap ? 0 : -infinity, 0, std::move(share),
              at_cap ? background : of);
    }
    blend_.full_substitutions = full;
  }

  // ---- Limits -----------------------------------------------------------------------------------

  // A limit that no table supports counts as unmet from below and as full from above.
  double worst(const Limit& limit, ColumnIndex column, bool low) const {
    const Supply& supply = blend_.supplies[blend_.columns[column].supply];
    if (!limit.property) return takes(program_, limit.share_of, supply.ingredient) ? 1 : 0;
    const auto share = share_of(program_, *limit.property, stuff_of(supply));
    if (!share) return low ? 0 : 1;
    return (low ? share->low : share->high).to_double();
  }

  void add_limits() {
    for (std::size_t index = 0; index < framework_.limits.size(); ++index) {
      const Limit& limit = framework_.limits[index];
      if (!is_computed(limit)) continue;
      const Statement of = statement(StatementKind::limit, index, limit.span);
      if (limit.has_low) add_limit_row(limit, of, true);
      if (limit.has_high) add_limit_row(limit, of, false);
    }
  }

  void add_limit_row(const Limit& limit, Statement of, bool low) {
    const double bound = (low ? limit.range.low : limit.range.high).to_double();
    std::vector<Term> terms;
    double largest = 0;
    const bool finished = is_of_finished(limit);
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (!is_weight(column)) continue;
      const double share = worst(limit, column, low) - (finished ? bound : 0);
      if (share == 0) continue;
      terms.push_back({column, share});
      largest = std::max(largest, std::abs(share));
    }
    if (finished) {
      terms.push_back({*blend_.evaporated, bound});
    } else {
      terms.push_back({blend_.total, -bound});
      largest = std::max(largest, bound);
    }
    // Every amount may be off by half a step.
    constexpr double half = 0.5;
    const double clear = setting_.margin * half * largest * static_cast<double>(terms.size());
    add_row(low ? "limit from below" : "limit from above", low ? clear : -infinity,
            low ? infinity : -clear, std::move(terms), of);
  }

  std::vector<Term> ingoing() const {
    std::vector<Term> terms;
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (is_weight(column)) terms.push_back({column, 1});
    }
    return terms;
  }

  void add_goal() {
    const double wanted = setting_.goal.kilograms;
    if (blend_.evaporated) {
      auto terms = ingoing();
      terms.push_back({*blend_.evaporated, -1});
      if (setting_.goal.kind == GoalKind::finished) {
        const Statement of = statement(StatementKind::aim, 0, framework_.span);
        add_row("aim", wanted, wanted, std::move(terms), of);
      } else {
        add_row("something is left", 0, infinity, std::move(terms), background);
      }
    }
    if (setting_.goal.kind == GoalKind::prepared) {
      const Statement of = statement(StatementKind::aim, 0, framework_.span);
      add_row("aim", wanted, wanted, {{blend_.total, 1}}, of);
    }
  }

  // ---- Objectives -------------------------------------------------------------------------------

  void add_objectives() {
    if (setting_.goal.kind == GoalKind::most) add_most();
    add_use_first();
    add_bought();
    add_preferred();
    add_least_added();
    add_finish();
    add_tie_break();
  }

  void add_objective(std::string name, Direction direction, std::vector<Term> terms) {
    if (terms.empty()) return;
    blend_.program.objectives.push_back({std::move(name), direction, std::move(terms)});
  }

  template <class Wanted>
  std::vector<Term> terms_where(Wanted wanted) const {
    std::vector<Term> terms;
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (!is_weight(column)) continue;
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
    auto terms = terms_where([](const ColumnInfo&, const Supply& supply) {
      return supply.origin == Origin::to_buy;
    });
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
  void add_deviation(std::string name, std::vector<Term> terms, double preferred, double scale,
                     std::vector<Term>& objective) {
    const ColumnIndex above = add_column("above " + name, {Role::deviation});
    const ColumnIndex below = add_column("below " + name, {Role::deviation});
    terms.push_back({blend_.total, -preferred});
    terms.push_back({above, -1});
    terms.push_back({below, 1});
    add_row("prefer " + name, 0, 0, std::move(terms), background);
    objective.push_back({above, scale});
    objective.push_back({below, scale});
  }

  void add_preferred() {
    std::vector<Term> objective;
    const auto order =
        by_name(framework_.shares, [](const Share& share) { return share.target.name; });
    for (const std::size_t index : order) {
      const Share& share = framework_.shares[index];
      if (!share.prefer || produce_[index].empty()) continue;
      add_deviation(share.target.name, ones(produce_[index]), share.prefer->to_double(), 1,
                    objective);
    }
    for (const std::size_t index : addition_order_) {
      const Addition& addition = framework_.additions[index];
      if (!addition.prefer || added_[index].empty()) continue;
      // Back from litres or pieces to kilograms, so that all deviations weigh alike.
      const Supply& supply = blend_.supplies[blend_.columns[added_[index].front()].supply];
      const double scale =
          1 / amount_per_gram(program_, addition, stuff_of(supply)).to_double();
      add_deviation(addition.target.name, amount_of(index),
                    addition.prefer->to_double() / grams_in_kilogram, scale, objective);
    }
    add_objective("nearest to what is preferred", Direction::minimise, std::move(objective));
  }

  void add_least_added() {
    std::vector<Term> terms;
    for (const std::size_t index : addition_order_) {
      if (framework_.additions[index].prefer) continue;
      for (const ColumnIndex column : added_[index]) terms.push_back({column, 1});
    }
    for (const auto& columns : donated_) {
      for (const ColumnIndex column : columns) terms.push_back({column, 1});
    }
    add_objective("least added", Direction::minimise, std::move(terms));
  }

  // The middle of the range of solids; with one end only, that end.
  void add_finish() {
    for (const Limit& limit : framework_.limits) {
      if (!is_computed(limit) || !is_of_finished(limit) || !limit.property) continue;
      if (!limit.has_low && !limit.has_high) continue;
      constexpr double half = 0.5;
      double wanted = (limit.has_low ? limit.range.low : limit.range.high).to_double();
      if (limit.has_low && limit.has_high) wanted = half * (limit.range.low + limit.range.high).to_double();
      std::vector<Term> terms;
      for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
        if (!is_weight(column)) continue;
        const double share = half * (worst(limit, column, true) + worst(limit, column, false));
        if (share != wanted) terms.push_back({column, share - wanted});
      }
      terms.push_back({*blend_.evaporated, wanted});
      const ColumnIndex above = add_column("above the finish", {Role::deviation});
      const ColumnIndex below = add_column("below the finish", {Role::deviation});
      terms.push_back({above, -1});
      terms.push_back({below, 1});
      add_row("finish", 0, 0, std::move(terms), background);
      add_objective("finish", Direction::minimise, {{above, 1}, {below, 1}});
    }
  }

  // Where all that leaves a choice, the earlier name is taken first.
  void add_tie_break() {
    std::vector<ColumnIndex> columns;
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (is_weight(column)) columns.push_back(column);
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
  const Program& program_;
  const Framework& framework_;
  const Setting& setting_;
  Blend blend_;
  std::vector<std::vector<ColumnIndex>> produce_;
  std::vector<std::vector<ColumnIndex>> added_;
  std::vector<std::vector<ColumnIndex>> donated_;
  std::vector<std::optional<ColumnIndex>> credits_;
  std::vector<std::size_t> addition_order_;
  std::vector<std::size_t> substitution_order_;
};

}  // namespace

Blend ground(const Grounding& grounding, const Setting& setting) {
  return Grounder(grounding, setting).run();
}

}  // namespace maslin::blend
