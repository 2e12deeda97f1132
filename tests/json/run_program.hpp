// SPDX-License-Identifier: Apache-2.0
// Runs programs as a person would, for the tests of what they print.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace maslin::json_test {

struct Ran {
  int exit = -1;
  std::string out;
  std::string err;
};

// A folder that is gone when the test is over.
class Folder {
 public:
  Folder();
  ~Folder();
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;

  const std::filesystem::path& path() const { return path_; }
  void write(const std::string& name, const std::string& text) const;
  std::string read(const std::string& name) const;
  // The real program, run in this folder.
  Ran maslin(const std::vector<std::string>& arguments, const std::string& input = {}) const;
  // Any program found on the path.
  Ran run(const std::string& program, const std::vector<std::string>& arguments,
          const std::string& input = {}) const;

 private:
  std::filesystem::path path_;
};

// One that plans.
extern const std::string small_framework;
extern const std::string small_basket;

}  // namespace maslin::json_test
