// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "syntax/stuck.hpp"
#include "syntax/words.hpp"

namespace maslin::syntax {
namespace {

// `onion 2 kg (from Anna)`, `onion (2 kg) gross`.
FoundSlip in_brackets(const Stuck& stuck) {
  const bool takes_none = is_any_of(name_of(stuck.around), {"basket_block", "kitchen_block"});
  std::size_t open = stuck.tokens.size();
  for (std::size_t i = 0; i <= stuck.at && i < stuck.tokens.size(); ++i) {
    if (stuck.text(i) == "(") open = i;
    if (stuck.text(i) == ")") open = stuck.tokens.size();
  }
  if (open == 0 || open + 1 >= stuck.tokens.size()) return std::nullopt;
  std::size_t close = open + 1;
  while (close < stuck.tokens.size() && stuck.text(close) != ")") ++close;
  const bool closed = close < stuck.tokens.size();
  const bool last = !closed || close + 1 == stuck.tokens.size();
  const Span inside = stuck.span(open + 1, std::min(close, stuck.tokens.size()) - 1);
  const Span whole = stuck.span(open, closed ? close : stuck.tokens.size() - 1);
  if (close == open + 1) return std::nullopt;
  if (takes_none && stuck.is_number(open + 1) && stuck.fits("a number") &&
      !stuck.fits_word("acidity")) {
    auto found = slip(Code::unexpected, whole, "a number stands without brackets here");
    found.with_fix(
        plainly_meant("leave the brackets out", {{whole, std::string(stuck.text(inside))}}));
    return found;
  }
  if (!stuck.is_word(open + 1) || !last || stuck.at < open) return std::nullopt;
  auto found = slip(Code::unexpected, whole, "a remark is written as a comment");
  found.with_mend("put `#` before it, at the end of the line");
  // What closes the block on this line would go with the comment.
  const std::size_t next = stuck.tree.text.find_first_not_of(" \t\r", whole.end);
  if (next == std::string_view::npos || stuck.tree.text[next] == '\n') {
    const std::string comment = fmt::format("# {}", stuck.text(inside));
    found.with_fix(plainly_meant("write `" + comment + "`", {{whole, comment}}));
  }
  return found;
}

// `onion 2 kg gross apple 3 kg gross`
FoundSlip another_begins(const Stuck& stuck) {
  const bool list = is_any_of(name_of(stuck.around),
                              {"basket_block", "produce_block", "addition_block", "limits_block"});
  if (!list || stuck.at == 0 || !stuck.is_word(stuck.at)) return std::nullopt;
  std::size_t begin = stuck.at;
  if (stuck.text(begin) == "and" || stuck.text(begin) == "plus") ++begin;
  // A name, and how much of it.
  std::size_t number = begin;
  while (stuck.is_word(number) && !is_reserved(stuck.text(number))) ++number;
  // What belongs to a lot in a basket is no other thing in a framework.
  const bool clause =
      is_any_of(stuck.text(begin), {"trim", "spoiled", "keep", "use", "prefer", "cut", "acidity"});
  if (number == begin || clause || !stuck.is_number(number)) return std::nullopt;
  const bool before = std::any_of(
      stuck.tokens.begin(), stuck.tokens.begin() + static_cast<std::ptrdiff_t>(stuck.at),
      [](View token) { return token.is(Kind::number) || token.is(Kind::bad_number); });
  if (!before || !nearest_keyword(stuck.text(begin), stuck.misfit.keywords).empty()) {
    return std::nullopt;
  }
  const bool comma = stuck.text(stuck.at - 1) == ",";
  Span parted{stuck.tree.file, stuck.tokens[stuck.at - (comma ? 2 : 1)].span().end,
              stuck.tokens[begin].span().begin};
  auto found = slip(Code::unexpected, stuck.span(begin, number - 1),
                    fmt::format("another line seems to begin here: `{}`",
                                shortened(stuck.text(stuck.span(begin, number)))));
  found.with_mend("give it a line of its own, or write `;` between the two");
  found.with_fix(suggested("write `;` between", {{parted, "; "}}));
  return found;
}

// `date to buy, 6.80 per kg`
FoundSlip price_without_at(const Stuck& stuck) {
  if (!stuck.is_in("basket_block") || !wants_strength(stuck.misfit) || !stuck.at_end())
    return std::nullopt;
  for (std::size_t i = 1; i + 1 < stuck.tokens.size(); ++i) {
    if (!stuck.is_number(i) || stuck.text(i + 1) != "per") continue;
    const Span price = stuck.span(i, stuck.tokens.size() - 1);
    auto found = slip(Code::unfinished, price, "a price begins with `at`");
    found.with_fix({Fix::Kind::safe,
                    fmt::format("write `at {}`", stuck.text(price)),
                    {{stuck.before(i), "at "}}});
    return found;
  }
  return std::nullopt;
}

// `jars 24 of 282 ml; 12 of 470 ml`, or the second size on a line of its own.
FoundSlip jars_of_another_size(const Stuck& stuck) {
  if (!stuck.is_in("kitchen_block") || !stuck.is_number(0) || stuck.text(1) != "of") {
    return std::nullopt;
  }
  const std::uint32_t begin = stuck.span(0, 0).begin;
  const std::size_t end = stuck.tree.text.find_last_not_of(" \t\r\n;", begin - 1);
  if (end == std::string_view::npos) return std::nullopt;
  auto found = slip(Code::unexpected, stuck.span(0, stuck.tokens.size() - 1),
                    "jars of several sizes stand in one statement, with commas between");
  found.with_fix(
      plainly_meant("write a comma before it",
                    {{{stuck.tree.file, static_cast<std::uint32_t>(end + 1), begin}, ", "}}));
  return found;
}

// `route boiling water for pickled beets`
FoundSlip route_for(const Stuck& stuck) {
  if (!stuck.is_in("limits_block") || stuck.text(0) != "route" || stuck.text(stuck.at) != "for") {
    return std::nullopt;
  }
  auto found = slip(Code::unexpected, stuck.span(stuck.at, stuck.at),
                    "what a tested process is for stands behind `process`");
  found.with_mend("only a recipe of the table, to the letter, may claim its minutes");
  const Span gap{stuck.tree.file, stuck.tokens[stuck.at - 1].span().end,
                 stuck.tokens[stuck.at].span().begin};
  found.with_fix(suggested("write `, process for`", {{gap, ", process "}}));
  return found;
}

// `hob electric 2.4 kW`
FoundSlip kind_of_hob_first(const Stuck& stuck) {
  if (!stuck.is_in("kitchen_block") || stuck.text(0) != "hob" || stuck.at != 1 ||
      !is_any_of(stuck.text(1), {"electric", "induction", "gas"}) || !stuck.is_number(2)) {
    return std::nullopt;
  }
  std::size_t last = 2;
  while (last + 1 < stuck.tokens.size() && stuck.is_word(last + 1)) ++last;
  auto found = slip(Code::unexpected, stuck.span(1, 1), "how strong a hob is comes first");
  const std::string mended = fmt::format("{}, {}", stuck.text(stuck.span(2, last)), stuck.text(1));
  found.with_fix(plainly_meant("write `hob " + mended + "`", {{stuck.span(1, last), mended}}));
  return found;
}

}  // namespace

FoundSlip slip_of_lines(const Stuck& stuck) {
  return first_of({in_brackets, route_for, kind_of_hob_first, jars_of_another_size,
                   price_without_at, another_begins},
                  stuck);
}

}  // namespace maslin::syntax
