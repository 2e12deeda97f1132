// SPDX-License-Identifier: Apache-2.0
#include "report/drawing_jars.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/drawing.hpp"

namespace maslin::report {
namespace {

constexpr double widest = 90;          // mm, of a row
constexpr double tallest = 14;         // mm, of a jar
constexpr double between = 3;          // mm, from one size to the next
constexpr double letter_width = 1.8;   // mm, of the words under a size, on an average
constexpr int most_drawn = 40;         // of one size
constexpr double wide_for_high = 0.6;  // a jar's width by its height
constexpr double step_for_high = 0.7;  // from one jar to the next

int drawn(const Jars& jars) { return jars.count > most_drawn ? 1 : std::max(jars.count, 0); }

// Heights go as the cube root of what the jars hold.
double size_of(const Jars& jars) { return std::cbrt(jars.capacity.to_double()); }

std::string label_of(const Jars& jars) {
  return fmt::format("{} × {} ml{}", jars.count, jars.capacity.in_base().to_decimal(0),
                     jars.part_filled ? ", part" : "");
}

double group_width(const Jars& jars, double scale) {
  const double words = static_cast<double>(label_of(jars).size()) * letter_width;
  return std::max(words, drawn(jars) * size_of(jars) * scale * step_for_high) + between;
}

double row_width(const JarRow& row, double scale) {
  double sum = 0;
  for (const Jars& jars : row.jars) sum += group_width(jars, scale);
  return sum;
}

// As large as the height and the width of the row allow.
double scale_for(const JarRow& row) {
  double largest = 1;
  for (const Jars& jars : row.jars) largest = std::max(largest, size_of(jars));
  double scale = tallest / largest;
  constexpr double smaller_by = 0.95;
  constexpr double smallest = 0.3;
  while (row_width(row, scale) > std::max(widest, row_width(row, 0)) && scale > smallest) {
    scale *= smaller_by;
  }
  return scale;
}

Element rectangle(double x, double y, double width, double height, double round) {
  return Element("rect")
      .with("x", x)
      .with("y", y)
      .with("width", width)
      .with("height", height)
      .with("rx", round)
      .with("stroke", "currentColor")
      .with("stroke-width", 0.3);
}

// Stands on y = foot.
void add_jar(Element& svg, double x, double foot, double high, double filled) {
  const double wide = high * wide_for_high;
  const double lid = high * 0.12;
  const double glass = high - lid;
  svg.add(rectangle(x, foot - glass, wide, glass, wide / 8).with("fill", "none"));
  svg.add(rectangle(x + wide * 0.08, foot - high, wide * 0.84, lid, lid / 4)
              .with("fill", "currentColor"));
  const double content = glass * std::clamp(filled, 0.0, 1.0);
  svg.add(rectangle(x, foot - content, wide, content, wide / 8)
              .with("fill", "currentColor")
              .with("fill-opacity", "0.15"));
}

}  // namespace

Element jar_row(const JarRow& row, const std::string& id) {
  const double scale = scale_for(row);
  std::string words;
  for (const Jars& jars : row.jars) words += (words.empty() ? "" : "; ") + label_of(jars);
  Element svg = drawing_in(
      {id, "Jars to fill", words, std::max(row_width(row, scale), tallest), tallest + 6});
  double x = 0;
  for (const Jars& jars : row.jars) {
    const double high = size_of(jars) * scale;
    for (int i = 0; i < drawn(jars); ++i) {
      add_jar(svg, x + 0.5 + i * high * step_for_high, tallest, high, jars.filled.to_double());
    }
    svg.add(letters_at(x + 0.5, tallest + 4.6, Anchor::start, label_of(jars)));
    x += group_width(jars, scale);
  }
  return svg;
}

}  // namespace maslin::report
