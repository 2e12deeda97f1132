// SPDX-License-Identifier: Apache-2.0
// Which folder may know which.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <set>

#include "arch/source_tree.hpp"

namespace maslin::arch {
namespace {

// A folder may include itself and those before it. The typed model of the language holds
// compositions, so science, which knows nothing of the language, comes before it.
constexpr std::array<std::string_view, 16> order = {
    "base",  "source", "diagnostic", "syntax", "quantity", "science", "language", "blend",
    "prove", "plan",   "record",     "label",  "report",   "driver",  "server",   "command"};

std::size_t rank_of(std::string_view folder) {
  return static_cast<std::size_t>(std::find(order.begin(), order.end(), folder) - order.begin());
}

std::string first_folder(const fs::path& path) { return path.begin()->string(); }

// Tests stand beside the code, and may take what they need from anywhere.
bool is_test(const fs::path& path) {
  return path.filename().string().find("_test") != std::string::npos;
}

std::vector<fs::path> sources() {
  std::vector<fs::path> result = files("src", {".cpp", ".hpp"});
  result.erase(std::remove_if(result.begin(), result.end(), is_test), result.end());
  return result;
}

TEST(Architecture, FoldersIncludeOnlyWhatStandsBeforeThem) {
  for (const fs::path& path : sources()) {
    const std::string own = first_folder(fs::relative(path, root / "src"));
    ASSERT_LT(rank_of(own), order.size()) << path << ": a folder without a place in the order";
    for (const std::string& included : includes(path)) {
      const std::string other = first_folder(included);
      if (other == "grammar") {
        EXPECT_EQ(own, "syntax") << path << " includes " << included;
        continue;
      }
      ASSERT_LT(rank_of(other), order.size())
          << path << " includes " << included << ", which does not begin with a folder of src/";
      EXPECT_LE(rank_of(other), rank_of(own)) << path << " includes " << included;
    }
  }
}

TEST(Architecture, TheGrammarKnowsNothingOfTheProgram) {
  for (const char* name : {"grammar/rules.hpp", "grammar/characters.hpp"}) {
    for (const std::string& included : includes(root / name)) {
      EXPECT_EQ(first_folder(included), "grammar") << name << " includes " << included;
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
    for (std::string& next : includes(root / "src" / at)) open.push_back(std::move(next));
  }
  return seen;
}

TEST(Architecture, TheVerifierKnowsNeitherTheBlendNorTheProof) {
  int found = 0;
  for (const fs::path& path : sources()) {
    const std::string name = fs::relative(path, root / "src").generic_string();
    if (name.rfind("plan/verify", 0) != 0) continue;
    ++found;
    for (const std::string& included : reached(name)) {
      EXPECT_NE(first_folder(included), "blend") << name << " reaches " << included;
      EXPECT_NE(first_folder(included), "prove") << name << " reaches " << included;
    }
  }
  EXPECT_GE(found, 2);
}

TEST(Architecture, ScienceKnowsNothingOfTheLanguage) {
  int found = 0;
  for (const fs::path& path : sources()) {
    const std::string name = fs::relative(path, root / "src").generic_string();
    if (first_folder(name) != "science") continue;
    ++found;
    for (const std::string& included : reached(name)) {
      EXPECT_NE(first_folder(included), "language") << name << " reaches " << included;
      EXPECT_NE(first_folder(included), "syntax") << name << " reaches " << included;
    }
  }
  EXPECT_GE(found, 2);
}

}  // namespace
}  // namespace maslin::arch
