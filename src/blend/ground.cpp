// SPDX-License-Identifier: Apache-2.0
#include "blend/ground.hpp"

#include <algorithm>
#include <cmath>

#include "blend/layout.hpp"
#include "language/amounts.hpp"
#include "language/membership.hpp"

namespace maslin::blend {
namespace {

using language::Addition;
using language::Framework;
using language::Limit;
using language::ProduceShare;
using language::Program;
using language::Property;
using language::Substitution;

class Grounder {
 public:
  Grounder(const Grounding& grounding, const Setting& setting)
      : given_(grounding),
        program_(grounding.program),
        framework_(grounding.framework),
        boilings_(grounding.framework),
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
    if (!too_near_.empty()) {
      blend_.program.objectives.push_back({"keep clear", Direction::minimise, too_near_});
    }
    add_objectives(given_, setting_.goal, layout_, blend_);
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
    layout_.share_order =
        by_name(framework_.shares, [](const ProduceShare& share) { return share.target.name; });
    layout_.produce.resize(framework_.shares.size());
    for (const std::size_t share : layout_.share_order) {
      make_taken(framework_.shares[share].target, {Role::produce, share}, layout_.produce[share]);
    }
    layout_.addition_order =
        by_name(framework_.additions, [](const Addition& each) { return each.target.name; });
    layout_.added.resize(framework_.additions.size());
    for (const std::size_t addition : layout_.addition_order) {
      const language::Target& target = framework_.additions[addition].target;
      make_taken(target, {Role::addition, addition}, layout_.added[addition]);
      if (layout_.added[addition].empty()) make_assumed(target, addition);
    }
    make_donors();
    layout_.limit_order = by_name(framework_.limits, [](const Limit& limit) {
      return limit.property ? std::string(name_of(*limit.property)) : limit.share_of.name;
    });
    if (says_how_far(framework_)) blend_.evaporated = add_column("evaporated", {Role::evaporated});
  }

  void make_taken(const language::Target& target, ColumnInfo info,
                  std::vector<ColumnIndex>& columns) {
    const std::size_t count = blend_.supplies.size();
    for (std::size_t i = 0; i < count; ++i) {
      const Supply& supply = blend_.supplies[i];
      if (supply.origin == Origin::to_have || !may_take(target, supply.ingredient)) continue;
      info.supply = i;
      columns.push_back(add_column(program_[supply.ingredient].name, info));
    }
  }

  // What a route does not take is left in the basket.
  bool may_take(const language::Target& target, language::IngredientId ingredient) const {
    return takes(program_, target, ingredient) &&
           refusal_of(program_, framework_, ingredient) == nullptr;
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
    layout_.added[addition].push_back(add_column(
        program_[ingredient].name, {Role::addition, addition, blend_.supplies.size() - 1}));
  }

  void make_donors() {
    layout_.substitution_order = by_name(framework_.substitutions, [](const Substitution& each) {
      return each.donor.name + " for " + each.replaced.name;
    });
    layout_.donated.resize(framework_.substitutions.size());
    layout_.credits.resize(framework_.substitutions.size());
    for (const std::size_t index : layout_.substitution_order) {
      const Substitution& substitution = framework_.substitutions[index];
      if (substitution.donor.name == substitution.replaced.name) continue;
      for (std::size_t i = 0; i < blend_.supplies.size(); ++i) {
        const language::IngredientId ingredient = blend_.supplies[i].ingredient;
        if (blend_.supplies[i].origin == Origin::to_have || !donates(substitution, ingredient) ||
            is_in_the_pan_anyway(program_, framework_, substitution, ingredient)) {
          continue;
        }
        layout_.donated[index].push_back(
            add_column(program_[ingredient].name, {Role::substitute, index, i}));
      }
      layout_.credits[index] =
          add_column("credit of " + substitution.donor.name, {Role::credit, index});
    }
  }

  bool donates(const Substitution& substitution, language::IngredientId ingredient) const {
    if (!may_take(substitution.donor, ingredient)) return false;
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

  // A row that keeps clear of its bound where it can: how much of that it gives up is a column of
  // its own, made small before anything else.
  void add_clear_row(std::string name, double lower, double upper, std::vector<Term> terms,
                     Statement of, double clear) {
    if (clear > 0) {
      const ColumnIndex given_up = add_column("too near " + name, {Role::deviation}, clear);
      too_near_.push_back({given_up, 1 / clear});
      terms.push_back({given_up, std::isinf(upper) ? 1.0 : -1.0});
    }
    add_row(std::move(name), lower + clear, upper - clear, std::move(terms), of);
  }

  const language::Line& line_of(LineReference reference) const {
    const auto& lines = reference.in_store ? given_.kitchen->store : given_.basket.lines;
    return lines[reference.index];
  }

  void add_availability() {
    std::vector<std::vector<Term>> uses(blend_.supplies.size());
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (is_weight(blend_, column)) uses[blend_.columns[column].supply].push_back({column, 1});
    }
    for (std::size_t i = 0; i < blend_.supplies.size(); ++i) {
      const Supply& supply = blend_.supplies[i];
      if (!supply.available || uses[i].empty()) continue;
      const Statement of = statement(StatementKind::supply, i, line_of(supply.lines.front()).span);
      // Produce is rounded down; what is added may be rounded up, and must still be there.
      const bool added = std::any_of(uses[i].begin(), uses[i].end(), [&](const Term& term) {
        return blend_.columns[term.column].role != Role::produce;
      });
      const double available = supply.available->to_double() / grams_in_kilogram;
      const double clear = added ? std::min(setting_.margin, available) : 0;
      add_clear_row("have " + program_[supply.ingredient].name, -infinity, available,
                    std::move(uses[i]), of, clear);
    }
  }

  void add_total() {
    std::vector<Term> terms;
    for (const auto& columns : layout_.produce) {
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

  // Weighed out already: a plain ratio may be off by a step of the scales, and the verifier judges
  // it.
  bool is_decided(const std::vector<ColumnIndex>& columns) const {
    return !columns.empty() && std::all_of(columns.begin(), columns.end(), [&](ColumnIndex column) {
      return setting_.decided.count(column) != 0;
    });
  }

  void add_shares() {
    for (const std::size_t index : layout_.share_order) {
      const ProduceShare& share = framework_.shares[index];
      if (is_decided(layout_.produce[index])) continue;
      const double low = share.range.low.to_double();
      const double high = share.range.high.to_double();
      const Statement of = statement(StatementKind::share, index, share.span);
      const double clear = clearance(high - low, layout_.produce[index].size());
      if (low > 0) {
        auto terms = ones(layout_.produce[index]);
        terms.push_back({blend_.total, -low});
        add_clear_row("at least " + share.target.name, 0, infinity, std::move(terms), of, clear);
      }
      if (high < 1) {
        auto terms = ones(layout_.produce[index]);
        terms.push_back({blend_.total, -high});
        add_clear_row("at most " + share.target.name, -infinity, 0, std::move(terms), of, clear);
      }
    }
  }

  void add_additions() {
    for (const std::size_t index : layout_.addition_order) {
      const Addition& addition = framework_.additions[index];
      auto terms = amount_of(given_, blend_, layout_, index);
      if (terms.empty() || is_settled(index)) continue;
      const Statement of = statement(StatementKind::addition, index, addition.span);
      const double low = addition.range.low.to_double() / grams_in_kilogram;
      const double high = addition.range.high.to_double() / grams_in_kilogram;
      // A step of the scales in the measure of the addition.
      const double step = largest_coefficient(terms);
      const double clear = clearance((high - low) / step, layout_.added[index].size()) * step;
      const double slack = addition.range.is_exact() ? setting_.ratio_slack * step : 0;
      auto below = terms;
      below.push_back({blend_.total, -low});
      add_clear_row("at least " + addition.target.name, -slack, infinity, std::move(below), of,
                    clear);
      terms.push_back({blend_.total, -high});
      add_clear_row("at most " + addition.target.name, -infinity, slack, std::move(terms), of,
                    clear);
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
      if (!is_weight(blend_, column)) continue;
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

  // What is put in for something else is put in only as far as it counts for that. Weighed out
  // already it may be a step more.
  void add_no_more_than_counts(std::size_t index) {
    if (layout_.donated[index].empty() || is_decided(layout_.donated[index])) return;
    const Substitution& substitution = framework_.substitutions[index];
    std::vector<Term> terms;
    for (const ColumnIndex column : layout_.donated[index]) {
      const Supply& supply = blend_.supplies[blend_.columns[column].supply];
      const double worth =
          credit_per_gram(program_, substitution, framework_, stuff_of(supply)).to_double();
      // Of unknown worth: none of it.
      terms.push_back({column, std::isfinite(worth) && worth > 0 ? worth : 1});
    }
    terms.push_back({*layout_.credits[index], -1});
    add_row("no more than counts of " + substitution.donor.name, -infinity, 0, std::move(terms),
            background);
  }

  void add_substitutions() {
    std::size_t full = 0;
    for (const std::size_t index : layout_.substitution_order) {
      if (!layout_.credits[index]) continue;
      const Substitution& substitution = framework_.substitutions[index];
      const Statement of = statement(StatementKind::substitution, index, substitution.span);
      add_no_more_than_counts(index);
      auto supply = brought(index);
      supply.push_back({*layout_.credits[index], -1});
      const double cap = substitution.cap ? substitution.cap->to_double() : 1;
      auto share = amount_of(given_, blend_, layout_, substitution.addition);
      for (Term& term : share) term.coefficient *= -cap;
      for (Term& term : share) {
        if (term.column == *layout_.credits[index]) term.coefficient += 1;
      }
      if (substitution.extent == language::Extent::optional) {
        if (is_settled(substitution.addition)) continue;
        add_row("brought by " + substitution.donor.name, 0, infinity, std::move(supply),
                background);
        add_row("cap on " + substitution.donor.name, -infinity, 0, std::move(share), of);
        continue;
      }
      // Full: the credit is the smaller of what is brought and the cap.
      const bool at_cap = full < setting_.at_cap.size() && setting_.at_cap[full];
      ++full;
      if (is_settled(substitution.addition)) continue;
      add_row("brought by " + substitution.donor.name, 0, at_cap ? infinity : 0, std::move(supply),
              background);
      add_row("cap on " + substitution.donor.name, at_cap ? 0 : -infinity, 0, std::move(share),
              at_cap ? background : of);
    }
    blend_.full_substitutions = full;
  }

  // ---- Limits -----------------------------------------------------------------------------------

  void add_limits() {
    for (const std::size_t index : layout_.limit_order) {
      const Limit& limit = framework_.limits[index];
      if (!is_computed(limit)) continue;
      const Statement of = statement(StatementKind::limit, index, limit.span);
      for (const bool low : {true, false}) {
        if (low ? !limit.has_low : !limit.has_high) continue;
        if (is_linear(limit)) {
          add_limit_row(limit, of, low);
        } else if (setting_.boiling) {
          add_curved_limit_row(limit, of, low);
        }
      }
    }
    if (!blend_.evaporated) return;
    if (setting_.boiling && setting_.boiling->water_kept > 0) {
      add_most_boiled_off("water kept", [&](const language::Slot& /*slot*/) {
        return 1 - setting_.boiling->water_kept;
      });
    }
    // What goes in later cannot boil away before.
    if (setting_.may_run_dry || all_settled()) return;
    add_most_boiled_off("in the pan by then", [&](const language::Slot& slot) {
      return boilings_.settled_share(slot).to_double();
    });
  }

  void add_curved_limit_row(const Limit& limit, Statement of, bool low) {
    const LimitRow row(program_, boilings_, limit, low, *setting_.boiling);
    std::vector<Term> terms;
    double largest = 0;
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (!is_weight(blend_, column)) continue;
      const ColumnInfo& info = blend_.columns[column];
      const double share = row.of(stuff_of(blend_.supplies[info.supply]), slot_of(info));
      if (share == 0) continue;
      terms.push_back({column, share});
      largest = std::max(largest, std::abs(share));
    }
    if (blend_.evaporated && row.of_boiled_off() != 0) {
      terms.push_back({*blend_.evaporated, row.of_boiled_off()});
    }
    constexpr double half = 0.5;
    const double clear = setting_.margin * half * largest * static_cast<double>(terms.size());
    add_clear_row(low ? "limit from below" : "limit from above", low ? 0 : -infinity,
                  low ? infinity : 0, std::move(terms), of, clear);
  }

  bool all_settled() const {
    return std::all_of(blend_.columns.begin(), blend_.columns.end(), [&](const ColumnInfo& info) {
      const bool weight = info.role == Role::produce || info.role == Role::addition ||
                          info.role == Role::substitute;
      return !weight || boilings_.settled_share(slot_of(info)) == Rational(1);
    });
  }

  // No more boils off than this share of the water of each thing.
  template <class ShareOf>
  void add_most_boiled_off(const std::string& name, const ShareOf& share_of) {
    std::vector<Term> terms;
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (!is_weight(blend_, column)) continue;
      const ColumnInfo& info = blend_.columns[column];
      const auto composition = composition_of(program_, stuff_of(blend_.supplies[info.supply]));
      const double water = composition.or_none(science::Substance::water).low.to_double();
      const double share = water * share_of(slot_of(info));
      if (share > 0) terms.push_back({column, share});
    }
    terms.push_back({*blend_.evaporated, -1});
    add_row(name, 0, infinity, std::move(terms), background);
  }

  void add_limit_row(const Limit& limit, Statement of, bool low) {
    const double bound = (low ? limit.range.low : limit.range.high).to_double();
    std::vector<Term> terms;
    double largest = 0;
    const bool finished = is_of_finished(limit);
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (!is_weight(blend_, column)) continue;
      const bool counts = finished || joins_whole(given_, blend_, limit, column);
      const double share = share_at(given_, blend_, limit, column, low) - (counts ? bound : 0);
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
    add_clear_row(low ? "limit from below" : "limit from above", low ? 0 : -infinity,
                  low ? infinity : 0, std::move(terms), of, clear);
  }

  std::vector<Term> ingoing() const {
    std::vector<Term> terms;
    for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
      if (is_weight(blend_, column)) terms.push_back({column, 1});
    }
    return terms;
  }

  // What cannot boil away stays, at the least its published low end.
  std::vector<Term> volatile_part() const {
    std::vector<Term> terms = ingoing();
    for (Term& term : terms) {
      const Supply& supply = blend_.supplies[blend_.columns[term.column].supply];
      const auto solids = share_of(program_, Property::total_solids, stuff_of(supply));
      if (solids) term.coefficient -= solids->low.to_double();
    }
    terms.push_back({*blend_.evaporated, -1});
    return terms;
  }

  // Whether the produce is weighed out already: then the whole is what it is.
  bool is_weighed() const {
    return std::all_of(layout_.produce.begin(), layout_.produce.end(),
                       [&](const auto& columns) { return columns.empty() || is_decided(columns); });
  }

  void add_goal() {
    const double wanted = setting_.goal.kilograms;
    const GoalKind kind = setting_.goal.kind;
    if (blend_.evaporated) {
      add_row("what cannot boil away", 0, infinity, volatile_part(), background);
      if (kind == GoalKind::finished) {
        auto terms = ingoing();
        terms.push_back({*blend_.evaporated, -1});
        const Statement of = statement(StatementKind::aim, 0, framework_.span);
        const double slack = is_weighed() ? setting_.aim_slack : 0;
        add_row("aim", wanted - slack, wanted + slack, std::move(terms), of);
      }
    }
    if (kind == GoalKind::prepared && !is_weighed()) {
      const Statement of = statement(StatementKind::aim, 0, framework_.span);
      add_row("aim", wanted, wanted, {{blend_.total, 1}}, of);
    }
  }

  const Grounding& given_;
  const Program& program_;
  const Framework& framework_;
  const language::Boilings boilings_;
  const Setting& setting_;
  Blend blend_;
  Layout layout_;
  std::vector<Term> too_near_;
};

}  // namespace

Blend ground(const Grounding& grounding, const Setting& setting) {
  return Grounder(grounding, setting).run();
}

}  // namespace maslin::blend
