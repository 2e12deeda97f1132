// SPDX-License-Identifier: Apache-2.0
// The science against what others have published or measured: one value a row in tests/science/,
// with its source and a mark: `published` (seen in the source), `data` (an open table), `computed`
// (the source's formula evaluated apart from this program: it finds slips, not errors of the
// formula), `from memory` (not confirmed; loose).
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <iostream>
#include <set>

#include "science/found.hpp"
#include "support/tables.hpp"

namespace maslin::test {
namespace {

const std::vector<std::string> tables = {"acidity", "boiling", "evaporation", "heat",
                                         "keeping", "kitchen", "nutrition",   "water_activity"};
const std::vector<std::string> marks = {"published", "data", "computed", "from memory"};

// One row asks whether a value of old is missed, as it ought to be; others whether a range holds
// it.
Finders every_finder() {
  Finders all = keeping_finders();
  for (Finders part : {boiling_finders(), kitchen_finders()}) all.merge(part);
  return all;
}

// "boiling rise is not": a published value known to be wrong, which ought to be missed.
bool ends_with(const std::string& text, const std::string& end) {
  return text.size() >= end.size() && text.substr(text.size() - end.size()) == end;
}

// The whole run prints each value beside ours.
void show(const Row& row, const std::string& found) {
  if (std::getenv("MASLIN_FULL") == nullptr || row.at("mark") == "computed") return;
  std::cout << row.at("mark") << " | " << row.at("what") << " | " << row.at("inputs") << " | "
            << row.at("expected") << " | " << found << " | " << row.at("source") << "\n";
}

void check_number(const Row& row, const std::string& what, double found, bool missed) {
  const double expected = std::stod(row.at("expected"));
  const double tolerance = std::stod(row.at("tolerance"));
  if (missed) {
    EXPECT_GT(std::abs(found - expected), tolerance) << what;
  } else {
    constexpr double rounding = 1e-9;
    EXPECT_NEAR(found, expected, tolerance + rounding) << what;
  }
}

void check(const Row& row, const Finders& finders) {
  std::string name = row.at("what");
  const std::string not_so = " is not";
  const bool missed = ends_with(name, not_so);
  if (missed) name.resize(name.size() - not_so.size());
  const auto finder = finders.find(name);
  ASSERT_NE(finder, finders.end()) << "nothing computes: " << name;
  const std::string what = name + " (" + row.at("inputs") + "), " + row.at("source");
  const Inputs inputs(row.at("inputs"));
  const Found found = finder->second(inputs);
  EXPECT_EQ(inputs.unused(), "") << what;
  if (const auto* number = std::get_if<double>(&found)) {
    show(row, fmt::format("{:.5g}", *number));
    check_number(row, what, *number, missed);
  } else {
    show(row, std::get<std::string>(found));
    EXPECT_EQ(std::get<std::string>(found), row.at("expected")) << what;
  }
}

TEST(Science, AgreesWithWhatIsPublished) {
  const Finders finders = every_finder();
  std::map<std::string, int> by_mark;
  for (const std::string& name : tables) {
    for (const Row& row : table_at("tests/science/" + name + ".csv")) {
      ASSERT_EQ(row.size(), 6U) << name << ": a row with missing cells";
      ASSERT_NE(std::find(marks.begin(), marks.end(), row.at("mark")), marks.end())
          << row.at("mark");
      EXPECT_FALSE(row.at("source").empty()) << name;
      ++by_mark[row.at("mark")];
      check(row, finders);
    }
  }
  int rows = 0;
  for (const auto& [mark, count] : by_mark) {
    rows += count;
    std::cout << count << " values " << mark << "\n";
  }
  EXPECT_GE(rows, 300);
  EXPECT_GE(by_mark["published"], 120);
}

TEST(Science, EveryFinderIsAskedForByARow) {
  std::set<std::string> asked;
  for (const std::string& name : tables) {
    for (const Row& row : table_at("tests/science/" + name + ".csv")) asked.insert(row.at("what"));
  }
  for (const auto& each : every_finder()) {
    EXPECT_EQ(asked.count(each.first), 1U) << each.first;
  }
}

}  // namespace
}  // namespace maslin::test
