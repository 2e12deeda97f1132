// SPDX-License-Identifier: Apache-2.0
// The library's figures against the tables they were drawn from (data/SOURCES.md, with their
// licences): USDA SR28, Ciqual 2020, CoFID 2015 for what food is made of and how much of it is
// eaten; USDA SR28 for what a spoon or cup of it weighs; FDA/CFSAN and the FDA Bad Bug Book for pH.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "language/membership.hpp"
#include "support/planning.hpp"
#include "support/tables.hpp"

namespace maslin::test {
namespace {

using language::Ingredient;
using science::Substance;

// "USDA SR28 NDB 11282": the tables name it by its database, and say "NDB 11282".
std::string database_of(const Row& row) {
  const std::string& name = row.at("source_db");
  if (name.rfind("USDA", 0) == 0) return "USDA SR28";
  if (name.rfind("Ciqual", 0) == 0) return "Ciqual 2020";
  return "CoFID 2015";
}

std::string name_of_food(const Row& row) {
  return database_of(row) + " " + row.at("source_food_id");
}

struct Compared {
  std::string column;
  Substance substance;
  double per_gram = 1;  // of the column's unit
};
const std::vector<Compared> compared = {
    {"water_g", Substance::water},
    {"protein_g", Substance::protein},
    {"fat_g", Substance::fat},
    {"fibre_g", Substance::fibre},
    {"starch_g", Substance::starch},
    {"glucose_g", Substance::glucose},
    {"fructose_g", Substance::fructose},
    {"sucrose_g", Substance::sucrose},
    {"maltose_g", Substance::maltose},
    {"polyols_g", Substance::polyols},
    {"ash_g", Substance::ash},
    {"alcohol_g", Substance::alcohol},
    {"sodium_mg", Substance::sodium, 1000},
    {"potassium_mg", Substance::potassium, 1000},
};

// How far the number printed may be from what was measured: half of its last digit. A whole number
// of grams is meant to a tenth; the library itself keeps two decimals.
double rounding_of(const std::string& written, const Compared& column) {
  const std::size_t point = written.find('.');
  const std::size_t digits = point == std::string::npos ? 0 : written.size() - point - 1;
  const std::size_t least = column.per_gram > 1 ? 0 : 1;
  const std::size_t meant = std::clamp<std::size_t>(digits, least, 2);
  constexpr double noise = 1e-6;
  return 0.5 * std::pow(10.0, -static_cast<double>(meant)) + noise;
}

// A trace, below detection, or present in unknown amount: a bound, not a measurement.
bool is_no_measurement(const Row& row, const std::string& column) {
  const auto flags = row.find("flags");
  return flags != row.end() &&
         std::regex_search(flags->second, std::regex("(^|;)" + column + "(<|=tr|=N)"));
}

// Whether a note of the entry says that this value, or all of this row, was thrown out.
bool is_thrown_out(const Ingredient& ingredient, const Row& row) {
  const std::string database = database_of(row).substr(0, database_of(row).find(' '));
  static const std::regex words("[Ll]eft out|not believed|not add up|taken|drawn|without");
  return std::any_of(ingredient.notes.begin(), ingredient.notes.end(), [&](const auto& note) {
    return note.find(database) != std::string::npos && std::regex_search(note, words);
  });
}

// What an entry holds of a substance as the tables count it: their ash is minerals and salt
// together.
std::optional<Bounds> held(const Ingredient& ingredient, Substance substance) {
  std::optional<Bounds> share = ingredient.composition[substance];
  const auto& salt = ingredient.composition[Substance::salt];
  if (substance == Substance::ash && share && salt) {
    share = Bounds{share->low + salt->low, share->high + salt->high};
  }
  return share;
}

struct Findings {
  int checked = 0;
  int thrown_out = 0;
  std::string strays;

  void take(const Ingredient& ingredient, const Row& row, const Compared& each) {
    const std::string& written = row.at(each.column);
    const auto share = held(ingredient, each.substance);
    if (written.empty() || !share || is_no_measurement(row, each.column)) return;
    const double value = std::stod(written);
    const double unit = 100 * each.per_gram;
    const double slack = rounding_of(written, each);
    ++checked;
    if (value >= share->low.to_double() * unit - slack &&
        value <= share->high.to_double() * unit + slack) {
      return;
    }
    if (is_thrown_out(ingredient, row)) {
      ++thrown_out;
      return;
    }
    strays += fmt::format("{}: {} {} ({}) is outside {} .. {}\n", ingredient.name, each.column,
                          written, name_of_food(row), share->low.to_double() * unit,
                          share->high.to_double() * unit);
  }
};

class Tables : public testing::Test {
 protected:
  const std::vector<Ingredient>& ingredients() const { return library_.program().ingredients; }

 private:
  Planned library_{"basket { onion 1 kg gross }"};
};

TEST_F(Tables, CompositionsHoldTheRowsTheyName) {
  std::map<std::string, std::vector<Row>> rows;
  for (const Row& row : table("composition.csv")) rows[name_of_food(row)].push_back(row);
  Findings findings;
  int named = 0;
  std::string unknown;
  for (const Ingredient& ingredient : ingredients()) {
    for (const std::string& source : ingredient.sources) {
      const auto found = rows.find(source);
      const bool of_a_table = source.rfind("USDA SR28 NDB", 0) == 0 ||
                              source.rfind("Ciqual 2020 ", 0) == 0 ||
                              source.rfind("CoFID 2015 ", 0) == 0;
      if (found == rows.end()) {
        if (of_a_table) unknown += ingredient.name + ": " + source + "\n";
        continue;
      }
      ++named;
      for (const Row& row : found->second) {
        for (const Compared& each : compared) findings.take(ingredient, row, each);
      }
    }
  }
  EXPECT_EQ(unknown, "") << "a row is named that the table does not have";
  EXPECT_EQ(findings.strays, "") << findings.checked << " " << findings.thrown_out;
  EXPECT_GE(named, 200);
  EXPECT_GE(findings.checked, 2000);
  // What is thrown out is the exception.
  EXPECT_LE(findings.thrown_out, findings.checked / 40);
}

TEST_F(Tables, EdibleSharesAreWhatIsNotRefuse) {
  const auto rows = table("composition.csv");
  int checked = 0;
  for (const Ingredient& ingredient : ingredients()) {
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
  EXPECT_GE(checked, 60);
}

// A spoon or a cup is the US one: 4.92892, 14.78676 and 236.58824 ml (US NIST Handbook 44).
TEST_F(Tables, DensitiesAreWhatSpoonsAndCupsWeigh) {
  const auto rows = table("household_weights.csv");
  static const std::regex measure("\\b(tsp|tbsp|cup)\\b");
  int checked = 0;
  std::string strays;
  for (const Ingredient& ingredient : ingredients()) {
    if (!ingredient.density) continue;
    const std::string& origin = ingredient.density->origin;
    std::set<std::string> wanted;
    for (std::sregex_iterator at(origin.begin(), origin.end(), measure), end; at != end; ++at) {
      wanted.insert(at->str());
    }
    bool any = false;
    bool held = false;
    for (const Row& row : rows) {
      const std::string& density = row.at("bulk_density_g_per_ml");
      std::smatch found;
      const std::string& words = row.at("measure");
      if (density.empty() || origin.find(row.at("source_food_id")) == std::string::npos ||
          !std::regex_search(words, found, measure) || wanted.count(found.str()) == 0) {
        continue;
      }
      any = true;
      const double value = std::stod(density);
      constexpr double slack = 0.0006;  // three decimals
      held = held || (value >= ingredient.density->value.low.to_double() - slack &&
                      value <= ingredient.density->value.high.to_double() + slack);
    }
    if (!any) continue;
    ++checked;
    if (!held) strays += ingredient.name + ": " + origin + "\n";
  }
  EXPECT_EQ(strays, "");
  EXPECT_GE(checked, 40);
}

// The list's plural, or its word, and ours. What is not here, the library does not have, or means
// something else by (a pickle, a jam).
const std::map<std::string, std::string> words_of_the_list = {
    {"Apple, eating", "apple"},
    {"Apricots", "apricot"},
    {"Beans, string", "green bean"},
    {"Beets", "beetroot"},
    {"Blackberries", "blackberry"},
    {"Blueberries", "blueberry"},
    {"Cabbage", "cabbage"},
    {"Carrots", "carrot"},
    {"Cauliflower", "cauliflower"},
    {"Celery", "celery"},
    {"Cherries (California)", "cherry"},
    {"Corn", "sweetcorn"},
    {"Cucumbers", "cucumber"},
    {"Eggplant", "aubergine"},
    {"Leeks", "leek"},
    {"Lemon juice", "bottled lemon juice"},
    {"Lime juice", "bottled lime juice"},
    {"Mangoes, ripe", "mango"},
    {"Pomegranate", "pomegranate"},
    {"Prunes", "prune"},
    {"Onions", "onion"},
    {"Peppers", "sweet pepper"},
};

TEST_F(Tables, RangesOfPhHoldTheListed) {
  int checked = 0;
  for (const Row& row : table("ph_of_foods.csv")) {
    const auto name = words_of_the_list.find(row.at("item"));
    if (name == words_of_the_list.end()) continue;
    for (const Ingredient& ingredient : ingredients()) {
      if (ingredient.name != name->second || !ingredient.ph) continue;
      if (ingredient.ph->origin.find("FDA") == std::string::npos) continue;
      EXPECT_TRUE(ingredient.ph->value.contains(*Rational::from_decimal(row.at("ph_low"))))
          << ingredient.name;
      EXPECT_TRUE(ingredient.ph->value.contains(*Rational::from_decimal(row.at("ph_high"))))
          << ingredient.name;
      ++checked;
    }
  }
  EXPECT_GE(checked, 15);
}

// Measured alkalinity of ash, and against it the potassium of the other tables, which makes up most
// of it: 0.6 to 2 equivalents a mole, so the 0.7 to 1.4 that stand for produce of which no ash was
// titrated do not hold dates, potatoes and radishes, nor lemons, onions, plums and dried figs.
TEST_F(Tables, AlkalinityOfAshIsTheListed) {
  std::map<std::string, int> checked;
  for (const Row& row : table("ash_alkalinity.csv")) {
    const auto found =
        std::find_if(ingredients().begin(), ingredients().end(),
                     [&](const auto& each) { return each.name == row.at("ingredient"); });
    ASSERT_NE(found, ingredients().end()) << row.at("ingredient");
    ASSERT_TRUE(found->ash_alkalinity) << found->name;
    const Rational listed = *Rational::from_decimal(row.at("mmol_per_100_g")) / Rational(100);
    EXPECT_TRUE(found->ash_alkalinity->value.contains(listed)) << found->name;
    EXPECT_NE(found->ash_alkalinity->origin.find(row.at("source")), std::string::npos);
    ++checked[found->name];
  }
  EXPECT_EQ(checked.size(), 30U);
  for (const Ingredient& ingredient : ingredients()) {
    EXPECT_EQ(ingredient.ash_alkalinity.has_value(), checked.count(ingredient.name) == 1)
        << ingredient.name;
    const auto& potassium = ingredient.composition[Substance::potassium];
    if (!ingredient.ash_alkalinity || !potassium) continue;
    constexpr double grams_per_mole = 39.0983;
    constexpr double apart = 2.5;
    const double low = potassium->low.to_double() * 1000 / grams_per_mole / apart;
    const double high = potassium->high.to_double() * 1000 / grams_per_mole * apart;
    EXPECT_GT(ingredient.ash_alkalinity->value.high.to_double(), low) << ingredient.name;
    EXPECT_LT(ingredient.ash_alkalinity->value.low.to_double(), high) << ingredient.name;
  }
}

// Every figure says where it comes from, if only that it is from memory.
TEST_F(Tables, EveryEntryNamesASource) {
  for (const Ingredient& ingredient : ingredients()) {
    bool stated = false;
    for (std::size_t i = 0; i < science::substance_count; ++i) {
      stated = stated || ingredient.composition[static_cast<Substance>(i)].has_value();
    }
    EXPECT_TRUE(!stated || !ingredient.sources.empty() || !ingredient.composition_origin.empty())
        << ingredient.name;
    for (const auto* figure :
         {&ingredient.ph, &ingredient.edible, &ingredient.density, &ingredient.piece}) {
      if (figure->has_value()) {
        EXPECT_TRUE(!(*figure)->origin.empty() || !ingredient.sources.empty()) << ingredient.name;
      }
    }
  }
}

}  // namespace
}  // namespace maslin::test
