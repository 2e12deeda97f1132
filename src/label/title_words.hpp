// SPDX-License-Identifier: Apache-2.0
// The words of a title, whatever stands between them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace maslin::label {

// In lower case; letters and figures only: "Apple-jam (spiced)!" has three.
std::vector<std::string> words_in(std::string_view title);

// Whether these words stand in it one after another, the last of them in the singular or plural.
bool holds_words(std::string_view title, std::string_view words);

}  // namespace maslin::label
