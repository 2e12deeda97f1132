// SPDX-License-Identifier: Apache-2.0
#include "report/drawing_shares.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "plan/weights.hpp"
#include "report/drawing.hpp"

namespace maslin::report {

Rational end_of_scale(const std::vector<ShareBar>& bars) {
  Rational most;
  for (const ShareBar& bar : bars) most = larger(most, larger(bar.reached, bar.allowed.high));
  const Rational tenth(Rational::Wide{1}, Rational::Wide{10});
  return smaller(larger(most.ceil_to(tenth), tenth), Rational(1));
}

Element draw_share(const ShareBar& bar, const Rational& end, const std::string& id) {
  constexpr double width = 50;
  constexpr double height = 4;
  constexpr double side = 0.6;  // half the thickest stroke, so that none is cut off
  const auto at = [&](const Rational& share) {
    return side + std::clamp((share / end).to_double(), 0.0, 1.0) * (width - 2 * side);
  };
  std::string description = "allowed " + plan::range_text(bar.allowed);
  if (bar.preferred) description += ", preferred " + plan::percent_text(*bar.preferred);
  Element svg = drawing_in({id, fmt::format("{}: {}", bar.name, plan::percent_text(bar.reached)),
                            description, width, height});
  svg.add(line_between(side, height / 2, width - side, height / 2, 0.2));
  svg.add(Element("rect")
              .with("x", at(bar.allowed.low))
              .with("y", 0.7)
              .with("width", std::max(at(bar.allowed.high) - at(bar.allowed.low), 0.2))
              .with("height", height - 1.4)
              .with("fill", "currentColor")
              .with("fill-opacity", "0.15")
              .with("stroke", "currentColor")
              .with("stroke-width", 0.3));
  if (bar.preferred) {
    const double x = at(*bar.preferred);
    svg.add(line_between(x, 0, x, height, 0.4).with("stroke-dasharray", "0.8 0.6"));
  }
  const double reached = at(bar.reached);
  svg.add(line_between(reached, 0, reached, height, 2 * side));
  return svg;
}

}  // namespace maslin::report
