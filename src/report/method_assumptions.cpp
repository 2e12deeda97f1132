// SPDX-License-Identifier: Apache-2.0
#include "report/method_assumptions.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "plan/volumes.hpp"

namespace maslin::report {

std::vector<std::string> method_assumptions(const language::Program& program,
                                            const plan::Plan& plan) {
  std::vector<std::string> points;
  const plan::Afternoon& afternoon = plan.afternoon;
  const auto id = plan.verified.draft().task.kitchen;
  const bool rough = afternoon.boils.pan_known || afternoon.jars;
  if (rough) {
    points.push_back(
        "volumes and depths: from the solids of the tables, raw produce up to a fifth larger for "
        "its air; rough");
  }
  if (afternoon.jars) {
    points.push_back(
        fmt::format("jars with necks of {} mm inside", plan::neck_inside.in_base().to_decimal(0)));
    if (afternoon.jars->headspace_assumed) {
      points.push_back(fmt::format("{} mm of headspace, since no method says it",
                                   afternoon.jars->headspace.in_base().to_decimal(0)));
    }
  }
  if (afternoon.clock && afternoon.clock->kind_assumed) {
    points.push_back("a hob of any kind, since the kitchen does not say which");
  }
  if (afternoon.height && id.valid() && (afternoon.clock || afternoon.set)) {
    points.push_back(fmt::format(
        "water boils at {} °C {}, in the standard atmosphere",
        afternoon.height->water_boils.in_base().to_decimal(1),
        afternoon.height->assumed
            ? "as at sea level, since the kitchen says no altitude"
            : fmt::format("at {} m",
                          (program[id].altitude->in_base() / Rational(1000)).to_decimal(0))));
  }
  const auto& stages = program[plan.verified.draft().task.framework].method.stages;
  const bool strained = std::any_of(stages.begin(), stages.end(), [](const auto& stage) {
    return std::any_of(stage.steps.begin(), stage.steps.end(), [](const auto& step) {
      return step.kind == language::StepKind::strain && step.kept.has_value();
    });
  });
  if (strained) {
    points.emplace_back(
        "figures of what leaves the pan as if all of it had gone through the strainer");
  }
  return points;
}

}  // namespace maslin::report
