// SPDX-License-Identifier: Apache-2.0
// What the tests of the tree's shape read it with.
#pragma once

#include <filesystem>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace maslin::arch {

namespace fs = std::filesystem;

inline const fs::path root = MASLIN_SOURCE_DIR;

std::string read(const fs::path& path);

// All files below a folder of the tree that end so, sorted; nothing that was installed into it.
std::vector<fs::path> files(std::string_view folder, std::initializer_list<const char*> extensions);

// What a source includes between quotes.
std::vector<std::string> includes(const fs::path& path);

}  // namespace maslin::arch
