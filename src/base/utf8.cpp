// SPDX-License-Identifier: Apache-2.0
#include "base/utf8.hpp"

#include <utf8proc.h>

#include <algorithm>

namespace maslin {

Character character_at(std::string_view text, std::size_t at) {
  utf8proc_int32_t code_point = 0;
  const auto length =
      utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()) + at,
                       static_cast<utf8proc_ssize_t>(text.size() - at), &code_point);
  if (length <= 0) return {};
  return {code_point, static_cast<std::size_t>(length)};
}

std::size_t width_of(std::string_view text) {
  std::size_t width = 0;
  for (std::size_t i = 0; i < text.size();) {
    const Character each = character_at(text, i);
    const int columns = each.is_valid() ? utf8proc_charwidth(each.code_point) : 1;
    width += static_cast<std::size_t>(std::max(0, columns));
    i += each.bytes;
  }
  return width;
}

}  // namespace maslin
