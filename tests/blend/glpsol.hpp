// SPDX-License-Identifier: Apache-2.0
// Runs GNU MathProg's solver beside ours. A missing program is a failed test, never a skipped one.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace maslin::blend::testing {

// A folder of its own, removed with all that is in it.
class TemporaryFolder {
 public:
  TemporaryFolder();
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  ~TemporaryFolder();

  std::string file(const std::string& name) const { return (path_ / name).string(); }

 private:
  std::filesystem::path path_;
};

// Throws std::runtime_error with a clear message when glpsol is not installed or does not run.
void run_glpsol(const std::vector<std::string>& arguments);

std::string read_file(const std::string& path);

// What the file of `--output` says behind "Status:".
std::string status_of_output(const std::string& path);

// What the file of `--write` says, in full precision.
struct WrittenSolution {
  bool optimal = false;
  double objective = 0;
};
WrittenSolution read_written_solution(const std::string& path);

}  // namespace maslin::blend::testing
