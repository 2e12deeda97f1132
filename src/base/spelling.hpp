// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace maslin {

// ASCII letters only; the rest stays as it is.
std::string lower_case(std::string_view text);

// How many single-letter edits (insert, delete, replace, swap neighbours) lead from a to b, capital
// letters aside; gives up above `most` and returns most + 1.
std::size_t edit_distance(std::string_view a, std::string_view b, std::size_t most);

}  // namespace maslin
