// SPDX-License-Identifier: Apache-2.0
#include "label/quantities.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "label/title_words.hpp"
#include "language/membership.hpp"
#include "language/names.hpp"

namespace maslin::label {
namespace {

using language::Program;

template <class Thing>
bool is_called(const Thing& thing, const std::string& name) {
  const auto same = [&](const std::string& each) {
    const std::string called = fmt::format("{}", fmt::join(words_in(each), " "));
    return called == name || called + "s" == name;
  };
  return same(thing.name) || std::any_of(thing.also.begin(), thing.also.end(), same);
}

// Whether it is some kind of the one ingredient that is called so: `cooking apple` of `apple`.
bool is_kind_of(const Program& program, language::IngredientId id, const std::string& name) {
  const language::Ingredient& kind = program[id];
  const std::string longer = fmt::format("{}", fmt::join(words_in(kind.name), " "));
  if (!longer.ends_with(" " + name) || kind.parents.empty()) return false;
  return std::any_of(program.ingredients.begin(), program.ingredients.end(), [&](const auto& each) {
    return is_called(each, name) && !each.parents.empty() &&
           each.parents.front() == kind.parents.front();
  });
}

bool counts_for(const Program& program, language::IngredientId id, const std::string& name) {
  if (is_called(program[id], name)) return true;
  for (const language::Class& each : program.classes) {
    if (is_called(each, name)) return language::is_of_class(program, id, each.name);
  }
  return false;
}

Rational whole_percent(const Named& named, FinishedMass finished) {
  return (named.ingoing.in_base() / finished.in_base() * 100).floor_to(1);
}

}  // namespace

std::vector<Named> named_in(const Program& program, const std::string& title,
                            const std::vector<Used>& used) {
  const std::vector<std::string> words = words_in(title);
  std::vector<Named> result;
  for (std::size_t at = 0; at < words.size();) {
    // The longest name that begins here: `green tomato` is no `tomato`.
    std::size_t taken = 0;
    for (std::size_t end = words.size(); end > at && taken == 0; --end) {
      const std::string name =
          fmt::format("{}", fmt::join(words.begin() + static_cast<std::ptrdiff_t>(at),
                                      words.begin() + static_cast<std::ptrdiff_t>(end), " "));
      Named named{name, Mass(), {}};
      for (const Used& each : used) {
        const bool kind = is_kind_of(program, each.ingredient, name);
        if (!kind && !counts_for(program, each.ingredient, name)) continue;
        named.ingoing += each.weight;
        if (kind) named.kinds.push_back(program[each.ingredient].name);
      }
      if (!named.ingoing.is_positive()) continue;
      result.push_back(named);
      taken = end - at;
    }
    at += std::max<std::size_t>(taken, 1);
  }
  return result;
}

std::string per_100_g(const Named& named, FinishedMass finished) {
  return fmt::format("{} g of {} per 100 g", whole_percent(named, finished).to_decimal(0),
                     named.what);
}

std::vector<std::string> quantities_of(const std::vector<Named>& named, FinishedMass finished) {
  Rational sum;
  for (const Named& each : named) sum += each.ingoing.in_base() / finished.in_base();
  std::vector<std::string> texts;
  for (const Named& each : named) {
    texts.push_back(sum > Rational(1) ? "prepared with " + per_100_g(each, finished)
                                      : fmt::format("{} {} %", each.what,
                                                    whole_percent(each, finished).to_decimal(0)));
  }
  return texts;
}

}  // namespace maslin::label
