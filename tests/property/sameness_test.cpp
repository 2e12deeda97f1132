// SPDX-License-Identifier: Apache-2.0
// What must not change a plan: the order of statements, the names of framework and basket, how the
// text is spread over files, into how many lots a fruit is divided, the locale, the time zone, and
// another run. MASLIN_FULL=1 makes the campaigns long.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <locale>
#include <random>
#include <sstream>
#include <string>
#include <vector>

#include "property/amounts.hpp"
#include "property/random_case.hpp"

namespace maslin::test {
namespace {

class Sameness : public testing::Test {
 protected:
  std::mt19937 random{11252026};
};

std::vector<std::string> lines_of(const std::string& text) {
  std::istringstream in(text);
  std::vector<std::string> result;
  for (std::string line; std::getline(in, line);) result.push_back(line);
  return result;
}

// The words of a sheet without their order: what is listed as the framework lists it moves.
std::vector<std::string> words_of_sheet(const std::string& sheet) {
  std::istringstream in(sheet);
  std::vector<std::string> result;
  for (std::string word; in >> word;) {
    while (!word.empty() && (word.back() == ',' || word.back() == ';')) word.pop_back();
    result.push_back(word);
  }
  std::sort(result.begin(), result.end());
  return result;
}

// Of two lots of one fruit the first that is written is taken first, and shows on the sheet.
RandomCase with_one_lot_each(RandomCase the_case) {
  std::vector<RandomLine> kept;
  for (const RandomLine& line : the_case.lines) {
    const bool known = std::any_of(
        kept.begin(), kept.end(), [&](const RandomLine& other) { return other.name == line.name; });
    if (!known) kept.push_back(line);
  }
  the_case.lines = kept;
  return the_case;
}

TEST_F(Sameness, OrderOfEverything) {
  int fitted = 0;
  for (int i = 0; i < rounds(400, 10000); ++i) {
    RandomCase the_case = random_case(random);
    if (i % 2 == 0) the_case = with_one_lot_each(the_case);
    Writing backwards;
    backwards.reversed = true;
    const Planned first(text_of(the_case));
    const Planned second(text_of(the_case, backwards));
    SCOPED_TRACE(text_of(the_case));
    ASSERT_EQ(first.fits(), second.fits()) << first.messages() << second.messages();
    if (!first.fits()) continue;
    ++fitted;
    EXPECT_EQ(amounts(first), amounts(second));
    if (i % 2 != 0) continue;
    const auto before = words_of_sheet(first.sheet());
    const auto after = words_of_sheet(second.sheet());
    if (before != after) {
      std::vector<std::string> only;
      std::set_symmetric_difference(before.begin(), before.end(), after.begin(), after.end(),
                                    std::back_inserter(only));
      ADD_FAILURE() << testing::PrintToString(only) << first.sheet() << second.sheet();
    }
  }
  EXPECT_GT(fitted, rounds(200, 5000));
}

TEST_F(Sameness, Names) {
  for (int i = 0; i < rounds(100, 5000); ++i) {
    const RandomCase the_case = random_case(random);
    Writing other;
    other.framework = "another";
    other.basket = "the third week";
    const Planned first(text_of(the_case));
    const Planned second(text_of(the_case, other));
    ASSERT_EQ(first.fits(), second.fits());
    if (!first.fits()) continue;
    const auto before = lines_of(first.sheet());
    const auto after = lines_of(second.sheet());
    ASSERT_EQ(before.size(), after.size());
    constexpr std::size_t head = 3;  // the title, the framework, the basket and kitchen
    for (std::size_t at = head; at < before.size(); ++at) EXPECT_EQ(before[at], after[at]);
  }
}

TEST_F(Sameness, SplitIntoFiles) {
  for (int i = 0; i < rounds(100, 5000); ++i) {
    const RandomCase the_case = random_case(random);
    const Planned whole(text_of(the_case));
    const Planned split(
        {{"/kitchen/week.maslin", "use \"parts/framework.maslin\"\nuse \"kitchen.maslin\"\n"},
         {"/kitchen/kitchen.maslin", "use \"parts/basket.maslin\"\n" + kitchen_text(the_case)},
         {"/kitchen/parts/framework.maslin", "use \"basket.maslin\"\n" + framework_text(the_case)},
         {"/kitchen/parts/basket.maslin", basket_text(the_case)}},
        "/kitchen/week.maslin");
    SCOPED_TRACE(text_of(the_case));
    ASSERT_EQ(whole.fits(), split.fits()) << split.messages();
    if (!whole.fits()) {
      EXPECT_EQ(whole.codes(), split.codes());
      continue;
    }
    EXPECT_EQ(whole.sheet(), split.sheet());
  }
}

TEST_F(Sameness, AnotherRun) {
  for (int i = 0; i < rounds(60, 5000); ++i) {
    const RandomCase the_case = random_case(random);
    const Planned first(text_of(the_case));
    const Planned second(text_of(the_case));
    ASSERT_EQ(first.fits(), second.fits());
    EXPECT_EQ(first.messages(), second.messages());
    if (first.fits()) {
      EXPECT_EQ(first.sheet(), second.sheet());
    }
  }
}

// A lot divided into many is one: the same sum, the same plan.
TEST_F(Sameness, LotsDivided) {
  for (int i = 0; i < rounds(60, 2000); ++i) {
    RandomCase the_case = random_case(random);
    const Planned whole(text_of(the_case));
    std::vector<RandomLine> divided;
    for (const RandomLine& line : the_case.lines) {
      RandomLine part = line;
      const double grams = std::max(1.0, std::round(line.grams));
      part.grams = std::max(1.0, std::floor(grams / 3));
      if (line.grams == 0 || grams < 3) {
        divided.push_back(line);
        continue;
      }
      divided.push_back(part);
      divided.push_back(part);
      part.grams = grams - 2 * part.grams;
      divided.push_back(part);
    }
    the_case.lines = divided;
    const Planned many(text_of(the_case));
    ASSERT_EQ(whole.fits(), many.fits());
    if (whole.fits()) {
      EXPECT_EQ(amounts(whole), amounts(many)) << text_of(the_case);
    }
  }
}

// Weighed as it comes with a fifth cut away, or ready for the pan: the basis is another, the plan
// is not.
TEST_F(Sameness, GrossOrPrepared) {
  int weighed_both_ways = 0;
  for (int i = 0; i < rounds(60, 2000); ++i) {
    RandomCase prepared = random_case(random);
    RandomCase gross = prepared;
    for (std::size_t k = 0; k < prepared.lines.size(); ++k) {
      RandomLine& line = prepared.lines[k];
      const bool counts_something = line.clauses.find("keep back") != std::string::npos ||
                                    line.clauses.find("spoiled") != std::string::npos;
      if (line.basis != "prepared" || line.at_most > 0 || line.grams < 4 || counts_something) {
        continue;
      }
      // Whole grams either way.
      line.grams = 4 * std::floor(line.grams / 4);
      gross.lines[k] = line;
      gross.lines[k].grams = line.grams / 4 * 5;
      gross.lines[k].basis = "gross";
      gross.lines[k].clauses = ", trim 20 %" + line.clauses;
      ++weighed_both_ways;
    }
    const Planned one(text_of(prepared));
    const Planned other(text_of(gross));
    ASSERT_EQ(one.fits(), other.fits()) << text_of(gross);
    if (one.fits()) {
      EXPECT_EQ(amounts(one), amounts(other)) << text_of(gross);
    }
  }
  EXPECT_GT(weighed_both_ways, rounds(50, 1500));
}

TEST_F(Sameness, TenThousandLotsOfOneApple) {
  const std::string framework =
      "framework one {\n  produce { apple 60 %; onion 30 .. 50 % }\n"
      "  per kilogram { sugar 100 g; vinegar 400 .. 500 ml }\n}\n";
  std::string many = framework + "basket {\n  onion 4000 kg prepared\n";
  for (int i = 0; i < 10000; ++i) many += "  apple 300 g gross, trim 20 %\n";
  const Planned split(many + "}\n");
  const Planned whole(framework +
                      "basket { onion 4000 kg prepared; apple 3000 kg gross, trim 20 % }\n");
  ASSERT_TRUE(split.fits() && whole.fits()) << split.messages() << whole.messages();
  EXPECT_EQ(amounts(split), amounts(whole));
}

// Numbers as German or French would have them, where anything were to ask the locale.
class CommaNumbers : public std::numpunct<char> {
  char do_decimal_point() const override { return ','; }
  char do_thousands_sep() const override { return '.'; }
  std::string do_grouping() const override { return "\3"; }
};

TEST_F(Sameness, LocaleOfTheLibrary) {
  const RandomCase the_case = random_case(random);
  std::vector<std::string> plain;
  std::mt19937 same = random;
  for (int i = 0; i < 40; ++i) {
    const Planned planned(text_of(random_case(random)));
    plain.push_back(planned.messages() + (planned.fits() ? planned.sheet() : std::string()));
  }
  const std::locale before = std::locale::global(std::locale(std::locale(), new CommaNumbers));
  std::vector<std::string> comma;
  for (int i = 0; i < 40; ++i) {
    // The texts themselves are written without a locale.
    const Planned planned(text_of(random_case(same)));
    comma.push_back(planned.messages() + (planned.fits() ? planned.sheet() : std::string()));
  }
  std::locale::global(before);
  EXPECT_EQ(plain, comma);
}

// The real program, from elsewhere: locale, language, time zone, folder and width of the terminal.
TEST_F(Sameness, EnvironmentOfTheProgram) {
  const std::filesystem::path folder =
      std::filesystem::temp_directory_path() / "maslin_sameness_test";
  std::filesystem::create_directories(folder);
  int compared = 0;
  for (int i = 0; i < rounds(6, 200); ++i) {
    const RandomCase the_case = random_case(random);
    std::ofstream(folder / "week.maslin") << text_of(the_case);
    const auto run = [&](const std::string& environment) {
      return output_of("env", fmt::format("-C '{}' {} '{}' plan week.maslin", folder.string(),
                                          environment, MASLIN_PROGRAM));
    };
    const std::string usual = run("LC_ALL=C TZ=UTC");
    ASSERT_FALSE(usual.empty());
    for (const char* other :
         {"LC_ALL=de_DE.UTF-8 LANG=de_DE.UTF-8 LANGUAGE=de", "LC_ALL=fr_FR.UTF-8 TZ=Asia/Tokyo",
          "LC_ALL=tr_TR.UTF-8 TZ=America/St_Johns COLUMNS=40",
          "LC_ALL=C.UTF-8 TZ=:bad TERM=dumb"}) {
      EXPECT_EQ(run(other), usual) << other;
      ++compared;
    }
  }
  std::filesystem::remove_all(folder);
  EXPECT_GE(compared, 20);
}

}  // namespace
}  // namespace maslin::test
