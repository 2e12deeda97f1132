// SPDX-License-Identifier: Apache-2.0
// Texts for the tests of the grammar and of the tree.
#pragma once

#include <string_view>
#include <vector>

namespace maslin::grammar {

// Whole files without a fault; together they show every form of the language.
std::vector<std::string_view> sound_texts();
// Sound ones and faulty ones, small.
std::vector<std::string_view> small_texts();

}  // namespace maslin::grammar
