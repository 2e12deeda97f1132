// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include "language/checks/checks.hpp"

namespace maslin::language::checks {

void filling(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  if (!framework.method.filling) return;
  const Filling& filling = *framework.method.filling;
  for (const RouteClaim& claim : framework.routes) {
    for (const ToRead& reading : program[claim.route].readings) {
      if (reading.figure != filling_temperature || !reading.has_low) continue;
      const Temperature least(reading.range.low);
      const bool cold = !filling.hot && !filling.heat;
      if (!cold && (!filling.heat || *filling.heat >= least)) continue;
      diagnostics
          .report(Code::filling_heat, filling.span,
                  fmt::format("this fills {}, and the route {} reads {} °C or more",
                              cold ? "cold" : "at " + filling.heat->in_base().to_decimal(1) + " °C",
                              program[claim.route].name, least.in_base().to_decimal(1)))
          .with_because(reading.span, "to be read")
          .with_because(claim.span, "claimed here")
          .with_why("no batch that is filled like this ever has its readings complete")
          .with_mend(fmt::format("write `fill hot at {} °C`, or claim another route",
                                 least.in_base().to_decimal(1)));
    }
  }
}

}  // namespace maslin::language::checks
