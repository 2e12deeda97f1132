// SPDX-License-Identifier: Apache-2.0
// A share is a fraction of two sums, and not linear. Charnes and Cooper (1962): all amounts are
// divided by the whole, which becomes 1; one over the whole is a column of its own.
#include "plan/reach.hpp"

#include <cmath>

#include "blend/solver.hpp"

namespace maslin::plan {
namespace {

using blend::infinity;
using blend::Term;

class Scaled {
 public:
  explicit Scaled(const blend::LinearProgram& program) {
    for (std::size_t i = 0; i < program.columns.size(); ++i) program_.add_column({});
    scale_ = program_.add_column({});
    for (blend::ColumnIndex i = 0; i < scale_; ++i) {
      add_bounds({{i, 1}}, program.columns[i].lower, program.columns[i].upper);
    }
  }

  void add_bounds(const std::vector<Term>& terms, double lower, double upper) {
    // An amount that may not be negative is one already.
    const bool amount = lower == 0 && terms.size() == 1;
    if (std::isfinite(lower) && !amount) add_row(terms, lower, 0, infinity);
    if (std::isfinite(upper)) add_row(terms, upper, -infinity, 0);
  }

  std::optional<Reached> solve(const Part& part, blend::Direction direction) {
    program_.add_row({"the whole", 1, 1, part.whole});
    program_.objectives = {{"share", direction, part.part}};
    const blend::Solution solution = blend::solve(program_);
    if (solution.status != blend::Status::optimal) return std::nullopt;
    Reached reached;
    reached.share = blend::value_of(part.part, solution.columns);
    // Where nothing bounds the whole, its share of the rest tends to this.
    const double scale = solution.columns[scale_];
    constexpr double none = 1e-12;
    reached.whole = scale > none ? 1 / scale : blend::infinity;
    reached.part = reached.share * reached.whole;
    return reached;
  }

 private:
  void add_row(std::vector<Term> terms, double at, double lower, double upper) {
    if (at != 0) terms.push_back({scale_, -at});
    program_.add_row({"", lower, upper, std::move(terms)});
  }

  blend::LinearProgram program_;
  blend::ColumnIndex scale_ = 0;
};

}  // namespace

std::optional<Reached> reach(const blend::LinearProgram& program,
                             const std::set<blend::Statement>& held, const Part& part,
                             blend::Direction direction) {
  if (part.part.empty() || part.whole.empty()) return std::nullopt;
  Scaled scaled(program);
  for (const blend::Row& row : program.rows) {
    if (row.statement != blend::background && held.count(row.statement) == 0) continue;
    scaled.add_bounds(row.terms, row.lower, row.upper);
  }
  return scaled.solve(part, direction);
}

}  // namespace maslin::plan
