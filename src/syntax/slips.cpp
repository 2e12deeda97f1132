// SPDX-License-Identifier: Apache-2.0
#include "syntax/slips.hpp"

#include <algorithm>

#include "syntax/stuck.hpp"

namespace maslin::syntax {

std::string_view Stuck::text(std::size_t i) const {
  return i < tokens.size() ? tokens[i].text() : std::string_view();
}

bool Stuck::is_number(std::size_t i) const {
  return i < tokens.size() && (tokens[i].is(Kind::number) || tokens[i].is(Kind::bad_number));
}

bool Stuck::is_word(std::size_t i) const { return i < tokens.size() && tokens[i].is(Kind::word); }

bool Stuck::fits(std::string_view other) const {
  return std::find(misfit.others.begin(), misfit.others.end(), other) != misfit.others.end();
}

bool Stuck::fits_word(std::string_view word) const {
  return std::find(misfit.keywords.begin(), misfit.keywords.end(), word) != misfit.keywords.end();
}

std::string_view Stuck::text(Span span) const {
  return tree.text.substr(span.begin, span.end - span.begin);
}

Span Stuck::span(std::size_t first, std::size_t last) const {
  return joined(tokens[first].span(), tokens[last].span());
}

Span Stuck::before(std::size_t i) const {
  return {tree.file, tokens[i].span().begin, tokens[i].span().begin};
}

bool is_any_of(std::string_view text, std::initializer_list<std::string_view> list) {
  return std::find(list.begin(), list.end(), text) != list.end();
}

FoundSlip first_of(std::initializer_list<SlipRule> rules, const Stuck& stuck) {
  for (const SlipRule rule : rules) {
    if (auto found = rule(stuck)) return found;
  }
  return std::nullopt;
}

Diagnostic slip(Code code, Span span, std::string message) {
  Diagnostic found;
  found.code = code;
  found.message = std::move(message);
  found.primary = Label{span, {}};
  return found;
}

Fix suggested(std::string title, std::vector<Edit> edits) {
  return {Fix::Kind::suggested, std::move(title), std::move(edits)};
}

Fix plainly_meant(std::string title, std::vector<Edit> edits) {
  return {Fix::Kind::safe, std::move(title), std::move(edits)};
}

std::optional<Diagnostic> known_slip(const SyntaxTree& tree, const Misfit& misfit, Kind around) {
  Stuck stuck{tree, misfit, around, {}};
  for (const View leaf : View(tree, misfit.node)) {
    if (leaf.is(Kind::space)) continue;
    if (leaf.is(Kind::comment) || leaf.is(Kind::documentation) || leaf.is(Kind::newline)) break;
    if (leaf.span().end <= misfit.offset) stuck.at = stuck.tokens.size() + 1;
    stuck.tokens.push_back(leaf);
    if (leaf.text().starts_with("{")) break;
  }
  if (stuck.tokens.empty()) return std::nullopt;
  // A line that holds more than one thing is told last: its words may be slips of another kind.
  return first_of(
      {slip_of_signs, slip_of_range, slip_of_blocks, slip_of_words, slip_of_numbers, slip_of_lines},
      stuck);
}

}  // namespace maslin::syntax
