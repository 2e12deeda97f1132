// SPDX-License-Identifier: Apache-2.0
#include "syntax/problems.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <vector>

#include "syntax/advice.hpp"
#include "syntax/slips.hpp"
#include "syntax/words.hpp"

namespace maslin::syntax {
namespace {

constexpr std::size_t most_misfits = 100;

bool is_leaf(const SyntaxTree& tree, std::uint32_t index) {
  return tree.nodes[index].next == index + 1;
}

bool is_blank(char c) { return c == ' ' || c == '\t'; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

bool is_in(const std::vector<std::string_view>& list, std::string_view text) {
  return std::find(list.begin(), list.end(), text) != list.end();
}

bool is_trivia(Kind kind) {
  return kind == Kind::space || kind == Kind::comment || kind == Kind::newline ||
         kind == Kind::documentation;
}

class Reporter {
 public:
  Reporter(const SyntaxTree& tree, Diagnostics& diagnostics)
      : tree_(tree), diagnostics_(diagnostics) {}

  // One walk over the tree; the blocks around the node at hand are on a stack.
  void run() {
    for (std::uint32_t i = 0; i < tree_.nodes.size(); ++i) {
      while (!around_.empty() && tree_.nodes[around_.back()].next <= i) around_.pop_back();
      if (lost_ && i >= tree_.nodes[lost_block_].next) end_lost();
      if (i == next_in_file_) enter_item(i, next_in_file_);
      if (lost_ && i == next_in_lost_) enter_item(i, next_in_lost_);
      if (misfit_ < tree_.misfits.size() && tree_.misfits[misfit_].node == i) meet_misfit();
      report_node(i);
      if (name_of(tree_.nodes[i].kind).ends_with("_block")) around_.push_back(i);
    }
    end_lost();
  }

 private:
  Span span_of(std::uint32_t index) const { return View(tree_, index).span(); }

  // What stands directly in the file, or in a block. After a header that could not be read all that
  // was in its block stands there too: one cause, one report.
  void enter_item(std::uint32_t index, std::uint32_t& next) {
    const Kind kind = tree_.nodes[index].kind;
    next = index == 0 ? 1 : tree_.nodes[index].next;
    if (is_trivia(kind) || kind == Kind::semicolon || kind == Kind::bad_item ||
        kind == Kind::stray_brace || kind == Kind::file || kind == Kind::symbol) {
      return;
    }
    if (innermost() == lost_block_) end_lost();
  }

  // 0 is the file.
  std::uint32_t innermost() const { return around_.empty() ? 0 : around_.back(); }

  void end_lost() {
    if (swallowed_ > 0 && first_lost_ < diagnostics_.all().size()) {
      diagnostics_.all()[first_lost_].with_why(
          fmt::format("{} after it {} no form either, which may follow from this",
                      swallowed_ == 1 ? std::string("the statement")
                                      : fmt::format("the {} statements", swallowed_),
                      swallowed_ == 1 ? "fits" : "fit"));
    }
    lost_ = false;
    swallowed_ = 0;
    first_lost_ = none;
  }

  void meet_misfit() {
    const Misfit& misfit = tree_.misfits[misfit_++];
    if (follows_from_before(misfit)) {
      ++swallowed_;
      return;
    }
    // A file that is no maslin at all would otherwise be reported line by line.
    if (reported_ == most_misfits) {
      diagnostics_.report(Code::too_many_errors, span_of(misfit.node),
                          fmt::format("{} more statements fit no form, from here on",
                                      tree_.misfits.size() - misfit_ + 1));
      misfit_ = tree_.misfits.size();
      return;
    }
    ++reported_;
    const std::size_t before = diagnostics_.all().size();
    report_misfit(misfit);
    if (lost_) return;
    if (!around_.empty()) {
      // Of what is inside a block only a header takes more with it, and a `}` of its own.
      if (!is_in(misfit.others, "{")) return;
      ++unclosed_;
    }
    lost_ = true;
    lost_block_ = innermost();
    next_in_lost_ = tree_.nodes[misfit.node].next;
    swallowed_ = 0;
    first_lost_ = diagnostics_.all().size() > before ? before : none;
  }

  bool follows_from_before(const Misfit& misfit) const {
    const View item(tree_, misfit.node);
    if (item.span().begin == lone_brace_) return true;
    const bool first_word = misfit.offset <= item.span().begin;
    if (!first_word || (!around_.empty() && !lost_)) return false;
    if (lost_ && innermost() != lost_block_) return false;
    const std::string_view word = View(tree_, leaf_at(misfit.node, item.span().begin)).text();
    // A framework that a `}` closed too early, since one was missing before it.
    if (around_.empty() && unclosed_ > 0 && !home_of(word).empty()) return true;
    return lost_ && (lost_block_ != 0 || nearest_keyword(word, misfit.keywords).empty());
  }

  void report_node(std::uint32_t index) {
    switch (tree_.nodes[index].kind) {
      case Kind::missing_brace:
        report_missing_brace(index);
        break;
      case Kind::stray_brace:
        report_stray_brace(index);
        break;
      case Kind::unclosed_string:
        report_unclosed(index);
        break;
      case Kind::curly_string:
        report_curly(index);
        break;
      default:
        break;
    }
  }

  void report_missing_brace(std::uint32_t index) {
    // The block that was never closed is the innermost one around this place.
    const std::uint32_t opener = around_.empty() ? 0 : around_.back();
    const Span open{tree_.file, tree_.nodes[opener].begin, tree_.nodes[opener].begin + 1};
    const std::uint32_t here = tree_.nodes[index].begin;
    ++unclosed_;
    // Where one place ends several blocks, their braces are one slip.
    if (here == unclosed_at_) {
      Diagnostic& same = diagnostics_.all()[unclosed_report_];
      const std::size_t around = ++unclosed_around_;
      same.message = around == 1
                         ? "this `{` and the one around it are never closed"
                         : fmt::format("this `{{` and the {} around it are never closed", around);
      same.with_because(open, "opened here");
      same.mends = {"put a `}` for each of them on a line of its own where its block ends"};
      return;
    }
    if (unclosed_reported_ == most_misfits) return;
    ++unclosed_reported_;
    unclosed_at_ = here;
    unclosed_around_ = 0;
    unclosed_report_ = diagnostics_.all().size();
    auto& found = diagnostics_.report(Code::unclosed_block, open, "this `{` is never closed");
    if (here < tree_.text.size()) {
      found.with_because({tree_.file, here, here + 1}, "what begins here belongs outside of it");
    }
    found.with_mend("put a `}` on a line of its own where the block ends");
  }

  void report_stray_brace(std::uint32_t index) {
    // The block it was meant to close was ended early, or its header was not read.
    if (unclosed_ > 0) {
      --unclosed_;
      return;
    }
    if (lost_) return;
    diagnostics_.report(Code::stray_brace, span_of(index), "this `}` closes nothing")
        .with_mend("leave it out, or look for a `}` too many above");
  }

  void report_unclosed(std::uint32_t index) {
    const Span span = span_of(index);
    diagnostics_.report(Code::unclosed_quote, span, "the quotes are not closed on this line")
        .with_fix(
            {Fix::Kind::suggested, "close the quotes", {{{span.file, span.end, span.end}, "\""}}});
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
    if (auto slip = known_slip(tree_, misfit, around())) {
      const Span place = slip->primary->span;
      diagnostics_.report(slip->code, place, slip->message) = std::move(*slip);
    } else if (item.text() == ",") {
      report_dangling_comma(item);
    } else if (misfit.offset <= item.span().begin) {
      report_unknown_statement(misfit, item);
    } else {
      report_unexpected(misfit, item);
    }
  }

  void report_dangling_comma(View comma) {
    diagnostics_
        .report(Code::unexpected, comma.span(), "nothing that belongs to this comma follows it")
        .with_why("behind a comma the same statement goes on, on the next line too")
        .with_fix({Fix::Kind::safe, "leave the comma out", {{comma.span(), ""}}});
  }

  void report_unknown_statement(const Misfit& misfit, View item) {
    const std::uint32_t first = leaf_at(misfit.node, item.span().begin);
    const View token(tree_, first == 0 ? misfit.node : first);
    const std::string_view word = token.text();
    if (!around_.empty() && report_amount_first(item)) return;
    auto& found = diagnostics_.report(
        Code::unknown_statement, token.span(),
        fmt::format("`{}` begins nothing that fits {}", shortened(word), place_of(around())));
    if (const std::string_view near = nearest_keyword(word, misfit.keywords); !near.empty()) {
      found.with_mend(fmt::format("did you mean `{}`?", near));
      found.with_fix({Fix::Kind::suggested,
                      fmt::format("write `{}`", near),
                      {{token.span(), std::string(near)}}});
      return;
    }
    if (const std::string_view home = home_of(word); !home.empty()) {
      found.with_mend(fmt::format("`{}` belongs in {}", word, home));
      return;
    }
    const bool comment = rest_from(token).substr(0, 2) == "--";
    if (!comment && (word == "-" || word == "*" || word == "•" || word == "–")) {
      const Span mark{tree_.file, token.span().begin, skip_blank(token.span().end)};
      found.with_mend("a line needs no mark in front of it");
      found.with_fix({Fix::Kind::safe, "leave it out", {{mark, ""}}});
      return;
    }
    if (token.is(Kind::number) || token.is(Kind::bad_number)) {
      found.with_mend("the name comes first, then how much: `onion 2 kg`");
      return;
    }
    const std::string_view advice = advice_on(rest_from(token), At::first, around());
    found.with_mend(advice.empty() ? fmt::format("here would fit {}", expected(misfit))
                                   : std::string(advice));
  }

  void report_unexpected(const Misfit& misfit, View item) {
    const std::uint32_t leaf = leaf_at(misfit.node, skip_blank(misfit.offset));
    const bool ends = leaf == 0 || tree_.nodes[leaf].begin >= item.span().end ||
                      is_trivia(tree_.nodes[leaf].kind);
    if (ends) {
      report_unfinished(misfit, item);
      return;
    }
    const View token(tree_, leaf);
    if (is_reserved(token.text()) && report_reserved(misfit, item, token)) return;
    if (report_amount_first(item)) return;
    auto& found =
        diagnostics_.report(Code::unexpected, token.span(),
                            fmt::format("`{}` does not fit here", shortened(token.text())));
    if (token.text() == "=" || token.text() == ":") {
      found.with_mend("between a name and its amount stands only a space");
      found.with_fix({Fix::Kind::suggested, "leave it out", {{token.span(), ""}}});
      return;
    }
    if (token.text() == "." && token.span().begin > 0 &&
        is_letter(tree_.text[token.span().begin - 1])) {
      found.with_mend("a unit is written without a point");
      found.with_fix({Fix::Kind::safe, "leave the point out", {{token.span(), ""}}});
      return;
    }
    if (const std::string_view advice = advice_on(rest_from(token), At::inside, around());
        !advice.empty()) {
      found.with_mend(std::string(advice));
      return;
    }
    if (const std::string_view near = nearest_keyword(token.text(), misfit.keywords);
        !near.empty()) {
      found.with_mend(fmt::format("did you mean `{}`?", near));
      found.with_fix({Fix::Kind::suggested,
                      fmt::format("write `{}`", near),
                      {{token.span(), std::string(near)}}});
      return;
    }
    if (const auto comma = comma_before(token); comma && !around_.empty()) {
      found.with_mend(
          "if another thing begins here, give it a line of its own, or write `;` "
          "instead of the comma");
      found.with_fix({Fix::Kind::suggested, "write `;` for the comma", {{*comma, ";"}}});
    }
    found.with_mend(fmt::format("here would fit {}", expected(misfit)));
  }

  std::optional<Span> comma_before(View token) const {
    const std::size_t at = tree_.text.substr(0, token.span().begin).find_last_not_of(" \t\n");
    if (!token.is(Kind::word) || at == std::string_view::npos || tree_.text[at] != ',') {
      return std::nullopt;
    }
    const auto offset = static_cast<std::uint32_t>(at);
    return Span{tree_.file, offset, offset + 1};
  }

  void report_unfinished(const Misfit& misfit, View item) {
    Span span = item.span();
    span.end = std::max(std::min(misfit.offset, span.end), span.begin);
    while (span.end > span.begin + 1 && is_blank(tree_.text[span.end - 1])) --span.end;
    auto& found = diagnostics_.report(Code::unfinished, span, "this statement stops too soon");
    // A header whose block stands on the next line.
    std::size_t next = tree_.text.find_first_not_of(" \t\r\n", span.end);
    while (next != std::string_view::npos && tree_.text[next] == '#') {
      next = tree_.text.find_first_not_of(" \t\r\n", tree_.text.find('\n', next));
    }
    if (is_in(misfit.others, "{") && next != std::string_view::npos && tree_.text[next] == '{') {
      lone_brace_ = static_cast<std::uint32_t>(next);
      found.with_mend("a block opens on the line of its header");
      found.with_fix({Fix::Kind::safe,
                      "move the `{` up",
                      {{{tree_.file, span.end, span.end}, " {"},
                       {{tree_.file, lone_brace_, lone_brace_ + 1}, ""}}});
      return;
    }
    const std::string_view text = item.text();
    const bool digits = text.find_first_of("0123456789") != std::string_view::npos;
    if (const std::string_view advice = advice_on_unfinished(text, digits); !advice.empty()) {
      found.with_mend(std::string(advice));
      return;
    }
    if (wants_strength(misfit) && text.find('%') != std::string_view::npos) {
      found.with_mend("a strength is written `5 % acidity`");
      return;
    }
    found.with_mend(fmt::format("here would fit {}", expected(misfit)));
  }

  Kind around() const { return around_.empty() ? Kind::file : tree_.nodes[around_.back()].kind; }
  std::string_view rest_from(View token) const { return tree_.text.substr(token.span().begin); }

  // Where the name stands in `2 lb 4 oz onion, use first`; empty where there is none.
  Span name_behind_amount(View item) const {
    std::vector<View> words;
    int parts = 0;
    for (const View each : item) {
      const bool number = each.is(Kind::number) || each.is(Kind::bad_number);
      if (each.is(Kind::space)) continue;
      if (number && words.size() == static_cast<std::size_t>(parts > 0 ? 1 : 0) && parts < 2) {
        ++parts;
        words.clear();
      } else if (each.text() == "%" && parts == 1 && words.empty()) {
        parts = 2;  // no unit any more
        words.push_back(each);
      } else if (each.is(Kind::word) && !is_reserved(each.text()) && each.text() != "prefer") {
        words.push_back(each);
      } else {
        break;
      }
    }
    // The first word is the unit, unless it is the only one: `3 onions`.
    if (words.empty() || words.back().text() == "%") return {};
    const View first = words[words.size() > 1 ? 1 : 0];
    return joined(first.span(), words.back().span());
  }

  // How much stands before the name.
  bool report_amount_first(View item) {
    const View first(tree_, leaf_at(item.index(), item.span().begin));
    if (!first.is(Kind::number) && !first.is(Kind::bad_number)) return false;
    const Span name = name_behind_amount(item);
    if (name.end == name.begin) return false;
    std::uint32_t end = name.begin;
    while (end > item.span().begin && is_blank(tree_.text[end - 1])) --end;
    const Span whole{tree_.file, item.span().begin, name.end};
    const std::string mended =
        fmt::format("{} {}", tree_.text.substr(name.begin, name.end - name.begin),
                    tree_.text.substr(whole.begin, end - whole.begin));
    diagnostics_.report(Code::name_first, whole, "the name comes first, then how much")
        .with_fix({Fix::Kind::safe, "write `" + mended + "`", {{whole, mended}}});
    return true;
  }

  // `peas in pod 2 kg`: a word with a meaning of its own ends the name.
  bool report_reserved(const Misfit& misfit, View item, View token) {
    if (!is_in(misfit.others, "a number")) return false;
    Span name = token.span();
    name.begin = item.span().begin;
    for (const View each : item) {
      const bool part = each.is(Kind::word) || each.is(Kind::space);
      if (each.span().begin > token.span().begin && !part) break;
      if (each.is(Kind::word)) name.end = each.span().end;
    }
    const std::string quoted =
        fmt::format("\"{}\"", tree_.text.substr(name.begin, name.end - name.begin));
    auto& found = diagnostics_.report(Code::name_ended, token.span(),
                                      fmt::format("`{}` ends the name here", token.text()));
    // `1 tin of tomatoes`, `a bunch of radishes`.
    const std::string_view text = item.text();
    if (token.text() == "of" && (text[0] == '1' || text.substr(0, 2) == "a ")) {
      found.with_mend("weigh what is in it, and write the weight: `tomato 400 g prepared`");
      return true;
    }
    found.with_mend("put the whole name in quotes if the word is part of it")
        .with_fix({Fix::Kind::suggested, "write " + quoted, {{name, quoted}}});
    return true;
  }

  std::uint32_t skip_blank(std::uint32_t offset) const {
    while (offset < tree_.text.size() && is_blank(tree_.text[offset])) ++offset;
    return offset;
  }

  static constexpr std::array<std::string_view, 5> quotes = {"“", "”", "„", "«", "»"};

  static constexpr std::size_t none = static_cast<std::size_t>(-1);

  const SyntaxTree& tree_;
  Diagnostics& diagnostics_;
  std::vector<std::uint32_t> around_;
  std::size_t misfit_ = 0;  // the next one
  std::size_t reported_ = 0;
  std::uint32_t next_in_file_ = 0;
  std::uint32_t lone_brace_ = static_cast<std::uint32_t>(-1);
  std::size_t unclosed_ = 0;                  // blocks told to be open, whose `}` may still come
  std::optional<std::uint32_t> unclosed_at_;  // where the last of them was ended
  std::size_t unclosed_reported_ = 0;         // as many as are worth listing at the most
  std::size_t unclosed_report_ = 0;           // which report that is
  std::size_t unclosed_around_ = 0;           // and how many blocks around it are in it
  bool lost_ = false;                         // since the last item of a block that could be read
  std::uint32_t lost_block_ = 0;              // which block that is
  std::uint32_t next_in_lost_ = 0;            // what stands in it next
  std::size_t first_lost_ = none;
  std::size_t swallowed_ = 0;
};

}  // namespace

void report_problems(const SyntaxTree& tree, Diagnostics& diagnostics) {
  Reporter(tree, diagnostics).run();
}

}  // namespace maslin::syntax
