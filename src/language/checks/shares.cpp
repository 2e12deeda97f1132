// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include "language/checks/checks.hpp"

namespace maslin::language::checks {
namespace {

std::string percent(const Rational& share) { return (share * 100).to_decimal(1) + " %"; }

}  // namespace

void shares(const Program&, const Framework& framework, Diagnostics& diagnostics) {
  Rational least;
  Rational most;
  for (const ProduceShare& share : framework.shares) {
    least += share.range.low;
    most += share.range.high;
  }
  const Rational whole(1);
  if (least <= whole && most >= whole) return;
  const bool too_much = least > whole;
  auto& found = diagnostics.report(
      Code::shares_cannot_reach, framework.produce_span,
      too_much ? fmt::format("the least shares add up to {}, more than the whole", percent(least))
               : fmt::format("the largest shares add up to only {} of the produce", percent(most)));
  for (const ProduceShare& share : framework.shares) {
    const Rational& bound = too_much ? share.range.low : share.range.high;
    if (bound.is_positive()) {
      found.with_because(share.range_span,
                         fmt::format("{} {}", too_much ? "at least" : "at most", percent(bound)));
    }
  }
  found.with_why("no basket at all could be divided like this");
  found.with_mend(
      too_much ? fmt::format("lower the least shares by {} in all", percent(least - whole))
               : fmt::format("raise the largest shares by {} in all", percent(whole - most)));
}

}  // namespace maslin::language::checks
