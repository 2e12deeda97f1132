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
  const auto all = members(program, target);
  for (const IngredientId id : all) {
    if (refusal_of(program, framework, id) == nullptr) return;
  }
  if (all.empty()) return;
  const IngredientId first = all.front();
  const Refusal& refusal = *refusal_of(program, framework, first);
  auto& found =
      diagnostics
          .report(Code::route_refuses, target.span,
                  fmt::format("a route this framework claims does not take {}", target.name))
          .with_why(why_refused(program, refusal, first))
          .with_because(refusal.span, "the route");
  if (!says_its_kind(program, first)) {
    found.with_mend(
        fmt::format("say what it is where it is declared: `ingredient {} is spice`, "
                    "or seasoning, produce, dairy, oil …",
                    program[first].name));
  }
  found.with_mend("leave it out, or claim another route");
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
