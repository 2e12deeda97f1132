// SPDX-License-Identifier: Apache-2.0
// One linear programme held by the library between solves, so that each solve starts from the
// basis of the one before. Only simplex.cpp sees the library. For the solver's own files.
#pragma once

#include <memory>
#include <vector>

#include "blend/linear_program.hpp"
#include "blend/solver.hpp"

class ClpSimplex;

namespace maslin::blend {

class Simplex {
 public:
  // How far bounds and prices may be missed. `fine` is far below anything weighed in a kitchen and
  // far above the noise of arithmetic on kilograms; `coarse` is for programmes known to have a
  // solution but for such noise.
  enum class Tolerance : unsigned char { fine, coarse };

  // Loads columns and rows of a well-formed programme; its objectives are not read.
  explicit Simplex(const LinearProgram& program, Tolerance tolerance = Tolerance::fine);
  Simplex(const Simplex&) = delete;
  Simplex& operator=(const Simplex&) = delete;
  ~Simplex();

  // Any point that keeps all bounds. `infeasible` here is the library's word, at its tolerance.
  Status find_feasible();
  // The least sum of cost times value. To be called after find_feasible() said `optimal`.
  Status minimise(const std::vector<double>& costs);

  double value(ColumnIndex column) const;
  double activity(RowIndex row) const;
  bool column_is_basic(ColumnIndex column) const;
  bool row_is_basic(RowIndex row) const;
  // How much the minimum rises for one unit more of the active bound.
  double column_price(ColumnIndex column) const;
  double row_price(RowIndex row) const;

  // Fixes a column or row at whichever of its bounds it stands at.
  void hold_column(ColumnIndex column);
  void hold_row(RowIndex row);

 private:
  enum class Method : unsigned char { dual, primal };
  Status run(Method method);

  std::unique_ptr<ClpSimplex> model_;
  bool crossed_ = false;  // some lower bound lies above its upper bound
};

}  // namespace maslin::blend
