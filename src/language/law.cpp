// SPDX-License-Identifier: Apache-2.0
#include "language/law.hpp"

#include <algorithm>

#include "base/spelling.hpp"

namespace maslin::language {
namespace {

enum class Laws : std::uint8_t { european, american, both };

std::vector<std::string_view> split(std::string_view words) {
  std::vector<std::string_view> result;
  while (!words.empty()) {
    const std::size_t end = std::min(words.find(','), words.size());
    result.push_back(words.substr(0, end));
    words.remove_prefix(std::min(end + 1, words.size()));
  }
  return result;
}

AllergenKind kind_of(Laws laws, std::string_view name, std::string_view words) {
  return {name, laws != Laws::american, laws != Laws::european, split(words)};
}

constexpr double per_million = 1e-6;
constexpr double per_kilogram = 1e-3;  // of grams

}  // namespace

// The sources of the rows are for those who read them; only some are printed.
#define MASLIN_LAW(...)
#define MASLIN_ALLERGEN(...)
#define MASLIN_LEAST_FRUIT(...)
#define MASLIN_UNMIXED(...)
#define MASLIN_RESERVED(...)
#define MASLIN_ASKED(...)

const std::vector<Law>& laws() {
  static const std::vector<Law> all = {
#undef MASLIN_LAW
#define MASLIN_LAW(name, water, quantities, table, ounces, sulphites, since, source) \
  {name, percent(water), quantities, table, ounces, Share((sulphites)*per_million), since, source},
#include "language/laws.def"
#undef MASLIN_LAW
#define MASLIN_LAW(...)
  };
  return all;
}

const std::vector<AllergenKind>& allergen_kinds() {
  static const std::vector<AllergenKind> all = {
#undef MASLIN_ALLERGEN
#define MASLIN_ALLERGEN(laws, name, words, source) kind_of(Laws::laws, name, words),
#include "language/laws.def"
#undef MASLIN_ALLERGEN
#define MASLIN_ALLERGEN(...)
  };
  return all;
}

const std::vector<LeastFruit>& least_fruits() {
  static const std::vector<LeastFruit> all = {
#undef MASLIN_LEAST_FRUIT
#define MASLIN_LEAST_FRUIT(law, standard, since, fruit, grams, source) \
  {law, standard, since, fruit, Share((grams)*per_kilogram)},
#include "language/laws.def"
#undef MASLIN_LEAST_FRUIT
#define MASLIN_LEAST_FRUIT(...)
  };
  return all;
}

const std::vector<UnmixedFruit>& unmixed_fruits() {
  static const std::vector<UnmixedFruit> all = {
#undef MASLIN_UNMIXED
#define MASLIN_UNMIXED(standard, fruit, source) {standard, fruit},
#include "language/laws.def"
#undef MASLIN_UNMIXED
#define MASLIN_UNMIXED(...)
  };
  return all;
}

const std::vector<ReservedName>& reserved_names() {
  static const std::vector<ReservedName> all = {
#undef MASLIN_RESERVED
#define MASLIN_RESERVED(law, name, source) {law, name, source},
#include "language/laws.def"
#undef MASLIN_RESERVED
#define MASLIN_RESERVED(...)
  };
  return all;
}

const std::vector<Asked>& asked() {
  static const std::vector<Asked> all = {
#undef MASLIN_ASKED
#define MASLIN_ASKED(law, standard, since, what, why) {law, standard, since, what, why},
#include "language/laws.def"
#undef MASLIN_ASKED
#define MASLIN_ASKED(...)
  };
  return all;
}

#undef MASLIN_LAW
#undef MASLIN_ALLERGEN
#undef MASLIN_LEAST_FRUIT
#undef MASLIN_UNMIXED
#undef MASLIN_RESERVED
#undef MASLIN_ASKED

const Law* law_named(std::string_view name) {
  const auto& all = laws();
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const Law& law) { return law.name == name; });
  return found == all.end() ? nullptr : &*found;
}

std::string_view known_laws() {
  static const std::string text = [] {
    std::string names;
    for (const Law& law : laws()) {
      names += (names.empty() ? "`" : ", `") + std::string(law.name) + "`";
    }
    return names;
  }();
  return text;
}

bool is_of_kind(std::string_view stated, const AllergenKind& kind) {
  const std::string word = lower_case(stated);
  return std::any_of(kind.words.begin(), kind.words.end(), [&](std::string_view each) {
    return word == each || (word.starts_with(each) && word.substr(each.size()) == "s");
  });
}

bool is_known_allergen(std::string_view stated) {
  const auto& kinds = allergen_kinds();
  return std::any_of(kinds.begin(), kinds.end(),
                     [&](const AllergenKind& kind) { return is_of_kind(stated, kind); });
}

bool asks_for(const Law* law, const AllergenKind& kind) {
  if (law == nullptr) return true;
  return law->name == "United States" ? kind.american : kind.european;
}

}  // namespace maslin::language
