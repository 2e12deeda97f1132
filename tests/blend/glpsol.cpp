// SPDX-License-Identifier: Apache-2.0
#include "tests/blend/glpsol.hpp"

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <system_error>

namespace maslin::blend::testing {

TemporaryFolder::TemporaryFolder() {
  std::string name = (std::filesystem::temp_directory_path() / "maslin-blend-XXXXXX").string();
  if (mkdtemp(name.data()) == nullptr) {
    throw std::system_error(errno, std::generic_category(), "cannot make a temporary folder");
  }
  path_ = name;
}

TemporaryFolder::~TemporaryFolder() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

void run_glpsol(const std::vector<std::string>& arguments) {
  std::vector<std::string> words{"glpsol"};
  words.insert(words.end(), arguments.begin(), arguments.end());
  std::vector<char*> pointers;
  pointers.reserve(words.size() + 1);
  for (std::string& word : words) pointers.push_back(word.data());
  pointers.push_back(nullptr);

  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addopen(&actions, 1, "/dev/null", O_WRONLY, 0);
  pid_t child = 0;
  const int error = posix_spawnp(&child, pointers[0], &actions, nullptr, pointers.data(), environ);
  posix_spawn_file_actions_destroy(&actions);
  if (error != 0) {
    throw std::runtime_error(
        "this test needs glpsol (Debian: apt-get install glpk-utils), and it cannot be started: " +
        std::generic_category().message(error));
  }
  int status = 0;
  while (waitpid(child, &status, 0) < 0) {
    if (errno != EINTR) throw std::runtime_error("lost sight of glpsol");
  }
  if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) {
    throw std::runtime_error("glpsol refused: " + arguments.at(1));
  }
}

std::string read_file(const std::string& path) {
  std::ifstream stream(path);
  if (!stream) throw std::runtime_error("cannot read " + path);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

std::string status_of_output(const std::string& path) {
  std::istringstream lines(read_file(path));
  const std::string label = "Status:";
  std::string line;
  while (std::getline(lines, line)) {
    if (line.compare(0, label.size(), label) != 0) continue;
    const std::size_t start = line.find_first_not_of(' ', label.size());
    return start == std::string::npos ? std::string() : line.substr(start);
  }
  throw std::runtime_error("no status in " + path);
}

WrittenSolution read_written_solution(const std::string& path) {
  std::istringstream lines(read_file(path));
  std::string line;
  while (std::getline(lines, line)) {
    if (line.compare(0, 6, "s bas ") != 0) continue;
    // s bas ROWS COLUMNS PRIMAL DUAL OBJECTIVE, where `f` says feasible
    std::istringstream words(line.substr(6));
    int rows = 0;
    int columns = 0;
    char primal = 0;
    char dual = 0;
    WrittenSolution solution;
    words >> rows >> columns >> primal >> dual >> solution.objective;
    if (!words) throw std::runtime_error("cannot understand " + path);
    solution.optimal = primal == 'f' && dual == 'f';
    return solution;
  }
  throw std::runtime_error("no solution in " + path);
}

}  // namespace maslin::blend::testing
