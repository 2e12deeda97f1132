// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

#include "source/source.hpp"
#include "syntax/tree.hpp"

namespace maslin::syntax {

// Reads any text of valid UTF-8 into a tree. Never fails: what fits no form is a `bad_item` with a
// Misfit. The text must outlive the tree and be shorter than 4 GiB.
SyntaxTree parse(FileId file, std::string_view text);

}  // namespace maslin::syntax
