// SPDX-License-Identifier: Apache-2.0
#include "property/amounts.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace maslin::test {

std::vector<std::string> amounts(const Planned& planned) {
  const language::Program& program = planned.program();
  const plan::Draft& draft = planned.draft();
  const language::Framework& framework = program[draft.task.framework];
  std::vector<std::string> result;
  const auto add = [&](const std::string& slot, const plan::Taken& taken) {
    const std::string acidity = taken.acidity ? taken.acidity->to_decimal(6) : std::string("-");
    result.push_back(fmt::format("{}: {} {} g, origin {}, first {}, acidity {}", slot,
                                 program[taken.ingredient].name, taken.weight.to_decimal(6),
                                 static_cast<int>(taken.origin), taken.use_first, acidity));
  };
  for (const plan::Taken& each : draft.produce) {
    add("share " + framework.shares[each.slot].target.name, each);
  }
  for (const plan::Taken& each : draft.additions) {
    add("addition " + framework.additions[each.slot].target.name, each);
  }
  for (const plan::Taken& each : draft.substitutes) {
    add("substitute " + framework.substitutions[each.slot].donor.name, each);
  }
  for (std::size_t i = 0; i < draft.credits.size(); ++i) {
    const language::Substitution& substitution = framework.substitutions[i];
    result.push_back(fmt::format("credit of {} for {}: {}", substitution.donor.name,
                                 substitution.replaced.name, draft.credits[i].to_decimal(6)));
  }
  if (draft.finished) result.push_back("finished " + draft.finished->to_decimal(6));
  std::sort(result.begin(), result.end());
  return result;
}

double lost_to_rounding(const Planned& planned, double step) {
  constexpr double at_least = 12;
  constexpr double part = 0.05;
  return std::max(at_least * step, part * planned.total());
}

}  // namespace maslin::test
