// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "syntax/lookalikes.hpp"
#include "syntax/stuck.hpp"
#include "syntax/words.hpp"

namespace maslin::syntax {
namespace {

FoundSlip lookalike(const Stuck& stuck) {
  if (stuck.at_end()) return std::nullopt;
  const View token = stuck.tokens[stuck.at];
  const auto first = lookalike_at(token.text());
  if (!first) return std::nullopt;
  auto found = slip(
      Code::unexpected, token.span(),
      fmt::format("{} stands here ({}) that the language does not read", first->what, first->code));
  found.with_why("it may have come with text copied from elsewhere");
  // All of this statement are one cause.
  std::vector<Edit> edits;
  bool plainly = true;
  const View item(stuck.tree, stuck.misfit.node);
  for (const View leaf : item) {
    const bool quoted = leaf.is(Kind::string) || leaf.is(Kind::curly_string);
    const auto each = quoted ? std::nullopt : lookalike_at(leaf.text());
    if (!each) continue;
    edits.push_back(
        {{stuck.tree.file, leaf.span().begin, leaf.span().begin + each->bytes}, each->plain});
    plainly = plainly && each->plainly;
  }
  const std::string title = first->plain.empty()  ? "leave it out"
                            : first->plain == " " ? "write a plain space"
                                                  : fmt::format("write `{}`", first->plain);
  found.with_fix({plainly ? Fix::Kind::safe : Fix::Kind::suggested, title, std::move(edits)});
  return found;
}

FoundSlip parted_degree(const Stuck& stuck) {
  const std::string_view scale = stuck.text(stuck.at + 1);
  if (stuck.text(stuck.at) != "°" || (scale != "C" && scale != "F")) return std::nullopt;
  const Span span = stuck.span(stuck.at, stuck.at + 1);
  auto found = slip(Code::unexpected, span, "a degree sign and its letter are written as one");
  const std::string whole = fmt::format("°{}", scale);
  found.with_fix(plainly_meant("write `" + whole + "`", {{span, whole}}));
  return found;
}

FoundSlip sign_turned_round(const Stuck& stuck) {
  const std::string_view sign = stuck.text(stuck.at);
  if (stuck.at == 0 || stuck.text(stuck.at - 1) != "=" || (sign != "<" && sign != ">")) {
    return std::nullopt;
  }
  const Span span = stuck.span(stuck.at - 1, stuck.at);
  const std::string whole = fmt::format("{}=", sign);
  auto found = slip(Code::comparison_sign, span,
                    fmt::format("a limit is written with `<=` or `>=`, not `={}`", sign));
  found.with_fix(plainly_meant("write `" + whole + "`", {{span, whole}}));
  return found;
}

FoundSlip comma_twice(const Stuck& stuck) {
  if (stuck.at == 0 || stuck.text(stuck.at) != "," || stuck.text(stuck.at - 1) != ",") {
    return std::nullopt;
  }
  const Span span = stuck.tokens[stuck.at].span();
  auto found = slip(Code::unexpected, span, "there is one comma too many here");
  found.with_fix(plainly_meant("leave it out", {{span, ""}}));
  return found;
}

// `%100`
FoundSlip percent_first(const Stuck& stuck) {
  if (stuck.text(stuck.at) != "%" || !stuck.is_number(stuck.at + 1) || !stuck.fits("a number")) {
    return std::nullopt;
  }
  const Span span = stuck.span(stuck.at, stuck.at + 1);
  const std::string whole = fmt::format("{} %", stuck.text(stuck.at + 1));
  auto found = slip(Code::unexpected, span, "the `%` stands behind its number");
  found.with_fix(plainly_meant("write `" + whole + "`", {{span, whole}}));
  return found;
}

FoundSlip other_quotes(const Stuck& stuck) {
  if (!stuck.fits("text in quotes") || stuck.at_end()) return std::nullopt;
  const auto is_quote = [](std::string_view text) {
    return is_any_of(text, {"'", "‘", "’", "‚", "`", "´"});
  };
  if (!is_quote(stuck.text(stuck.at))) return std::nullopt;
  const std::uint32_t begin = stuck.tokens[stuck.at].span().begin;
  auto found =
      slip(Code::curly_quotes, stuck.tokens[stuck.at].span(), "a text stands in double quotes");
  for (std::size_t i = stuck.at + 1; i < stuck.tokens.size(); ++i) {
    // An apostrophe may have become the last letter of the word before it.
    std::string_view word = stuck.text(i);
    const bool ends = is_quote(word) || word.ends_with("'") || word.ends_with("’");
    if (!ends) continue;
    const Span span{stuck.tree.file, begin, stuck.tokens[i].span().end};
    std::string_view inside = stuck.text(
        {stuck.tree.file, stuck.tokens[stuck.at].span().end, stuck.tokens[i].span().end});
    for (const std::string_view quote : {"'", "‘", "’", "‚", "`", "´"}) {
      if (inside.ends_with(quote)) inside.remove_suffix(quote.size());
    }
    const std::string mended = fmt::format("\"{}\"", inside);
    found.primary->span = span;
    found.with_fix(plainly_meant("write " + shortened(mended), {{span, mended}}));
    return found;
  }
  found.with_mend("write `\"` before and behind it");
  return found;
}

FoundSlip missing_quotes(const Stuck& stuck) {
  const bool text_alone = stuck.misfit.keywords.empty() && stuck.misfit.others.size() == 1 &&
                          stuck.fits("text in quotes");
  if (!text_alone || stuck.at == 0 || !stuck.is_word(stuck.at)) return std::nullopt;
  std::size_t last = stuck.at;
  while (last + 1 < stuck.tokens.size() && stuck.text(last + 1) != "," &&
         !stuck.opens_block(last + 1)) {
    ++last;
  }
  const Span span = stuck.span(stuck.at, last);
  const std::string mended = fmt::format("\"{}\"", stuck.text(span));
  auto found =
      slip(Code::unexpected, span,
           fmt::format("what stands behind `{}` is written in quotes", stuck.text(stuck.at - 1)));
  found.with_fix(suggested("write " + shortened(mended), {{span, mended}}));
  return found;
}

}  // namespace

FoundSlip slip_of_signs(const Stuck& stuck) {
  return first_of({lookalike, parted_degree, sign_turned_round, comma_twice, percent_first,
                   other_quotes, missing_quotes},
                  stuck);
}

}  // namespace maslin::syntax
