// SPDX-License-Identifier: Apache-2.0
// With what an amount is measured out, and how it is rounded to that.
#pragma once

#include <cstdint>
#include <optional>

#include "language/program.hpp"
#include "plan/draft.hpp"

namespace maslin::plan {

enum class Direction : std::uint8_t { nearest, up, down };

struct Tooling {
  Tool tool = Tool::scales;
  Rational step = 1;    // g, ml or pieces
  Rational weight = 1;  // g of one g, one ml or one piece
};

// Pieces where the framework counts; spoons where it says spoons, or where the scales are too
// coarse for so little; else scales.
Tooling choose_tool(const language::Program& program, const Tools& tools,
                    const language::Ingredient& ingredient, const language::Addition& addition,
                    const Rational& weight);

// Rounds a weight and fills the taken amount. The result stays inside the room (g) if any step of
// the tool lies inside; below it rather than above. In a room of no width the nearest step serves.
void measure(const Tooling& tooling, const Rational& weight, Direction direction,
             const Bounds& room, Taken& taken);

}  // namespace maslin::plan
