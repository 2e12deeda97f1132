// SPDX-License-Identifier: Apache-2.0
// The published minutes in boiling water, as a plan gives them: by product, jar and altitude, at
// both sides of every edge, for amounts that lie inside what the table holds.
#include <gtest/gtest.h>

#include <fmt/format.h>

#include <map>
#include <string>

#include "language/tested.hpp"
#include "support/planning.hpp"
#include "support/tables.hpp"

namespace maslin::test {
namespace {

// The middle of what the table holds for a product; nothing where it holds no amounts.
const std::map<std::string, std::string>& mixes() {
  static const std::map<std::string, std::string> all = {
      {"corn relish",
       "produce { sweetcorn 58 %; sweet pepper 25 %; celery 10 %; onion 7 % }\n"
       "per kilogram { vinegar 420 ml; sugar 122 g; salt 16 g; mustard powder 5.6 g }"},
      {"piccalilli",
       "produce { green tomato 42 %; sweet pepper 18 %; onion 13 %; cabbage 27 % }\n"
       "per kilogram { vinegar 420 ml; sugar 236 g; salt 57 g }"},
      {"tomato ketchup",
       "produce { tomato 96 %; onion 4 % }\n"
       "per kilogram { vinegar 65 ml; sugar 27 g; salt 7 g }"},
      {"apple chutney",
       "produce { apple 74 %; onion 12 %; sweet pepper 14 % }\n"
       "per kilogram { vinegar 810 ml; brown sugar 700 g; raisin 576 g }"},
      {"tomato-apple chutney",
       "produce { tomato 49 %; apple 41 %; onion 7 %; sweet pepper 3 % }\n"
       "per kilogram { vinegar 220 ml; brown sugar 210 g; raisin 69 g }"},
      {"pickled beets",
       "produce { beetroot 100 % }\n"
       "per kilogram { vinegar 300 ml; water 140 ml; sugar 126 g }"}};
  return all;
}

// Two kilograms of each thing and more, so that the mix is what is asked for.
std::string text_for(const std::string& product, const std::string& jar,
                     const std::string& altitude) {
  return fmt::format(R"(
framework trial {{
  status tested "as the table holds it"
  {}
  limits {{ route boiling water, process for {} }}
}}
basket {{
  apple 2 kg prepared; onion 2 kg prepared; sweet pepper 2 kg prepared; tomato 2 kg prepared
  green tomato 2 kg prepared; cabbage 2 kg prepared; celery 2 kg prepared
  sweetcorn 2 kg prepared; beetroot 2 kg prepared
}}
kitchen {{ scales to 1 g; altitude {}; jars 99 of {} }}
)",
                     mixes().at(product), product, altitude, jar);
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
    if (mixes().count(row.at("product")) == 0) continue;
    const Planned planned(text_for(row.at("product"), row.at("jar"), row.at("altitude")),
                          prepared_aim(2000));
    const std::string what = row.at("product") + " in " + row.at("jar") + " at " +
                             row.at("altitude") + ", " + row.at("source");
    ASSERT_TRUE(planned.fits()) << what << planned.messages();
    EXPECT_EQ(minutes_in(planned), row.at("minutes")) << what << planned.messages();
    const auto codes = planned.codes();
    const bool refused = std::find(codes.begin(), codes.end(), "outside-table") != codes.end();
    EXPECT_EQ(refused, row.at("minutes") == "none") << what << planned.messages();
  }
}

// The table has minutes for apple butter, in two sizes of jar, and no amounts: it gives none.
TEST(Processes, NoAmountsNoMinutes) {
  const Planned planned(
      "framework trial { status tested \"a handbook\"\n  produce { apple 100 % }\n"
      "  per kilogram { cider vinegar 130 ml; sugar 250 g }\n"
      "  limits { route boiling water, process for apple butter } }\n"
      "basket { apple 2 kg prepared }\n"
      "kitchen { scales to 1 g; altitude 140 m; jars 40 of 1 US pint }\n");
  ASSERT_TRUE(planned.fits()) << planned.messages();
  EXPECT_EQ(minutes_in(planned), "none");
  const language::Program& program = planned.program();
  const auto route =
      std::find_if(program.routes.begin(), program.routes.end(),
                   [](const language::Route& each) { return each.name == "boiling water"; });
  ASSERT_NE(route, program.routes.end());
  for (const Row& row : table_at("tests/published/processes.csv")) {
    if (row.at("product") != "apple butter" || row.at("minutes") == "none") continue;
    const bool quart = row.at("jar") == "1 US quart";
    const language::Process* found =
        row_for(*route, "apple butter", Volume(Rational(quart ? 946 : 473)));
    ASSERT_NE(found, nullptr);
    // A foot is 304.8 mm.
    const long high = std::stol(row.at("altitude"));
    const bool in_feet = row.at("altitude").find("ft") != std::string::npos;
    const Rational each = in_feet ? Rational(Rational::Wide{3048}, 10) : Rational(1000);
    const auto time = time_at(*found, Length(Rational(high) * each));
    ASSERT_TRUE(time.has_value());
    EXPECT_EQ((time->in_base() / Rational(60)).to_decimal(2), row.at("minutes"))
        << row.at("jar") << " at " << row.at("altitude");
  }
}

TEST(Processes, MinutesDoNotGoByTheBatch) {
  const std::string text = text_for("pickled beets", "1 US pint", "140 m");
  EXPECT_EQ(minutes_in(Planned(text, prepared_aim(500))), "30");
  EXPECT_EQ(minutes_in(Planned(text, prepared_aim(2000))), "30");
}

// A kitchen with two sizes of a table gets both its rows.
TEST(Processes, EachSizeOfJarHasItsRow) {
  const Planned planned(
      "route kettle in \"here\" as of 2024 {\n  read pH <= 4\n"
      "  process for sauce, 10 min up to 1800 m, jars up to 500 ml\n"
      "  process for sauce, 15 min up to 1800 m, jars up to 1 l\n"
      "  recipe for sauce { produce { apple 100 % }; per kilogram { vinegar 500 ml } }\n"
      "  refuse oil, because \"none\"; source \"made up for this test\" }\n"
      "framework trial { status tested \"made up\"\n  produce { apple 100 % }\n"
      "  per kilogram { vinegar 500 ml }\n  limits { route kettle, process for sauce } }\n"
      "basket { apple 2 kg prepared }\n"
      "kitchen { scales to 1 g; altitude 1500 m; jars 4 of 500 ml, 10 of 1 l }\n");
  ASSERT_TRUE(planned.fits()) << planned.messages();
  const auto& times = planned.plan().afternoon.tested->times;
  ASSERT_EQ(times.size(), 2U);
  EXPECT_EQ(times[0].time.in_base(), Rational(10 * 60));
  EXPECT_EQ(times[1].time.in_base(), Rational(15 * 60));
}

}  // namespace
}  // namespace maslin::test
