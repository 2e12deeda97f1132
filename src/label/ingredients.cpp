// SPDX-License-Identifier: Apache-2.0
#include "label/ingredients.hpp"

#include <algorithm>

#include "base/spelling.hpp"

namespace maslin::label {
namespace {

using language::AllergenKind;
using language::Law;
using language::Program;

constexpr const char* blank_in_brackets = " (______)";

bool is_water(const Program& program, const Used& used) {
  return program[used.ingredient].name == "water";
}

// What no law here knows may be asked elsewhere, or be misspelt.
bool is_emphasised(const std::string& allergen, const Law* law) {
  if (!language::is_known_allergen(allergen)) return true;
  const auto& kinds = language::allergen_kinds();
  return std::any_of(kinds.begin(), kinds.end(), [&](const AllergenKind& kind) {
    return language::asks_for(law, kind) && language::is_of_kind(allergen, kind);
  });
}

// Where a word stands by itself in a text, capital letters aside.
std::size_t find_word(const std::string& text, const std::string& word) {
  const std::string low = lower_case(text);
  const std::string wanted = lower_case(word);
  const auto is_edge = [&](std::size_t at) { return at >= low.size() || low[at] == ' '; };
  for (std::size_t at = low.find(wanted); at != std::string::npos; at = low.find(wanted, at + 1)) {
    if ((at == 0 || low[at - 1] == ' ') && is_edge(at + wanted.size())) return at;
  }
  return std::string::npos;
}

void add_behind(Phrase& phrase, const std::vector<std::string>& allergens) {
  for (std::size_t i = 0; i < allergens.size(); ++i) {
    phrase.push_back({i == 0 ? " (" : ", ", false});
    phrase.push_back({allergens[i], true});
  }
  if (!allergens.empty()) phrase.push_back({")", false});
}

}  // namespace

FinishedMass added_water(FinishedMass finished, Mass everything_else) {
  return FinishedMass(larger(finished.in_base() - everything_else.in_base(), Rational(0)));
}

std::vector<Used> in_order(const Program& program, std::vector<Used> used, FinishedMass finished,
                           const Law* law) {
  Mass others;
  for (const Used& each : used) {
    if (!is_water(program, each)) others += each.weight;
  }
  const FinishedMass water = added_water(finished, others);
  const double share = (water / finished).to_double();
  const double ignored = law == nullptr ? 0 : law->water_ignored.in_unit();
  constexpr double rounding = 1e-12;  // of the law's figure as a binary number
  std::vector<Used> result;
  for (Used& each : used) {
    if (is_water(program, each)) {
      if (!water.is_positive() || share <= ignored + rounding) continue;
      each.weight = Mass(smaller(each.weight.in_base(), water.in_base()));
    }
    result.push_back(each);
  }
  std::sort(result.begin(), result.end(), [&](const Used& a, const Used& b) {
    if (!(a.weight == b.weight)) return a.weight > b.weight;
    return program[a.ingredient].name < program[b.ingredient].name;
  });
  return result;
}

Bounds sulphites_in(Mass sulphited, FinishedMass finished, const Bounds& of_the_sulphited) {
  const Rational share = sulphited.in_base() / finished.in_base();
  return {share * of_the_sulphited.low, share * of_the_sulphited.high};
}

bool declares_sulphites(const Bounds& sulphites, const Law* law) {
  const Rational usual(Rational::Wide{10}, Rational::Wide{1000000});
  if (law == nullptr) return !(sulphites.high <= usual);
  constexpr double rounding = 1e-12;  // of the law's figure as a binary number
  return !(sulphites.high.to_double() <= law->sulphites.in_unit() + rounding);
}

Phrase listed(const Program& program, const Used& used, bool sulphites, const Law* law) {
  const language::Ingredient& ingredient = program[used.ingredient];
  std::vector<std::string> behind;
  std::size_t at = std::string::npos;
  std::size_t length = 0;
  for (const std::string& allergen : ingredient.allergens) {
    if (!is_emphasised(allergen, law)) continue;
    const std::size_t found = find_word(ingredient.name, allergen);
    if (found != std::string::npos && at == std::string::npos) {
      at = found;
      length = allergen.size();
    } else {
      behind.push_back(allergen);
    }
  }
  if (sulphites && used.sulphited.is_positive()) behind.emplace_back("sulphites");

  Phrase phrase;
  if (at == std::string::npos) {
    phrase.push_back({ingredient.name, false});
  } else {
    if (at > 0) phrase.push_back({ingredient.name.substr(0, at), false});
    phrase.push_back({ingredient.name.substr(at, length), true});
    const std::string rest = ingredient.name.substr(at + length);
    if (!rest.empty()) phrase.push_back({rest, false});
  }
  add_behind(phrase, behind);
  if (language::is_compound(ingredient.name)) phrase.push_back({blank_in_brackets, false});
  return phrase;
}

std::vector<CardRow> card_of(const Program& program, const std::vector<Used>& used, bool sulphites,
                             const Law* law) {
  std::vector<CardRow> rows;
  for (const AllergenKind& kind : language::allergen_kinds()) {
    if (!language::asks_for(law, kind)) continue;
    CardRow row{std::string(kind.name), {}};
    for (const Used& each : used) {
      const language::Ingredient& ingredient = program[each.ingredient];
      const bool stated = std::any_of(
          ingredient.allergens.begin(), ingredient.allergens.end(),
          [&](const std::string& allergen) { return language::is_of_kind(allergen, kind); });
      const bool sulphited = kind.name == "sulphites" && sulphites && each.sulphited.is_positive();
      if (stated || sulphited) row.in.push_back(ingredient.name);
    }
    rows.push_back(std::move(row));
  }
  for (const Used& each : used) {
    for (const std::string& allergen : program[each.ingredient].allergens) {
      if (!language::is_known_allergen(allergen)) {
        rows.push_back({allergen, {program[each.ingredient].name}});
      }
    }
  }
  return rows;
}

std::vector<std::string> not_stated(const Program& program, const std::vector<Used>& used) {
  std::vector<std::string> names;
  for (const Used& each : used) {
    const language::Ingredient& ingredient = program[each.ingredient];
    if (!ingredient.allergens_stated) names.push_back(ingredient.name);
  }
  return names;
}

}  // namespace maslin::label
