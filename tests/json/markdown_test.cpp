// SPDX-License-Identifier: Apache-2.0
#include "report/markdown.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <regex>

#include "json/run_program.hpp"

namespace maslin::json_test {
namespace {

report::Sheet sheet_of(const std::string& text) {
  report::Sheet sheet;
  sheet.title = text;
  sheet.head = {text};
  sheet.sections.push_back({text, {text}, {{text, "how much"}, {{text, "540 g"}}}, {text}});
  return sheet;
}

TEST(Markdown, LaysOutASheet) {
  report::Sheet sheet;
  sheet.title = "October chutney";
  sheet.head = {"framework october chutney, own", "basket: Tuesday"};
  sheet.sections.push_back({"Produce to weigh",
                            {"In this order."},
                            {{"take", "ready for the pan", "actual"},
                             {{"onion", "720 g", "______"}, {"in all", "4.445 kg", ""}}},
                            {"onion: 90 % of it (a table)"}});
  sheet.sections.push_back({"Left", {"Nothing."}, {}, {}});
  EXPECT_EQ(report::to_markdown(sheet),
            "# October chutney\n"
            "\n"
            "- framework october chutney, own\n"
            "- basket: Tuesday\n"
            "\n"
            "## Produce to weigh\n"
            "\n"
            "In this order.\n"
            "\n"
            "| take | ready for the pan | actual |\n"
            "| --- | ---: | --- |\n"
            "| onion | 720 g | ______ |\n"
            "| in all | 4.445 kg |  |\n"
            "\n"
            "- onion: 90 % of it (a table)\n"
            "\n"
            "## Left\n"
            "\n"
            "Nothing.\n");
}

TEST(Markdown, TakesNothingForMarkup) {
  const std::string text = "`a`|<script>alert(1)</script> *b* _c_ [d](e) ![f](g) ~h~ \\ & $i$";
  const std::string shown =
      "\\`a\\`\\|&lt;script&gt;alert(1)&lt;/script&gt; \\*b\\* \\_c\\_ \\[d\\](e) !\\[f\\](g) "
      "\\~h\\~ \\\\ &amp; \\$i\\$";
  EXPECT_EQ(report::to_markdown(sheet_of(text)), "# " + shown + "\n\n- " + shown + "\n\n## " +
                                                     shown + "\n\n" + shown + "\n\n| " + shown +
                                                     " | how much |\n| --- | ---: |\n| " + shown +
                                                     " | 540 g |\n\n- " + shown + "\n");
}

TEST(Markdown, StaysOnItsLine) {
  const std::string text = report::to_markdown(sheet_of("a\n\n# b\r\n| c |\x1b[31m \xff"));
  EXPECT_EQ(text.find("\n# b"), std::string::npos);
  EXPECT_EQ(text.find('\r'), std::string::npos);
  EXPECT_EQ(text.find('\x1b'), std::string::npos);
  EXPECT_EQ(text.find('\xff'), std::string::npos);
  EXPECT_EQ(std::count(text.begin(), text.end(), '\n'), 13);
}

TEST(Markdown, BeginsNoOtherBlock) {
  const auto first = [](const std::string& text) {
    const std::string all = report::to_markdown(sheet_of(text));
    return all.substr(2, all.find('\n') - 2);
  };
  EXPECT_EQ(first("# a"), "\\# a");
  EXPECT_EQ(first("- a"), "\\- a");
  EXPECT_EQ(first("+ a"), "\\+ a");
  EXPECT_EQ(first("=== a"), "\\=== a");
  EXPECT_EQ(first("12. a"), "12\\. a");
  EXPECT_EQ(first("1) a"), "1\\) a");
  EXPECT_EQ(first("> a"), "&gt; a");
  EXPECT_EQ(first("1.5 kg"), "1.5 kg");
  EXPECT_EQ(first("https://a.b www.c.d e@f"), "https\\://a.b www\\.c.d e\\@f");
}

TEST(Markdown, HostileTextsReachItHarmless) {
  const Folder folder;
  const std::string hostile = "</td><script>x</script> | `y` \x5c | <!-- -->";
  folder.write("a|<b>`.maslin", "framework \"" + hostile + R"(" {
  title "| --- | # <img src=x onerror=y>"
  produce      { onion 15 .. 25 %; fruit 50 .. 100 % }
  per kilogram { vinegar 450 ml }
  method       { stage "a|<b>" { add onion, fruit, vinegar; boil 10 min until ")" +
                                    hostile + R"(" } }
}
basket ")" + hostile + R"(" { apple 2.5 kg gross, from ")" +
                                    hostile + R"("; onion 800 g prepared }
)");
  const Ran ran = folder.maslin({"plan", "a|<b>`.maslin", "--to", "markdown"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  EXPECT_EQ(ran.out.find('<'), std::string::npos) << ran.out;
  EXPECT_EQ(ran.out.rfind("# \\| --- \\| # &lt;img", 0), 0U) << ran.out;
  // Every row of the first table has as many cells as its head.
  const std::regex bare("(^|[^\\\\])\\|");
  std::istringstream lines(ran.out.substr(ran.out.find("\n| take")));
  std::string line;
  std::getline(lines, line);
  int rows = 0;
  std::ptrdiff_t cells = 0;
  while (std::getline(lines, line) && !line.empty()) {
    const std::ptrdiff_t here =
        std::distance(std::sregex_iterator(line.begin(), line.end(), bare), std::sregex_iterator());
    if (rows == 0) cells = here;
    EXPECT_EQ(here, cells) << line;
    ++rows;
  }
  EXPECT_GE(rows, 4);
}

TEST(Markdown, HasWhatTheTextHas) {
  const Folder folder;
  folder.write("first.maslin", small_framework);
  folder.write("tuesday.maslin", small_basket);
  const Ran text = folder.maslin({"plan", "first.maslin", "tuesday.maslin", "--to", "text"});
  const Ran markdown =
      folder.maslin({"plan", "first.maslin", "tuesday.maslin", "--to", "markdown"});
  EXPECT_EQ(text.out, folder.maslin({"plan", "first.maslin", "tuesday.maslin"}).out);
  ASSERT_EQ(markdown.exit, 0) << markdown.err;
  // Sections stand at the margin, after an empty line.
  std::istringstream lines(text.out);
  std::string line;
  bool after_empty = false;
  int sections = 0;
  while (std::getline(lines, line)) {
    if (after_empty && !line.empty() && line[0] != ' ') {
      EXPECT_NE(markdown.out.find("\n## " + line + "\n"), std::string::npos) << line;
      ++sections;
    }
    after_empty = line.empty();
  }
  EXPECT_GE(sections, 8);
}

}  // namespace
}  // namespace maslin::json_test
