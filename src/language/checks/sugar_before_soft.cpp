// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "language/checks/checks.hpp"
#include "language/membership.hpp"
#include "language/uses.hpp"

namespace maslin::language::checks {
namespace {

// From here on a pan is a syrup that firms skins, g per kilogram of produce; below it hardly shows.
// Softening takes at least this long. Both are common practice, no source.
const Rational syrup(500);
const Duration softening(Rational(5 * 60));

bool is_all_of(const Program& program, const Target& target, const char* class_name) {
  const auto all = members(program, target);
  return !all.empty() && std::all_of(all.begin(), all.end(), [&](IngredientId id) {
    return is_of_class(program, id, class_name);
  });
}

bool is_much_sugar(const Program& program, const Framework& framework, const Slot& slot) {
  if (slot.kind != SlotKind::addition) return false;
  const Addition& addition = framework.additions[slot.index];
  return addition.measured == Measured::by_weight && addition.range.high >= syrup &&
         is_all_of(program, addition.target, "sweetener");
}

// Where the first of much sugar meets what is in the pan.
const Use* first_sugar(const Program& program, const Framework& framework,
                       const std::vector<Use>& uses) {
  for (const Use& use : uses) {
    // Fruit left to stand in sugar is firmed on purpose.
    if (!use.aside && is_much_sugar(program, framework, use.slot)) return &use;
  }
  return nullptr;
}

// Juice has no skin.
bool is_fruit(const Program& program, const Target& target) {
  if (is_all_of(program, target, "liquid")) return false;
  return is_all_of(program, target, "fruit") || is_all_of(program, target, "citrus peel");
}

bool is_macerated(const Method& method, const Slot& slot) {
  for (const Stage& stage : method.stages) {
    for (const Step& step : stage.steps) {
      if (step.kind != StepKind::macerate) continue;
      for (const Part& part : step.parts) {
        if (std::find(part.slots.begin(), part.slots.end(), slot) != part.slots.end()) return true;
      }
    }
  }
  return false;
}

}  // namespace

void sugar_before_soft(const Program& program, const Framework& framework,
                       Diagnostics& diagnostics) {
  const Method& method = framework.method;
  const auto uses = uses_of(method);
  const Use* sugar = first_sugar(program, framework, uses);
  if (sugar == nullptr) return;
  const Place sweet{sugar->stage, sugar->step};
  for (const Use& use : uses) {
    const Place here{use.stage, use.step};
    // What is added to a syrup afterwards is meant to stay whole.
    if (use.slot.kind != SlotKind::produce || is_before(sweet, here) ||
        is_macerated(method, use.slot) || !is_fruit(program, target_of(framework, use.slot)) ||
        heated_between(method, here, sweet, is_heat) >= softening) {
      continue;
    }
    diagnostics
        .report(
            Code::sugar_before_soft, sugar->span,
            fmt::format("the sugar goes in before {} is soft", target_of(framework, use.slot).name))
        .with_because(use.span, "it goes in here")
        .with_why("sugar keeps skins and peel as hard as they are when it comes to them")
        .with_mend("simmer the fruit first until its skins are soft, then add the sugar");
    return;
  }
}

}  // namespace maslin::language::checks
