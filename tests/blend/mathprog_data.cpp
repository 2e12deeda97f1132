// SPDX-License-Identifier: Apache-2.0
#include "tests/blend/mathprog_data.hpp"

#include <algorithm>
#include <sstream>
#include <stdexcept>

#include "tests/blend/glpsol.hpp"

namespace maslin::blend::testing {
namespace {

using Words = std::vector<std::string>;

// Statements end with semicolons; each becomes its words.
std::vector<Words> statements_of(const std::string& text) {
  std::vector<Words> statements;
  std::istringstream pieces(text);
  std::string piece;
  while (std::getline(pieces, piece, ';')) {
    std::istringstream stream(piece);
    Words words;
    std::string word;
    while (stream >> word) words.push_back(word);
    if (!words.empty()) statements.push_back(words);
  }
  return statements;
}

}  // namespace

MathprogData MathprogData::read(const std::string& path) {
  MathprogData data;
  for (const Words& words : statements_of(read_file(path))) {
    if (words[0] == "data" || words[0] == "end") continue;
    if (words.size() >= 3 && words[0] == "set" && words[2] == ":=") {
      data.read_set(words);
    } else if (words.size() == 4 && words[0] == "param" && words[2] == ":=") {
      data.read_parameter(words);
    } else if (words.size() > 3 && words[0] == "param" && words[1] == ":") {
      data.read_table(words);
    } else {
      throw std::runtime_error("not understood in " + path + ": " + words[0]);
    }
  }
  return data;
}

void MathprogData::read_set(const Words& words) {
  sets_[words[1]] = Words(words.begin() + 3, words.end());
}

void MathprogData::read_parameter(const Words& words) { parameters_[words[1]][""] = words[3]; }

// param : NAMES := KEY VALUES KEY VALUES ...; shares are keyed by framework and class, of which the
// class alone tells them apart here.
void MathprogData::read_table(const Words& words) {
  const auto assign = std::find(words.begin(), words.end(), ":=");
  if (assign == words.end()) throw std::runtime_error("a table without :=");
  const Words names(words.begin() + 2, assign);
  const std::ptrdiff_t keys = names[0] == "lo" ? 2 : 1;
  const std::ptrdiff_t width = keys + static_cast<std::ptrdiff_t>(names.size());
  if ((words.end() - assign - 1) % width != 0) throw std::runtime_error("a table out of step");
  for (auto at = assign + 1; at != words.end(); at += width) {
    const std::string& key = *(at + keys - 1);
    auto value = at + keys;
    for (const std::string& name : names) parameters_[name][key] = *value++;
  }
}

const Words& MathprogData::set(const std::string& name) const { return sets_.at(name); }

double MathprogData::number(const std::string& parameter) const { return number(parameter, ""); }

double MathprogData::number(const std::string& parameter, const std::string& key) const {
  return std::stod(word(parameter, key));
}

const std::string& MathprogData::word(const std::string& parameter, const std::string& key) const {
  return parameters_.at(parameter).at(key);
}

}  // namespace maslin::blend::testing
