// SPDX-License-Identifier: Apache-2.0
#include "plan/tool.hpp"

namespace maslin::plan {
namespace {

const Rational close_enough(Rational::Wide{5}, Rational::Wide{100});
const Rational largest_spoon(15);  // ml: a tablespoon

bool is_spoon(const language::Program& program, language::UnitId unit) {
  if (!unit.valid()) return false;
  const language::Unit& found = program[unit];
  return found.dimension == dimensions::volume && found.factor > Rational(1) &&
         found.factor <= largest_spoon;
}

Rational rounded(const Rational& amount, const Rational& step, Direction direction) {
  if (direction == Direction::up) return amount.ceil_to(step);
  if (direction == Direction::down) return amount.floor_to(step);
  return amount.round_to(step);
}

}  // namespace

Tooling choose_tool(const language::Program& program, const Tools& tools,
                    const language::Ingredient& ingredient, const language::Addition& addition,
                    const Rational& weight) {
  if (addition.measured == language::Measured::by_count && ingredient.piece) {
    return {Tool::count, 1, middle(ingredient.piece->value)};
  }
  const Tooling scales{Tool::scales, tools.scale_step, 1};
  if (!tools.spoon_step || !ingredient.density) return scales;
  const Tooling spoons{Tool::spoons, *tools.spoon_step, middle(ingredient.density->value)};
  const Rational off = absolute(weight.round_to(tools.scale_step) - weight);
  const bool too_coarse = off > close_enough * weight;
  const bool spoons_are_finer = spoons.step * spoons.weight < tools.scale_step;
  if (is_spoon(program, addition.unit) || (too_coarse && spoons_are_finer)) return spoons;
  return scales;
}

void measure(const Tooling& tooling, const Rational& weight, Direction direction,
             const Bounds& room, Taken& taken) {
  const Rational exact = larger(weight, 0) / tooling.weight;
  Rational amount = rounded(exact, tooling.step, direction);
  if (!room.is_exact()) {
    const Rational low = larger(room.low, 0) / tooling.weight;
    const Rational high = larger(room.high, 0) / tooling.weight;
    if (amount < low && low.ceil_to(tooling.step) <= high) amount = low.ceil_to(tooling.step);
    if (amount > high) amount = high.floor_to(tooling.step);
  }
  taken.tool = tooling.tool;
  taken.amount = amount;
  taken.weight = amount * tooling.weight;
  taken.within_five_percent = exact.is_zero() || absolute(amount - exact) <= close_enough * exact;
}

}  // namespace maslin::plan
