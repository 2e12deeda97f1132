// SPDX-License-Identifier: Apache-2.0
// Holds the parser to grammar/maslin.peg: what people read is run beside it on many texts, and both
// must make the same nodes.
#include <gtest/gtest.h>
#include <utf8proc.h>

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <random>
#include <set>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "grammar/corpus.hpp"
#include "grammar/peg_interpreter.hpp"
#include "syntax/parse.hpp"

namespace maslin::grammar {
namespace {

std::string content(const std::string& path) {
  const std::ifstream file(path, std::ios::binary);
  EXPECT_TRUE(file) << path;
  std::ostringstream text;
  text << file.rdbuf();
  return std::move(text).str();
}

PegInterpreter& interpreter() {
  static PegInterpreter instance(content(MASLIN_SOURCE_DIR "/grammar/maslin.peg"));
  return instance;
}

std::vector<PegNode> parsed(std::string_view text) {
  std::vector<PegNode> nodes;
  for (const syntax::Node& node : syntax::parse(FileId(0), text).nodes) {
    nodes.push_back({syntax::name_of(node.kind), node.begin, node.end});
  }
  return nodes;
}

std::string said(const std::vector<PegNode>& nodes, std::size_t index) {
  if (index >= nodes.size()) return "no more nodes";
  const PegNode& node = nodes[index];
  return std::string(node.kind) + " " + std::to_string(node.begin) + ".." +
         std::to_string(node.end);
}

testing::AssertionResult agree(std::string_view text) {
  const auto wanted = interpreter().run(text);
  if (!wanted) return testing::AssertionFailure() << "maslin.peg does not take all of:\n" << text;
  const std::vector<PegNode> found = parsed(text);
  if (*wanted == found) return testing::AssertionSuccess();
  const auto differing =
      std::mismatch(wanted->begin(), wanted->end(), found.begin(), found.end()).first;
  const auto index = static_cast<std::size_t>(differing - wanted->begin());
  const std::size_t place = index < wanted->size() ? (*wanted)[index].begin : text.size();
  return testing::AssertionFailure()
         << "node " << index << ": maslin.peg makes " << said(*wanted, index)
         << ", the parser makes " << said(found, index) << ", after:\n"
         << text.substr(0, place).substr(place > 100 ? place - 100 : 0) << "\nbefore:\n"
         << text.substr(place, 100);
}

std::vector<std::string_view> all_texts() {
  std::vector<std::string_view> texts = sound_texts();
  const std::vector<std::string_view> small = small_texts();
  texts.insert(texts.end(), small.begin(), small.end());
  return texts;
}

// ---- The two files and the kinds of node --------------------------------------------------------

TEST(Agreement, EveryRuleThatMakesANodeHasAKind) {
  std::set<std::string> rules{"keyword", "symbol"};  // made by "word" and 'text'
  for (const PegRule& rule : interpreter().rules()) {
    if (rule.makes_node) rules.insert(rule.name);
  }
  const std::set<std::string> kinds{
#define MASLIN_NODE(name) #name,
#include "syntax/node_kinds.def"
#undef MASLIN_NODE
  };
  EXPECT_EQ(rules, kinds);
}

TEST(Agreement, EveryRuleIsReached) {
  EXPECT_EQ(interpreter().rules().front().name, "file");
  EXPECT_EQ(interpreter().unreachable(), std::vector<std::string>{});
}

// The corpus cannot show a word that only one of the files knows; their texts can.
TEST(Agreement, BothFilesKnowTheSameWords) {
  const std::string rules = content(MASLIN_SOURCE_DIR "/grammar/rules.hpp");
  std::set<std::string> words;
  constexpr std::string_view opening = "K(\"";
  for (std::size_t at = rules.find(opening); at != std::string::npos;
       at = rules.find(opening, at)) {
    at += opening.size();
    words.insert(rules.substr(at, rules.find('"', at) - at));
  }
  EXPECT_EQ(interpreter().texts(PegOp::word), words);
}

// ---- The same nodes -----------------------------------------------------------------------------

TEST(Agreement, OnWrittenTexts) {
  for (const std::string_view text : all_texts()) EXPECT_TRUE(agree(text));
  for (const char* part : {"onion", "1/2", "\"", "{", "}", ",", ";", "..", "#", "\r", "ü"}) {
    for (const std::string_view text : small_texts()) {
      const std::string longer = std::string(text) + part;
      EXPECT_TRUE(agree(longer));
    }
  }
  for (const std::string& word : interpreter().texts(PegOp::word)) {
    for (const std::string& text : {"let " + word + " = 3", "let a = 3 " + word + " 4",
                                    "basket { a 3 " + word + " 4 }", "framework a { " + word}) {
      EXPECT_TRUE(agree(text));
    }
  }
  // Else a part of the grammar would stand unheld.
  for (const std::string& part : interpreter().never_matched()) ADD_FAILURE() << "unseen: " << part;
}

// No character cut in two.
bool is_whole(std::string_view text) {
  return utf8proc_decompose(reinterpret_cast<const utf8proc_uint8_t*>(text.data()),
                            static_cast<utf8proc_ssize_t>(text.size()), nullptr, 0,
                            static_cast<utf8proc_option_t>(0)) >= 0;
}

// The library, the examples and the golden files, their expectations and all: any text will do.
TEST(Agreement, OnFiles) {
  for (const std::string folder : {"stdlib", "examples", "tests/golden"}) {
    const std::filesystem::path path = std::filesystem::path(MASLIN_SOURCE_DIR) / folder;
    if (!std::filesystem::exists(path)) continue;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(path)) {
      if (!entry.is_regular_file() || entry.path().extension() != ".maslin") continue;
      const std::string text = content(entry.path());
      if (!is_whole(text)) continue;
      EXPECT_TRUE(agree(text)) << entry.path();
    }
  }
}

TEST(Agreement, OnCarriageReturns) {
  for (const std::string_view text : all_texts()) {
    std::string crlf;
    for (const char each : text) crlf += each == '\n' ? "\r\n" : std::string(1, each);
    EXPECT_TRUE(agree(crlf));
  }
}

TEST(Agreement, OnEveryBeginning) {
  const std::vector<std::string_view> texts = sound_texts();
  for (const std::string_view text : {texts[1], texts[2]}) {
    for (std::size_t length = 0; length < text.size(); ++length) {
      if ((static_cast<unsigned char>(text[length]) & 0xC0) == 0x80) continue;
      ASSERT_TRUE(agree(text.substr(0, length)));
    }
  }
}

// ---- Random changes -----------------------------------------------------------------------------

using Pieces = std::vector<std::string>;

// One character a piece, or one word or number a piece.
Pieces pieces_of(std::string_view text, bool whole_words) {
  Pieces pieces;
  bool goes_on = false;
  for (std::size_t at = 0; at < text.size();) {
    utf8proc_int32_t code_point = 0;
    const auto length = static_cast<std::size_t>(
        utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()) + at,
                         static_cast<utf8proc_ssize_t>(text.size() - at), &code_point));
    const bool in_word = whole_words && (length > 1 || std::isalnum(code_point) != 0);
    if (!in_word || !goes_on) pieces.emplace_back();
    pieces.back() += text.substr(at, length);
    goes_on = in_word;
    at += length;
  }
  return pieces;
}

class Changes {
 public:
  explicit Changes(std::uint32_t seed) : random_(seed) {
    for (const PegOp op : {PegOp::word, PegOp::symbol}) {
      for (const std::string& text : interpreter().texts(op)) inserted_.push_back(text);
    }
    const Pieces more{"\n",     "\r\n", "\r",  "\t", "#",  "##",   "\"",     ";",
                      "«",      "»",    "“",   "”",  "„",  "½",    "1 1/2",  "1,5",
                      "-3",     ".5",   "1e6", "12", "%",  "@",    "\u00A0", "\uFEFF",
                      "\u0301", "’",    "🍐",   "x",  " g", " of ", " {",     "}\n"};
    inserted_.insert(inserted_.end(), more.begin(), more.end());
  }

  std::size_t below(std::size_t bound) { return random_() % bound; }

  std::string changed(std::string_view text) {
    Pieces pieces = pieces_of(text, below(3) != 0);
    for (std::size_t count = 1 + below(4); count > 0; --count) change(pieces);
    std::string joined;
    for (const std::string& piece : pieces) joined += piece;
    return joined;
  }

 private:
  void change(Pieces& pieces) {
    if (pieces.empty()) return;
    const std::size_t at = below(pieces.size());
    const auto place = pieces.begin() + static_cast<std::ptrdiff_t>(at);
    const std::string copy = *place;
    switch (below(4)) {
      case 0:
        pieces.erase(place);
        break;
      case 1:
        pieces.insert(place, copy);
        break;
      case 2:
        std::swap(*place, pieces[below(pieces.size())]);
        break;
      default:
        pieces.insert(place, inserted_[below(inserted_.size())]);
    }
  }

  std::mt19937 random_;
  Pieces inserted_;
};

// A stretch of lines, so that most changes fall where they matter.
std::string_view excerpt(std::string_view text, Changes& changes) {
  const std::size_t begin = text.find('\n', changes.below(text.size()));
  if (begin == std::string_view::npos) return text;
  return text.substr(begin, 200 + changes.below(600));
}

TEST(Agreement, OnRandomChanges) {
  const std::vector<std::string_view> texts = all_texts();
  Changes changes(20261010);
  int compared = 0;
  while (compared < 20000) {
    std::string_view text = texts[changes.below(texts.size())];
    if (text.size() > 800 && changes.below(8) != 0) text = excerpt(text, changes);
    if (!is_whole(text)) continue;  // cut inside a character
    const std::string changed = changes.changed(text);
    ASSERT_TRUE(agree(changed));
    ++compared;
  }
}

}  // namespace
}  // namespace maslin::grammar
