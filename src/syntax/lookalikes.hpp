// SPDX-License-Identifier: Apache-2.0
// Characters that look like another one, or like nothing: they come along with text that is copied
// from a mail or a page.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace maslin::syntax {

struct Lookalike {
  std::uint32_t bytes = 0;  // how many it takes in the text
  std::string code;         // "U+2009"
  std::string plain;        // what is meant by it; empty: nothing
  std::string_view what;    // "a narrow or wide space"
  bool plainly = false;     // whether nothing else can be meant
};

// The one that `text` begins with.
std::optional<Lookalike> lookalike_at(std::string_view text);

}  // namespace maslin::syntax
