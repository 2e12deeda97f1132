// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>
#include <sstream>

#include "language/checks/checks.hpp"
#include "language/membership.hpp"
#include "language/uses.hpp"

namespace maslin::language::checks {
namespace {

// Longer than this and little of a ground spice is left in the pan (common practice, no source).
const Duration long_boiling(Rational(45 * 60));

// The library names the ground form of a spice so.
bool is_ground(const Ingredient& spice) {
  std::istringstream words(spice.name);
  for (std::string word; words >> word;) {
    if (word == "ground" || word == "powder") return true;
  }
  return false;
}

bool is_ground_spice(const Program& program, const Target& target) {
  const auto all = members(program, target);
  return !all.empty() && std::all_of(all.begin(), all.end(), [&](IngredientId id) {
    return is_of_class(program, id, "spice") && is_ground(program[id]);
  });
}

}  // namespace

void spice_form(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  const Method& method = framework.method;
  for (const Use& use : uses_of(method)) {
    const Target& target = target_of(framework, use.slot);
    if (use.slot.kind != SlotKind::addition || !is_ground_spice(program, target)) continue;
    const Duration time = heated_between(method, {use.stage, use.step}, end_of(method), is_heat);
    if (time <= long_boiling) continue;
    diagnostics
        .report(Code::spice_boiled_long, use.span,
                fmt::format("{} boils for {} min and more", target.name,
                            (time.in_base() / Rational(60)).to_decimal(0)))
        .with_why("what makes a ground spice smell boils away; a whole one gives it up slowly")
        .with_mend("add it in a later stage, or use the whole spice in a bag");
  }
}

}  // namespace maslin::language::checks
