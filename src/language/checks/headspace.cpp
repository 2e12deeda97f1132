// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include "language/checks/checks.hpp"

namespace maslin::language::checks {

void headspace(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  const auto& filling = framework.method.filling;
  if (!filling || !filling->headspace) return;
  const Length& stated = *filling->headspace;
  const auto mm = [](const Length& height) { return height.in_base().to_decimal(1); };
  for (const RouteClaim& claim : framework.routes) {
    const auto& floor = program[claim.route].headspace;
    if (!floor || floor->range.contains(stated)) continue;
    const bool high = stated < floor->range.low;
    diagnostics
        .report(Code::headspace_outside, filling->span,
                fmt::format("jars are filled {} mm below the rim, and the route {} has {} to {} mm",
                            mm(stated), program[claim.route].name, mm(floor->range.low),
                            mm(floor->range.high)))
        .with_because(floor->span, "the route")
        .with_because(claim.span, "claimed here")
        .with_why(
            high ? "a jar that is too full pushes its contents under the lid, and does not seal"
                 : "a jar with much air in it is not driven empty of it, and seals weakly")
        .with_mend(fmt::format("write `headspace {} mm`, or leave it out",
                               mm(high ? floor->range.low : floor->range.high)));
  }
}

}  // namespace maslin::language::checks
