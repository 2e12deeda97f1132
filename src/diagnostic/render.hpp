// SPDX-License-Identifier: Apache-2.0
// Diagnostics as text for a person.
#pragma once

#include <string>
#include <string_view>

#include "diagnostic/diagnostic.hpp"
#include "source/source.hpp"

namespace maslin {

struct TextStyle {
  bool color = false;
};

// With the lines concerned, a caret under the place, the other places, the reason and the mends.
std::string render_text(const Sources& sources, const Diagnostic& diagnostic,
                        const TextStyle& style = {});

// Text that may come from a user's file, fit for a terminal: control characters are shown, not
// sent.
std::string printable(std::string_view text);

}  // namespace maslin
