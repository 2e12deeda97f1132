// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "syntax/stuck.hpp"
#include "syntax/words.hpp"

namespace maslin::syntax {
namespace {

// `simmer for 20 min`: the first word begins a step, so what follows it is no name.
FoundSlip word_too_many(const Stuck& stuck) {
  const bool step = !home_of(stuck.text(0)).empty();
  if (!step || stuck.at != 1 || !is_any_of(stuck.text(1), {"for", "at", "to", "by", "is", "of"}) ||
      !stuck.is_number(2) || !stuck.fits("a number")) {
    return std::nullopt;
  }
  const Span word{stuck.tree.file, stuck.tokens[1].span().begin, stuck.tokens[2].span().begin};
  auto found = slip(Code::unexpected, stuck.tokens[1].span(),
                    fmt::format("behind `{}` stands the number at once", stuck.text(0)));
  found.with_fix(plainly_meant(fmt::format("leave `{}` out", stuck.text(1)), {{word, ""}}));
  return found;
}

// `boil until set`
FoundSlip until_without_time(const Stuck& stuck) {
  if (stuck.at != 1 || stuck.text(1) != "until" || home_of(stuck.text(0)).empty()) {
    return std::nullopt;
  }
  auto found = slip(Code::unexpected, stuck.tokens[1].span(),
                    fmt::format("how long to {} stands before `until`", stuck.text(0)));
  found.with_mend(fmt::format("write for example `{} 20 min until \"it is soft\"`", stuck.text(0)));
  return found;
}

// `cut in thin slices`, and `cut 8 mm` where a share is not.
FoundSlip cut_in_words(const Stuck& stuck) {
  const bool here = stuck.text(stuck.at) == "cut";
  if (here && stuck.is_in("addition_block")) {
    auto found = slip(Code::misplaced_clause, stuck.span(stuck.at, stuck.at),
                      "how small things are cut stands with their share");
    found.with_mend("write it in `produce { … }`, behind the range");
    return found;
  }
  if (stuck.at == 0 || stuck.text(stuck.at - 1) != "cut" || !stuck.is_in("produce_block") ||
      !stuck.is_word(stuck.at)) {
    return std::nullopt;
  }
  std::size_t last = stuck.at;
  while (last + 1 < stuck.tokens.size() &&
         !is_any_of(stuck.text(last + 1), {";", "}", ",", "prefer"})) {
    ++last;
  }
  const Span words = stuck.span(stuck.at, last);
  const std::string quoted = fmt::format("\"{}\"", stuck.text(words));
  auto found =
      slip(Code::unexpected, words, "how something is cut is a length, or words in quotes");
  found.with_fix(plainly_meant("write `cut " + quoted + "`", {{words, quoted}}));
  return found;
}

// `framework jam for Anna {`, `framework jam 2024 {`: what ends the name of a block.
FoundSlip name_of_block(const Stuck& stuck) {
  if (stuck.at < 2 || stuck.at_end() || !stuck.fits("{")) return std::nullopt;
  const bool header = is_any_of(stuck.text(0), {"framework", "ingredient", "class", "basket",
                                                "kitchen", "standard", "route"});
  const View token = stuck.tokens[stuck.at];
  if (!header || (!stuck.is_number(stuck.at) && !is_reserved(token.text()))) return std::nullopt;
  std::size_t last = stuck.at;
  while (last + 1 < stuck.tokens.size() && !stuck.opens_block(last + 1) &&
         stuck.text(last + 1) != "is") {
    ++last;
  }
  const Span name = stuck.span(1, last);
  const std::string quoted = fmt::format("\"{}\"", stuck.text(name));
  auto found =
      slip(Code::name_ended, token.span(), fmt::format("`{}` ends the name here", token.text()));
  found.with_mend("put the whole name in quotes if this is part of it");
  found.with_fix(suggested("write " + quoted, {{name, quoted}}));
  return found;
}

// `scales 5 g`, `jars 6 x 350 ml`, `best before 12 months`: only one word fits there.
FoundSlip one_word_fits(const Stuck& stuck) {
  const bool alone = stuck.misfit.keywords.size() == 1 && stuck.misfit.others.empty();
  if (!alone || stuck.at == 0 || stuck.at_end() || stuck.text(stuck.at - 1) == ",") {
    return std::nullopt;
  }
  const std::string word(stuck.misfit.keywords[0]);
  // `salt to taste` is nothing to buy.
  if (word == "buy") return std::nullopt;
  const View token = stuck.tokens[stuck.at];
  const std::string title = "write `" + word + "`";
  auto found = slip(Code::unexpected, token.span(),
                    fmt::format("`{}` does not fit here", shortened(token.text())));
  if (stuck.is_number(stuck.at)) {
    found.with_fix(suggested(title + " before it", {{stuck.before(stuck.at), word + " "}}));
  } else if (stuck.text(stuck.at + 1) == word) {
    const Span more{stuck.tree.file, token.span().begin, stuck.tokens[stuck.at + 1].span().begin};
    found.with_fix(suggested("leave it out", {{more, ""}}));
  } else if (stuck.is_word(stuck.at) || token.text() == "/") {
    found.with_fix(
        suggested(title, {{token.span(), token.text() == "/" ? " " + word + " " : word}}));
  } else {
    return std::nullopt;
  }
  return found;
}

}  // namespace

FoundSlip slip_of_words(const Stuck& stuck) {
  return first_of({cut_in_words, word_too_many, until_without_time, name_of_block, one_word_fits},
                  stuck);
}

}  // namespace maslin::syntax
