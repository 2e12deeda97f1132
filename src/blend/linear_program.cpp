// SPDX-License-Identifier: Apache-2.0
#include "blend/linear_program.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace maslin::blend {
namespace {

// Comparisons with not-a-number are false, so it is refused without being named.
bool bounds_well_formed(double lower, double upper) {
  return lower < infinity && upper > -infinity;
}

bool terms_well_formed(const std::vector<Term>& terms, std::size_t columns) {
  return std::all_of(terms.begin(), terms.end(), [columns](const Term& term) {
    return term.column < columns && std::isfinite(term.coefficient);
  });
}

bool names_a_column_twice(const std::vector<Term>& terms) {
  std::vector<ColumnIndex> columns;
  columns.reserve(terms.size());
  for (const Term& term : terms) columns.push_back(term.column);
  std::sort(columns.begin(), columns.end());
  return std::adjacent_find(columns.begin(), columns.end()) != columns.end();
}

}  // namespace

ColumnIndex LinearProgram::add_column(Column column) {
  columns.push_back(std::move(column));
  return static_cast<ColumnIndex>(columns.size() - 1);
}

RowIndex LinearProgram::add_row(Row row) {
  rows.push_back(std::move(row));
  return static_cast<RowIndex>(rows.size() - 1);
}

bool well_formed(const LinearProgram& program) {
  const std::size_t count = program.columns.size();
  const auto column_ok = [](const Column& column) {
    return bounds_well_formed(column.lower, column.upper);
  };
  const auto row_ok = [count](const Row& row) {
    return bounds_well_formed(row.lower, row.upper) && terms_well_formed(row.terms, count) &&
           !names_a_column_twice(row.terms);
  };
  const auto objective_ok = [count](const Objective& objective) {
    return terms_well_formed(objective.terms, count);
  };
  return std::all_of(program.columns.begin(), program.columns.end(), column_ok) &&
         std::all_of(program.rows.begin(), program.rows.end(), row_ok) &&
         std::all_of(program.objectives.begin(), program.objectives.end(), objective_ok);
}

double value_of(const std::vector<Term>& terms, const std::vector<double>& columns) {
  double sum = 0;
  for (const Term& term : terms) sum += term.coefficient * columns[term.column];
  return sum;
}

double largest_coefficient(const std::vector<Term>& terms) {
  double largest = 0;
  for (const Term& term : terms) largest = std::max(largest, std::abs(term.coefficient));
  return largest > 0 ? largest : 1;
}

}  // namespace maslin::blend
