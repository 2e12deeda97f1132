// SPDX-License-Identifier: Apache-2.0
// A linear programme as plain values: columns, rows, objectives. It knows nothing of produce.
#pragma once

#include <cstdint>
#include <limits>
#include <string>
#include <vector>

namespace maslin::blend {

inline constexpr double infinity = std::numeric_limits<double>::infinity();

using ColumnIndex = std::uint32_t;
using RowIndex = std::uint32_t;

// What a row or a column bound belongs to when a conflict is explained: all rows of one statement
// are kept or dropped together. `background` holds always (balances) and is never a reason.
using Statement = std::uint32_t;
inline constexpr Statement background = 0xffffffff;

struct Column {
  std::string name;
  double lower = 0;
  double upper = infinity;
  // Whose bound this is, where a bound can be a reason. Without its statement a column loses its
  // bounds, but one whose lower bound is not negative stays an amount: it never goes below zero.
  Statement statement = background;
};

struct Term {
  ColumnIndex column;
  double coefficient;
};

struct Row {
  std::string name;
  double lower = -infinity;
  double upper = infinity;
  std::vector<Term> terms;  // each column at most once
  Statement statement = background;
};

enum class Direction : std::uint8_t { minimise, maximise };

struct Objective {
  std::string name;
  Direction direction = Direction::minimise;
  std::vector<Term> terms;
};

struct LinearProgram {
  std::vector<Column> columns;
  std::vector<Row> rows;
  std::vector<Objective> objectives;  // one after another, each fixed before the next

  ColumnIndex add_column(Column column);
  RowIndex add_row(Row row);
};

// Every coefficient a number, every bound a number or an infinity on its own side, every index in
// range, no column twice in a row. (An objective may name a column twice: its terms add up.)
bool well_formed(const LinearProgram& program);

// The sum of the terms at these values of the columns.
double value_of(const std::vector<Term>& terms, const std::vector<double>& columns);

// The greatest |coefficient| of the terms; 1 when all are zero, so that it can always divide.
double largest_coefficient(const std::vector<Term>& terms);

}  // namespace maslin::blend
