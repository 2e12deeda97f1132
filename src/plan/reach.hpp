// SPDX-License-Identifier: Apache-2.0
// How near the rest of a conflict comes to one of its statements.
#pragma once

#include <optional>
#include <set>
#include <vector>

#include "blend/linear_program.hpp"

namespace maslin::plan {

// A part and the whole it is a share of, as sums over the columns of a programme.
struct Part {
  std::vector<blend::Term> part;
  std::vector<blend::Term> whole;
};

struct Reached {
  double share = 0;  // part / whole
  double part = 0;   // in the units of the programme
  double whole = 0;  // infinite where nothing bounds it
};

// The least or the greatest share that amounts of the programme come to while only the background
// and `held` must be met. Nothing where these cannot be met either.
std::optional<Reached> reach(const blend::LinearProgram& program,
                             const std::set<blend::Statement>& held, const Part& part,
                             blend::Direction direction);

}  // namespace maslin::plan
