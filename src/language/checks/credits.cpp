// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include "language/checks/checks.hpp"
#include "language/membership.hpp"

namespace maslin::language::checks {
namespace {

// The first ingredient that both would count.
std::optional<IngredientId> common_donor(const Program& program, const Substitution& a,
                                         const Substitution& b) {
  for (const IngredientId id : members(program, a.donor)) {
    if (takes(program, b.donor, id)) return id;
  }
  return std::nullopt;
}

bool credits_something(const Substitution& each) { return each.donor.name != each.replaced.name; }

}  // namespace

void credits(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  const auto& list = framework.substitutions;
  for (std::size_t i = 0; i < list.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      if (list[i].addition != list[j].addition || !credits_something(list[i]) ||
          !credits_something(list[j])) {
        continue;
      }
      const auto common = common_donor(program, list[i], list[j]);
      if (!common) continue;
      diagnostics
          .report(Code::counted_twice, list[i].span,
                  fmt::format("{} would be counted twice towards the {}", program[*common].name,
                              list[i].replaced.name))
          .with_because(list[j].span, "counted here already")
          .with_mend("leave one out, or narrow one to what the other does not name");
    }
  }
}

}  // namespace maslin::language::checks
