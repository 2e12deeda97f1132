// SPDX-License-Identifier: Apache-2.0
// Reads the part of MathProg's data language that tests/blend/*.dat use.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace maslin::blend::testing {

class MathprogData {
 public:
  // Throws std::runtime_error where the text is not understood.
  static MathprogData read(const std::string& path);

  const std::vector<std::string>& set(const std::string& name) const;
  double number(const std::string& parameter) const;
  double number(const std::string& parameter, const std::string& key) const;
  const std::string& word(const std::string& parameter, const std::string& key) const;

 private:
  void read_set(const std::vector<std::string>& words);
  void read_parameter(const std::vector<std::string>& words);
  void read_table(const std::vector<std::string>& words);

  std::map<std::string, std::vector<std::string>> sets_;
  std::map<std::string, std::map<std::string, std::string>> parameters_;  // by name, then key
};

}  // namespace maslin::blend::testing
