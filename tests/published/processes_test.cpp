// SPDX-License-Identifier: Apache-2.0
// The published minutes in boiling water, as a plan gives them: by product, jar and altitude, at
// both sides of every edge. The mix is no recipe of theirs; a table goes by what is claimed.
#include <gtest/gtest.h>

#include <fmt/format.h>

#include "support/planning.hpp"
#include "support/tables.hpp"

namespace maslin::test {
namespace {

std::string text_for(const std::string& product, const std::string& jar,
                     const std::string& altitude) {
  return fmt::format(R"(
framework trial {{
  status tested "made up, to read a table by"
  produce {{ apple 100 % }}
  per kilogram {{ vinegar 500 ml; sugar 200 g }}
  limits {{ route boiling water, process for {} }}
}}
basket {{ apple 2 kg prepared }}
kitchen {{ scales to 1 g; altitude {}; jars 40 of {} }}
)",
                     product, altitude, jar);
}

std::string minutes_in(const Planned& planned) {
  const auto& tested = planned.plan().afternoon.tested;
  if (!tested || !tested->holds() || tested->times.size() != 1) return "none";
  return (tested->times[0].time.in_base() / Rational(60)).to_decimal(2);
}

TEST(Processes, MinutesAreThoseOfTheTables) {
  const auto rows = table_at("tests/published/processes.csv");
  EXPECT_GE(rows.size(), 100U);
  for (const Row& row : rows) {
    const Planned planned(text_for(row.at("product"), row.at("jar"), row.at("altitude")));
    const std::string what = row.at("product") + " in " + row.at("jar") + " at " +
                             row.at("altitude") + ", " + row.at("source");
    ASSERT_TRUE(planned.fits()) << what << planned.messages();
    EXPECT_EQ(minutes_in(planned), row.at("minutes")) << what;
    const auto codes = planned.codes();
    const bool refused = std::find(codes.begin(), codes.end(), "outside-table") != codes.end();
    EXPECT_EQ(refused, row.at("minutes") == "none") << what << planned.messages();
  }
}

// Half the batch, the same minutes (trade practice: times are by the jar, never by the batch).
TEST(Processes, MinutesDoNotGoByTheBatch) {
  const std::string text = text_for("pickled beets", "1 US pint", "140 m");
  EXPECT_EQ(minutes_in(Planned(text, prepared_aim(500))), "30");
  EXPECT_EQ(minutes_in(Planned(text, prepared_aim(2000))), "30");
}

// A kitchen with two sizes of a table gets both its rows.
TEST(Processes, EachSizeOfJarHasItsRow) {
  const Planned planned(text_for("apple butter", "1 US pint, 10 of 1 US quart", "1500 m"));
  ASSERT_TRUE(planned.fits()) << planned.messages();
  const auto& times = planned.plan().afternoon.tested->times;
  ASSERT_EQ(times.size(), 2U);
  EXPECT_EQ(times[0].time.in_base(), Rational(10 * 60));
  EXPECT_EQ(times[1].time.in_base(), Rational(15 * 60));
}

}  // namespace
}  // namespace maslin::test
