// SPDX-License-Identifier: Apache-2.0
#include "plan/solve.hpp"

namespace maslin::plan {

blend::Goal goal_of(const Aim& aim) {
  constexpr double grams_in_kilogram = 1000;
  const double kilograms = aim.weight.to_double() / grams_in_kilogram;
  switch (aim.kind) {
    case AimKind::prepared:
      return {blend::GoalKind::prepared, kilograms};
    case AimKind::finished:
      return {blend::GoalKind::finished, kilograms};
    case AimKind::most:
      break;
  }
  return {};
}

}  // namespace maslin::plan
