// SPDX-License-Identifier: Apache-2.0
// How long a file may be, how it begins, and what no text of ours says.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cctype>

#include "arch/source_tree.hpp"

namespace maslin::arch {
namespace {

TEST(Architecture, FilesAreShortAndSayTheirLicence) {
  constexpr long longest = 500;
  for (const char* folder : {"src", "grammar", "tests", "tools"}) {
    for (const fs::path& path : files(folder, {".cpp", ".hpp", ".def"})) {
      const std::string text = read(path);
      EXPECT_LE(std::count(text.begin(), text.end(), '\n'), longest) << path;
      EXPECT_EQ(text.rfind("// SPDX-License-Identifier: Apache-2.0\n", 0), 0U)
          << path << " must begin with the line of its licence";
    }
  }
}

// Nothing that a cook reads may promise what was only reckoned. In lower case; `ok` stands for
// itself alone, and so do the words of the others.
constexpr std::array<std::string_view, 11> promises = {
    "safe",         "safely",       "will keep", "will not spoil", "guarantee",   "guaranteed",
    "shelf stable", "shelf-stable", "ok",        "okay",           "without risk"};
constexpr std::array<std::string_view, 4> signs = {"✓", "✔", "✅", "☑"};

// Where one of them stands and promises nothing: file, the words around it, and why.
struct Exception {
  std::string_view file;
  std::string_view words;
  std::string_view why;
};
constexpr std::array<Exception, 2> exceptions = {{
    {"src/diagnostic/json.cpp", "safe", "a correction of a text that changes no meaning"},
    {"schema/maslin.schema.json", "safe", "the same, in the schema of that output"},
}};

bool is_letter(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_'; }

// One space for every break between words, also where a literal goes on in the next line.
std::string flowing(std::string_view text) {
  std::string result;
  for (const char c : text) {
    const bool gap = std::isspace(static_cast<unsigned char>(c)) != 0 || c == '"';
    if (!gap) result += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    if (gap && !result.empty() && result.back() != ' ') result += ' ';
  }
  return result;
}

// The promises a text makes, with some words around each.
std::vector<std::string> promises_of(std::string_view text) {
  std::vector<std::string> found;
  const std::string words = flowing(text);
  const auto note = [&](std::size_t at) {
    const std::size_t before = std::min<std::size_t>(at, 30);
    found.push_back(words.substr(at - before, before + 50));
  };
  for (const std::string_view promise : promises) {
    for (std::size_t at = words.find(promise); at != std::string::npos;
         at = words.find(promise, at + 1)) {
      const std::size_t end = at + promise.size();
      const bool begins = at == 0 || !is_letter(words[at - 1]);
      const bool ends = end == words.size() || !is_letter(words[end]);
      if (begins && ends) note(at);
    }
  }
  for (const std::string_view sign : signs) {
    if (const std::size_t at = words.find(sign); at != std::string::npos) note(at);
  }
  return found;
}

// What a cook may come to read: the literals of the sources, everything of the others.
std::string literals(const fs::path& source) {
  std::string result;
  const std::string text = read(source);
  bool inside = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (!inside && text.compare(i, 2, "//") == 0) {
      i = std::min(text.find('\n', i), text.size() - 1);
    } else if (!inside && text.compare(i, 3, "'\"'") == 0) {
      i += 2;
    } else if (!inside && text.compare(i, 4, "'\\\"'") == 0) {
      i += 3;
    } else if (text[i] == '"') {
      inside = !inside;
      result += ' ';
    } else if (inside && text[i] == '\\') {
      ++i;
      result += ' ';
    } else if (inside) {
      result += text[i];
    }
  }
  return result;
}

std::vector<fs::path> texts_for_cooks() {
  std::vector<fs::path> texts;
  for (const char* folder : {"stdlib", "examples", "src/diagnostic/explain", "src/report/terms",
                             "schema", "tests/golden"}) {
    for (fs::path& path : files(folder, {".maslin", ".md", ".json", ".test"})) {
      texts.push_back(std::move(path));
    }
  }
  for (const char* name : {"README.md", "DEVELOPERS.md"}) texts.push_back(root / name);
  return texts;
}

// Whether a promise that was found is one of the exceptions; which of them is noted.
bool is_excepted(const fs::path& path, std::string_view found, std::vector<bool>& used) {
  for (std::size_t i = 0; i < exceptions.size(); ++i) {
    if (path != root / exceptions[i].file) continue;
    if (found.find(exceptions[i].words) == std::string_view::npos) continue;
    used[i] = true;
    return true;
  }
  return false;
}

TEST(Architecture, NoTextPromises) {
  std::vector<bool> used(exceptions.size(), false);
  const auto expect_none = [&](const fs::path& path, const std::string& text) {
    for (const std::string& found : promises_of(text)) {
      EXPECT_TRUE(is_excepted(path, found, used)) << path << ": …" << found << "…";
    }
  };
  for (const fs::path& path : files("src", {".cpp", ".hpp", ".def"})) {
    if (path.filename().string().find("_test") != std::string::npos) continue;
    expect_none(path, literals(path));
  }
  for (const fs::path& path : texts_for_cooks()) expect_none(path, read(path));
  for (std::size_t i = 0; i < exceptions.size(); ++i) {
    EXPECT_TRUE(used[i]) << exceptions[i].file << " has no `" << exceptions[i].words
                         << "` any more: " << exceptions[i].why;
  }
}

TEST(Architecture, APromiseIsFoundAcrossLinesAndOnlyAsWholeWords) {
  EXPECT_EQ(promises_of("then it is\n  safe for a year").size(), 1U);
  EXPECT_EQ(promises_of("\"it will \"\n      \"keep\"").size(), 1U);
  EXPECT_EQ(promises_of("OK, 3 ✓").size(), 2U);
  EXPECT_EQ(promises_of("it is Safely kept ☑").size(), 2U);
  EXPECT_TRUE(promises_of("food safety, this safeguard, a book, look, unsafe").empty());
}

}  // namespace
}  // namespace maslin::arch
