// SPDX-License-Identifier: Apache-2.0
// What all drawings share: one unit is one millimetre on paper, ink is the colour of the text
// around a drawing, and each has a name and a description for those who do not see it.
#pragma once

#include <string>
#include <string_view>

#include "report/markup.hpp"

namespace maslin::report {

// Size of the letters in a drawing, mm: 10 pt.
inline constexpr double letter_height = 3.53;

struct Frame {
  std::string id;  // unlike any other on the page
  std::string name;
  std::string description;
  double width = 0;   // mm
  double height = 0;  // mm
};
// An empty drawing.
Element drawing_in(const Frame& frame);

Element line_between(double x1, double y1, double x2, double y2, double thickness);

enum class Anchor { start, middle, end };
Element letters_at(double x, double y, Anchor anchor, std::string_view text);

}  // namespace maslin::report
