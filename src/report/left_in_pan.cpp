// SPDX-License-Identifier: Apache-2.0
#include "report/left_in_pan.hpp"

#include <fmt/format.h>

#include <optional>

#include "plan/weights.hpp"

namespace maslin::report {
namespace {

using language::StepKind;

const Rational tens(10);  // g: no pan is stopped more closely

std::string left(const plan::Afternoon& afternoon, const Range<Mass>& after) {
  const auto each = [&](const Mass& weight) {
    const Rational boils(afternoon.boils.count);
    return plan::weight_text((weight.in_base() / boils).round_to(tens));
  };
  const std::string low = each(after.low);
  const std::string high = each(after.high);
  return "; about " + (low == high ? low : low + " to " + high) + " are left then";
}

// The least there can be after it has stood open at full heat all the time.
Rational at_full_heat(const plan::Afternoon& afternoon, const language::Step& step,
                      const Range<Mass>& after) {
  const Rational hours = step.lasting->time.high.in_base() / Rational(3600);
  const Rational boils(afternoon.boils.count);
  return after.high.in_base() / boils - afternoon.clock->water_in_an_hour.high.in_base() * hours;
}

// All that is kept in the end, less what goes in after this step. Nothing where it is not boiled
// down after it: then `When to stop` says it.
std::optional<Rational> least_left(const plan::Draft& draft, const plan::Afternoon& afternoon,
                                   std::size_t stage, std::size_t step) {
  Rational least = afternoon.course.finish.low.in_base();
  bool boiled_down = false;
  for (std::size_t i = stage; i < afternoon.timeline.size(); ++i) {
    const auto& steps = afternoon.timeline[i].steps;
    for (std::size_t j = i == stage ? step + 1 : 0; j < steps.size(); ++j) {
      boiled_down = boiled_down || steps[j].step->kind == StepKind::reduce;
      for (const plan::Item& item : steps[j].entering) least -= plan::weight_of(draft, item);
    }
  }
  if (!boiled_down) return std::nullopt;
  return (least / Rational(afternoon.boils.count)).ceil_to(tens);
}

}  // namespace

std::string left_in_pan(const plan::Draft& draft, const plan::Afternoon& afternoon,
                        std::size_t stage, std::size_t step) {
  const language::Step& done = *afternoon.timeline[stage].steps[step].step;
  if (done.kind == StepKind::reduce) return left(afternoon, afternoon.course.after[stage][step]);
  const bool open = is_heat(done.kind) && done.lid != language::Lid::covered && done.lasting;
  if (!open || !afternoon.boils.stop || !afternoon.clock) return "";
  const auto least = least_left(draft, afternoon, stage, step);
  const Range<Mass>& after = afternoon.course.after[stage][step];
  const bool may_fall_short =
      least && least->is_positive() && at_full_heat(afternoon, done, after) < *least;
  if (!may_fall_short) return "";
  return fmt::format("; no less than {} may be left then: add hot water",
                     plan::weight_text(*least));
}

}  // namespace maslin::report
