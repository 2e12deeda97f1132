// SPDX-License-Identifier: Apache-2.0
#include "plan/meaning.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "blend/layout.hpp"
#include "language/amounts.hpp"
#include "plan/weights.hpp"

namespace maslin::plan {
namespace {

using blend::ColumnIndex;
using blend::Direction;
using blend::Role;
using blend::Statement;
using blend::StatementInfo;
using blend::StatementKind;
using blend::Term;
using language::Measured;

constexpr double grams_in_kilogram = 1000;

Rational grams_of(double kilograms) {
  return Rational(static_cast<long>(std::lround(kilograms * grams_in_kilogram)));
}

std::string weight_of(double kilograms) { return weight_text(grams_of(kilograms)); }

// Kilograms, litres or thousands of pieces.
std::string measure_of(Measured measured, double amount) {
  const Rational base = grams_of(amount);
  const Rational thousand(1000);
  switch (measured) {
    case Measured::by_volume:
      return base >= thousand ? (base / thousand).to_decimal(3) + " l" : base.to_decimal(0) + " ml";
    case Measured::by_count:
      return base.to_decimal(0);
    case Measured::by_weight:
      break;
  }
  return weight_text(base);
}

// To a hundredth of a per cent, away from what it is compared with.
std::string share_of(double share, Direction direction) {
  constexpr double parts = 10000;
  constexpr double noise = 1e-6;
  const double scaled = share * parts;
  const double whole =
      direction == Direction::minimise ? std::floor(scaled + noise) : std::ceil(scaled - noise);
  return (Rational(static_cast<long>(whole)) / Rational(100)).to_decimal(2) + " %";
}

bool is_trimmed(const language::Ingredient& ingredient) {
  return ingredient.edible && middle(ingredient.edible->value) < Rational(1);
}

// As it is written: a pH, a water activity, points of an index.
std::string figure_range(const language::Limit& limit) {
  const bool index = limit.property == language::Property::stability_index;
  const std::string unit = index ? " points" : "";
  const std::string low = limit.range.low.to_decimal(3);
  const std::string high = limit.range.high.to_decimal(3);
  if (!limit.has_high) return "at least " + low + unit;
  if (!limit.has_low) return "at most " + high + unit;
  return low + " .. " + high + unit;
}

std::string share_range(const Bounds& range, bool has_low, bool has_high) {
  const auto percent = [](const Rational& share) { return (share * 100).to_decimal(2) + " %"; };
  if (!has_high) return "at least " + percent(range.low);
  if (!has_low) return "at most " + percent(range.high);
  if (range.is_exact()) return percent(range.low);
  return (range.low * 100).to_decimal(2) + " .. " + percent(range.high);
}

}  // namespace

bool Meaning::speaks_of_weights() const {
  return misfit_.asked && misfit_.solved.setting.goal.kind == blend::GoalKind::prepared;
}

std::string Meaning::size_of_batch() const {
  if (!misfit_.asked) return "any batch";
  const bool finished = task_.aim.kind == AimKind::finished;
  return weight_text(task_.aim.weight) +
         (finished ? " of finished product" : " of prepared produce");
}

std::string Meaning::at_hand(Statement statement) const {
  const blend::Supply& supply = blend_.supplies[blend_.statements[statement].index];
  const std::string weight = weight_text(*supply.available);
  switch (supply.origin) {
    case language::Origin::store:
      return weight + " in the store";
    case language::Origin::to_buy:
      return weight + " may be bought";
    default:
      return weight + (is_trimmed(given_.program[supply.ingredient]) ? " ready for the pan"
                                                                     : " in the basket");
  }
}

std::string Meaning::together(const Conflict& conflict) const {
  if (!speaks_of_weights()) return {};
  Rational sum;
  int lots = 0;
  for (const Statement statement : conflict) {
    const StatementInfo& info = blend_.statements[statement];
    if (info.kind != StatementKind::supply) continue;
    const bool produce = std::any_of(
        blend_.columns.begin(), blend_.columns.end(), [&](const blend::ColumnInfo& column) {
          return column.role == Role::produce && column.supply == info.index;
        });
    if (!produce) return {};
    sum += *blend_.supplies[info.index].available;
    ++lots;
  }
  if (lots < 2 || sum >= task_.aim.weight) return {};
  return fmt::format("together that is {} of the {}", weight_text(sum),
                     weight_text(task_.aim.weight));
}

std::string Meaning::of(Statement statement, const Conflict& conflict) const {
  const StatementInfo& info = blend_.statements[statement];
  switch (info.kind) {
    case StatementKind::supply:
      return at_hand(statement);
    case StatementKind::share:
      return of_share(statement, conflict);
    case StatementKind::addition:
      return of_addition(given_.framework.additions[info.index]);
    case StatementKind::substitution:
      return of_substitution(statement, conflict);
    case StatementKind::limit:
      return of_limit(statement, conflict);
    case StatementKind::aim:
      break;
  }
  return {};
}

std::optional<Reached> Meaning::reach_without(Statement statement, const Conflict& conflict,
                                              const Part& part, Direction direction) const {
  std::set<Statement> held(conflict.begin(), conflict.end());
  held.erase(statement);
  return reach(blend_.program, held, part, direction);
}

std::vector<Term> Meaning::weights() const {
  std::vector<Term> terms;
  for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
    if (is_weight(blend_, column)) terms.push_back({column, 1});
  }
  return terms;
}

std::string Meaning::of_share(Statement statement, const Conflict& conflict) const {
  const std::size_t index = blend_.statements[statement].index;
  const language::ProduceShare& share = given_.framework.shares[index];
  const double low = share.range.low.to_double();
  const double high = share.range.high.to_double();
  const double batch = misfit_.solved.setting.goal.kilograms;
  std::string text = share_range(share.range, low > 0 || high >= 1, high < 1) + " of the produce";
  if (speaks_of_weights()) {
    text += ": ";
    if (low > 0) text += weight_of(low * batch);
    if (low > 0 && high > low) text += " to ";
    if (low <= 0) text += "at most ";
    if (low <= 0 || high > low) text += weight_of(high * batch);
  }
  Part part;
  for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
    const blend::ColumnInfo& info = blend_.columns[column];
    if (info.role == Role::produce && info.slot == index) part.part.push_back({column, 1});
  }
  part.whole = {{blend_.total, 1}};
  constexpr double noise = 1e-6;
  const auto least = reach_without(statement, conflict, part, Direction::minimise);
  if (least && least->share > high + noise) {
    text += fmt::format("; it would have to be {}", share_of(least->share, Direction::minimise));
    if (speaks_of_weights()) {
      text += fmt::format(", {} too much", weight_of((least->share - high) * batch));
    }
    return text;
  }
  const auto most = reach_without(statement, conflict, part, Direction::maximise);
  if (most && most->share < low - noise) {
    text += fmt::format("; it comes to {}", share_of(most->share, Direction::maximise));
    if (speaks_of_weights()) {
      text += fmt::format(", {} too little", weight_of((low - most->share) * batch));
    }
  }
  return text;
}

std::string Meaning::of_addition(const language::Addition& addition) const {
  if (!speaks_of_weights()) return "for each kilogram of prepared produce";
  const double batch = misfit_.solved.setting.goal.kilograms;
  const auto amount = [&](const Rational& per_kilogram) {
    return measure_of(addition.measured, per_kilogram.to_double() / grams_in_kilogram * batch);
  };
  std::string text = addition.range.is_exact()
                         ? amount(addition.range.low)
                         : amount(addition.range.low) + " to " + amount(addition.range.high);
  return fmt::format("{} for {}", text, weight_of(batch));
}

std::string Meaning::of_substitution(Statement statement, const Conflict& conflict) const {
  const std::size_t index = blend_.statements[statement].index;
  const language::Substitution& substitution = given_.framework.substitutions[index];
  const std::string donor = substitution.donor.name;
  if (!substitution.cap) return fmt::format("what {} may stand for", donor);
  const double cap = substitution.cap->to_double();
  // What is added in all, credits included, in the measure of the addition.
  Part part;
  for (ColumnIndex column = 0; column < blend_.columns.size(); ++column) {
    const blend::ColumnInfo& info = blend_.columns[column];
    const bool credit = info.role == Role::credit &&
                        given_.framework.substitutions[info.slot].addition == substitution.addition;
    if (credit) part.whole.push_back({column, 1});
    if (credit && info.slot == index) part.part.push_back({column, 1});
    if (info.role != Role::addition || info.slot != substitution.addition) continue;
    const auto& addition = given_.framework.additions[substitution.addition];
    const blend::Supply& supply = blend_.supplies[info.supply];
    part.whole.push_back(
        {column, amount_per_gram(given_.program, addition, stuff_of(supply)).to_double()});
  }
  const auto needed = reach_without(statement, conflict, part, Direction::minimise);
  std::string text = fmt::format("{} may stand for at most {} of the {}", donor,
                                 percent_text(*substitution.cap), substitution.replaced.name);
  constexpr double noise = 1e-6;
  if (!needed || needed->share <= cap + noise) return text;
  const Measured measured = given_.framework.additions[substitution.addition].measured;
  if (!speaks_of_weights() || !std::isfinite(needed->whole)) {
    return text + fmt::format("; it would have to stand for {}",
                              share_of(needed->share, Direction::minimise));
  }
  return text + fmt::format(", here {} of {}; it would have to stand for {}, {} too much",
                            measure_of(measured, cap * needed->whole),
                            measure_of(measured, needed->whole), measure_of(measured, needed->part),
                            measure_of(measured, needed->part - cap * needed->whole));
}

Part Meaning::part_of_limit(const language::Limit& limit, bool low) const {
  Part part;
  for (const Term& weight : weights()) {
    const double share = share_at(given_, blend_, limit, weight.column, low);
    if (share != 0) part.part.push_back({weight.column, share});
  }
  if (is_of_finished(limit)) {
    part.whole = weights();
    // Without a limit that says how far, nothing is boiled away.
    if (blend_.evaporated) part.whole.push_back({*blend_.evaporated, -1});
  } else {
    part.whole = {{blend_.total, 1}};
    for (const Term& weight : weights()) {
      const bool joins = blend::joins_whole(given_, blend_, limit, weight.column);
      if (joins) part.whole.push_back({weight.column, 1});
    }
  }
  return part;
}

std::string Meaning::reached_limit(const language::Limit& limit, Statement statement,
                                   const Conflict& conflict) const {
  constexpr double noise = 1e-6;
  bool known = true;
  if (limit.has_high) {
    const auto least =
        reach_without(statement, conflict, part_of_limit(limit, false), Direction::minimise);
    if (least && least->share > limit.range.high.to_double() + noise) {
      return fmt::format("it would be at least {}", share_of(least->share, Direction::minimise));
    }
    known = known && least;
  }
  if (limit.has_low) {
    const auto most =
        reach_without(statement, conflict, part_of_limit(limit, true), Direction::maximise);
    if (most && most->share < limit.range.low.to_double() - noise) {
      return fmt::format("it would be at most {}", share_of(most->share, Direction::maximise));
    }
    known = known && most;
  }
  if (!known || !limit.has_low || !limit.has_high) return {};
  return "either end could be met but not both, as far as the tables can tell";
}

std::string Meaning::of_cap(const language::Limit& limit, Statement statement,
                            const Conflict& conflict) const {
  const double batch = misfit_.solved.setting.goal.kilograms;
  const double high = limit.range.high.to_double();
  std::string text =
      fmt::format("at most {} of {}, so at least {} of other produce", weight_of(high * batch),
                  limit.share_of.name, weight_of((1 - high) * batch));
  const auto least =
      reach_without(statement, conflict, part_of_limit(limit, false), Direction::minimise);
  constexpr double noise = 1e-6;
  if (!least || least->share <= high + noise) return text;
  return text + fmt::format("; it would have to be {}, {} too much",
                            weight_of(least->share * batch),
                            weight_of((least->share - high) * batch));
}

std::string Meaning::of_limit(Statement statement, const Conflict& conflict) const {
  const language::Limit& limit = given_.framework.limits[blend_.statements[statement].index];
  if (limit.property && language::has_own_scale(*limit.property)) {
    return figure_range(limit) + " in what leaves the pan";
  }
  const bool cap = !limit.property && !limit.has_low && limit.has_high && !is_of_finished(limit);
  if (cap && speaks_of_weights()) return of_cap(limit, statement, conflict);
  const std::string text =
      share_range(limit.range, limit.has_low, limit.has_high) +
      (is_of_finished(limit)                               ? " of what leaves the pan"
       : limit.whole == language::Whole::produce_and_water ? " of vegetables and water"
                                                           : " of the prepared produce");
  const std::string reached = reached_limit(limit, statement, conflict);
  return reached.empty() ? text : text + "; " + reached;
}

}  // namespace maslin::plan
