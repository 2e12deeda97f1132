// SPDX-License-Identifier: Apache-2.0
// The library's compositions against the tables they were drawn from (data/SOURCES.md): USDA SR28,
// Ciqual 2020, CoFID 2015.
#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "language/membership.hpp"
#include "support/planning.hpp"

namespace maslin::test {
namespace {

using Row = std::map<std::string, std::string>;

// One line of comma-separated values; a quoted cell may hold commas.
std::vector<std::string> cells(const std::string& line) {
  std::vector<std::string> result(1);
  bool quoted = false;
  for (const char c : line) {
    if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      result.emplace_back();
    } else if (c != '\r') {
      result.back() += c;
    }
  }
  return result;
}

std::vector<Row> table(const std::string& name) {
  std::ifstream in(std::string(MASLIN_SOURCE_DIR) + "/data/" + name);
  std::string line;
  std::getline(in, line);
  const auto heads = cells(line);
  std::vector<Row> rows;
  while (std::getline(in, line)) {
    const auto values = cells(line);
    Row row;
    for (std::size_t i = 0; i < heads.size() && i < values.size(); ++i) row[heads[i]] = values[i];
    rows.push_back(std::move(row));
  }
  return rows;
}

// "USDA SR28 NDB 11282" names the row whose food id is "NDB 11282".
bool names(const std::string& source, const Row& row) {
  const std::string& id = row.at("source_food_id");
  const std::string& database = row.at("source_db");
  const bool right = (source.rfind("USDA", 0) == 0 && database.rfind("USDA", 0) == 0) ||
                     (source.rfind("Ciqual", 0) == 0 && database.rfind("Ciqual", 0) == 0) ||
                     (source.rfind("CoFID", 0) == 0 && database.rfind("McCance", 0) == 0);
  const std::size_t at = source.find(id);
  return right && at != std::string::npos && at + id.size() == source.size();
}

// What is measured alike in every table; sugars by kind and acids differ in how they are stated.
const std::vector<std::pair<std::string, science::Substance>> compared = {
    {"water_g", science::Substance::water},
    {"protein_g", science::Substance::protein},
    {"fat_g", science::Substance::fat},
};

TEST(Published, CompositionsHoldTheRowsTheyName) {
  const auto rows = table("composition.csv");
  const Planned library("basket { onion 1 kg gross }");
  int checked = 0;
  int outside = 0;
  std::string strays;
  for (const language::Ingredient& ingredient : library.program().ingredients) {
    for (const std::string& source : ingredient.sources) {
      for (const Row& row : rows) {
        if (!names(source, row)) continue;
        for (const auto& [column, substance] : compared) {
          const std::string& written = row.at(column);
          const auto& share = ingredient.composition[substance];
          if (written.empty() || !share) continue;
          const double value = std::stod(written);
          ++checked;
          // To the rounding of the tables.
          constexpr double slack = 0.051;
          if (value >= share->low.to_double() * 100 - slack &&
              value <= share->high.to_double() * 100 + slack) {
            continue;
          }
          ++outside;
          strays += ingredient.name + ": " + column + " " + written + " (" + source + ")\n";
        }
      }
    }
  }
  EXPECT_GE(checked, 250);
  // A value thrown out as a misfit among the rest is said in the entry's note; there are few.
  EXPECT_LE(outside, checked / 50) << strays;
}

TEST(Published, EdibleSharesAreWhatIsNotRefuse) {
  const auto rows = table("composition.csv");
  const Planned library("basket { onion 1 kg gross }");
  int checked = 0;
  for (const language::Ingredient& ingredient : library.program().ingredients) {
    if (!ingredient.edible || ingredient.edible->origin.find("refuse") == std::string::npos) {
      continue;
    }
    for (const Row& row : rows) {
      const std::string& refuse = row.at("refuse_pct");
      if (refuse.empty() ||
          ingredient.edible->origin.find(row.at("source_food_id")) == std::string::npos) {
        continue;
      }
      const Rational share = Rational(1) - *Rational::from_decimal(refuse) / 100;
      EXPECT_TRUE(ingredient.edible->value.contains(share)) << ingredient.name << " " << refuse;
      ++checked;
    }
  }
  EXPECT_GE(checked, 25);
}

// FDA/CFSAN, Approximate pH of Foods and Food Products, as in data/ph_of_foods.csv.
TEST(Published, RangesOfPhHoldTheListed) {
  const std::map<std::string, std::string> ours = {
      {"Beets", "beetroot"},      {"Blackberries", "blackberry"},
      {"Carrots", "carrot"},      {"Celery", "celery"},
      {"Corn", "sweetcorn"},      {"Cucumbers", "cucumber"},
      {"Eggplant", "aubergine"},  {"Leeks", "leek"},
      {"Apple, eating", "apple"}, {"Cauliflower", "cauliflower"},
  };
  const Planned library("basket { onion 1 kg gross }");
  int checked = 0;
  for (const Row& row : table("ph_of_foods.csv")) {
    const auto name = ours.find(row.at("item"));
    if (name == ours.end()) continue;
    for (const language::Ingredient& ingredient : library.program().ingredients) {
      if (ingredient.name != name->second) continue;
      ASSERT_TRUE(ingredient.ph) << ingredient.name;
      EXPECT_TRUE(ingredient.ph->value.contains(*Rational::from_decimal(row.at("ph_low"))))
          << ingredient.name;
      EXPECT_TRUE(ingredient.ph->value.contains(*Rational::from_decimal(row.at("ph_high"))))
          << ingredient.name;
      ++checked;
    }
  }
  EXPECT_GE(checked, 8);
}

}  // namespace
}  // namespace maslin::test
