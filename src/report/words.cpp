// SPDX-License-Identifier: Apache-2.0
#include "report/words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>
#include <utility>

namespace maslin::report {

std::string status_text(const language::Framework& framework, bool as_tested) {
  switch (framework.status) {
    case language::Status::own:
      return "own";
    case language::Status::traditional:
      return "traditional";
    // Ranges, swaps or another kitchen are not what was tested.
    case language::Status::tested:
      return fmt::format("{} \"{}\"", as_tested ? "tested," : "own, after",
                         framework.status_source);
    case language::Status::not_stated:
      break;
  }
  return "status not stated";
}

std::string duration_text(const Duration& duration) {
  struct Step {
    long seconds;
    std::string_view one;
    std::string_view many;
  };
  constexpr Step steps[] = {{2629800, "month", "months"},
                            {604800, "week", "weeks"},
                            {86400, "day", "days"},
                            {3600, "hour", "hours"}};
  for (const Step& step : steps) {
    const Rational count = duration.in_base() / Rational(step.seconds);
    if (!count.is_integer() || count.is_zero()) continue;
    return fmt::format("{} {}", count.to_decimal(0), count == Rational(1) ? step.one : step.many);
  }
  return (duration.in_base() / Rational(60)).to_decimal(0) + " minutes";
}

std::string spoons_text(const Rational& millilitres) {
  const Rational tablespoon(15);
  const Rational teaspoon(5);
  const Rational quarter(Rational::Wide{5}, Rational::Wide{4});
  const Rational rounded = millilitres.round_to(quarter);
  const Rational large = rounded >= tablespoon * 2 ? rounded.floor_to(tablespoon) : Rational(0);
  const Rational rest = rounded - large;
  const Rational whole = (rest / teaspoon).floor_to(1);
  const Rational quarters = (rest - whole * teaspoon) / quarter;
  constexpr std::string_view fractions[] = {"", "¼", "½", "¾"};
  std::string text;
  if (large.is_positive()) text = (large / tablespoon).to_decimal(0) + " tbsp";
  std::string small = whole.is_zero() ? "" : whole.to_decimal(0);
  small += fractions[static_cast<std::size_t>(quarters.to_double() + 0.5)];
  if (!small.empty()) text += (text.empty() ? "" : " ") + small + " tsp";
  return text.empty() ? "less than ¼ tsp" : text;
}

namespace {

// An entry's number is the last word; whatever ends otherwise stands for itself.
std::pair<std::string, std::string> table_and_entry(const std::string& source) {
  const std::size_t blank_at = source.rfind(' ');
  const bool numbered =
      blank_at != std::string::npos && source.back() >= '0' && source.back() <= '9';
  if (!numbered) return {source, ""};
  return {source.substr(0, blank_at), source.substr(blank_at + 1)};
}

}  // namespace

std::vector<std::string> tables_of(const std::vector<std::string>& sources) {
  std::vector<std::string> tables;
  for (const std::string& source : sources) tables.push_back(table_and_entry(source).first);
  return tables;
}

std::string sources_text(const std::vector<std::string>& sources) {
  std::vector<std::pair<std::string, std::string>> tables;  // of each, its entries
  for (const std::string& source : sources) {
    const std::pair<std::string, std::string> found = table_and_entry(source);
    const std::string& table = found.first;
    const std::string& entry = found.second;
    const auto known = std::find_if(tables.begin(), tables.end(), [&](const auto& each) {
      return each.first == table && !entry.empty();
    });
    if (known == tables.end()) {
      tables.emplace_back(table, entry);
    } else {
      known->second += ", " + entry;
    }
  }
  std::string text;
  for (const auto& [table, entries] : tables) {
    text += (text.empty() ? "" : "; ") + table + (entries.empty() ? "" : " " + entries);
  }
  return text;
}

}  // namespace maslin::report
