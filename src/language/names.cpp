// SPDX-License-Identifier: Apache-2.0
#include "language/names.hpp"

#include <utf8proc.h>

#include <algorithm>
#include <cstdlib>
#include <memory>
#include <tuple>

#include "base/spelling.hpp"

namespace maslin::language {
namespace {

std::string composed(std::string text) {
  const bool plain = std::all_of(text.begin(), text.end(),
                                 [](char c) { return static_cast<unsigned char>(c) < 0x80; });
  if (plain) return text;
  utf8proc_uint8_t* result = nullptr;
  const auto length =
      utf8proc_map(reinterpret_cast<const utf8proc_uint8_t*>(text.data()),
                   static_cast<utf8proc_ssize_t>(text.size()), &result,
                   static_cast<utf8proc_option_t>(UTF8PROC_STABLE | UTF8PROC_COMPOSE));
  const std::unique_ptr<utf8proc_uint8_t, decltype(&std::free)> owner(result, &std::free);
  if (length < 0) return text;
  return {reinterpret_cast<const char*>(result), static_cast<std::size_t>(length)};
}

bool has_word(std::string_view name, std::string_view word) {
  for (std::size_t at = name.find(word); at != std::string_view::npos;
       at = name.find(word, at + 1)) {
    const bool begins = at == 0 || name[at - 1] == ' ';
    const std::size_t after = at + word.size();
    const bool ends = after == name.size() || name[after] == ' ';
    if (begins && ends) return true;
  }
  return false;
}

bool is_last_word(std::string_view word, std::string_view name) {
  return name.size() > word.size() + 1 && name.ends_with(word) &&
         name[name.size() - word.size() - 1] == ' ';
}

bool is_quote(syntax::Kind kind) {
  return kind == syntax::Kind::string || kind == syntax::Kind::curly_string ||
         kind == syntax::Kind::unclosed_string;
}

// To the nearest of several words; more than `most` where it is one word.
std::size_t distance_to_a_word(std::string_view unknown, std::string_view name, std::size_t most) {
  std::size_t nearest = most + 1;
  if (name.find(' ') == std::string_view::npos) return nearest;
  while (!name.empty()) {
    const std::size_t blank = std::min(name.find(' '), name.size());
    nearest = std::min(nearest, edit_distance(unknown, name.substr(0, blank), most));
    name.remove_prefix(std::min(blank + 1, name.size()));
  }
  return nearest;
}

}  // namespace

std::string normal_name(std::string_view text) {
  std::string result;
  bool gap = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool hard_space = text.substr(i, 2) == "\xC2\xA0";
    if (text[i] == ' ' || text[i] == '\t' || hard_space) {
      gap = !result.empty();
      if (hard_space) ++i;
      continue;
    }
    if (gap) result += ' ';
    gap = false;
    result += text[i];
  }
  // A typographic apostrophe is the same apostrophe.
  for (std::size_t at = result.find("\xE2\x80\x99"); at != std::string::npos;
       at = result.find("\xE2\x80\x99", at)) {
    result.replace(at, 3, "'");
  }
  return composed(std::move(result));
}

std::string normal_name(syntax::View name) {
  if (const syntax::View quoted = name.child(syntax::Kind::quoted_name)) {
    return normal_name(text_of(text_child(quoted)));
  }
  return normal_name(name.text());
}

std::string text_of(syntax::View text) {
  if (!text) return {};
  std::string_view content = text.text();
  if (text.kind() == syntax::Kind::string)
    return std::string(content.substr(1, content.size() - 2));
  if (text.kind() == syntax::Kind::unclosed_string) return std::string(content.substr(1));
  // Typographic quotes are of two or three bytes each.
  while (!content.empty() && (static_cast<unsigned char>(content.back()) & 0xc0) == 0x80) {
    content.remove_suffix(1);
  }
  if (!content.empty()) content.remove_suffix(1);
  if (!content.empty()) content.remove_prefix(1);
  while (!content.empty() && (static_cast<unsigned char>(content.front()) & 0xc0) == 0x80) {
    content.remove_prefix(1);
  }
  return std::string(content);
}

syntax::View text_child(syntax::View parent) {
  for (const syntax::View child : parent) {
    if (is_quote(child.kind())) return child;
  }
  return {};
}

std::vector<std::string> nearest(std::string_view unknown,
                                 const std::vector<std::string_view>& known, std::size_t count) {
  // A very long word is no slip of the pen, and comparing it would cost.
  if (unknown.empty() || unknown.size() > 60) return {};
  const std::size_t most = std::max<std::size_t>(1, unknown.size() / 3);
  std::vector<std::tuple<std::size_t, std::string>> found;
  const std::string wanted = lower_case(unknown);
  for (const std::string_view name : known) {
    std::size_t distance = edit_distance(unknown, name, most);
    if (distance > most && has_word(name, wanted)) distance = most;
    // `bramley apple` is some kind of `apple`.
    if (is_last_word(name, wanted)) distance = 1;
    if (distance <= most) found.emplace_back(distance, std::string(name));
  }
  // `chutny` for `orchard chutney`, where nothing is nearer.
  constexpr std::size_t long_enough = 5;
  if (found.empty() && unknown.size() >= long_enough) {
    for (const std::string_view name : known) {
      const std::size_t distance = distance_to_a_word(unknown, name, most);
      if (distance <= most) found.emplace_back(distance, std::string(name));
    }
  }
  std::sort(found.begin(), found.end());
  std::vector<std::string> result;
  for (const auto& [distance, name] : found) {
    if (result.size() == count) break;
    result.push_back(name);
  }
  return result;
}

}  // namespace maslin::language
