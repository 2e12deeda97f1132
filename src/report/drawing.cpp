// SPDX-License-Identifier: Apache-2.0
#include "report/drawing.hpp"

#include <fmt/format.h>

namespace maslin::report {

Element drawing_in(const Frame& frame) {
  Element svg("svg");
  svg.with("role", "img")
      .with("aria-labelledby", fmt::format("{0}-name {0}-description", frame.id))
      .with("width", fmt::format("{:.2f}mm", frame.width))
      .with("height", fmt::format("{:.2f}mm", frame.height))
      .with("viewBox", fmt::format("0 0 {:.2f} {:.2f}", frame.width, frame.height));
  svg.add(Element("title").with("id", frame.id + "-name").say(frame.name));
  svg.add(Element("desc").with("id", frame.id + "-description").say(frame.description));
  return svg;
}

Element line_between(double x1, double y1, double x2, double y2, double thickness) {
  return Element("line")
      .with("x1", x1)
      .with("y1", y1)
      .with("x2", x2)
      .with("y2", y2)
      .with("stroke", "currentColor")
      .with("stroke-width", thickness);
}

Element letters_at(double x, double y, Anchor anchor, std::string_view text) {
  constexpr std::string_view anchors[] = {"start", "middle", "end"};
  return Element("text")
      .with("x", x)
      .with("y", y)
      .with("font-size", letter_height)
      .with("fill", "currentColor")
      .with("text-anchor", anchors[static_cast<std::size_t>(anchor)])
      .say(text);
}

}  // namespace maslin::report
