// SPDX-License-Identifier: Apache-2.0
// Short words to state small linear programmes with, for tests.
#pragma once

#include <gtest/gtest.h>

#include <random>
#include <utility>
#include <vector>

#include "blend/linear_program.hpp"

namespace maslin::blend::testing {

inline ColumnIndex column(LinearProgram& program, double lower = 0, double upper = infinity,
                          Statement statement = background) {
  return program.add_column({"", lower, upper, statement});
}

inline RowIndex row(LinearProgram& program, double lower, std::vector<Term> terms, double upper,
                    Statement statement = background) {
  return program.add_row({"", lower, upper, std::move(terms), statement});
}

inline void minimise(LinearProgram& program, std::vector<Term> terms) {
  program.objectives.push_back({"", Direction::minimise, std::move(terms)});
}

inline void maximise(LinearProgram& program, std::vector<Term> terms) {
  program.objectives.push_back({"", Direction::maximise, std::move(terms)});
}

inline void expect_near(const std::vector<double>& found, const std::vector<double>& wanted) {
  ASSERT_EQ(found.size(), wanted.size());
  for (std::size_t index = 0; index < wanted.size(); ++index) {
    EXPECT_NEAR(found[index], wanted[index], 1e-9) << "at " << index;
  }
}

// Small whole numbers make ties and degenerate corners common.
inline LinearProgram random_program(std::mt19937& random, int columns, int rows) {
  std::uniform_int_distribution<int> coefficient(-3, 5);
  std::uniform_int_distribution<int> bound(0, 12);
  std::uniform_int_distribution<int> kind(0, 3);
  LinearProgram program;
  Statement statement = 0;
  for (int index = 0; index < columns; ++index) {
    if (kind(random) == 0) {
      column(program);
    } else {
      column(program, 0, 1 + bound(random), statement++);
    }
  }
  for (int index = 0; index < rows; ++index) {
    std::vector<Term> terms;
    for (int each = 0; each < columns; ++each) {
      const int value = coefficient(random);
      if (value != 0) terms.push_back({static_cast<ColumnIndex>(each), double(value)});
    }
    const double at = 2.0 * bound(random);
    const int shape = kind(random);
    const double lower = shape == 0 ? -infinity : at;
    const double upper = shape == 1 ? infinity : shape == 2 ? at : at + 4;
    // Some statements own several rows.
    row(program, lower, terms, upper, index % 3 == 2 ? statement - 1 : statement++);
  }
  return program;
}

// 3x + 5y with x <= 4, 2y <= 12, 3x + 2y <= 18: worked by hand, best at (2, 6).
inline LinearProgram small_example() {
  LinearProgram program;
  const ColumnIndex x = column(program);
  const ColumnIndex y = column(program);
  row(program, -infinity, {{x, 1}}, 4);
  row(program, -infinity, {{y, 2}}, 12);
  row(program, -infinity, {{x, 3}, {y, 2}}, 18);
  maximise(program, {{x, 3}, {y, 5}});
  return program;
}

}  // namespace maslin::blend::testing
