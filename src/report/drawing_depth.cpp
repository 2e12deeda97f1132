// SPDX-License-Identifier: Apache-2.0
#include "report/drawing_depth.hpp"

#include <fmt/format.h>

#include "report/drawing.hpp"

namespace maslin::report {
namespace {

constexpr double margin = 0.5;  // mm, so that no stroke is cut off
constexpr double height = 17;
constexpr double edge = 8;  // where the spoon lies

constexpr double room_for_words = 24;  // beside the mark for the start

// Words stand before a mark in the far half, else behind it.
double width_of(double start) {
  return start + 2 * margin + (start > longest_strip / 2.0 ? 0 : room_for_words);
}

std::string millimetres(const Length& length) { return length.in_base().to_decimal(0) + " mm"; }

// The start may stand so near the stop that their words would meet: one goes above, one below.
void add_mark(Element& svg, double x, double far_end, double base, const std::string& words) {
  svg.add(line_between(x, edge, x, far_end, 0.5));
  const Anchor anchor = x > longest_strip / 2.0 ? Anchor::end : Anchor::start;
  const double beside = anchor == Anchor::end ? -1.2 : 1.2;
  svg.add(letters_at(x + beside, base, anchor, words).with("font-weight", "bold"));
}

}  // namespace

std::optional<Element> depth_strip(const DepthStrip& depths, const std::string& id) {
  if (!depths.stop.is_positive() || !(depths.stop <= depths.start)) return std::nullopt;
  const Rational beyond = depths.start.in_base() - Rational(longest_strip);
  const Rational from = beyond.is_positive() ? beyond.ceil_to(50) : Rational(0);
  if (!(from < depths.stop.in_base())) return std::nullopt;

  const double origin = from.to_double();
  const double start = depths.start.to_double() - origin;
  const double stop = depths.stop.to_double() - origin;
  Element svg = drawing_in({id, "Depths to mark on a wooden spoon",
                            fmt::format("start at {}, stop at {}, from the bottom of the pan",
                                        millimetres(depths.start), millimetres(depths.stop)),
                            width_of(start), height});
  svg.add(line_between(margin, edge, margin + start, edge, 0.4));
  for (int tick = 0; tick <= static_cast<int>(start); tick += 10) {
    svg.add(line_between(margin + tick, edge, margin + tick, edge + 2, 0.2));
  }
  svg.add(line_between(margin, edge - 4, margin, edge + 4, 0.5));
  if (from.is_zero()) {
    svg.add(letters_at(margin + 1, edge + 8, Anchor::start, "tip"));
  } else {
    svg.add(
        letters_at(margin + 1, edge - 4, Anchor::start, from.to_decimal(0) + " mm from the tip"));
  }
  add_mark(svg, margin + stop, edge + 8.5, edge + 8, "stop " + millimetres(depths.stop));
  add_mark(svg, margin + start, edge - 8, edge - 4, "start " + millimetres(depths.start));
  return svg;
}

}  // namespace maslin::report
