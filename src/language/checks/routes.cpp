// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "language/checks/checks.hpp"
#include "language/membership.hpp"

namespace maslin::language::checks {
namespace {

// Where the route takes nothing of what a slot asks for.
void check_slot(const Program& program, const Framework& framework, const Target& target,
                Diagnostics& diagnostics) {
  const Refusal* refusal = nullptr;
  for (const IngredientId id : members(program, target)) {
    refusal = refusal_of(program, framework, id);
    if (refusal == nullptr) return;
  }
  if (refusal == nullptr) return;
  const auto all = members(program, target);
  const bool named = std::all_of(all.begin(), all.end(), [&](IngredientId id) {
    return std::any_of(refusal->targets.begin(), refusal->targets.end(),
                       [&](const Target& each) { return takes(program, each, id); });
  });
  diagnostics
      .report(Code::route_refuses, target.span,
              fmt::format("a route this framework claims does not take {}", target.name))
      .with_why(named ? refusal->because
                      : "by its fat or protein it counts as what is refused: " + refusal->because)
      .with_because(refusal->span, "the route")
      .with_mend("leave it out, or claim another route");
}

bool asks_less(const Limit& limit, const Limit& floor) {
  const bool low = limit.has_low && floor.has_low && limit.range.low < floor.range.low;
  const bool high = limit.has_high && floor.has_high && limit.range.high > floor.range.high;
  return low || high;
}

bool is_of_the_same(const Limit& a, const Limit& b) {
  return a.property && a.property == b.property && a.whole == b.whole;
}

}  // namespace

void routes(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  for (const ProduceShare& share : framework.shares) {
    check_slot(program, framework, share.target, diagnostics);
  }
  for (const Addition& addition : framework.additions) {
    check_slot(program, framework, addition.target, diagnostics);
  }
  for (const Limit& floor : framework.limits) {
    if (!floor.route.valid()) continue;
    for (const Limit& limit : framework.limits) {
      if (limit.route.valid() || !is_of_the_same(limit, floor) || !asks_less(limit, floor))
        continue;
      diagnostics
          .report(Code::looser_than_floor, limit.span,
                  fmt::format("the floor of {} is stricter, and holds", program[floor.route].name))
          .with_because(floor.span, "the floor")
          .with_mend("leave this limit out");
    }
  }
}

}  // namespace maslin::language::checks
