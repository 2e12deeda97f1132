// SPDX-License-Identifier: Apache-2.0
#include "arch/source_tree.hpp"

#include <algorithm>
#include <fstream>
#include <sstream>

namespace maslin::arch {

std::string read(const fs::path& path) {
  std::ifstream in(path);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

std::vector<fs::path> files(std::string_view folder,
                            std::initializer_list<const char*> extensions) {
  std::vector<fs::path> result;
  const fs::recursive_directory_iterator end;
  for (fs::recursive_directory_iterator at(root / folder); at != end; ++at) {
    const fs::path& path = at->path();
    if (path.filename() == "node_modules") {
      at.disable_recursion_pending();
    } else if (std::find(extensions.begin(), extensions.end(), path.extension()) !=
               extensions.end()) {
      result.push_back(path);
    }
  }
  std::sort(result.begin(), result.end());
  return result;
}

std::vector<std::string> includes(const fs::path& path) {
  constexpr std::string_view start = "#include \"";
  std::vector<std::string> result;
  std::istringstream lines(read(path));
  for (std::string line; std::getline(lines, line);) {
    if (line.rfind(start, 0) != 0) continue;
    result.push_back(line.substr(start.size(), line.find('"', start.size()) - start.size()));
  }
  return result;
}

}  // namespace maslin::arch
