// SPDX-License-Identifier: Apache-2.0
// What the rules of slips.hpp look at, and the rules themselves, one file a topic.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "diagnostic/diagnostic.hpp"
#include "syntax/tree.hpp"

namespace maslin::syntax {

// Where reading stopped: the tokens of the statement up to the end of its line or its first block,
// and which of them did not fit (as many as there are: the statement stopped too soon).
struct Stuck {
  const SyntaxTree& tree;
  const Misfit& misfit;
  Kind around;
  std::vector<View> tokens;
  std::size_t at = 0;

  bool at_end() const { return at == tokens.size(); }
  // Of the token with this number; empty, false behind the last one.
  std::string_view text(std::size_t i) const;
  bool is_number(std::size_t i) const;
  bool is_word(std::size_t i) const;
  bool opens_block(std::size_t i) const { return text(i).starts_with("{"); }
  // Whether this would have fitted: "a number"; `trim`.
  bool fits(std::string_view other) const;
  bool fits_word(std::string_view word) const;
  bool is_in(std::string_view block) const { return name_of(around) == block; }

  std::string_view text(Span span) const;
  Span span(std::size_t first, std::size_t last) const;
  Span before(std::size_t i) const;
};

bool is_any_of(std::string_view text, std::initializer_list<std::string_view> list);

// Nothing where this is not the slip.
using FoundSlip = std::optional<Diagnostic>;

Diagnostic slip(Code code, Span span, std::string message);
Fix suggested(std::string title, std::vector<Edit> edits);
Fix plainly_meant(std::string title, std::vector<Edit> edits);

using SlipRule = FoundSlip (*)(const Stuck& stuck);
// What the first of these finds that finds anything.
FoundSlip first_of(std::initializer_list<SlipRule> rules, const Stuck& stuck);

FoundSlip slip_of_signs(const Stuck& stuck);
FoundSlip slip_of_range(const Stuck& stuck);
FoundSlip slip_of_blocks(const Stuck& stuck);
FoundSlip slip_of_words(const Stuck& stuck);
FoundSlip slip_of_numbers(const Stuck& stuck);
FoundSlip slip_of_lines(const Stuck& stuck);

}  // namespace maslin::syntax
