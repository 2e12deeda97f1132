// SPDX-License-Identifier: Apache-2.0
// Runs every case in this folder; MASLIN_UPDATE=1 writes what it prints into the cases instead.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "support/golden_case.hpp"
#include "support/golden_files.hpp"
#include "syntax/parse.hpp"

namespace maslin::test {
namespace {

namespace fs = std::filesystem;

struct CaseFile {
  fs::path path;
  std::string name;  // below this folder, for messages
  GoldenCase golden;
};

std::string slurp(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

const std::vector<CaseFile>& all_cases() {
  static const std::vector<CaseFile> cases = [] {
    const fs::path folder = fs::path(MASLIN_SOURCE_DIR) / "tests" / "golden";
    std::vector<CaseFile> found;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
      if (entry.path().extension() != ".test") continue;
      found.push_back({entry.path(), entry.path().lexically_relative(folder).string(),
                       read_case(slurp(entry.path()))});
    }
    std::sort(found.begin(), found.end(),
              [](const CaseFile& a, const CaseFile& b) { return a.name < b.name; });
    return found;
  }();
  return cases;
}

bool updates() {
  const char* update = std::getenv("MASLIN_UPDATE");
  return update != nullptr && *update == '1';
}

// The texts of a case, and those of them that its command names.
struct Inputs {
  Texts texts;
  std::vector<std::string> named;
};

Inputs inputs_of(const GoldenCase& golden) {
  Inputs inputs;
  const auto words = words_of(golden.content_of("command"));
  for (const Split& split : golden.splits) {
    if (split.kind != "input") continue;
    inputs.texts[split.name] = split.content;
    if (std::find(words.begin(), words.end(), split.name) != words.end()) {
      inputs.named.push_back(split.name);
    }
  }
  return inputs;
}

// Every byte is in exactly one childless node, in order.
std::string text_of_leaves(const syntax::SyntaxTree& tree) {
  std::string text;
  for (std::uint32_t i = 0; i < tree.nodes.size(); ++i) {
    const syntax::Node& node = tree.nodes[i];
    if (node.next == i + 1) text += tree.text.substr(node.begin, node.end - node.begin);
  }
  return text;
}

std::vector<std::string> cut_at_line_ends(const std::string& text) {
  std::vector<std::string> result = {text};
  for (std::size_t at = text.find('\n'); at != std::string::npos; at = text.find('\n', at + 1)) {
    result.push_back(text.substr(0, at));
    result.push_back(text.substr(0, at + 1));
  }
  return result;
}

TEST(Golden, EveryCasePrintsWhatItDid) {
  for (const CaseFile& file : all_cases()) {
    SCOPED_TRACE(file.name);
    const Ran ran = run_case(file.golden);
    const std::string exit = ran.exit == 0 ? "" : std::to_string(ran.exit) + "\n";
    if (updates()) {
      GoldenCase changed = file.golden;
      changed.replace("stdout", ran.out);
      changed.replace("stderr", ran.err);
      changed.replace("exit", exit);
      const std::string text = write_case(changed);
      if (text != slurp(file.path)) std::ofstream(file.path, std::ios::binary) << text;
      continue;
    }
    EXPECT_EQ(ran.out, file.golden.content_of("stdout"));
    EXPECT_EQ(ran.err, file.golden.content_of("stderr"));
    EXPECT_EQ(exit, file.golden.content_of("exit"));
  }
}

TEST(Golden, EveryCaseIsShortAndSaysWhatItIsAbout) {
  constexpr long most_lines = 200;
  EXPECT_GE(all_cases().size(), 60U);
  for (const CaseFile& file : all_cases()) {
    SCOPED_TRACE(file.name);
    EXPECT_FALSE(file.golden.about.empty());
    const std::string text = slurp(file.path);
    const bool sheet = file.name.rfind("plan/", 0) == 0;
    if (!sheet) {
      EXPECT_LE(std::count(text.begin(), text.end(), '\n'), most_lines);
    }
    EXPECT_EQ(write_case(read_case(text)), text);
  }
}

TEST(Golden, ATextCutOffAnywhereIsReadToItsEnd) {
  for (const CaseFile& file : all_cases()) {
    SCOPED_TRACE(file.name);
    const Inputs inputs = inputs_of(file.golden);
    for (const auto& [name, whole] : inputs.texts) {
      for (const std::string& text : cut_at_line_ends(whole)) {
        EXPECT_EQ(text_of_leaves(syntax::parse(FileId(0), text)), text) << name;
        Texts texts = inputs.texts;
        texts[name] = text;
        (void)diagnostics_of(texts, {name});
      }
    }
  }
}

TEST(Golden, EverySafeFixMendsWhatItIsOfferedFor) {
  for (const CaseFile& file : all_cases()) {
    const Inputs inputs = inputs_of(file.golden);
    EXPECT_EQ(failing_fixes(inputs.texts, inputs.named), "") << file.name;
  }
}

// The catalogue of beginners' mistakes: each is refused, with words of its own and a mend.
TEST(Golden, SixtyMistakesOfBeginnersAreRefusedWithAMend) {
  std::istringstream list(slurp(fs::path(MASLIN_SOURCE_DIR) / "tests/golden/mistakes.txt"));
  std::set<std::string> named;
  std::set<std::string> messages;
  for (std::string line; std::getline(list, line);) {
    if (line.empty() || line[0] == '#') continue;
    SCOPED_TRACE(line);
    EXPECT_TRUE(named.insert(line).second) << "named twice";
    const auto found =
        std::find_if(all_cases().begin(), all_cases().end(),
                     [&](const CaseFile& file) { return file.name == line + ".test"; });
    ASSERT_NE(found, all_cases().end());
    const std::string printed = found->golden.content_of("stderr");
    const bool warned = printed.find("warning: ") != std::string::npos;
    EXPECT_TRUE(warned || !found->golden.content_of("exit").empty());
    EXPECT_NE(printed.find("mend: "), std::string::npos);
    messages.insert(printed);
  }
  EXPECT_GE(named.size(), 60U);
  EXPECT_EQ(messages.size(), named.size());
}

// The words of the library's promise are the cook's to say, not the program's.
TEST(Golden, NothingIsCalledCertain) {
  for (const CaseFile& file : all_cases()) {
    for (const std::string kind : {"stdout", "stderr"}) {
      std::istringstream words(file.golden.content_of(kind));
      for (std::string word; words >> word;) {
        EXPECT_TRUE(word != "safe" && word != "Safe" && word != "OK" && word != "safely")
            << file.name << ": " << word;
      }
      EXPECT_EQ(file.golden.content_of(kind).find("will keep"), std::string::npos) << file.name;
    }
  }
}

}  // namespace
}  // namespace maslin::test
