// SPDX-License-Identifier: Apache-2.0
#include "tests/blend/lp_text.hpp"

#include <fmt/format.h>

#include <cmath>

namespace maslin::blend::testing {
namespace {

std::string expression(const std::vector<Term>& terms) {
  std::string text;
  for (const Term& term : terms) {
    text += fmt::format(" {} {:.17g} x{}\n", term.coefficient < 0 ? '-' : '+',
                        std::abs(term.coefficient), term.column);
  }
  return text.empty() ? " 0 x0\n" : text;
}

}  // namespace

std::string lp_text(const LinearProgram& program, const Objective& objective) {
  std::string text = objective.direction == Direction::minimise ? "Minimize\n" : "Maximize\n";
  text += " goal:" + expression(objective.terms) + "Subject To\n";
  for (const Row& row : program.rows) {
    const std::string sum = expression(row.terms);
    if (row.lower == row.upper) {
      text += fmt::format(" {} = {:.17g}\n", sum, row.lower);
      continue;
    }
    if (row.lower > -infinity) text += fmt::format(" {} >= {:.17g}\n", sum, row.lower);
    if (row.upper < infinity) text += fmt::format(" {} <= {:.17g}\n", sum, row.upper);
  }
  text += "Bounds\n";
  for (std::size_t index = 0; index < program.columns.size(); ++index) {
    const Column& column = program.columns[index];
    text += fmt::format(" x{} >= {:.17g}\n", index, column.lower);
    if (column.upper < infinity) text += fmt::format(" x{} <= {:.17g}\n", index, column.upper);
  }
  return text + "End\n";
}

}  // namespace maslin::blend::testing
