// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include "language/checks/checks.hpp"
#include "language/membership.hpp"

namespace maslin::language::checks {
namespace {

void check(const Program& program, const Target& target, Diagnostics& diagnostics) {
  if (!members(program, target).empty()) return;
  auto& found = diagnostics.report(
      Code::empty_class, target.span,
      target.narrowed.empty()
          ? fmt::format("nothing at all belongs to `{}`", target.name)
          : fmt::format("nothing that is named here belongs to `{}`", target.name));
  if (target.of_class.valid()) found.with_because(program[target.of_class].span, "the class");
  for (const Target& narrow : target.narrowed) {
    found.with_because(narrow.span, fmt::format("`{}` is not of it", narrow.name));
  }
  found.with_mend(target.narrowed.empty() ? "declare an ingredient of this class, or name another"
                                          : "name members of the class");
}

// Every class that stands above this one; itself too where there is a circle.
std::vector<bool> all_above(const Program& program, std::size_t start) {
  std::vector<bool> seen(program.classes.size());
  std::vector<ClassId> open = program.classes[start].parents;
  while (!open.empty()) {
    const ClassId at = open.back();
    open.pop_back();
    if (seen[at.index]) continue;
    seen[at.index] = true;
    for (const ClassId parent : program[at].parents) open.push_back(parent);
  }
  return seen;
}

}  // namespace

void classes(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  for (const ProduceShare& share : framework.shares) check(program, share.target, diagnostics);
  for (const Addition& addition : framework.additions) check(program, addition.target, diagnostics);
  for (const Substitution& each : framework.substitutions) check(program, each.donor, diagnostics);
  for (const Limit& limit : framework.limits) {
    if (!limit.property) check(program, limit.share_of, diagnostics);
  }
}

void class_cycles(const Program& program, Diagnostics& diagnostics) {
  std::vector<bool> told(program.classes.size());
  for (std::size_t start = 0; start < program.classes.size(); ++start) {
    const std::vector<bool> above = all_above(program, start);
    if (!above[start] || told[start]) continue;
    auto& found =
        diagnostics.report(Code::cyclic_class, program.classes[start].span,
                           fmt::format("`{}` is part of itself", program.classes[start].name));
    // All that stand in this circle, told once.
    for (std::size_t other = 0; other < program.classes.size(); ++other) {
      if (!above[other] || !all_above(program, other)[start]) continue;
      told[other] = true;
      if (other != start) found.with_because(program.classes[other].span, "by way of this");
    }
    found.with_mend("end the circle: leave one of them out behind `is`");
  }
}

}  // namespace maslin::language::checks
