// SPDX-License-Identifier: Apache-2.0
// What a cook who writes a word that does not fit most likely wants to say, and how that is said.
#pragma once

#include <string_view>

#include "syntax/tree.hpp"

namespace maslin::syntax {

// Where in a statement the word stands.
enum class At : unsigned char { first, inside };

// `rest` is the text from the word on, `around` the kind of the innermost block. Empty where
// nothing is known of it.
std::string_view advice_on(std::string_view rest, At at, Kind around);

// The same for a word that became part of a name: `onion about 2 kg`, `buy date`.
std::string_view advice_on_name(std::string_view name);

// For a statement that is cut short: `two onions`, `apple 2 kg (peeled)`.
std::string_view advice_on_unfinished(std::string_view statement, bool has_digits);

}  // namespace maslin::syntax
