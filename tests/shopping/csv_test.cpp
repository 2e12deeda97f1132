// SPDX-License-Identifier: Apache-2.0
// The list for a spreadsheet as Python's own csv module reads it, against the plan as JSON.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "json/run_program.hpp"

namespace maslin::shopping_test {
namespace {

using Json = nlohmann::json;

// Rows by the names in the head; a row of another length is an error.
constexpr const char* reader = R"(
import csv, io, json, sys
text = sys.stdin.buffer.read().decode('utf-8')
assert text.endswith('\r\n') and text.replace('\r\n', '').count('\n') == 0
rows = list(csv.DictReader(io.StringIO(text, newline=''), strict=True))
assert all(None not in row and None not in row.values() for row in rows)
print(json.dumps(rows))
)";

double number(const Json& row, const char* name) {
  const auto text = row.at(name).get<std::string>();
  return text.empty() ? -1 : std::stod(text);
}

TEST(ShoppingList, IsReadByAnotherReaderAsThePlanHasIt) {
  const json_test::Folder folder;
  folder.write("first.maslin", json_test::small_framework);
  folder.write("tuesday.maslin", json_test::small_basket);
  const auto plan = folder.maslin({"plan", "first.maslin", "tuesday.maslin", "--json"});
  const auto list = folder.maslin({"plan", "first.maslin", "tuesday.maslin", "--to", "csv"});
  ASSERT_EQ(list.exit, 0) << list.err;
  const auto read = folder.run("/usr/bin/python3", {"-c", reader}, list.out);
  ASSERT_EQ(read.exit, 0) << read.err;
  const Json rows = Json::parse(read.out);
  const Json to_get = Json::parse(plan.out)["plan"]["to_get"];
  ASSERT_EQ(rows.size(), to_get.size());
  int packed = 0;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const Json& thing = to_get[i];
    const auto what = rows[i].at("what").get<std::string>();
    EXPECT_EQ(what.rfind(thing.at("ingredient").get<std::string>(), 0), 0U) << what;
    EXPECT_NEAR(number(rows[i], "to_get_g"), thing.at("weight_g").get<double>(), 0.0006) << what;
    EXPECT_NEAR(number(rows[i], "packs"), thing.value("packs", -1.0), 0.0006) << what;
    EXPECT_NEAR(number(rows[i], "pack_g"), thing.value("pack_g", -1.0), 0.0006) << what;
    EXPECT_NEAR(number(rows[i], "cost"), thing.value("cost", -1.0), 0.0051) << what;
    if (thing.contains("packs")) ++packed;
  }
  EXPECT_GE(packed, 1);
}

}  // namespace
}  // namespace maslin::shopping_test
