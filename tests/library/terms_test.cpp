// SPDX-License-Identifier: Apache-2.0
// Every word that a sheet uses for a figure, a part or a reading has its page of `explain`.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "base/spelling.hpp"
#include "label/label.hpp"
#include "language/readings.hpp"
#include "report/proof.hpp"
#include "report/sheet.hpp"
#include "report/terms.hpp"
#include "report/words.hpp"
#include "support/golden_case.hpp"
#include "support/planning.hpp"

namespace maslin::test {
namespace {

namespace fs = std::filesystem;

// What needs no page: any cook knows it, or it only says where something stands.
constexpr std::array<std::string_view, 31> plain = {
    "what fits", "take", "actual", "what", "how much", "stage", "what to do", "method",
    "method, for each boil", "add", "or", "to get", "in packs", "costs", "what it costs", "notes",
    "what was assumed", "left in the basket, ready for the pan", "cautions",
    "not worked out, and not checked", "jar", "", "fat", "jars filled", "salt",
    // Lines of the label's own.
    "amount", "on every jar", "to fill in", "for the maker", "date made", "name of the food"};

bool is_plain(const std::string& words) {
  return std::find(plain.begin(), plain.end(), lower_case(words)) != plain.end();
}

// "boil 2" and "boil ___" are of `boil`, "Account of sugar" of `account`, "at 140 m" says a place.
std::string without_particulars(std::string words) {
  const auto is_particular = [](char c) {
    return std::isdigit(static_cast<unsigned char>(c)) != 0 || c == '_' || c == '.';
  };
  if (words.rfind("Account of ", 0) == 0) return "account";
  if (words.rfind("at ", 0) == 0 && words.size() > 3 && is_particular(words[3])) return "altitude";
  while (!words.empty() && (is_particular(words.back()) || words.back() == ' ')) words.pop_back();
  return words;
}

bool has_page(const std::string& words) {
  return report::term_named(words) != nullptr ||
         report::term_named(without_particulars(words)) != nullptr;
}

std::string before(const std::string& words, std::string_view mark) {
  return words.substr(0, words.find(mark));
}

std::string slurp(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

// The texts of every case of the folder, each case as one.
std::vector<std::string> texts_of_cases(const std::string& folder) {
  std::vector<std::string> result;
  for (const auto& entry :
       fs::directory_iterator(fs::path(MASLIN_SOURCE_DIR) / "tests/golden" / folder)) {
    std::string text;
    for (const Split& split : read_case(slurp(entry.path())).splits) {
      if (split.kind == "input") text += split.content;
    }
    result.push_back(std::move(text));
  }
  return result;
}

// Collects the words of sheets that have no page.
class Missing {
 public:
  explicit Missing(const language::Names& names) : names_(names) {}

  void look_through(const report::Sheet& sheet) {
    for (const report::Section& section : sheet.sections) {
      word(section.title);
      for (const std::string& head : section.table.heads) word(head);
      for (const auto& row : section.table.rows) {
        if (section.topic == report::Topic::limits) limit(row.front());
        if (section.topic == report::Topic::keeping) word(row.front());
        if (section.topic == report::Topic::readings) {
          word(before(before(row.front(), " at least "), " at most "));
        }
      }
    }
  }
  void word(const std::string& words) {
    ++seen_;
    if (!is_plain(words) && !has_page(words)) missing_.insert(words);
  }
  const std::set<std::string>& all() const { return missing_; }
  std::size_t seen() const { return seen_; }

 private:
  // A limit may be on the share of a class, which has its entry.
  void limit(const std::string& name) {
    const std::string what = before(before(name, " (floor of "), ",");
    if (names_.things.find(what) == nullptr) word(what);
  }

  const language::Names& names_;
  std::set<std::string> missing_;
  std::size_t seen_ = 0;
};

TEST(Terms, EveryWordOfASheetHasAPage) {
  std::size_t sheets = 0;
  for (const char* folder : {"plan", "method", "kitchen", "label"}) {
    for (const std::string& text : texts_of_cases(folder)) {
      const Planned planned(text);
      if (!planned.fits()) continue;
      ++sheets;
      Missing missing(planned.session().names());
      missing.look_through(
          report::make_sheet(planned.session().sources(), planned.program(), planned.plan()));
      Diagnostics found;
      for (const label::NutritionRow& row :
           label::make_label(planned.program(), planned.plan(), found).nutrition) {
        missing.word(row.what);
      }
      EXPECT_GT(missing.seen(), 10U);
      EXPECT_THAT(missing.all(), ::testing::IsEmpty());
    }
  }
  EXPECT_GE(sheets, 40U);
}

TEST(Terms, EveryFigureOfALimitAndEveryReadingHasAPage) {
  for (const auto name : language::property_names())
    EXPECT_TRUE(has_page(std::string(name))) << name;
  for (const auto name : language::reading_names())
    EXPECT_TRUE(has_page(std::string(name))) << name;
  EXPECT_TRUE(has_page("liquor acidity"));
  EXPECT_TRUE(has_page("low acid"));
}

TEST(Terms, EveryStatusAndVerdictHasAPage) {
  using language::Status;
  for (const Status status :
       {Status::not_stated, Status::own, Status::traditional, Status::tested}) {
    language::Framework framework;
    framework.status = status;
    for (const bool as_tested : {false, true}) {
      std::string words = before(report::status_text(framework, as_tested), " \"");
      if (words.back() == ',') words.pop_back();
      EXPECT_TRUE(has_page(words)) << words;
    }
  }
  using prove::Verdict;
  for (const Verdict verdict :
       {Verdict::no_limits, Verdict::holds, Verdict::breaks, Verdict::not_shown}) {
    EXPECT_TRUE(has_page(std::string(report::word_of(verdict)))) << report::word_of(verdict);
  }
}

// What a term is, what it does not say, and whose figures they are stands on every page; nothing
// stands on two.
TEST(Terms, PagesAreWholeAndDoNotClash) {
  const std::vector<std::string> heads = {"what it is",   "unit",         "worked out",
                                          "held against", "does not say", "in the kitchen",
                                          "source"};
  std::set<std::string> names;
  EXPECT_GE(report::all_terms().size(), 50U);
  for (const report::Term& term : report::all_terms()) {
    SCOPED_TRACE(term.name);
    EXPECT_TRUE(names.insert(lower_case(term.name)).second);
    for (const std::string& also : term.also) {
      EXPECT_TRUE(names.insert(lower_case(also)).second) << also;
    }
    std::size_t at = 0;
    std::set<std::string> present;
    for (const report::TermPart& part : term.parts) {
      const auto found =
          std::find(heads.begin() + static_cast<std::ptrdiff_t>(at), heads.end(), part.head);
      ASSERT_NE(found, heads.end()) << part.head << " is unknown, or out of order";
      at = static_cast<std::size_t>(found - heads.begin()) + 1;
      present.insert(part.head);
      EXPECT_FALSE(part.text.empty()) << part.head;
    }
    for (const char* head : {"what it is", "does not say", "source"}) {
      EXPECT_EQ(present.count(head), 1U) << head;
    }
  }
}

}  // namespace
}  // namespace maslin::test
