// SPDX-License-Identifier: Apache-2.0
#include "plan/solve.hpp"

#include <algorithm>
#include <cmath>

namespace maslin::plan {
namespace {

constexpr std::size_t most_choices = 4;  // two to this power of programmes at the most

// Whether `a` is better than `b` under the objectives in their order.
bool better(const Solved& a, const Solved& b) {
  constexpr double tolerance = 1e-7;
  const auto& objectives = a.blend.program.objectives;
  for (std::size_t i = 0; i < objectives.size(); ++i) {
    const double first = a.solution.objective_values[i];
    const double second = b.solution.objective_values[i];
    if (std::abs(first - second) <= tolerance * (1 + std::abs(first))) continue;
    return (objectives[i].direction == blend::Direction::maximise) == (first > second);
  }
  return false;
}

bool fits(const Solved& solved) { return solved.solution.status == blend::Status::optimal; }

}  // namespace

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

Solved solve_again(const blend::Grounding& grounding, const blend::Setting& setting) {
  Solved solved;
  solved.setting = setting;
  solved.blend = blend::ground(grounding, setting);
  solved.solution = blend::solve(solved.blend.program);
  return solved;
}

Solved solve_best(const blend::Grounding& grounding, const blend::Setting& setting) {
  Solved best = solve_again(grounding, setting);
  const std::size_t full = std::min(best.blend.full_substitutions, most_choices);
  for (std::size_t choice = 1; choice < (std::size_t{1} << full); ++choice) {
    blend::Setting other = setting;
    other.at_cap.assign(best.blend.full_substitutions, false);
    for (std::size_t i = 0; i < full; ++i) other.at_cap[i] = ((choice >> i) & 1) != 0;
    Solved candidate = solve_again(grounding, other);
    const bool take = fits(candidate) && (!fits(best) || better(candidate, best));
    if (take) best = std::move(candidate);
  }
  return best;
}

}  // namespace maslin::plan
