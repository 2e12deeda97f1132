// SPDX-License-Identifier: Apache-2.0
#include "syntax/words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "base/spelling.hpp"

namespace maslin::syntax {
namespace {

// Where a statement that begins with this word belongs.
struct Home {
  std::string_view word;
  std::string_view block;
};
constexpr Home homes[] = {{"produce", "a framework"},
                          {"substitute", "a framework"},
                          {"limits", "a framework"},
                          {"method", "a framework"},
                          {"taste", "a framework"},
                          {"title", "a framework"},
                          {"status", "a framework"},
                          {"basis", "a framework"},
                          {"mature", "a framework"},
                          {"per", "a framework"},
                          {"best", "a framework"},
                          {"once", "a framework"},
                          {"pan", "a kitchen"},
                          {"hob", "a kitchen"},
                          {"scales", "a kitchen"},
                          {"spoons", "a kitchen"},
                          {"jars", "a kitchen"},
                          {"store", "a kitchen"},
                          {"law", "a kitchen"},
                          {"altitude", "a kitchen"},
                          {"stage", "a method"},
                          {"fill", "a method"},
                          {"add", "a stage"},
                          {"simmer", "a stage"},
                          {"reduce", "a stage"},
                          {"soak", "a stage"},
                          {"macerate", "a stage"},
                          {"brine", "a stage"},
                          {"pack", "a stage"},
                          {"strain", "a stage"},
                          {"ferment", "a stage"},
                          {"composition", "an ingredient"},
                          {"edible", "an ingredient"},
                          {"pH", "an ingredient"},
                          {"allergen", "an ingredient"},
                          {"made", "an ingredient"},
                          {"compound", "an ingredient"},
                          {"boil", "a batch or stage"},
                          {"used", "a boil"},
                          {"reading", "a boil"},
                          {"filled", "a boil"}};

constexpr std::array<std::string_view, 14> reserved = {
    "of", "for",  "by",    "in",      "as",    "is",   "at",
    "to", "from", "where", "refines", "until", "only", "version"};

// `timr` for `trim`.
bool same_letters(std::string_view a, std::string_view b) {
  return a.size() == b.size() && std::is_permutation(a.begin(), a.end(), b.begin());
}

}  // namespace

std::string_view nearest_keyword(std::string_view word,
                                 const std::vector<std::string_view>& keywords) {
  std::string_view best;
  if (word.size() > 40) return best;
  const std::size_t most = std::max<std::size_t>(1, word.size() / 3);
  std::size_t best_distance = most + 1;
  for (const std::string_view keyword : keywords) {
    const std::size_t distance =
        same_letters(word, keyword) ? 1 : edit_distance(word, keyword, most);
    if (distance < best_distance && word != keyword) {
      best_distance = distance;
      best = keyword;
    }
  }
  return best;
}

std::string place_of(Kind around) {
  switch (around) {
    case Kind::file:
      return "here, outside of every block";
    case Kind::produce_block:
      return "among the produce";
    case Kind::addition_block:
      return "among what is added per kilogram";
    case Kind::substitute_block:
      return "among the substitutions";
    case Kind::limits_block:
      return "among the limits";
    case Kind::step_block:
      return "in a stage of the method";
    default:
      break;
  }
  std::string_view name = name_of(around);
  name.remove_suffix(std::string_view("_block").size());
  const bool vowel = std::string_view("aeiou").find(name.front()) != std::string_view::npos;
  return fmt::format("in {} {}", vowel ? "an" : "a", name);
}

std::string shortened(std::string_view text) {
  constexpr std::size_t most = 40;
  if (text.size() <= most) return std::string(text);
  std::size_t end = most;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xc0) == 0x80) --end;
  return std::string(text.substr(0, end)) + "…";
}

std::string expected(const Misfit& misfit) {
  std::vector<std::string> list;
  const bool unit =
      std::find(misfit.others.begin(), misfit.others.end(), "a unit") != misfit.others.end();
  for (const std::string_view other : misfit.others) {
    const bool words = other.find(' ') != std::string_view::npos || other.front() == '`';
    list.push_back(words ? std::string(other) : fmt::format("`{}`", other));
  }
  for (const std::string_view keyword : misfit.keywords) {
    if (unit && (keyword == "US" || keyword == "imp" || keyword == "fl")) continue;
    list.push_back(fmt::format("`{}`", keyword));
  }
  if (list.empty()) return "nothing of this kind";
  std::string text = list[0];
  for (std::size_t i = 1; i < list.size(); ++i) {
    text += (i + 1 == list.size() ? " or " : ", ") + list[i];
  }
  return text;
}

bool wants_strength(const Misfit& misfit) {
  const auto fits = [&](std::string_view word) {
    return std::find(misfit.keywords.begin(), misfit.keywords.end(), word) != misfit.keywords.end();
  };
  return fits("acidity") && !fits("trim");
}

bool is_reserved(std::string_view word) {
  return std::find(reserved.begin(), reserved.end(), word) != reserved.end();
}

std::string_view home_of(std::string_view word) {
  for (const Home& home : homes) {
    if (home.word == word) return home.block;
  }
  return {};
}

}  // namespace maslin::syntax
