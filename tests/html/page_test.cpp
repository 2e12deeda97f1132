// SPDX-License-Identifier: Apache-2.0
// The page as others judge it: a validator of HTML, a checker of accessibility, a browser that
// prints, and the text of the same sheet.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>

#include "html/browser.hpp"
#include "json/run_program.hpp"
#include "report/html.hpp"
#include "support/planning.hpp"

namespace maslin::html_test {
namespace {

using json_test::Folder;
using json_test::Ran;

const std::filesystem::path source_folder = std::filesystem::path(MASLIN_SOURCE_DIR);

// A plan of the examples: its name and the words that ask for it.
struct Example {
  std::string name;
  std::vector<std::string> words;
};

std::vector<Example> examples() {
  const auto path = [](const std::string& name) {
    return (source_folder / "examples" / name).string();
  };
  std::vector<Example> result = {
      {"a_village_chutney",
       {"plan", path("chutney.maslin"), path("october.maslin"), path("village_hall.maslin")}}};
  for (const auto& each : std::filesystem::directory_iterator(source_folder / "examples/baskets")) {
    const std::string name = each.path().stem().string();
    std::string framework = name;
    std::replace(framework.begin(), framework.end(), '_', ' ');
    result.push_back(
        {name,
         {"plan", each.path().string(), path("village_hall.maslin"), "--framework", framework}});
  }
  return result;
}

// The baskets without a kitchen: less to print, in larger type.
std::vector<Example> without_kitchen() {
  std::vector<Example> result = examples();
  result.erase(result.begin());
  for (Example& each : result) {
    each.name += "_without_kitchen";
    each.words.erase(each.words.begin() + 2);
  }
  return result;
}

std::string printed_as(const Folder& folder, const Example& example, const std::string& form,
                       const std::string& command = "plan") {
  std::vector<std::string> words = example.words;
  words.front() = command;
  words.insert(words.end(), {"--to", form});
  const Ran ran = folder.maslin(words);
  EXPECT_EQ(ran.exit, 0) << example.name << ": " << ran.err;
  return ran.out;
}

// A plan whose every name tries to break out, as far as a text may: what is no plain text is told
// before there is a plan.
std::string hostile_text() {
  const std::string name =
      "]]></title></style></svg><script>alert(1)</script><img src=x onerror=y> & ' {{1}} -->";
  return "framework \"" + name + R"(" {
  title ")" +
         name + R"("
  produce      { onion 15 .. 25 %; fruit 50 .. 100 % }
  per kilogram { vinegar 450 ml; sugar 250 .. 300 g }
  limits       { soluble solids 30 .. 45 % }
}
basket ")" +
         name + R"(" { apple 2.5 kg gross, from ")" + name + R"("; onion 800 g prepared }
)";
}

// Labels and the card for the stall, and of names that try to break out. Of every example in the
// whole run; else of a chutney, a jam and what is packed in liquor.
std::vector<std::string> write_labels(const Folder& folder) {
  std::vector<std::string> names;
  const auto write = [&](const Example& example) {
    Example card = example;
    card.words.emplace_back("--card");
    for (const auto& [kind, each] : {std::pair("label_", example), std::pair("card_", card)}) {
      names.push_back(kind + example.name);
      folder.write(names.back() + ".html", printed_as(folder, each, "html", "label"));
    }
  };
  for (const Example& example : examples()) {
    const bool usual = example.name == "a_village_chutney" || example.name == "fruit_jam" ||
                       example.name == "beetroot_in_vinegar";
    if (usual || std::getenv("MASLIN_FULL") != nullptr) write(example);
  }
  EXPECT_GE(names.size(), 6U);
  folder.write("hostile.maslin", hostile_text());
  write({"hostile", {"label", "hostile.maslin"}});
  return names;
}

// What a reader of the page reads, blanks made alike.
std::string words_of_page(std::string page) {
  page = std::regex_replace(page, std::regex("<style>[^<]*</style>|<[^>]*>"), " ");
  for (const auto& [sign, text] :
       {std::pair("&lt;", "<"), std::pair("&gt;", ">"), std::pair("&quot;", "\""),
        std::pair("&amp;", "&"), std::pair("\u00A0", " ")}) {
    page = std::regex_replace(page, std::regex(sign), text);
  }
  return std::regex_replace(page, std::regex("\\s+"), " ");
}

// A village kitchen's sheet with everything that a sheet may draw.
report::Sheet sheet_with_all_drawings() {
  test::Texts texts;
  for (const char* name : {"chutney.maslin", "october.maslin", "village_hall.maslin"}) {
    std::ostringstream text;
    text << std::ifstream(source_folder / "examples" / name).rdbuf();
    texts["/kitchen/all.maslin"] += text.str();
  }
  const test::Planned planned(texts, "/kitchen/all.maslin");
  EXPECT_TRUE(planned.fits()) << planned.messages();
  report::Sheet sheet =
      report::make_sheet(planned.session().sources(), planned.program(), planned.plan());
  sheet.jars =
      report::JarRow{{{Volume(720), 4, 1, false},
                      {Volume(282), 3, 1, false},
                      {Volume(190), 1, Rational(Rational::Wide{1}, Rational::Wide{2}), true}}};
  sheet.depth = report::DepthStrip{Length(97), Length(54)};
  if (sheet.boiling_down) sheet.boiling_down->time = {Duration(3600), Duration(5400)};
  return sheet;
}

const std::string hostile =
    "]]></title></style></svg><script>alert(1)</script><img src=x onerror=y> & \\\" ' {{1}} --> "
    "\x1b[31m \xe2\x80\xae \xef\xbf\xbe \xff end";

report::Sheet hostile_sheet() {
  report::Sheet sheet;
  sheet.title = hostile;
  sheet.head = {hostile};
  sheet.sections = {{hostile,
                     {hostile},
                     {{hostile, "b"}, {{hostile, hostile}}},
                     {hostile},
                     report::Topic::shares}};
  const Rational half(Rational::Wide{1}, Rational::Wide{2});
  sheet.shares = {{hostile, half, {0, half}, half}};
  return sheet;
}

std::filesystem::path install_checkers(const Folder& folder) {
  const auto modules = std::filesystem::path(MASLIN_PROGRAM).parent_path() / "page_checkers";
  std::filesystem::create_directories(modules);
  const auto overwrite = std::filesystem::copy_options::overwrite_existing;
  for (const char* name : {"package.json", "package-lock.json"}) {
    std::filesystem::copy_file(source_folder / "tests/html" / name, modules / name, overwrite);
  }
  const Ran npm = folder.run(
      "npm", {"ci", "--prefix", modules.string(), "--no-audit", "--no-fund", "--ignore-scripts"});
  EXPECT_EQ(npm.exit, 0) << "The checkers cannot be installed. `npm` must be there (Debian: nodejs "
                            "and npm) and able to reach its registry.\n"
                         << npm.out << npm.err;
  return modules / "node_modules";
}

TEST(Page, IsValidAccessibleAndOneSideLongInEveryForm) {
  const Folder folder;
  for (const Example& example : examples()) {
    folder.write(example.name + ".html", printed_as(folder, example, "html"));
  }
  folder.write("drawings.html", report::to_html(sheet_with_all_drawings()));
  folder.write("hostile.html", report::to_html(hostile_sheet()));
  write_labels(folder);
  const auto modules = install_checkers(folder);
  const Ran checked = folder.run("node", {(source_folder / "tests/html/check.js").string(),
                                          modules.string(), folder.path().string()});
  EXPECT_EQ(checked.exit, 0) << checked.out << checked.err;
  RecordProperty("checked", checked.out);
}

TEST(Page, IsPrintedOnOneSideOfA4) {
  const Folder folder;
  std::vector<std::string> names = {"drawings"};
  folder.write("drawings.html", report::to_html(sheet_with_all_drawings()));
  for (const auto& list : {examples(), without_kitchen()}) {
    for (const Example& example : list) {
      folder.write(example.name + ".html", printed_as(folder, example, "html"));
      names.push_back(example.name);
    }
  }
  EXPECT_GE(names.size(), 24U);
  for (const std::string& name : names) {
    print_pdf(folder, name);
    EXPECT_EQ(pdf_info(folder, name, "Pages"), "1") << name;
    EXPECT_NE(pdf_info(folder, name, "Page size").find("(A4)"), std::string::npos) << name;
  }
}

// Fourteen kinds of produce and eight spices: the page is turned, and nothing on it is shrunk.
TEST(Page, GoesOnBehindRatherThanShrink) {
  const Folder folder;
  std::string produce;
  std::string basket;
  for (const char* each : {"onion", "apple", "pear", "carrot", "beetroot", "plum", "pumpkin",
                           "tomato", "celery", "parsnip", "quince", "swede", "leek", "garlic"}) {
    produce += std::string(each) + " 2 .. 40 %; ";
    basket += std::string(each) + " 1 kg prepared; ";
  }
  folder.write("dense.maslin", "framework dense { produce { " + produce + R"( }
  per kilogram { vinegar 450 ml; sugar 250 g; salt 10 g; turmeric 2 g; ground ginger 2 g; paprika 1 g
                 ground allspice 1 g; mustard powder 4 g; ground cumin 1 g; ground coriander 1 g }
  limits { soluble solids 25 .. 45 %; pH <= 4.5; stability index >= 15 }
  method { stage all { add all produce, all spice, vinegar, sugar, salt; reduce to soluble solids 35 % } }
}
basket { )" + basket + "}\n");
  const Example dense{
      "dense", {"plan", "dense.maslin", (source_folder / "examples/village_hall.maslin").string()}};
  folder.write("dense.html", printed_as(folder, dense, "html"));
  print_pdf(folder, "dense");
  EXPECT_EQ(pdf_info(folder, "dense", "Pages"), "2");
}

// What there is to fill in, and then the labels: as many as there are jars, on whole pages.
TEST(Page, LabelsAreCutFromWholePages) {
  const Folder folder;
  for (const std::string& name : write_labels(folder)) {
    std::ostringstream text;
    text << std::ifstream(folder.path() / (name + ".html")).rdbuf();
    const std::string page = text.str();
    const auto count = [&](const std::string& what) {
      const std::regex sign(what);
      return std::distance(std::sregex_iterator(page.begin(), page.end(), sign), {});
    };
    print_pdf(folder, name);
    EXPECT_EQ(pdf_info(folder, name, "Pages"), std::to_string(1 + count("class=\"page"))) << name;
    EXPECT_NE(pdf_info(folder, name, "Page size").find("(A4)"), std::string::npos) << name;
    if (name.rfind("label_", 0) != 0) continue;
    const auto labels = count("<article>");
    std::smatch said;
    ASSERT_TRUE(std::regex_search(page, said, std::regex("([0-9]+) labels|One label"))) << name;
    EXPECT_EQ(labels, said[1].matched ? std::stol(said[1]) : 1) << name;
  }
}

// The page names the tables of composition and leaves their entries to the text.
const std::string composition =
    "\n  - composition, which differs from one fruit to the next, from ";

std::string without_composition(const std::string& text) {
  const std::size_t begin = text.find(composition);
  EXPECT_NE(begin, std::string::npos);
  if (begin == std::string::npos) return text;
  std::size_t end = text.find('\n', begin + 1);
  while (text.compare(end, 5, "\n    ") == 0) end = text.find('\n', end + 1);
  return text.substr(0, begin) + text.substr(end);
}

TEST(Page, NamesTheTablesOfComposition) {
  const Folder folder;
  for (const Example& example : examples()) {
    const std::string page = words_of_page(printed_as(folder, example, "html"));
    const std::size_t begin = page.find(composition.substr(5));
    ASSERT_NE(begin, std::string::npos) << example.name;
    const std::string brief = page.substr(begin, page.find("(which entry", begin) - begin);
    const std::string text = printed_as(folder, example, "text");
    for (const char* table : {"USDA SR28 NDB", "Ciqual 2020", "CoFID 2015", "IFCT 2017"}) {
      const bool drawn_on = text.find(table, text.find(composition)) != std::string::npos;
      EXPECT_EQ(brief.find(table) != std::string::npos, drawn_on) << example.name << ": " << table;
    }
    EXPECT_LT(brief.size(), 500U) << example.name;
  }
}

TEST(Page, SaysAllThatTheTextSays) {
  const Folder folder;
  for (const Example& example : examples()) {
    const std::string page = words_of_page(printed_as(folder, example, "html"));
    std::string text = without_composition(printed_as(folder, example, "text"));
    int weights = 0;
    const std::regex weight("[0-9.]+ (kg|g|ml|tsp|pieces|%)");
    for (std::sregex_iterator at(text.begin(), text.end(), weight), end; at != end; ++at) {
      EXPECT_NE(page.find(at->str()), std::string::npos) << example.name << ": " << at->str();
      ++weights;
    }
    EXPECT_GE(weights, 15) << example.name;
    // Sentences and points, each on its own once the lines are joined.
    text = std::regex_replace(text, std::regex("\n    (?! )"), " ");
    std::istringstream lines(text);
    int points = 0;
    for (std::string line; std::getline(lines, line);) {
      if (line.rfind("  - ", 0) != 0) continue;
      const std::string point = std::regex_replace(line.substr(4), std::regex("\\s+"), " ");
      EXPECT_NE(page.find(point), std::string::npos) << example.name << ": " << point;
      ++points;
    }
    EXPECT_GE(points, 6) << example.name;
  }
}

TEST(Page, HostileTextsReachItHarmless) {
  const Folder folder;
  folder.write("hostile.maslin", hostile_text());
  const Ran ran = folder.maslin({"plan", "hostile.maslin", "--to", "html"});
  ASSERT_EQ(ran.exit, 0) << ran.err;
  for (const std::string& page : {ran.out, report::to_html(hostile_sheet())}) {
    const std::size_t body = page.find("<body");
    EXPECT_EQ(page.find("<script"), std::string::npos);
    EXPECT_EQ(page.find("<img"), std::string::npos);
    EXPECT_EQ(page.find("</title>"), page.rfind("</title>", body));
    EXPECT_EQ(page.find("</style>"), page.rfind("</style>"));
    EXPECT_NE(page.find("&lt;script&gt;"), std::string::npos);
    EXPECT_EQ(page.find('\x1b'), std::string::npos);
    EXPECT_EQ(page.find('\xff'), std::string::npos);
    EXPECT_EQ(page.find("\xe2\x80\xae"), std::string::npos);
  }
}

TEST(Page, HostileTextsReachLabelsAndCardsHarmless) {
  const Folder folder;
  folder.write("hostile.maslin", hostile_text());
  for (const char* card : {"", "--card"}) {
    std::vector<std::string> words = {"label", "hostile.maslin", "--to", "html"};
    if (*card != '\0') words.emplace_back(card);
    const Ran ran = folder.maslin(words);
    ASSERT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(ran.out.find("<script"), std::string::npos);
    EXPECT_EQ(ran.out.find("<img"), std::string::npos);
    EXPECT_EQ(ran.out.find("</title>"), ran.out.rfind("</title>"));
    EXPECT_EQ(ran.out.find("</style>"), ran.out.rfind("</style>"));
    EXPECT_NE(ran.out.find("&lt;script&gt;"), std::string::npos);
  }
}

TEST(Page, IsTheSameHoweverOftenItIsMade) {
  const Folder folder;
  const Example example = examples().front();
  EXPECT_EQ(printed_as(folder, example, "html"), printed_as(folder, example, "html"));
}

}  // namespace
}  // namespace maslin::html_test
