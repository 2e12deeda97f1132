// SPDX-License-Identifier: Apache-2.0
// Every unit of the library against GNU units, a reference of its own, which draws on NIST and the
// acts of weights and measures. Where it is not installed the test fails.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <string>

#include "support/planning.hpp"

namespace maslin::test {
namespace {

// What GNU units calls ours, where it has another word. Its `tsp` is the US one.
const std::map<std::string, std::string> gnu_names = {
    {"imp gallon", "brgallon"},
    {"imp quart", "brquart"},
    {"imp pint", "brpint"},
    {"imp fl oz", "brfloz"},
    {"imp cup", "0.5 brpint"},
    {"US gallon", "usgallon"},
    {"US quart", "usquart"},
    {"US pint", "uspint"},
    {"US cup", "uscup"},
    {"US fl oz", "usfloz"},
    {"US tbsp", "ustablespoon"},
    {"US tsp", "tsp"},
    {"h", "hour"},
    {"inch", "inch"},
    {"lb", "lb"},
    {"month", "365.25|12 day"},
    {"year", "365.25 day"},
    {"%", "0.01"},
};

// Conventions that no reference can confirm (common practice, no source): the metric spoons.
const std::map<std::string, double> conventions = {{"tsp", 5}, {"tbsp", 15}};

const std::map<std::string, std::string> gnu_bases = {
    {"a weight", "g"},
    {"a volume", "ml"},
    {"a time", "s"},
    {"a length", "mm"},
    {"a power", "W"},
    {"a plain number", "1"},
    {"an amount of substance", "mmol"},
};

TEST(Published, EveryUnitIsWhatGnuUnitsSays) {
  const Planned library("basket { onion 1 kg gross }");
  int checked = 0;
  for (const language::Unit& unit : library.program().units) {
    if (!unit.could_be.empty() || unit.dimension == dimensions::temperature) continue;
    const auto convention = conventions.find(unit.name);
    if (convention != conventions.end()) {
      EXPECT_EQ(unit.factor.to_double(), convention->second) << unit.name;
      continue;
    }
    const auto name = gnu_names.find(unit.name);
    const std::string theirs = name == gnu_names.end() ? unit.name : name->second;
    const std::string base = gnu_bases.at(describe(unit.dimension));
    const std::string answer =
        output_of("units", fmt::format("-t -o '%.12g' '{}' '{}'", theirs, base));
    const double expected = std::strtod(answer.c_str(), nullptr);
    ASSERT_GT(expected, 0) << unit.name << ": " << answer;
    EXPECT_NEAR(unit.factor.to_double() / expected, 1, 1e-10) << unit.name << ": " << answer;
    ++checked;
  }
  EXPECT_GE(checked, 30);
}

}  // namespace
}  // namespace maslin::test
