// SPDX-License-Identifier: Apache-2.0
// The programme with every bound of a statement made elastic: a slack takes up what is missing and
// the slacks together are least. For the solver's own files.
#pragma once

#include <cstddef>
#include <optional>
#include <set>
#include <vector>

#include "blend/simplex.hpp"

namespace maslin::blend {

// One bound that may give way, in the row of the elastic programme that states it.
struct ElasticBound {
  enum class Of : unsigned char { row, column };
  enum class Side : unsigned char { lower, upper };
  Of of;
  Side side;
  std::size_t index;  // of the row or column in the programme as given
  Statement statement;
  double scale;       // largest coefficient: the slack is the violation divided by it
  ColumnIndex slack;  // in the elastic programme
  RowIndex row;
};

class ElasticModel {
 public:
  explicit ElasticModel(const LinearProgram& program);

  // `optimal` when the background alone has a solution. First of all to be called.
  Status start();
  // The least violation with every statement held, or with these only; nothing when the library
  // stopped.
  std::optional<double> measure();
  std::optional<double> measure(const std::set<Statement>& held);
  // After measure(held): statements that alone need as much violation, a proof by the prices of
  // the elastic optimum (they are a ray of the programme without slacks).
  std::set<Statement> proof(const std::set<Statement>& held) const;

  const std::set<Statement>& statements() const { return statements_; }
  const std::vector<ElasticBound>& bounds() const { return bounds_; }
  double value(ColumnIndex column) const { return simplex_->value(column); }

 private:
  void add_column(const Column& column, std::size_t index);
  void add_row(const Row& row, std::size_t index);
  void add_bound(ElasticBound bound, double at, std::vector<Term> terms);

  LinearProgram program_;
  std::vector<ElasticBound> bounds_;
  std::set<Statement> statements_;
  std::optional<Simplex> simplex_;
};

}  // namespace maslin::blend
