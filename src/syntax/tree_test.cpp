// SPDX-License-Identifier: Apache-2.0
#include "syntax/tree.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "grammar/corpus.hpp"
#include "syntax/parse.hpp"

namespace maslin::syntax {
namespace {

using Strings = std::vector<std::string_view>;

std::size_t count(const SyntaxTree& tree, Kind kind) {
  return static_cast<std::size_t>(std::count_if(
      tree.nodes.begin(), tree.nodes.end(), [&](const Node& node) { return node.kind == kind; }));
}

std::string shown(const SyntaxTree& tree, std::size_t index) {
  const View view(tree, static_cast<std::uint32_t>(index));
  return "node " + std::to_string(index) + ", a " + std::string(name_of(view.kind())) + ": " +
         std::string(view.text().substr(0, 200));
}

// The children of a node lie end to end and fill it.
testing::AssertionResult is_filled(const SyntaxTree& tree, std::size_t index) {
  const Node& node = tree.nodes[index];
  std::uint32_t place = node.begin;
  std::size_t child = index + 1;
  while (child < node.next) {
    const Node& inner = tree.nodes[child];
    if (inner.begin != place || inner.end < inner.begin || inner.next <= child ||
        inner.next > node.next) {
      return testing::AssertionFailure()
             << shown(tree, child) << "\nout of line in " << shown(tree, index);
    }
    place = inner.end;
    child = inner.next;
  }
  if (node.next > index + 1 && place != node.end) {
    return testing::AssertionFailure() << "not filled: " << shown(tree, index);
  }
  return testing::AssertionSuccess();
}

testing::AssertionResult is_lossless(const SyntaxTree& tree) {
  if (tree.nodes.empty()) return testing::AssertionFailure() << "no nodes";
  const Node& file = tree.nodes.front();
  if (file.kind != Kind::file || file.begin != 0 || file.end != tree.text.size() ||
      file.next != tree.nodes.size()) {
    return testing::AssertionFailure() << "the file is not whole";
  }
  if (tree.nodes.size() == 1 && !tree.text.empty()) {
    return testing::AssertionFailure() << "nothing was read";
  }
  std::string text;
  for (std::size_t index = 0; index < tree.nodes.size(); ++index) {
    const testing::AssertionResult filled = is_filled(tree, index);
    if (!filled) return filled;
    const Node& node = tree.nodes[index];
    if (node.next == index + 1) text += tree.text.substr(node.begin, node.end - node.begin);
  }
  if (text != tree.text) return testing::AssertionFailure() << "the text is not whole";
  return testing::AssertionSuccess();
}

// Each bad_item has its misfit, in the order of the text.
testing::AssertionResult misfits_fit(const SyntaxTree& tree) {
  std::size_t next = 0;
  for (std::size_t index = 0; index < tree.nodes.size(); ++index) {
    const Node& node = tree.nodes[index];
    if (node.kind != Kind::bad_item) continue;
    if (next == tree.misfits.size() || tree.misfits[next].node != index) {
      return testing::AssertionFailure() << "no misfit for " << shown(tree, index);
    }
    const Misfit& misfit = tree.misfits[next++];
    if (misfit.offset < node.begin || misfit.offset > tree.text.size()) {
      return testing::AssertionFailure() << "misfit out of place in " << shown(tree, index);
    }
    if (!misfit.too_deep && misfit.keywords.empty() && misfit.others.empty()) {
      return testing::AssertionFailure() << "nothing would fit " << shown(tree, index);
    }
  }
  if (next != tree.misfits.size()) return testing::AssertionFailure() << "misfits too many";
  return testing::AssertionSuccess();
}

void expect_no_fault(std::string_view text) {
  const SyntaxTree tree = parse(FileId(0), text);
  EXPECT_TRUE(is_lossless(tree));
  for (std::size_t index = 0; index < tree.nodes.size(); ++index) {
    for (const Kind fault : {Kind::bad_item, Kind::missing_brace, Kind::stray_brace,
                             Kind::unclosed_string, Kind::bad_number}) {
      EXPECT_NE(tree.nodes[index].kind, fault) << shown(tree, index);
    }
  }
}

TEST(Tree, SoundTextsHaveNoFault) {
  for (const std::string_view text : grammar::sound_texts()) {
    expect_no_fault(text);
    std::string crlf;
    for (const char each : text) crlf += each == '\n' ? "\r\n" : std::string(1, each);
    expect_no_fault(crlf);
  }
}

TEST(Tree, LosesNothing) {
  for (const std::string_view text : grammar::small_texts()) {
    const SyntaxTree tree = parse(FileId(0), text);
    EXPECT_TRUE(text.empty() || is_lossless(tree)) << text;
    EXPECT_TRUE(misfits_fit(tree)) << text;
  }
}

TEST(Tree, LosesNothingOfAnyBeginning) {
  for (const std::string_view text : grammar::sound_texts()) {
    for (std::size_t length = 1; length < text.size(); ++length) {
      if ((static_cast<unsigned char>(text[length]) & 0xC0) == 0x80) continue;
      const SyntaxTree tree = parse(FileId(0), text.substr(0, length));
      ASSERT_TRUE(is_lossless(tree));
      ASSERT_TRUE(misfits_fit(tree)) << text.substr(0, length);
    }
  }
}

TEST(Tree, OfAnEmptyText) {
  const SyntaxTree tree = parse(FileId(0), "");
  ASSERT_EQ(tree.nodes.size(), 1u);
  EXPECT_EQ(tree.nodes.front().kind, Kind::file);
  EXPECT_EQ(tree.nodes.front().end, 0u);
}

TEST(Tree, ViewsReadIt) {
  const SyntaxTree tree = parse(FileId(0), "basket week { pear 600 g prepared, use first }");
  const View basket = root(tree).child(Kind::basket);
  ASSERT_TRUE(basket);
  EXPECT_TRUE(basket.has_keyword("basket"));
  EXPECT_FALSE(basket.has_keyword("pear"));
  EXPECT_EQ(basket.child(Kind::name).text(), "week");
  const View line = basket.child(Kind::basket_block).child(Kind::basket_line);
  ASSERT_TRUE(line);
  EXPECT_EQ(line.text(), "pear 600 g prepared, use first");
  EXPECT_EQ(line.child(Kind::amount).child(Kind::quantity).child(Kind::unit).text(), "g");
  EXPECT_TRUE(line.child(Kind::use_first).has_keyword("first"));
  EXPECT_FALSE(line.has(Kind::trim));
  EXPECT_FALSE(line.child(Kind::trim).has(Kind::measure));
}

// ---- Texts that are too much --------------------------------------------------------------------

std::string repeated(std::string_view part, std::size_t times) {
  std::string text;
  text.reserve(part.size() * times);
  for (std::size_t i = 0; i < times; ++i) text += part;
  return text;
}

// Hangs or overflows when reading takes more than a time in step with the text.
void expect_read(const std::string& text) {
  const SyntaxTree tree = parse(FileId(0), text);
  EXPECT_TRUE(is_lossless(tree)) << text.substr(0, 60);
  EXPECT_TRUE(misfits_fit(tree)) << text.substr(0, 60);
}

constexpr std::size_t many = 200'000;

TEST(TooMuch, Brackets) {
  expect_read("let a = " + repeated("(", many));
  expect_read("let a = " + repeated("(", many) + "3" + repeated(")", many));
  expect_read("let a = " + repeated("(3 * ", many));
  expect_read(repeated("let a = ((((((((((3\n", many / 10));
  const std::string bounded = "let a = " + repeated("(", 60) + "3" + repeated(")", 60);
  EXPECT_EQ(count(parse(FileId(0), bounded), Kind::bracketed), 60u);
  const std::string deep = "let a = " + repeated("(", 65) + "3" + repeated(")", 65);
  const SyntaxTree tree = parse(FileId(0), deep);
  ASSERT_EQ(tree.misfits.size(), 1u);
  EXPECT_TRUE(tree.misfits.front().too_deep);
  EXPECT_EQ(tree.misfits.front().offset, 8u + 64u);
}

TEST(TooMuch, Braces) {
  expect_read(repeated("{", many));
  expect_read(repeated("}", many));
  expect_read(repeated("{", many) + repeated("}", many));
  expect_read(repeated("basket {", many / 10));
  expect_read(repeated("class a {\n", many / 10));
  expect_read("framework a { " + repeated("taste { b {\n", many / 10));
}

TEST(TooMuch, OneLine) {
  constexpr std::size_t size = 10'000'000;
  expect_read(std::string(size, 'a'));
  expect_read(std::string(size, ' '));
  expect_read(std::string(size, '1'));
  expect_read(std::string(size / 10, '"'));
  expect_read("# " + std::string(size, 'a'));
  expect_read("use \"" + std::string(size, 'a'));
  expect_read(repeated("onion 12 .. 20 %, ", many / 2));
  expect_read("produce is " + repeated("a, ", many) + "{ }");
  expect_read("let a = " + repeated("1 + ", many));
}

TEST(TooMuch, Quotes) {
  for (const char* quote : {"„", "«", "“", "”", "„\"", "“ ", "'", "’"}) {
    expect_read("use " + repeated(quote, many));
    expect_read("basket { " + repeated(quote, many));
  }
}

TEST(TooMuch, Numbers) {
  for (const char* part : {"1 ", "1/", "1,", "1.", "-", "1e", "½", "1 1/", "..", "- 1"}) {
    expect_read("let a = " + repeated(part, many));
    expect_read("basket { a " + repeated(part, many));
  }
}

TEST(TooMuch, Statements) {
  expect_read(repeated(";", 1'000'000));
  expect_read(repeated("\n", 1'000'000));
  expect_read(repeated("a\n", many));
  expect_read(repeated("let a = 3;", many));
  expect_read("basket {" + repeated("a 3 kg;", many));
}

// A statement goes on after a trailing comma, and each of these lines could begin one.
TEST(TooMuch, TrailingCommas) {
  expect_read("ingredient a {" + repeated("also b,\n", many) + "}");
  expect_read("ingredient a {" + repeated("pH 3,\n", many) + "}");
  expect_read("basket {" + repeated("trim 3 kg,\n", many) + "}");
  expect_read("batch \"a\" of b { boil 1 { filled {" + repeated("3 of 3 g,\n", many) + "}");
  expect_read("ingredient a {" + repeated("also b,\n", many) + "=}");
  expect_read("framework a { method { stage b {" + repeated("add b,\n", many) + "=");
  expect_read("ingredient a { also b," + repeated("\n# said\n", many));
  expect_read(repeated("basket a is b,\n", many));
}

// ---- What would have fitted ---------------------------------------------------------------------

struct Expected {
  std::string_view before;  // the text up to the place
  std::string_view after;   // the rest of it
  Strings fitting;          // each a keyword or another thing
};

testing::AssertionResult lists(const Misfit& misfit, std::string_view wanted) {
  const auto holds = [&](const Strings& list) {
    return std::find(list.begin(), list.end(), wanted) != list.end();
  };
  if (holds(misfit.keywords) || holds(misfit.others)) return testing::AssertionSuccess();
  testing::AssertionResult result = testing::AssertionFailure() << wanted << " is not among";
  for (const Strings& list : {misfit.keywords, misfit.others}) {
    for (const std::string_view each : list) result << " | " << each;
  }
  return result;
}

void expect_misfit(const Expected& expected) {
  const std::string text = std::string(expected.before) + std::string(expected.after);
  SCOPED_TRACE(text);
  const SyntaxTree tree = parse(FileId(0), text);
  ASSERT_EQ(tree.misfits.size(), 1u);
  const Misfit& misfit = tree.misfits.front();
  EXPECT_EQ(misfit.offset, expected.before.size());
  EXPECT_FALSE(misfit.too_deep);
  for (const std::string_view each : expected.fitting) EXPECT_TRUE(lists(misfit, each));
}

// Everything that would fit, in this order.
void expect_only(const Expected& expected) {
  expect_misfit(expected);
  const std::string text = std::string(expected.before) + std::string(expected.after);
  const SyntaxTree tree = parse(FileId(0), text);
  ASSERT_FALSE(tree.misfits.empty());
  Strings found = tree.misfits.front().keywords;
  const Strings& others = tree.misfits.front().others;
  found.insert(found.end(), others.begin(), others.end());
  EXPECT_EQ(found, expected.fitting) << text;
}

TEST(Misfits, OfHalfAStatement) {
  expect_only({"framework a { produce { onion 12 ..", "", {"a number"}});
  expect_only({"framework a { produce { onion 12 ..", "\n } }", {"a number"}});
  expect_only({"framework a { produce { onion", "", {"as", "at", "a number"}});
  expect_only({"framework a { limits { low acid <= ", "} }", {"a number"}});
  expect_only({"framework a { limits { low acid ", "} }", {"at", "`<=` or `>=`", "a number"}});
  expect_only({"framework a { limits { low acid <= 45 % of ", "} }", {"a name"}});
  expect_only({"framework a { title ", "Orchard }", {"text in quotes"}});
  expect_only({"framework ", "{ }", {"a name"}});
  expect_only({"framework a", "", {"refines", "{"}});
  expect_only({"let a", "", {"="}});
  expect_only({"let a = 3 + ", "", {"a number", "a name"}});
  expect_only({"use ", "a", {"text in quotes"}});
  expect_only({"unit a", "", {"is", "could", "="}});
  expect_only({"class a is", "", {"a name"}});
  expect_only({"ingredient a { allergen ", "}", {"none", "not", "a name"}});
  expect_only({"kitchen { jars 6 of 720 ml, 24 ", "}", {"of"}});
  expect_only({"ingredient a { raw unsafe, boil ", "least 10 min }", {"at"}});
}

TEST(Misfits, OfAMisspeltWord) {
  expect_misfit({"framework a {\n ", "prodcue { onion 12 % }\n}", {"produce", "per", "limits"}});
  expect_misfit({"", "framwork a { }", {"framework", "ingredient", "use"}});
  expect_misfit({"", "limits { salt 3 % }", {"framework", "basket"}});
  expect_misfit({"framework a { method { stage b { ", "sim 3 min } } }", {"simmer", "soak"}});
  expect_misfit({"framework a { method { stage b { simmer 20 min ",
                 "cov } } }",
                 {"covered", "uncovered", "until", "the end of the statement"}});
  expect_misfit({"framework a { substitute { honey for sugar by ",
                 "sweetness } }",
                 {"sugars", "acidity", "acetic"}});
  expect_misfit({"basket { squash 1.4 kg ", "gros }", {"gross", "trim", ","}});
  expect_misfit({"basket { squash 1.4 kg gross, ", "trm 3 % }", {"trim", "a number"}});
  expect_misfit({"basket { peas ", "in pod 2 kg }", {"to", "a number"}});
  expect_misfit({"framework a { produce { onion 12 .. 20 % ",
                 "pre } }",
                 {"prefer", "the end of the statement"}});
}

TEST(Misfits, AreToldOneByOne) {
  const SyntaxTree tree =
      parse(FileId(0), "framework a {\n  titel \"b\"\n  version 3\n  statis own; basos c\n}");
  ASSERT_EQ(tree.misfits.size(), 3u);
  for (const Misfit& misfit : tree.misfits) {
    EXPECT_EQ(misfit.offset, tree.nodes[misfit.node].begin);
    EXPECT_TRUE(lists(misfit, "title"));
  }
  EXPECT_EQ(count(tree, Kind::version), 1u);
}

TEST(Misfits, ACommaTooManyHarmsNothingElse) {
  const SyntaxTree tree =
      parse(FileId(0), "framework a { produce {\n  onion 12 .. 20 %,\n  root 3 %,  # most\n}\n}\n");
  EXPECT_EQ(count(tree, Kind::share), 2u);
  ASSERT_EQ(tree.misfits.size(), 2u);
  for (const Misfit& misfit : tree.misfits) {
    EXPECT_EQ(View(tree, misfit.node).text(), ",");
    EXPECT_TRUE(lists(misfit, "prefer"));
  }
}

TEST(Misfits, AStatementIsSkippedWhole) {
  const SyntaxTree tree = parse(
      FileId(0), "basket {\n  apple 3 kg gros,\n    trim 3 %,\n    use first\n  pear 2 kg\n}\n");
  EXPECT_EQ(count(tree, Kind::basket_line), 1u);
  ASSERT_EQ(tree.misfits.size(), 1u);
  EXPECT_EQ(View(tree, tree.misfits.front().node).text(),
            "apple 3 kg gros,\n    trim 3 %,\n    use first");
}

TEST(Misfits, AMissingBraceEndsAtTheNextHeader) {
  for (const char* header :
       {"framework b refines a {", "basket \"week\" {", "kitchen {",
        "ingredient pear is pome fruit, fruit {", "batch \"one\" of a version 3 {"}) {
    const std::string text = "framework a { produce { onion 12 %\n" + std::string(header) + " }";
    const SyntaxTree tree = parse(FileId(0), text);
    EXPECT_EQ(count(tree, Kind::missing_brace), 2u) << text;
    EXPECT_TRUE(tree.misfits.empty()) << text;
  }
}

}  // namespace
}  // namespace maslin::syntax
