// SPDX-License-Identifier: Apache-2.0
// Texts character by character. What is no UTF-8 is stepped over a byte at a time.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace maslin {

struct Character {
  std::int32_t code_point = -1;  // below nothing where the text is no UTF-8
  std::size_t bytes = 1;

  bool is_valid() const { return code_point >= 0; }
};

// The character that stands at a place of a text, 0 to its size less one.
Character character_at(std::string_view text, std::size_t at);

// Columns a text takes on a terminal; a byte that is no UTF-8 takes one.
std::size_t width_of(std::string_view text);

}  // namespace maslin
