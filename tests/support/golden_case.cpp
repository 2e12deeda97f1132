// SPDX-License-Identifier: Apache-2.0
#include "support/golden_case.hpp"

#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace maslin::test {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view mark = "--- ";

// A folder that is gone again afterwards.
class TemporaryFolder {
 public:
  TemporaryFolder() {
    std::string pattern = (fs::temp_directory_path() / "maslin_golden.XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no temporary folder");
    path_ = pattern;
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  ~TemporaryFolder() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
  }
  const fs::path& path() const { return path_; }

 private:
  fs::path path_;
};

std::string slurp(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

std::string bytes_of(const std::string& hexadecimal) {
  std::istringstream in(hexadecimal);
  std::string bytes;
  for (std::string pair; in >> pair;) bytes += static_cast<char>(std::stoi(pair, nullptr, 16));
  return bytes;
}

void put_inputs(const GoldenCase& golden, const fs::path& folder) {
  for (const Split& split : golden.splits) {
    const fs::path path = folder / split.name;
    if (split.kind == "folder") fs::create_directories(path);
    if (split.kind != "input" && split.kind != "bytes") continue;
    fs::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary)
        << (split.kind == "bytes" ? bytes_of(split.content) : split.content);
  }
}

void become_program(const fs::path& inside, const fs::path& beside,
                    const std::vector<std::string>& words) {
  constexpr unsigned patience = 60;  // seconds
  std::vector<char*> arguments = {const_cast<char*>("maslin")};
  for (const std::string& word : words) arguments.push_back(const_cast<char*>(word.c_str()));
  arguments.push_back(nullptr);
  const bool ready = chdir(inside.c_str()) == 0 &&
                     std::freopen((beside / "in").c_str(), "rb", stdin) != nullptr &&
                     std::freopen((beside / "out").c_str(), "wb", stdout) != nullptr &&
                     std::freopen((beside / "err").c_str(), "wb", stderr) != nullptr;
  if (ready) {
    alarm(patience);
    execv(MASLIN_PROGRAM, arguments.data());
  }
  _exit(127);
}

}  // namespace

std::string GoldenCase::content_of(const std::string& kind) const {
  const auto found = std::find_if(splits.begin(), splits.end(),
                                  [&](const Split& split) { return split.kind == kind; });
  return found == splits.end() ? std::string() : found->content;
}

void GoldenCase::replace(const std::string& kind, const std::string& content) {
  splits.erase(std::remove_if(splits.begin(), splits.end(),
                              [&](const Split& split) { return split.kind == kind; }),
               splits.end());
  if (!content.empty()) splits.push_back({kind, {}, content});
}

GoldenCase read_case(const std::string& text) {
  GoldenCase golden;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) {
    if (line.rfind(mark, 0) == 0) {
      std::istringstream head(line.substr(mark.size()));
      Split split;
      head >> split.kind >> split.name;
      golden.splits.push_back(split);
    } else {
      (golden.splits.empty() ? golden.about : golden.splits.back().content) += line + "\n";
    }
  }
  return golden;
}

std::string write_case(const GoldenCase& golden) {
  std::string text = golden.about;
  for (const Split& split : golden.splits) {
    text += std::string(mark) + split.kind + (split.name.empty() ? "" : " " + split.name) + "\n";
    text += split.content;
    if (!split.content.empty() && split.content.back() != '\n') text += "\n";
  }
  return text;
}

std::vector<std::string> words_of(const std::string& command) {
  std::vector<std::string> words;
  bool quoted = false;
  bool begun = false;
  for (const char c : command) {
    const bool blank = !quoted && (c == ' ' || c == '\n');
    if (blank) {
      begun = false;
      continue;
    }
    if (!begun) words.emplace_back();
    begun = true;
    if (c == '"') {
      quoted = !quoted;
    } else {
      words.back() += c;
    }
  }
  return words;
}

Ran run_case(const GoldenCase& golden) {
  const TemporaryFolder inside;
  const TemporaryFolder beside;
  put_inputs(golden, inside.path());
  std::ofstream(beside.path() / "in", std::ios::binary) << golden.content_of("stdin");
  const std::vector<std::string> words = words_of(golden.content_of("command"));
  const pid_t child = fork();
  if (child < 0) throw std::runtime_error("no process");
  if (child == 0) become_program(inside.path(), beside.path(), words);
  int status = 0;
  if (waitpid(child, &status, 0) != child) throw std::runtime_error("lost the process");
  constexpr int by_signal = 128;
  Ran ran;
  ran.out = slurp(beside.path() / "out");
  ran.err = slurp(beside.path() / "err");
  ran.exit = WIFEXITED(status) ? WEXITSTATUS(status) : by_signal + WTERMSIG(status);
  return ran;
}

}  // namespace maslin::test
