// SPDX-License-Identifier: Apache-2.0
// Words of the language, as messages speak of them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "syntax/tree.hpp"

namespace maslin::syntax {

// A word that ends a name, unless the name is in quotes.
bool is_reserved(std::string_view word);

// "a kitchen" for `pan`: the block in which a statement that begins with this word belongs; empty
// for other words.
std::string_view home_of(std::string_view word);

// Where a statement stands, by the kind of the block around it: "in a basket".
std::string place_of(Kind around);

// The keyword that a slip of the pen may have made this word of; empty where none is near.
std::string_view nearest_keyword(std::string_view word,
                                 const std::vector<std::string_view>& keywords);

// A long text cut to what a message can hold.
std::string shortened(std::string_view text);

// Whether a second number was read on a line of a basket, where it can only be a strength.
bool wants_strength(const Misfit& misfit);

// What would have fitted: "a number, `as` or `at`".
std::string expected(const Misfit& misfit);

}  // namespace maslin::syntax
