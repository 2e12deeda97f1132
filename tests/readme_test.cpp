// SPDX-License-Identifier: Apache-2.0
// What the README shows is what the program prints.
#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace {

std::string read_file(const std::filesystem::path& path) {
  std::ifstream in(path);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

std::string output_of(const std::string& command) {
  std::string output;
  std::FILE* pipe = popen(command.c_str(), "r");
  std::array<char, 4096> buffer{};
  for (std::size_t got = 1; got > 0;) {
    got = std::fread(buffer.data(), 1, buffer.size(), pipe);
    output.append(buffer.data(), got);
  }
  pclose(pipe);
  return output;
}

struct Fence {
  std::string file;  // named in a comment before it; empty for none
  std::string info;
  std::string content;
};

std::vector<Fence> fences(const std::string& markdown) {
  std::vector<Fence> result;
  std::istringstream lines(markdown);
  std::string line;
  std::string file;
  bool inside = false;
  while (std::getline(lines, line)) {
    const std::string mark = "<!-- file: ";
    if (line.rfind("```", 0) == 0) {
      if (!inside) result.push_back({file, line.substr(3), {}});
      if (inside) file.clear();
      inside = !inside;
    } else if (inside) {
      result.back().content += line + "\n";
    } else if (line.rfind(mark, 0) == 0) {
      file = line.substr(mark.size(), line.find(" -->") - mark.size());
    }
  }
  return result;
}

TEST(Readme, ShowsWhatTheProgramPrints) {
  const std::filesystem::path folder =
      std::filesystem::temp_directory_path() / "maslin_readme_test";
  std::filesystem::create_directories(folder);
  int shown = 0;
  for (const Fence& fence : fences(read_file(std::string(MASLIN_SOURCE_DIR) + "/README.md"))) {
    if (!fence.file.empty()) std::ofstream(folder / fence.file) << fence.content;
    if (fence.info != "console") continue;
    const std::size_t end = fence.content.find('\n');
    const std::string command = fence.content.substr(2, end - 2);
    ASSERT_EQ(command.rfind("maslin ", 0), 0U) << command;
    std::string expected = fence.content.substr(end + 1);
    const std::string output =
        output_of("cd '" + folder.string() + "' && '" + MASLIN_PROGRAM + "' " +
                  command.substr(std::string("maslin ").size()) + " 2>&1");
    // A line of three dots stands for all the rest.
    const std::size_t cut = expected.rfind("…\n");
    if (cut != std::string::npos) {
      expected.erase(cut);
      EXPECT_EQ(output.substr(0, expected.size()), expected) << command;
    } else {
      EXPECT_EQ(output, expected) << command;
    }
    ++shown;
  }
  EXPECT_GE(shown, 2);
  std::filesystem::remove_all(folder);
}

}  // namespace
