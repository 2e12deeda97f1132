// SPDX-License-Identifier: Apache-2.0
#include "blend/elastic.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace maslin::blend {
namespace {

// Violations below this are the library's tolerance, not something missing.
constexpr double no_violation = 1e-9;

}  // namespace

ElasticModel::ElasticModel(const LinearProgram& program) {
  for (const Column& column : program.columns) {
    if (column.statement == background) {
      program_.add_column({.name = {}, .lower = column.lower, .upper = column.upper});
    } else {
      const double floor = column.lower >= 0 ? 0 : -infinity;
      program_.add_column({.name = {}, .lower = floor, .upper = infinity});
    }
  }
  for (std::size_t index = 0; index < program.columns.size(); ++index) {
    if (program.columns[index].statement != background) add_column(program.columns[index], index);
  }
  for (std::size_t index = 0; index < program.rows.size(); ++index) {
    const Row& row = program.rows[index];
    if (row.statement == background) {
      program_.add_row({.name = {}, .lower = row.lower, .upper = row.upper, .terms = row.terms});
    } else {
      add_row(row, index);
    }
  }
  simplex_.emplace(program_);
}

void ElasticModel::add_column(const Column& column, std::size_t index) {
  statements_.insert(column.statement);
  ElasticBound bound{
      ElasticBound::Of::column, ElasticBound::Side::lower, index, column.statement, 1, 0, 0};
  const std::vector<Term> terms{{static_cast<ColumnIndex>(index), 1}};
  // A lower bound of zero is no demand: the column is an amount and keeps it.
  if (column.lower != 0 && column.lower > -infinity) add_bound(bound, column.lower, terms);
  bound.side = ElasticBound::Side::upper;
  if (column.upper < infinity) add_bound(bound, column.upper, terms);
}

void ElasticModel::add_row(const Row& row, std::size_t index) {
  statements_.insert(row.statement);
  ElasticBound bound{ElasticBound::Of::row,
                     ElasticBound::Side::lower,
                     index,
                     row.statement,
                     largest_coefficient(row.terms),
                     0,
                     0};
  if (row.lower > -infinity) add_bound(bound, row.lower, row.terms);
  bound.side = ElasticBound::Side::upper;
  if (row.upper < infinity) add_bound(bound, row.upper, row.terms);
}

// Each side is a row of its own, so that bounds that cross each other give way as any others do.
void ElasticModel::add_bound(ElasticBound bound, double at, std::vector<Term> terms) {
  const bool lower = bound.side == ElasticBound::Side::lower;
  bound.slack = program_.add_column({});
  terms.push_back({bound.slack, lower ? bound.scale : -bound.scale});
  Row row{.name = {}, .terms = std::move(terms)};
  (lower ? row.lower : row.upper) = at;
  bound.row = program_.add_row(std::move(row));
  bounds_.push_back(bound);
}

Status ElasticModel::start() { return simplex_->find_feasible(); }

std::optional<double> ElasticModel::measure() { return measure(statements_); }

std::optional<double> ElasticModel::measure(const std::set<Statement>& held) {
  std::vector<double> costs(program_.columns.size(), 0);
  for (const ElasticBound& bound : bounds_) {
    if (held.count(bound.statement) != 0) costs[bound.slack] = 1;
  }
  if (simplex_->minimise(costs) != Status::optimal) return std::nullopt;
  double total = 0;
  for (const ElasticBound& bound : bounds_) {
    if (costs[bound.slack] > 0) total += std::max(0.0, simplex_->value(bound.slack));
  }
  return total;
}

std::set<Statement> ElasticModel::proof(const std::set<Statement>& held) const {
  constexpr double no_price = 1e-9;
  std::set<Statement> found;
  for (const ElasticBound& bound : bounds_) {
    const double price = std::abs(simplex_->row_price(bound.row)) * bound.scale;
    if (price > no_price && held.count(bound.statement) != 0) found.insert(bound.statement);
  }
  return found;
}

Elastic relax(const LinearProgram& program) {
  Elastic elastic;
  if (!well_formed(program)) return elastic;
  ElasticModel model(program);
  elastic.status = model.start();
  if (elastic.status != Status::optimal) return elastic;
  const std::optional<double> total = model.measure();
  if (!total) {
    elastic.status = Status::stopped;
    return elastic;
  }
  elastic.total = *total > no_violation ? *total : 0;
  for (ColumnIndex column = 0; column < program.columns.size(); ++column) {
    elastic.columns.push_back(model.value(column));
  }
  elastic.row_violation.assign(program.rows.size(), 0);
  elastic.column_violation.assign(program.columns.size(), 0);
  for (const ElasticBound& bound : model.bounds()) {
    const double missing = model.value(bound.slack) * bound.scale;
    double& violation = bound.of == ElasticBound::Of::row ? elastic.row_violation[bound.index]
                                                          : elastic.column_violation[bound.index];
    if (missing <= no_violation || missing <= std::abs(violation)) continue;
    violation = bound.side == ElasticBound::Side::upper ? missing : -missing;
  }
  return elastic;
}

}  // namespace maslin::blend
