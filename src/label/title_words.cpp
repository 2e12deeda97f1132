// SPDX-License-Identifier: Apache-2.0
#include "label/title_words.hpp"

#include <algorithm>
#include <array>

#include "base/spelling.hpp"

namespace maslin::label {
namespace {

// In UTF-8: a hard blank, dashes, quotes, dots; what else is not ASCII is taken for a letter.
constexpr std::array<std::string_view, 11> signs = {"\u00A0", "\u00B7", "\u2010", "\u2011",
                                                    "\u2012", "\u2013", "\u2014", "\u2018",
                                                    "\u2019", "\u201C", "\u201D"};

std::size_t length_of_sign(std::string_view rest) {
  const char c = rest[0];
  const bool ascii = static_cast<unsigned char>(c) < 0x80;
  const bool is_letter = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
  if (ascii) return is_letter ? 0 : 1;
  const auto* found = std::find_if(signs.begin(), signs.end(),
                                   [&](std::string_view each) { return rest.starts_with(each); });
  return found == signs.end() ? 0 : found->size();
}

bool is_word(const std::string& found, const std::string& wanted) {
  return found == wanted || found == wanted + "s" || found == wanted + "es";
}

}  // namespace

std::vector<std::string> words_in(std::string_view title) {
  const std::string text = lower_case(title);
  std::vector<std::string> words(1);
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t sign = length_of_sign(std::string_view(text).substr(i));
    if (sign == 0) words.back() += text[i];
    if (sign > 0 && !words.back().empty()) words.emplace_back();
    i += std::max<std::size_t>(sign, 1);
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

bool holds_words(std::string_view title, std::string_view words) {
  const std::vector<std::string> all = words_in(title);
  const std::vector<std::string> wanted = words_in(words);
  if (wanted.empty()) return false;
  return std::search(all.begin(), all.end(), wanted.begin(), wanted.end(), is_word) != all.end();
}

}  // namespace maslin::label
