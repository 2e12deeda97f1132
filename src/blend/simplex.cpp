// SPDX-License-Identifier: Apache-2.0
#include "blend/simplex.hpp"

#include <ClpSimplex.hpp>
#include <CoinError.hpp>
#include <CoinPackedMatrix.hpp>
#include <algorithm>
#include <cmath>

namespace maslin::blend {
namespace {

constexpr double fine_tolerance = 1e-9;
constexpr double coarse_tolerance = 1e-7;
constexpr int iteration_limit = 100000;

struct Bounds {
  std::vector<double> lower;
  std::vector<double> upper;
  bool crossed = false;

  // Two computations of the same bound may differ in the last digits: they meet in the middle.
  void add(double low, double high) {
    if (low > high) {
      const double size = std::max({1.0, std::abs(low), std::abs(high)});
      if (low - high > fine_tolerance * size) crossed = true;
      low = high = low / 2 + high / 2;
    }
    lower.push_back(std::max(low, -COIN_DBL_MAX));
    upper.push_back(std::min(high, COIN_DBL_MAX));
  }
};

CoinPackedMatrix matrix_of(const LinearProgram& program) {
  std::vector<int> rows;
  std::vector<int> columns;
  std::vector<double> values;
  for (std::size_t row = 0; row < program.rows.size(); ++row) {
    for (const Term& term : program.rows[row].terms) {
      if (term.coefficient == 0) continue;
      rows.push_back(static_cast<int>(row));
      columns.push_back(static_cast<int>(term.column));
      values.push_back(term.coefficient);
    }
  }
  CoinPackedMatrix matrix(true, rows.data(), columns.data(), values.data(),
                          static_cast<CoinBigIndex>(values.size()));
  matrix.setDimensions(static_cast<int>(program.rows.size()),
                       static_cast<int>(program.columns.size()));
  return matrix;
}

double nearer(double value, double lower, double upper) {
  return value - lower < upper - value ? lower : upper;
}

Status status_of(const ClpSimplex& model) {
  switch (model.status()) {
    case 0:
      return Status::optimal;
    case 1:
      return Status::infeasible;
    case 2:
      return Status::unbounded;
    default:
      return Status::stopped;
  }
}

// Optimal for the scaled programme, but not quite for ours (the library's codes 2, 3 and 4).
bool spoilt_by_scaling(const ClpSimplex& model) {
  return model.status() == 0 && model.secondaryStatus() >= 2 && model.secondaryStatus() <= 4;
}

}  // namespace

Simplex::Simplex(const LinearProgram& program, Tolerance tolerance)
    : model_(std::make_unique<ClpSimplex>()) {
  Bounds columns;
  for (const Column& column : program.columns) columns.add(column.lower, column.upper);
  Bounds rows;
  for (const Row& row : program.rows) rows.add(row.lower, row.upper);
  crossed_ = columns.crossed || rows.crossed;
  const std::vector<double> no_costs(program.columns.size(), 0);
  model_->setLogLevel(0);
  model_->loadProblem(matrix_of(program), columns.lower.data(), columns.upper.data(),
                      no_costs.data(), rows.lower.data(), rows.upper.data());
  model_->setPrimalTolerance(tolerance == Tolerance::fine ? fine_tolerance : coarse_tolerance);
  model_->setDualTolerance(fine_tolerance);
  model_->setMaximumIterations(iteration_limit);
}

Simplex::~Simplex() = default;

Status Simplex::run(Method method) {
  const auto attempt = [&] { return method == Method::dual ? model_->dual() : model_->primal(); };
  try {
    attempt();
    if (status_of(*model_) == Status::stopped || spoilt_by_scaling(*model_)) {
      model_->scaling(0);
      model_->allSlackBasis(true);
      attempt();
    }
    return status_of(*model_);
  } catch (const CoinError&) {
    return Status::stopped;
  }
}

Status Simplex::find_feasible() {
  if (crossed_) return Status::infeasible;
  return run(Method::dual);
}

Status Simplex::minimise(const std::vector<double>& costs) {
  for (std::size_t column = 0; column < costs.size(); ++column) {
    model_->setObjectiveCoefficient(static_cast<int>(column), costs[column]);
  }
  return run(Method::primal);
}

double Simplex::value(ColumnIndex column) const { return model_->primalColumnSolution()[column]; }

double Simplex::activity(RowIndex row) const { return model_->primalRowSolution()[row]; }

bool Simplex::column_is_basic(ColumnIndex column) const {
  return model_->getColumnStatus(static_cast<int>(column)) == ClpSimplex::basic;
}

bool Simplex::row_is_basic(RowIndex row) const {
  return model_->getRowStatus(static_cast<int>(row)) == ClpSimplex::basic;
}

double Simplex::column_price(ColumnIndex column) const {
  return model_->dualColumnSolution()[column];
}

double Simplex::row_price(RowIndex row) const { return model_->dualRowSolution()[row]; }

void Simplex::hold_column(ColumnIndex column) {
  const double at =
      nearer(value(column), model_->columnLower()[column], model_->columnUpper()[column]);
  model_->setColumnBounds(static_cast<int>(column), at, at);
}

void Simplex::hold_row(RowIndex row) {
  const double at = nearer(activity(row), model_->rowLower()[row], model_->rowUpper()[row]);
  model_->setRowBounds(static_cast<int>(row), at, at);
}

}  // namespace maslin::blend
