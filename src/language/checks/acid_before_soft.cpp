// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "language/checks/checks.hpp"
#include "language/membership.hpp"
#include "language/uses.hpp"

namespace maslin::language::checks {
namespace {

// What wants long boiling to soften. Who cooks for less than this wants it crisp. Both are common
// practice, no source.
constexpr const char* tough_classes[] = {"root", "onion family", "brassica", "stalk", "pulse"};
const Duration meant_to_soften(Rational(15 * 60));

bool is_tough(const Program& program, const Target& target) {
  const auto all = members(program, target);
  return std::any_of(all.begin(), all.end(), [&](IngredientId id) {
    return std::any_of(std::begin(tough_classes), std::end(tough_classes),
                       [&](const char* name) { return is_of_class(program, id, name); });
  });
}

// Where the last of the acid is in the pan; nothing where there is no acid.
std::optional<Place> all_acid_in(const Program& program, const Framework& framework,
                                 const std::vector<Use>& uses) {
  std::optional<Place> last;
  for (const Use& use : uses) {
    if (use.slot.kind != SlotKind::addition ||
        !acidifies(program, framework.additions[use.slot.index])) {
      continue;
    }
    const auto entry = entry_of(framework.method, uses, use);
    if (entry && (!last || is_before(*last, *entry))) last = entry;
  }
  return last;
}

}  // namespace

void acid_before_soft(const Program& program, const Framework& framework,
                      Diagnostics& diagnostics) {
  const Method& method = framework.method;
  const auto uses = uses_of(method);
  const auto acid = all_acid_in(program, framework, uses);
  if (!acid) return;
  for (const Use& use : uses) {
    if (use.slot.kind != SlotKind::produce || use.aside ||
        method.stages[use.stage].steps[use.step].kind == StepKind::pack ||
        !is_tough(program, target_of(framework, use.slot))) {
      continue;
    }
    const Place here{use.stage, use.step};
    const Duration in_acid_alone = heated_between(method, here, end_of(method), is_heat);
    const bool some_before =
        is_before(here, *acid) && heated_between(method, here, *acid, is_heat).is_positive();
    if (some_before || in_acid_alone < meant_to_soften) continue;
    diagnostics
        .report(Code::acid_before_soft, use.span,
                fmt::format("all of the acid is in the pan before {} is soft",
                            target_of(framework, use.slot).name))
        .with_because(method.stages[acid->stage].steps[acid->step].span,
                      "the last of the acid goes in here")
        .with_why(
            "acid slows the softening: it takes longer, and the rest boils to pieces meanwhile")
        .with_mend("cook it first with half of the vinegar, and add the rest in a later stage");
    return;
  }
}

}  // namespace maslin::language::checks
