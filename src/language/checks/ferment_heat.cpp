// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include "language/checks/checks.hpp"
#include "language/uses.hpp"

namespace maslin::language::checks {
namespace {

// Cabbage: 3 to 4 weeks at 21 to 24 °C, 5 to 6 at 16 to 18; below that it may not ferment, above 24
// it goes soft (USDA home-canning guide, as extension services hand it on; 60 and 75 °F).
const Temperature coldest(Rational(Rational::Wide{155}, Rational::Wide{10}));
const Temperature cool(Rational(18));
const Temperature warm(Rational(21));
const Temperature hottest(Rational(24));

Duration weeks(long count) { return Duration(Rational(count * 7 * 24 * 3600)); }

// By the middle of the range it is kept at.
Duration least_time(const Range<Temperature>& heat) {
  const Temperature middle_heat((heat.low.in_base() + heat.high.in_base()) / Rational(2));
  if (middle_heat >= warm) return weeks(3);
  return middle_heat > cool ? weeks(4) : weeks(5);
}

std::string degrees(const Temperature& heat) { return heat.in_base().to_decimal(1) + " °C"; }

void check_heat(const Step& step, Diagnostics& diagnostics) {
  const bool cold = step.heat->low < coldest;
  if (!cold && step.heat->high <= hottest) return;
  diagnostics
      .report(Code::ferment_heat, step.span,
              cold ? fmt::format("at {} this may never turn sour", degrees(step.heat->low))
                   : fmt::format("at {} this goes soft, or others win", degrees(step.heat->high)))
      .with_why("what is published for ferments stands between 15.5 and 24 °C")
      .with_mend("keep it for example at 18 .. 22 °C, and read the pH before it is released");
}

void check_time(const Step& step, Diagnostics& diagnostics) {
  if (!step.lasting || step.lasting->or_longer) return;
  const Duration least = least_time(*step.heat);
  if (step.lasting->time.high >= least) return;
  const Rational week(7L * 24 * 3600);
  diagnostics
      .report(Code::ferment_heat, step.span,
              "this is shorter than any published ferment at this heat")
      .with_why("a ferment that is stopped early holds too little acid")
      .with_mend(fmt::format("let it stand {} weeks or longer, and read the pH",
                             (least.in_base() / week).to_decimal(0)));
}

}  // namespace

void ferment_heat(const Framework& framework, Diagnostics& diagnostics) {
  for (const Stage& stage : framework.method.stages) {
    for (const Step& step : stage.steps) {
      if (step.kind != StepKind::ferment || !step.heat) continue;
      check_heat(step, diagnostics);
      check_time(step, diagnostics);
    }
  }
}

}  // namespace maslin::language::checks
