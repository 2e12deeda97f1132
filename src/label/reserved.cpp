// SPDX-License-Identifier: Apache-2.0
#include "label/reserved.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "label/title_words.hpp"
#include "language/amounts.hpp"
#include "language/membership.hpp"
#include "science/fruit.hpp"

namespace maslin::label {
namespace {

using language::Law;
using language::Limit;
using language::Standard;
using language::Whole;
using plan::Taken;

std::vector<const Taken*> all_taken(const plan::Draft& draft) {
  std::vector<const Taken*> all;
  for (const auto* list : {&draft.produce, &draft.additions, &draft.substitutes}) {
    for (const Taken& taken : *list) all.push_back(&taken);
  }
  return all;
}

// As it goes in: a syrup counts whole.
Rational sweetener_in(const Product& product) {
  Rational sum;
  for (const Taken* taken : all_taken(product.draft)) {
    if (is_of_class(product.program, taken->ingredient, "sweetener")) sum += taken->weight;
  }
  return sum;
}

// Shares of the finished product, or of the produce, over every range of figures and weight.
Bounds value_of(const Product& product, const Limit& limit) {
  Bounds sum;
  for (const Taken* taken : all_taken(product.draft)) {
    Bounds share = Bounds::exactly(0);
    if (limit.property) {
      const language::Stuff stuff{taken->ingredient, taken->acidity};
      share = share_of(product.program, *limit.property, stuff).value_or(Bounds{0, 1});
    } else if (takes(product.program, limit.share_of, taken->ingredient)) {
      share = Bounds::exactly(1);
    }
    sum = {sum.low + taken->weight * share.low, sum.high + taken->weight * share.high};
  }
  if (language::is_of_finished(limit)) {
    return {sum.low / product.finished.high.in_base(), sum.high / product.finished.low.in_base()};
  }
  Rational whole;
  for (const Taken& taken : product.draft.produce) whole += taken.weight;
  if (limit.whole == Whole::produce_and_sweetener) whole += sweetener_in(product);
  return {sum.low / whole, sum.high / whole};
}

std::vector<Used> counted_for(const Product& product, const Limit& limit) {
  std::vector<Used> counted;
  for (const Taken* taken : all_taken(product.draft)) {
    if (!takes(product.program, limit.share_of, taken->ingredient)) continue;
    counted.push_back({taken->ingredient, Mass(taken->weight), Mass()});
  }
  return counted;
}

// In the measure a standard is written in: grams in a kilogram, or a percentage. Towards the side
// that is not met.
std::string value_text(const Limit& limit, double value, bool low) {
  constexpr double rounding = 1e-9;
  constexpr double scale = 1000;
  const double whole =
      low ? std::floor(value * scale + rounding) : std::ceil(value * scale - rounding);
  return limit.property ? fmt::format("{:.1f} %", whole / 10) : fmt::format("{:.0f} g/kg", whole);
}

// In proportion to the fruits, where the law says so; else what is asked of the one it asks most
// of.
Share least_for(const Product& product, const Limit& limit, const Standard& standard) {
  const Share general(limit.range.low.to_double());
  const auto counted = counted_for(product, limit);
  if (limit.whole != Whole::produce_and_sweetener) {
    return least_of(product.program, counted, standard, general);
  }
  Share most(0);
  for (const Used& each : counted) {
    most = std::max(most, least_of(product.program, {each}, standard, general));
  }
  return counted.empty() ? general : most;
}

bool is_named(const language::Ingredient& ingredient, std::string_view name) {
  return ingredient.name == name ||
         std::find(ingredient.also.begin(), ingredient.also.end(), name) != ingredient.also.end();
}

// Fruits of which the standard takes one alone.
std::vector<std::string> misses_of_mixing(const Product& product, const Standard& standard,
                                          const std::vector<Used>& counted) {
  std::vector<std::string> misses;
  if (counted.size() < 2) return misses;
  for (const Used& each : counted) {
    const language::Ingredient& ingredient = product.program[each.ingredient];
    for (const language::UnmixedFruit& row : language::unmixed_fruits()) {
      const bool kind = is_named(ingredient, row.fruit) ||
                        ingredient.name.ends_with(" " + std::string(row.fruit)) ||
                        language::is_of_class(product.program, each.ingredient, row.fruit);
      if (row.standard == standard.name && kind) {
        misses.push_back(fmt::format("{} may not be mixed with other fruit", ingredient.name));
        break;
      }
    }
  }
  return misses;
}

std::optional<std::string> miss_of(const Product& product, const Standard& standard,
                                   const Limit& limit) {
  const std::string what =
      limit.property ? std::string(language::name_of(*limit.property)) : limit.share_of.name;
  if (limit.property && !language::is_linear(limit)) {
    return fmt::format("{} was not worked out", what);
  }
  const Bounds value = value_of(product, limit);
  if (!value.low.is_defined() || !value.high.is_defined()) {
    return fmt::format("{} cannot be worked out", what);
  }
  constexpr double rounding = 1e-9;
  if (limit.has_low) {
    double least = limit.range.low.to_double();
    if (!limit.property) {
      least = least_for(product, limit, standard).in_unit();
    }
    if (value.low.to_double() < least - rounding) {
      return fmt::format("{} of {} may be as little as {}, and {} is asked", what,
                         limit.whole == Whole::produce_and_sweetener ? "produce and sweetener"
                                                                     : "the finished product",
                         value_text(limit, value.low.to_double(), true),
                         value_text(limit, least, false));
    }
  }
  if (limit.has_high && value.high > limit.range.high) {
    return fmt::format("{} may be as much as {}, and no more than {} is asked", what,
                       value_text(limit, value.high.to_double(), false),
                       value_text(limit, limit.range.high.to_double(), true));
  }
  return std::nullopt;
}

// Since the dawn of time, where it does not say.
Date begin_of(const Standard& standard) {
  return standard.as_of ? first_day_of(*standard.as_of) : Date{};
}

// Nothing where every standard of the name began later.
const Standard* in_force(const language::Program& program, std::string_view place,
                         const std::string& reserved, const std::optional<Date>& as_of) {
  const Standard* latest = nullptr;
  for (const Standard& each : program.standards) {
    if (each.place != place || each.reserved_name != reserved) continue;
    if (as_of && last_day_of(*as_of) < begin_of(each)) continue;
    if (latest == nullptr || begin_of(*latest) <= begin_of(each)) latest = &each;
  }
  return latest;
}

}  // namespace

Share least_of(const language::Program& program, const std::vector<Used>& counted,
               const Standard& standard, Share general) {
  std::vector<science::FruitMinimum> fruits;
  for (const Used& each : counted) {
    science::FruitMinimum fruit{kilograms(each.weight), general};
    const language::Ingredient& ingredient = program[each.ingredient];
    for (const language::LeastFruit& row : language::least_fruits()) {
      const bool of_this = row.law == standard.place && row.standard == standard.name &&
                           is_since(standard, row.since);
      if (of_this && is_named(ingredient, row.fruit)) fruit.minimum = row.least;
    }
    fruits.push_back(fruit);
  }
  const auto least = science::mixed_minimum(fruits);
  return least ? least.value() : general;
}

bool is_since(const Standard& standard, int year) {
  return standard.as_of && standard.as_of->year == year;
}

std::optional<Judgement> judge_name(const Product& product, const std::string& title,
                                    const Law& law, const std::optional<Date>& as_of) {
  std::optional<Judgement> found;
  const auto longer = [&](const std::string& name) {
    return holds_words(title, name) && (!found || name.size() > found->name.size());
  };
  for (const language::ReservedName& row : language::reserved_names()) {
    const std::string name(row.name);
    if (row.law == law.name && longer(name)) {
      found = Judgement{name, nullptr, {"what the law asks of it is not in this library"}, Mass()};
    }
  }
  for (const Standard& standard : product.program.standards) {
    if (standard.place != law.name || standard.reserved_name.empty()) continue;
    if (!longer(standard.reserved_name)) continue;
    found = Judgement{standard.reserved_name, nullptr, {}, Mass()};
  }
  if (!found || !found->unmet.empty()) return found;
  const Standard* chosen = in_force(product.program, law.name, found->name, as_of);
  if (chosen == nullptr) {
    found->unmet = {
        fmt::format("what the law asked of it then ({}) is not in this library", text_of(*as_of))};
    return found;
  }
  found->standard = chosen;
  for (const Limit& limit : chosen->limits) {
    if (!limit.property && limit.has_low) {
      const auto counted = counted_for(product, limit);
      for (const Used& each : counted) found->fruit += each.weight;
      found->unmet = misses_of_mixing(product, *chosen, counted);
    }
    if (auto miss = miss_of(product, *chosen, limit)) found->unmet.push_back(*miss);
  }
  return found;
}

}  // namespace maslin::label
