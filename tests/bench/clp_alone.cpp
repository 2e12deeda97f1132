// SPDX-License-Identifier: Apache-2.0
// CLP and nothing else on the matrix that a plan begins with: what the solver alone costs. Reads
// the file that `maslin_bench matrix` writes, and prints the optimum.
#include <ClpSimplex.hpp>
#include <CoinPackedMatrix.hpp>
#include <cstdio>
#include <fstream>
#include <vector>

namespace {

struct Problem {
  std::vector<double> column_lower, column_upper, cost, row_lower, row_upper;
  std::vector<int> rows, columns;
  std::vector<double> coefficients;
  double direction = 1;
};

bool read(const char* path, Problem& problem) {
  std::ifstream in(path);
  int columns = 0;
  int rows = 0;
  in >> columns >> rows >> problem.direction;
  for (int column = 0; column < columns; ++column) {
    double lower = 0, upper = 0, cost = 0;
    in >> lower >> upper >> cost;
    problem.column_lower.push_back(lower);
    problem.column_upper.push_back(upper);
    problem.cost.push_back(cost);
  }
  for (int row = 0; row < rows; ++row) {
    double lower = 0, upper = 0;
    int terms = 0;
    in >> lower >> upper >> terms;
    problem.row_lower.push_back(lower);
    problem.row_upper.push_back(upper);
    for (int term = 0; term < terms; ++term) {
      int column = 0;
      double coefficient = 0;
      in >> column >> coefficient;
      problem.rows.push_back(row);
      problem.columns.push_back(column);
      problem.coefficients.push_back(coefficient);
    }
  }
  return static_cast<bool>(in);
}

}  // namespace

int main(int count, char** words) {
  Problem problem;
  if (count != 2 || !read(words[1], problem)) {
    std::fputs("usage: clp_alone MATRIX\n", stderr);
    return 2;
  }
  const CoinPackedMatrix matrix(false, problem.rows.data(), problem.columns.data(),
                                problem.coefficients.data(),
                                static_cast<CoinBigIndex>(problem.coefficients.size()));
  ClpSimplex model;
  model.setLogLevel(0);
  model.loadProblem(matrix, problem.column_lower.data(), problem.column_upper.data(),
                    problem.cost.data(), problem.row_lower.data(), problem.row_upper.data());
  model.setOptimizationDirection(problem.direction);
  model.dual();
  if (model.status() != 0) return 1;
  std::printf("%.12g\n", model.objectiveValue());
  return 0;
}
