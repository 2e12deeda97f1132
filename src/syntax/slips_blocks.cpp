// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include "syntax/stuck.hpp"
#include "syntax/words.hpp"

namespace maslin::syntax {
namespace {

// `produce:`
FoundSlip colon_for_brace(const Stuck& stuck) {
  if (stuck.at == 0 || stuck.text(stuck.at) != ":" || !stuck.fits("{")) return std::nullopt;
  const Span header = stuck.span(0, stuck.at - 1);
  auto found = slip(Code::unexpected, stuck.tokens[stuck.at].span(),
                    "a block opens with `{` and closes with `}`");
  found.with_mend(fmt::format("write `{} {{`, and `}}` on a line of its own where it ends",
                              shortened(stuck.text(header))));
  return found;
}

// `basket # of this week {`, and `basket` with no brace at all.
FoundSlip brace_not_read(const Stuck& stuck) {
  if (!stuck.at_end() || !stuck.fits("{")) return std::nullopt;
  const std::uint32_t end = stuck.tokens.back().span().end;
  const std::string_view rest = stuck.tree.text.substr(end);
  const std::string_view line = rest.substr(0, rest.find_first_of("\r\n"));
  const std::size_t sign = line.find('#');
  const std::size_t brace = line.find_last_not_of(" \t");
  const Span header = stuck.span(0, stuck.tokens.size() - 1);
  const Edit open{{stuck.tree.file, end, end}, " {"};
  if (sign != std::string_view::npos && line[brace] == '{') {
    const std::uint32_t at = end + static_cast<std::uint32_t>(brace);
    const Span inside{stuck.tree.file, at, at + 1};
    auto found = slip(Code::unfinished, header, "the `{` of this header stands in a comment");
    found.with_why("what stands behind `#` is not read");
    found.with_fix(plainly_meant("put the `{` before the `#`", {open, {inside, ""}}));
    return found;
  }
  // A brace on a line of its own is told by whoever walks the tree.
  const std::size_t next = rest.find_first_not_of(" \t\r\n");
  if (next == std::string_view::npos || rest[next] == '{' || rest[next] == '#') {
    return std::nullopt;
  }
  auto found = slip(Code::unfinished, header, "the block of this header is not opened");
  found.with_fix(suggested(fmt::format("write `{} {{`", shortened(stuck.text(header))), {open}));
  return found;
}

// `store { … }` in a basket.
FoundSlip block_of_another(const Stuck& stuck) {
  if (stuck.at != 1 || !stuck.opens_block(1) || !stuck.fits("a number")) return std::nullopt;
  const std::string_view home = home_of(stuck.text(0));
  if (home.empty()) return std::nullopt;
  auto found = slip(Code::unknown_statement, stuck.tokens[0].span(),
                    fmt::format("`{}` does not stand here", stuck.text(0)));
  found.with_mend(fmt::format("`{}` belongs in {}", stuck.text(0), home));
  return found;
}

}  // namespace

FoundSlip slip_of_blocks(const Stuck& stuck) {
  return first_of({colon_for_brace, brace_not_read, block_of_another}, stuck);
}

}  // namespace maslin::syntax
