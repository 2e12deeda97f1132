// SPDX-License-Identifier: Apache-2.0
// The one door to the linear-programming library. Deterministic: the same programme gives the same
// bits.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "blend/linear_program.hpp"

namespace maslin::blend {

// `stopped`: the library gave up (iteration limit, numerical trouble) or the programme is malformed
// (not a number, a column index out of range, bounds crossed by not-a-number); never a plan.
enum class Status : std::uint8_t { optimal, infeasible, unbounded, stopped };

struct Solution {
  Status status = Status::stopped;
  std::vector<double> columns;           // value of each column, when optimal
  std::vector<double> rows;              // activity of each row, when optimal
  std::vector<double> objective_values;  // of each objective in turn, when optimal
  // Shadow price of each row under the first objective: how much that objective would gain (rise
  // when maximised, fall when minimised) for one unit more of the row's active bound. Positive at
  // an upper bound, negative at a lower one, either at an equality; zero where the row does not
  // limit. Where several sets of prices are right (a degenerate optimum) this is one of them.
  std::vector<double> first_row_prices;
  std::vector<double> first_column_prices;  // the same for column bounds (reduced cost)
};

inline constexpr double infeasible_above = 1e-6;

// Solves the objectives in their order. After each, columns and rows whose reduced cost or price is
// not zero are fixed at their bound, so that a later objective cannot spoil an earlier one. With no
// objective any feasible point is returned. `infeasible` means that `relax` finds more than
// `infeasible_above`, or that the background alone has no solution; below that bounds give way by
// what is missing.
Solution solve(const LinearProgram& program);

// The same for trying something out: what is `infeasible` only by a hair stays so. Much quicker
// where most tries are infeasible.
Solution try_to_solve(const LinearProgram& program);

// How far the programme is from having a solution: the least sum of violations (each row's divided
// by the largest coefficient of the row) over rows and column bounds that belong to statements.
struct Elastic {
  Status status = Status::stopped;
  double total = 0;             // 0 when there is a solution (up to 1e-9)
  std::vector<double> columns;  // the values at the least violation
  std::vector<double>
      row_violation;  // signed: positive above the upper bound, negative below the lower
  std::vector<double> column_violation;
};
Elastic relax(const LinearProgram& program);

// A smallest set of statements that cannot hold together with the background: leaving out any one
// of them gives a solution. Empty when the programme has a solution or the background alone has
// none. `try_first` are dropped first where there is a choice (so they stay out of the answer
// where others explain it as well); statements not named are tried after them in ascending order.
std::vector<Statement> smallest_conflict(const LinearProgram& program,
                                         const std::vector<Statement>& try_first);

}  // namespace maslin::blend
