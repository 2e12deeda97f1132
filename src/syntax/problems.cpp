// SPDX-License-Identifier: Apache-2.0
#include "syntax/problems.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "base/spelling.hpp"

namespace maslin::syntax {
namespace {

// Where a statement that begins with this word belongs.
struct Home {
  std::string_view word;
  std::string_view block;
};
constexpr Home homes[] = {
    {"produce", "a framework"},   {"substitute", "a framework"}, {"limits", "a framework"},
    {"method", "a framework"},    {"taste", "a framework"},      {"title", "a framework"},
    {"status", "a framework"},    {"basis", "a framework"},      {"mature", "a framework"},
    {"per", "a framework"},       {"best", "a framework"},       {"once", "a framework"},
    {"pan", "a kitchen"},         {"hob", "a kitchen"},          {"scales", "a kitchen"},
    {"spoons", "a kitchen"},      {"jars", "a kitchen"},         {"store", "a kitchen"},
    {"law", "a kitchen"},         {"altitude", "a kitchen"},     {"stage", "a method"},
    {"fill", "a method"},         {"add", "a stage"},            {"simmer", "a stage"},
    {"reduce", "a stage"},        {"soak", "a stage"},           {"composition", "an ingredient"},
    {"edible", "an ingredient"},  {"pH", "an ingredient"},       {"allergen", "an ingredient"},
    {"boil", "a batch or stage"}, {"used", "a boil"},            {"reading", "a boil"},
    {"filled", "a boil"}};

constexpr std::array<std::string_view, 14> reserved = {
    "of", "for", "by",    "in",      "as",    "is",   "at",
    "to", "from", "where", "refines", "until", "only", "version"};

constexpr std::size_t most_misfits = 100;

bool is_reserved(std::string_view word) {
  return std::find(reserved.begin(), reserved.end(), word) != reserved.end();
}

bool is_leaf(const SyntaxTree& tree, std::uint32_t index) {
  return tree.nodes[index].next == index + 1;
}

bool is_trivia(Kind kind) {
  return kind == Kind::space || kind == Kind::comment || kind == Kind::newline ||
         kind == Kind::documentation;
}

class Reporter {
 public:
  Reporter(const SyntaxTree& tree, Diagnostics& diagnostics)
      : tree_(tree), diagnostics_(diagnostics) {}

  void run() {
    // A file that is no maslin at all would otherwise be reported line by line.
    const std::size_t count = std::min(tree_.misfits.size(), most_misfits);
    for (std::size_t i = 0; i < count; ++i) report_misfit(tree_.misfits[i]);
    if (count < tree_.misfits.size()) {
      diagnostics_.report(Code::too_many_errors, span_of(tree_.misfits[count].node),
                          fmt::format("{} more statements fit no form, from here on",
                                      tree_.misfits.size() - count));
    }
    for (std::uint32_t i = 0; i < tree_.nodes.size(); ++i) report_node(i);
  }

 private:
  Span span_of(std::uint32_t index) const { return View(tree_, index).span(); }

  void report_node(std::uint32_t index) {
    switch (tree_.nodes[index].kind) {
      case Kind::missing_brace: report_missing_brace(index); break;
      case Kind::stray_brace:
        diagnostics_.report(Code::stray_brace, span_of(index), "this `}` closes nothing")
            .with_mend("leave it out, or look for a `}` too many above");
        break;
      case Kind::unclosed_string: report_unclosed(index); break;
      case Kind::curly_string: report_curly(index); break;
      default: break;
    }
  }

  void report_missing_brace(std::uint32_t index) {
    // The block that was never closed is the innermost one around this place.
    std::uint32_t opener = 0;
    for (std::uint32_t i = 0; i < index; ++i) {
      if (tree_.nodes[i].next > index && tree_.text.substr(tree_.nodes[i].begin, 1) == "{") {
        opener = i;
      }
    }
    const Span open{tree_.file, tree_.nodes[opener].begin, tree_.nodes[opener].begin + 1};
    const std::uint32_t here = tree_.nodes[index].begin;
    auto& found = diagnostics_.report(Code::unclosed_block, open, "this `{` is never closed");
    if (here < tree_.text.size()) {
      found.with_because({tree_.file, here, here + 1}, "what begins here belongs outside of it");
    }
    found.with_mend("put a `}` on a line of its own where the block ends");
  }

  void report_unclosed(std::uint32_t index) {
    const Span span = span_of(index);
    diagnostics_
        .report(Code::unclosed_quote, span, "the quotes are not closed on this line")
        .with_fix({Fix::Kind::suggested, "close the quotes", {{{span.file, span.end, span.end}, "\""}}});
  }

  void report_curly(std::uint32_t index) {
    const View view(tree_, index);
    std::string text(view.text());
    std::string plain;
    for (std::size_t i = 0; i < text.size();) {
      const std::string_view rest = std::string_view(text).substr(i);
      const auto quote = std::find_if(quotes.begin(), quotes.end(),
                                      [&](std::string_view q) { return rest.starts_with(q); });
      if (quote != quotes.end()) {
        plain += '"';
        i += quote->size();
      } else {
        plain += text[i++];
      }
    }
    diagnostics_.report(Code::curly_quotes, view.span(), "these quotes are not plain ones")
        .with_why("a word processor may have changed them")
        .with_fix({Fix::Kind::safe, "use plain quotes", {{view.span(), plain}}});
  }

  // The leaf that covers a place, or the last one before the end of the text.
  std::uint32_t leaf_at(std::uint32_t from, std::uint32_t offset) const {
    std::uint32_t index = from;
    while (index < tree_.nodes.size()) {
      const Node& node = tree_.nodes[index];
      if (node.end <= offset && node.end != node.begin) {
        index = node.next;
      } else if (is_leaf(tree_, index) && node.end > offset) {
        return index;
      } else {
        ++index;
      }
    }
    return 0;
  }

  void report_misfit(const Misfit& misfit) {
    const View item(tree_, misfit.node);
    // What is only wrong inside (an unclosed quote) was told there.
    if (misfit.too_deep) {
      diagnostics_
          .report(Code::too_deep, {tree_.file, misfit.offset, misfit.offset + 1},
                  "brackets are nested too deeply here")
          .with_mend("name a part of it with `let`");
      return;
    }
    for (const View child : item) {
      if (child.is(Kind::unclosed_string)) return;
    }
    if (misfit.offset <= item.span().begin) {
      report_unknown_statement(misfit, item);
    } else {
      report_unexpected(misfit, item);
    }
  }

  void report_unknown_statement(const Misfit& misfit, View item) {
    const std::uint32_t first = leaf_at(misfit.node, item.span().begin);
    const View token(tree_, first == 0 ? misfit.node : first);
    const std::string_view word = token.text();
    auto& found = diagnostics_.report(Code::unknown_statement, token.span(),
                                      fmt::format("`{}` begins nothing that fits {}", shown(word),
                                                  place_of(misfit.node)));
    if (const std::string_view near = nearest_keyword(word, misfit.keywords); !near.empty()) {
      found.with_mend(fmt::format("did you mean `{}`?", near));
      found.with_fix({Fix::Kind::suggested, fmt::format("write `{}`", near),
                      {{token.span(), std::string(near)}}});
      return;
    }
    for (const Home& home : homes) {
      if (home.word == word) {
        found.with_mend(fmt::format("`{}` belongs in {}", word, home.block));
        return;
      }
    }
    if (token.is(Kind::number) || token.is(Kind::bad_number)) {
      found.with_mend("the name comes first, then how much: `onion 2 kg`");
      return;
    }
    found.with_mend(fmt::format("here would fit {}", expected(misfit)));
  }

  void report_unexpected(const Misfit& misfit, View item) {
    const std::uint32_t leaf = leaf_at(misfit.node, skip_blank(misfit.offset));
    const bool ends = leaf == 0 || tree_.nodes[leaf].begin >= item.span().end ||
                      is_trivia(tree_.nodes[leaf].kind);
    if (ends) {
      const std::uint32_t at = std::min(misfit.offset, item.span().end);
      diagnostics_
          .report(Code::unfinished, joined(item.span(), {tree_.file, at, at}),
                  "this statement stops too soon")
          .with_mend(fmt::format("here would fit {}", expected(misfit)));
      return;
    }
    const View token(tree_, leaf);
    if (is_reserved(token.text()) && report_reserved(misfit, item, token)) return;
    auto& found = diagnostics_.report(Code::unexpected, token.span(),
                                      fmt::format("`{}` does not fit here", shown(token.text())));
    if (token.text() == "=" || token.text() == ":") {
      found.with_mend("between a name and its amount stands only a space");
      found.with_fix({Fix::Kind::suggested, "leave it out", {{token.span(), ""}}});
      return;
    }
    if (const std::string_view near = nearest_keyword(token.text(), misfit.keywords);
        !near.empty()) {
      found.with_mend(fmt::format("did you mean `{}`?", near));
      found.with_fix({Fix::Kind::suggested, fmt::format("write `{}`", near),
                      {{token.span(), std::string(near)}}});
    }
    found.with_mend(fmt::format("here would fit {}", expected(misfit)));
  }

  // `peas in pod 2 kg`: a word with a meaning of its own ends the name.
  bool report_reserved(const Misfit& misfit, View item, View token) {
    if (std::find(misfit.others.begin(), misfit.others.end(), "a number") == misfit.others.end()) {
      return false;
    }
    Span name = token.span();
    name.begin = item.span().begin;
    for (const View each : item) {
      const bool part = each.is(Kind::word) || each.is(Kind::space);
      if (each.span().begin > token.span().begin && !part) break;
      if (each.is(Kind::word)) name.end = each.span().end;
    }
    const std::string quoted =
        fmt::format("\"{}\"", tree_.text.substr(name.begin, name.end - name.begin));
    diagnostics_
        .report(Code::name_ended, token.span(), fmt::format("`{}` ends the name here", token.text()))
        .with_mend("put the whole name in quotes if the word is part of it")
        .with_fix({Fix::Kind::suggested, "write " + quoted, {{name, quoted}}});
    return true;
  }

  std::uint32_t skip_blank(std::uint32_t offset) const {
    while (offset < tree_.text.size() && (tree_.text[offset] == ' ' || tree_.text[offset] == '\t')) {
      ++offset;
    }
    return offset;
  }

  // The block around a node, in words.
  std::string place_of(std::uint32_t index) const {
    Kind around = Kind::file;
    for (std::uint32_t i = 0; i < index; ++i) {
      if (tree_.nodes[i].next > index && name_of(tree_.nodes[i].kind).ends_with("_block")) {
        around = tree_.nodes[i].kind;
      }
    }
    switch (around) {
      case Kind::file: return "here, outside of every block";
      case Kind::produce_block: return "among the produce";
      case Kind::addition_block: return "among what is added per kilogram";
      case Kind::substitute_block: return "among the substitutions";
      case Kind::limits_block: return "among the limits";
      case Kind::step_block: return "in a stage of the method";
      default: break;
    }
    std::string_view name = name_of(around);
    name.remove_suffix(std::string_view("_block").size());
    const bool vowel = std::string_view("aeiou").find(name.front()) != std::string_view::npos;
    return fmt::format("in {} {}", vowel ? "an" : "a", name);
  }

  static std::string_view nearest_keyword(std::string_view word,
                                          const std::vector<std::string_view>& keywords) {
    std::string_view best;
    if (word.size() > 40) return best;
    const std::size_t most = std::max<std::size_t>(1, word.size() / 3);
    std::size_t best_distance = most + 1;
    for (const std::string_view keyword : keywords) {
      const std::size_t distance = edit_distance(word, keyword, most);
      if (distance < best_distance && word != keyword) {
        best_distance = distance;
        best = keyword;
      }
    }
    return best;
  }

  static std::string shown(std::string_view text) {
    constexpr std::size_t most = 40;
    if (text.size() <= most) return std::string(text);
    std::size_t end = most;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xc0) == 0x80) --end;
    return std::string(text.substr(0, end)) + "…";
  }

  static std::string expected(const Misfit& misfit) {
    std::vector<std::string> list;
    const bool unit = std::find(misfit.others.begin(), misfit.others.end(), "a unit") !=
                      misfit.others.end();
    for (const std::string_view other : misfit.others) {
      const bool words = other.find(' ') != std::string_view::npos || other.front() == '`';
      list.push_back(words ? std::string(other) : fmt::format("`{}`", other));
    }
    for (const std::string_view keyword : misfit.keywords) {
      if (unit && (keyword == "US" || keyword == "imp" || keyword == "fl")) continue;
      list.push_back(fmt::format("`{}`", keyword));
    }
    if (list.empty()) return "nothing of this kind";
    std::string text = list[0];
    for (std::size_t i = 1; i < list.size(); ++i) {
      text += (i + 1 == list.size() ? " or " : ", ") + list[i];
    }
    return text;
  }

  static constexpr std::array<std::string_view, 5> quotes = {"“", "”", "„", "«", "»"};

  const SyntaxTree& tree_;
  Diagnostics& diagnostics_;
};

}  // namespace

void report_problems(const SyntaxTree& tree, Diagnostics& diagnostics) {
  Reporter(tree, diagnostics).run();
}

}  // namespace maslin::syntax
