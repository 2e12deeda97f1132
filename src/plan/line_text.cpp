// SPDX-License-Identifier: Apache-2.0
#include "plan/line_text.hpp"

#include <array>
#include <sstream>

#include "plan/weights.hpp"

namespace maslin::plan {
namespace {

constexpr std::array<std::string_view, 14> reserved = {
    "of", "for",  "by",    "in",      "as",    "is",   "at",
    "to", "from", "where", "refines", "until", "only", "version"};

}  // namespace

std::string written_name(const std::string& name) {
  std::istringstream words(name);
  for (std::string word; words >> word;) {
    for (const std::string_view each : reserved) {
      if (word == each) return '"' + name + '"';
    }
  }
  return name;
}

std::string amount_text(const language::Program& program, const language::Line& line) {
  std::string text = weight_text(*line.weight);
  // A counted line has its name inside: `3 onions`.
  if (line.counted) text = written_name(program[line.ingredient].name) + " " + text;
  switch (line.basis) {
    case language::WeighedAs::gross:
      return text + " gross";
    case language::WeighedAs::drained:
      return text + " drained";
    case language::WeighedAs::prepared:
      break;
  }
  return program[line.ingredient].edible ? text + " prepared" : text;
}

Edit new_lines_edit(const language::Basket& basket, const std::vector<std::string>& lines) {
  // A block closed on a line of its own gets a line; `{ a; b }` gets another statement.
  std::string text;
  for (const std::string& line : lines) {
    if (basket.close_on_own_line) {
      text += "  " + line + "\n";
    } else {
      text += (text.empty() && basket.lines.empty() ? " " : "; ") + line;
    }
  }
  return {basket.close, basket.close_on_own_line ? text : text + " "};
}

}  // namespace maslin::plan
