// SPDX-License-Identifier: Apache-2.0
// The shape of the source tree: which folder may know which, how long a file may be, and what no
// text of ours says.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

const fs::path root = MASLIN_SOURCE_DIR;

// A folder may include those before it. The typed model holds compositions, so science comes
// before language.
constexpr std::array<std::string_view, 14> order = {
    "base",  "source", "diagnostic", "syntax", "quantity", "science", "language",
    "blend", "prove",  "plan",       "record", "report",   "driver",  "command"};

std::size_t rank_of(std::string_view folder) {
  return static_cast<std::size_t>(std::find(order.begin(), order.end(), folder) - order.begin());
}

std::string read(const fs::path& path) {
  std::ifstream in(path);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

std::vector<fs::path> sources(const fs::path& folder) {
  std::vector<fs::path> result;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    const std::string extension = entry.path().extension().string();
    const bool modules = entry.path().string().find("node_modules") != std::string::npos;
    if (!modules && (extension == ".cpp" || extension == ".hpp")) result.push_back(entry.path());
  }
  std::sort(result.begin(), result.end());
  return result;
}

std::vector<std::string> includes(const fs::path& path) {
  static const std::regex form("#include \"([^\"]+)\"");
  std::vector<std::string> result;
  const std::string text = read(path);
  for (std::sregex_iterator at(text.begin(), text.end(), form), end; at != end; ++at) {
    result.push_back((*at)[1]);
  }
  return result;
}

bool is_test(const fs::path& path) {
  const std::string name = path.filename().string();
  return name.find("_test") != std::string::npos;
}

TEST(Architecture, FoldersIncludeOnlyWhatStandsBeforeThem) {
  for (const fs::path& path : sources(root / "src")) {
    if (is_test(path)) continue;
    const std::string own = (*fs::relative(path, root / "src").begin()).string();
    ASSERT_LT(rank_of(own), order.size()) << path << ": a folder without a place in the order";
    for (const std::string& included : includes(path)) {
      const std::string other = included.substr(0, included.find('/'));
      if (other == "grammar") {
        EXPECT_EQ(own, "syntax") << path << " includes " << included;
        continue;
      }
      ASSERT_LT(rank_of(other), order.size()) << path << " includes " << included;
      EXPECT_LE(rank_of(other), rank_of(own)) << path << " includes " << included;
    }
  }
}

// Everything a file includes, however far away.
std::set<std::string> reached(const std::string& from) {
  std::set<std::string> seen;
  std::vector<std::string> open = {from};
  while (!open.empty()) {
    const std::string at = open.back();
    open.pop_back();
    if (!seen.insert(at).second || !fs::exists(root / "src" / at)) continue;
    for (const std::string& next : includes(root / "src" / at)) open.push_back(next);
  }
  return seen;
}

TEST(Architecture, TheVerifierKnowsNeitherTheBlendNorTheProof) {
  int files = 0;
  for (const fs::path& path : sources(root / "src" / "plan")) {
    if (path.filename().string().rfind("verify", 0) != 0 || is_test(path)) continue;
    ++files;
    for (const std::string& included : reached(fs::relative(path, root / "src").string())) {
      EXPECT_NE(included.rfind("blend/", 0), 0U) << path << " reaches " << included;
      EXPECT_NE(included.rfind("prove/", 0), 0U) << path << " reaches " << included;
    }
  }
  EXPECT_GE(files, 2);
}

TEST(Architecture, ScienceKnowsNothingOfTheLanguage) {
  for (const fs::path& path : sources(root / "src" / "science")) {
    for (const std::string& included : includes(path)) {
      EXPECT_EQ(included.rfind("language/", 0), std::string::npos) << path;
      EXPECT_EQ(included.rfind("syntax/", 0), std::string::npos) << path;
    }
  }
}

TEST(Architecture, FilesAreShortAndSayTheirLicence) {
  constexpr long longest = 500;
  for (const char* folder : {"src", "grammar", "tests", "tools"}) {
    for (const fs::path& path : sources(root / folder)) {
      const std::string text = read(path);
      EXPECT_LE(std::count(text.begin(), text.end(), '\n'), longest) << path;
      EXPECT_EQ(text.rfind("// SPDX-License-Identifier: Apache-2.0", 0), 0U) << path;
    }
  }
}

// Nothing that a cook reads may promise what was only reckoned.
TEST(Architecture, NoTextPromises) {
  static const std::regex promise(
      R"((\bis safe\b|\bare safe\b|\bwill keep\b|\bsafe to eat\b|\bguarantee|✓|✔|\bOK\b))");
  std::vector<fs::path> texts = sources(root / "src");
  for (const char* folder : {"stdlib", "examples", "src/diagnostic/explain"}) {
    for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
      const std::string extension = entry.path().extension().string();
      if (extension == ".maslin" || extension == ".md") texts.push_back(entry.path());
    }
  }
  texts.push_back(root / "README.md");
  for (const fs::path& path : texts) {
    std::istringstream lines(read(path));
    for (std::string line; std::getline(lines, line);) {
      EXPECT_FALSE(std::regex_search(line, promise)) << path << ": " << line;
    }
  }
}

}  // namespace
