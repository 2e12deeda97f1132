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

// A text with the words among these that stand in it emphasised; true where one does.
bool add_emphasised(Phrase& phrase, const std::string& text,
                    const std::vector<std::string>& words) {
  std::size_t first = std::string::npos;
  std::size_t length = 0;
  for (const std::string& word : words) {
    const std::size_t at = find_word(text, word);
    const bool better = at < first || (at == first && word.size() > length);
    if (at == std::string::npos || !better) continue;
    first = at;
    length = word.size();
  }
  if (first == std::string::npos) {
    if (!text.empty()) phrase.push_back({text, false});
    return false;
  }
  if (first > 0) phrase.push_back({text.substr(0, first), false});
  phrase.push_back({text.substr(first, length), true});
  (void)add_emphasised(phrase, text.substr(first + length), words);
  return true;
}

// What it states, and what it is made of that is one by its name.
std::vector<std::string> allergens_of(const language::Ingredient& ingredient) {
  std::vector<std::string> all = ingredient.allergens;
  for (const std::string& part : ingredient.made_of) {
    const bool there = std::find(all.begin(), all.end(), part) != all.end();
    if (!there && language::is_known_allergen(part)) all.push_back(part);
  }
  return all;
}

// What stands in brackets behind a name: its own ingredients in their order, then allergens that no
// word before has named.
Phrase in_brackets(const std::vector<std::string>& parts, const std::vector<std::string>& stated,
                   const std::vector<std::string>& behind) {
  Phrase phrase;
  for (const std::string& part : parts) {
    phrase.push_back({phrase.empty() ? " (" : ", ", false});
    (void)add_emphasised(phrase, part, stated);
  }
  for (const std::string& allergen : behind) {
    phrase.push_back({phrase.empty() ? " (" : ", ", false});
    phrase.push_back({allergen, true});
  }
  if (!phrase.empty()) phrase.push_back({")", false});
  return phrase;
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
  std::vector<std::string> stated;
  std::vector<std::string> behind;
  for (const std::string& allergen : allergens_of(ingredient)) {
    if (!is_emphasised(allergen, law)) continue;
    stated.push_back(allergen);
    const auto& parts = ingredient.made_of;
    const bool named = find_word(ingredient.name, allergen) != std::string::npos ||
                       std::any_of(parts.begin(), parts.end(), [&](const std::string& part) {
                         return find_word(part, allergen) != std::string::npos;
                       });
    if (!named) behind.push_back(allergen);
  }
  if (sulphites && used.sulphited.is_positive()) behind.emplace_back("sulphites");

  Phrase phrase;
  (void)add_emphasised(phrase, ingredient.name, stated);
  const Phrase brackets = in_brackets(ingredient.made_of, stated, behind);
  phrase.insert(phrase.end(), brackets.begin(), brackets.end());
  if (ingredient.compound && ingredient.made_of.empty()) {
    phrase.push_back({blank_in_brackets, false});
  }
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
      const auto allergens = allergens_of(ingredient);
      const bool stated = std::any_of(
          allergens.begin(), allergens.end(),
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
