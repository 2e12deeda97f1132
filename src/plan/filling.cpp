// SPDX-License-Identifier: Apache-2.0
#include "plan/filling.hpp"

#include <fmt/format.h>

#include <cmath>

#include "language/amounts.hpp"
#include "science/boiling.hpp"
#include "science/heat.hpp"

namespace maslin::plan {
namespace {

Rational tenths(double value) {
  return Rational(Rational::Wide{static_cast<long>(value)}, Rational::Wide{10});
}

// Of all that is filled, at the least; what no table gives counts as none.
Share least_solids(const language::Program& program, const VerifiedPlan& plan) {
  Rational solids;
  const Draft& draft = plan.draft();
  for (const auto* list : {&draft.produce, &draft.additions, &draft.substitutes}) {
    for (const Taken& taken : *list) {
      const auto share =
          share_of(program, language::Property::soluble_solids, {taken.ingredient, taken.acidity});
      if (share) solids += taken.weight * share->low;
    }
  }
  const Rational whole = plan.finished() ? plan.finished()->in_base() : plan.ingoing().in_base();
  return Share((solids / whole).to_double());
}

double rise(const language::Program& program, const VerifiedPlan& plan, const Height& height) {
  const auto pressure = science::pressure_at(Metre(height.altitude.to_double() / 1000));
  if (!pressure) return 0;
  const auto found = science::boiling_rise(least_solids(program, plan), Share(0), pressure.value());
  return found ? found.value().in_unit() : 0;
}

std::optional<Duration> held(PH ph, const Temperature& heat) {
  const auto time = science::holding_time(ph, Celsius(heat.to_double()));
  if (!time) return std::nullopt;
  constexpr double tenths_of_a_minute = 10;
  return Duration(tenths(std::ceil(time.value().in_unit() * tenths_of_a_minute)) * Rational(60));
}

}  // namespace

std::optional<FillingHeat> filling_heat(const language::Program& program,
                                        const language::Framework& framework) {
  std::optional<FillingHeat> most;
  const auto take = [&](const Temperature& heat, Span span) {
    if (!most || most->heat < heat) most = FillingHeat{heat, span};
  };
  const auto& filling = framework.method.filling;
  if (filling && filling->heat) take(*filling->heat, filling->span);
  for (const language::RouteClaim& claim : framework.routes) {
    for (const language::ToRead& reading : program[claim.route].readings) {
      if (reading.figure != language::filling_temperature || !reading.has_low) continue;
      take(Temperature(reading.range.low), claim.span);
    }
  }
  return most;
}

Temperature boils_at(const language::Program& program, const VerifiedPlan& plan,
                     const Height& height) {
  const Rational risen = tenths(std::floor(rise(program, plan, height) * 10));
  return Temperature(height.water_boils.in_base() + risen) - weather;
}

void report_filling_heat(const language::Program& program, const VerifiedPlan& plan,
                         const std::optional<Height>& height, Diagnostics& diagnostics) {
  const auto asked = filling_heat(program, program[plan.draft().task.framework]);
  if (!asked || !height || height->assumed) return;
  const Temperature boils = boils_at(program, plan, *height);
  if (asked->heat <= boils) return;
  diagnostics
      .report(
          Code::filling_heat, asked->span,
          fmt::format("{} °C are asked for at filling, and in this kitchen the mix boils at {} °C",
                      asked->heat.in_base().to_decimal(1), boils.in_base().to_decimal(1)))
      .with_because(program[plan.draft().task.kitchen].span,
                    fmt::format("at {} m; on a day of low pressure",
                                (height->altitude.in_base() / Rational(1000)).to_decimal(0)))
      .with_why("what boils gets no hotter, and at this heat the jar and lid are to be cleaned")
      .with_mend("claim the route `cold`, and keep it cold");
}

std::optional<Holding> holding_of(const language::Method& method) {
  if (!method.filling || !method.filling->heat) return std::nullopt;
  const Temperature hottest(Rational(85));
  const Temperature heat = *method.filling->heat < hottest ? *method.filling->heat : hottest;
  const auto acid = held(PH(4.1), heat);
  const auto less = held(PH(4.6), heat);
  if (!acid || !less) return std::nullopt;
  return Holding{heat, *acid, *less};
}

}  // namespace maslin::plan
