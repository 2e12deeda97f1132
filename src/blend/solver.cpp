// SPDX-License-Identifier: Apache-2.0
// Objectives one after another on one warm programme.
#include "blend/solver.hpp"

#include <algorithm>
#include <cmath>

#include "blend/simplex.hpp"

namespace maslin::blend {
namespace {

// A price this small, beside a largest cost of one, is noise.
constexpr double no_price = 1e-9;
// What the answer may miss a bound or an earlier optimum by, relative to numbers above one.
constexpr double accepted_error = 1e-6;

double size_of(double value) { return std::max(1.0, std::abs(value)); }

// Costs to minimise, divided by the largest of them so that one tolerance suits every objective.
struct Costs {
  std::vector<double> each;
  double scale = 0;  // 0 when the objective is zero everywhere
};

Costs costs_of(const Objective& objective, std::size_t columns) {
  Costs costs;
  costs.each.assign(columns, 0);
  const double sign = objective.direction == Direction::minimise ? 1 : -1;
  for (const Term& term : objective.terms) costs.each[term.column] += sign * term.coefficient;
  for (const double cost : costs.each) costs.scale = std::max(costs.scale, std::abs(cost));
  if (costs.scale > 0) {
    for (double& cost : costs.each) cost /= costs.scale;
  }
  return costs;
}

class Stages {
 public:
  Stages(const LinearProgram& program, Simplex::Tolerance tolerance)
      : program_(program), simplex_(program, tolerance) {
    solution_.first_row_prices.assign(program.rows.size(), 0);
    solution_.first_column_prices.assign(program.columns.size(), 0);
  }

  Solution run() {
    const Status feasible = simplex_.find_feasible();
    if (feasible != Status::optimal) return failed(feasible);
    std::vector<double> optima;
    for (std::size_t index = 0; index < program_.objectives.size(); ++index) {
      const Status status = run_stage(index);
      // A feasible programme that turns infeasible is trouble, not an answer.
      if (status == Status::infeasible) return failed(Status::stopped);
      if (status != Status::optimal) return failed(status);
      read_columns();
      optima.push_back(value_of(program_.objectives[index].terms, solution_.columns));
    }
    read_columns();
    return finish(optima);
  }

 private:
  static Solution failed(Status status) {
    Solution solution;
    solution.status = status;
    return solution;
  }

  Status run_stage(std::size_t index) {
    const Costs costs = costs_of(program_.objectives[index], program_.columns.size());
    if (costs.scale == 0) return Status::optimal;
    const Status status = simplex_.minimise(costs.each);
    if (status != Status::optimal) return status;
    if (index == 0) read_prices(costs.scale);
    if (index + 1 < program_.objectives.size()) hold_optimum();
    return status;
  }

  bool column_limits(ColumnIndex column) const {
    return !simplex_.column_is_basic(column) && std::abs(simplex_.column_price(column)) > no_price;
  }

  // A row in grams has a price a thousandth of the same row in kilograms.
  bool row_limits(RowIndex row) const {
    const double scale = largest_coefficient(program_.rows[row].terms);
    return !simplex_.row_is_basic(row) && std::abs(simplex_.row_price(row)) * scale > no_price;
  }

  // Complementary slackness: the points that are optimal are just those that stay at every bound
  // with a price.
  void hold_optimum() {
    std::vector<ColumnIndex> columns;
    std::vector<RowIndex> rows;
    for (ColumnIndex column = 0; column < program_.columns.size(); ++column) {
      if (column_limits(column)) columns.push_back(column);
    }
    for (RowIndex row = 0; row < program_.rows.size(); ++row) {
      if (row_limits(row)) rows.push_back(row);
    }
    for (const ColumnIndex column : columns) simplex_.hold_column(column);
    for (const RowIndex row : rows) simplex_.hold_row(row);
  }

  // The minimum of the costs rises with the price; the objective then gains the opposite.
  void read_prices(double scale) {
    for (ColumnIndex column = 0; column < program_.columns.size(); ++column) {
      if (!column_limits(column)) continue;
      solution_.first_column_prices[column] = -simplex_.column_price(column) * scale;
    }
    for (RowIndex row = 0; row < program_.rows.size(); ++row) {
      if (row_limits(row)) solution_.first_row_prices[row] = -simplex_.row_price(row) * scale;
    }
  }

  // Values that arithmetic left a hair beside a bound are put on it.
  void read_columns() {
    solution_.columns.clear();
    for (ColumnIndex index = 0; index < program_.columns.size(); ++index) {
      const Column& column = program_.columns[index];
      double value = simplex_.value(index);
      for (const double bound : {column.lower, column.upper}) {
        if (std::isinf(bound)) continue;
        if (std::abs(value - bound) <= 1e-12 * size_of(bound)) value = bound;
      }
      value = std::min(std::max(value, column.lower), column.upper);
      solution_.columns.push_back(value + 0.0);  // no negative zero
    }
  }

  bool keeps_bounds() const {
    for (std::size_t index = 0; index < program_.rows.size(); ++index) {
      const Row& row = program_.rows[index];
      const double activity = solution_.rows[index];
      const double error = accepted_error * largest_coefficient(row.terms) * size_of(activity);
      if (!(activity >= row.lower - error && activity <= row.upper + error)) return false;
    }
    return true;
  }

  bool keeps_optima(const std::vector<double>& optima) const {
    for (std::size_t index = 0; index < optima.size(); ++index) {
      const double error = std::abs(solution_.objective_values[index] - optima[index]);
      const double scale = largest_coefficient(program_.objectives[index].terms);
      if (!(error <= accepted_error * std::max(scale, std::abs(optima[index])))) return false;
    }
    return true;
  }

  Solution finish(const std::vector<double>& optima) {
    for (const Row& row : program_.rows) {
      solution_.rows.push_back(value_of(row.terms, solution_.columns) + 0.0);
    }
    for (const Objective& objective : program_.objectives) {
      solution_.objective_values.push_back(value_of(objective.terms, solution_.columns) + 0.0);
    }
    if (!keeps_bounds() || !keeps_optima(optima)) return failed(Status::stopped);
    solution_.status = Status::optimal;
    return std::move(solution_);
  }

  const LinearProgram& program_;
  Simplex simplex_;
  Solution solution_;
};

// The programme with its bounds moved by what is missing, and a little air.
LinearProgram widened(LinearProgram program, const Elastic& elastic) {
  const auto widen = [](double& lower, double& upper, double violation) {
    if (violation == 0) return;
    const double air = 1e-9 * size_of(violation > 0 ? upper : lower);
    if (violation > 0) upper += violation + air;
    if (violation < 0) lower += violation - air;
  };
  for (std::size_t index = 0; index < program.rows.size(); ++index) {
    Row& row = program.rows[index];
    widen(row.lower, row.upper, elastic.row_violation[index]);
  }
  for (std::size_t index = 0; index < program.columns.size(); ++index) {
    Column& column = program.columns[index];
    widen(column.lower, column.upper, elastic.column_violation[index]);
  }
  return program;
}

Solution with_status(Status status) {
  Solution solution;
  solution.status = status;
  return solution;
}

// The library says `infeasible` at its own tolerance; what counts is how much is missing.
Solution settle(const LinearProgram& program) {
  const Elastic elastic = relax(program);
  if (elastic.status != Status::optimal) return with_status(elastic.status);
  if (elastic.total > infeasible_above) return with_status(Status::infeasible);
  const LinearProgram wider = widened(program, elastic);
  Solution solution = Stages(wider, Simplex::Tolerance::coarse).run();
  if (solution.status == Status::infeasible) solution.status = Status::stopped;
  return solution;
}

}  // namespace

Solution try_to_solve(const LinearProgram& program) {
  if (!well_formed(program)) return with_status(Status::stopped);
  return Stages(program, Simplex::Tolerance::fine).run();
}

Solution solve(const LinearProgram& program) {
  Solution solution = try_to_solve(program);
  if (solution.status == Status::infeasible) return settle(program);
  return solution;
}

}  // namespace maslin::blend
