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

}  // namespace

void classes(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  for (const Share& share : framework.shares) check(program, share.target, diagnostics);
  for (const Addition& addition : framework.additions) check(program, addition.target, diagnostics);
  for (const Substitution& each : framework.substitutions) check(program, each.donor, diagnostics);
  for (const Limit& limit : framework.limits) {
    if (!limit.property) check(program, limit.share_of, diagnostics);
  }
}

void class_cycles(const Program& program, Diagnostics& diagnostics) {
  // Walk up from each class; meeting it again is a circle.
  for (std::size_t start = 0; start < program.classes.size(); ++start) {
    std::vector<bool> seen(program.classes.size());
    std::vector<ClassId> open = program.classes[start].parents;
    while (!open.empty()) {
      const ClassId at = open.back();
      open.pop_back();
      if (at.index == start) {
        diagnostics
            .report(Code::cyclic_class, program.classes[start].span,
                    fmt::format("`{}` is part of itself", program.classes[start].name))
            .with_mend("take it out of what stands after one of the `is`");
        break;
      }
      if (seen[at.index]) continue;
      seen[at.index] = true;
      for (const ClassId parent : program[at].parents) open.push_back(parent);
    }
  }
}

}  // namespace maslin::language::checks
