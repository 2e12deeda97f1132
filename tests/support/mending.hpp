// SPDX-License-Identifier: Apache-2.0
// Follows what a mend says, from text, as a cook would.
#pragma once

#include <optional>
#include <string>

#include "support/golden_files.hpp"

namespace maslin::test {

// A text with its edits made.
std::string edited(std::string text, std::vector<Edit> edits);

// "make no more than 1.875 kg of prepared produce" as what stands behind `--aim`.
std::optional<std::string> aim_in_words(const std::string& mend);

}  // namespace maslin::test
