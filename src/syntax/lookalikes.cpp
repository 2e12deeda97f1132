// SPDX-License-Identifier: Apache-2.0
#include "syntax/lookalikes.hpp"

#include <fmt/format.h>

#include "base/utf8.hpp"

namespace maslin::syntax {
namespace {

struct Run {
  std::int32_t first;
  std::int32_t last;
  std::string_view plain;  // of its first character; empty: nothing is meant
  std::string_view what;
  bool plainly;
  bool counts_on;  // whether each character after the first stands for the next plain one
};

// Code points: Unicode 15.0, General Punctuation, Mathematical Operators, Halfwidth and Fullwidth
// Forms, and the two rows of Arabic digits.
constexpr Run runs[] = {
    {0x00AD, 0x00AD, "", "an invisible hyphen", true, false},
    {0x2060, 0x2060, "", "an invisible joiner", true, false},
    {0xFEFF, 0xFEFF, "", "an invisible mark", true, false},
    {0x2000, 0x200A, " ", "a narrow or wide space", true, false},
    {0x202F, 0x202F, " ", "a narrow space", true, false},
    {0x205F, 0x205F, " ", "a narrow space", true, false},
    {0x3000, 0x3000, " ", "a wide space", true, false},
    {0x2010, 0x2011, "-", "a hyphen of another kind", true, false},
    {0x2212, 0x2212, "-", "a minus of another kind", false, false},
    {0x2044, 0x2044, "/", "a fraction stroke of another kind", true, false},
    {0x2215, 0x2215, "/", "a fraction stroke of another kind", true, false},
    {0xFF01, 0xFF5E, "!", "a wide character", true, true},
    {0x0660, 0x0669, "0", "an Arabic digit", true, true},
    {0x06F0, 0x06F9, "0", "an Arabic digit", true, true},
};

}  // namespace

std::optional<Lookalike> lookalike_at(std::string_view text) {
  if (text.empty() || static_cast<unsigned char>(text.front()) < 0x80) return std::nullopt;
  const auto [code_point, bytes] = character_at(text, 0);
  for (const Run& run : runs) {
    if (code_point < run.first || code_point > run.last) continue;
    std::string plain(run.plain);
    if (run.counts_on) plain[0] = static_cast<char>(plain[0] + (code_point - run.first));
    return Lookalike{static_cast<std::uint32_t>(bytes), fmt::format("U+{:04X}", code_point),
                     std::move(plain), run.what, run.plainly};
  }
  return std::nullopt;
}

}  // namespace maslin::syntax
