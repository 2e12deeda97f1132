// SPDX-License-Identifier: Apache-2.0
#include "language/checks/checks.hpp"

#include <fmt/format.h>

namespace maslin::language {
namespace {

void check_method(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  const std::size_t before = diagnostics.error_count();
  checks::method_amounts(framework, diagnostics);
  // Where amounts are missing nothing can be said of when they go in.
  if (diagnostics.error_count() != before) return;
  checks::raw_hazards(program, framework, diagnostics);
  checks::strained_away(framework, diagnostics);
  checks::dry_stage(program, framework, diagnostics);
  checks::acid_before_soft(program, framework, diagnostics);
  checks::sugar_before_soft(program, framework, diagnostics);
  checks::spice_form(program, framework, diagnostics);
  checks::ferment_heat(framework, diagnostics);
}

}  // namespace

void run_checks(const Program& program, Diagnostics& diagnostics) {
  checks::class_cycles(program, diagnostics);
  checks::compositions(program, diagnostics);
  checks::unsourced(program, diagnostics);
  for (std::size_t i = program.library_frameworks; i < program.frameworks.size(); ++i) {
    const Framework& framework = program.frameworks[i];
    // A broken one was reported already.
    if (framework.poisoned) continue;
    if (framework.shares.empty()) {
      diagnostics
          .report(Code::no_produce, framework.span,
                  fmt::format("`{}` does not say of what produce it is made", framework.name))
          .with_mend("add a block: `produce { onion 12 .. 20 % … }`");
      continue;
    }
    checks::shares(program, framework, diagnostics);
    checks::classes(program, framework, diagnostics);
    checks::figures(program, framework, diagnostics);
    checks::directions(program, framework, diagnostics);
    checks::credits(program, framework, diagnostics);
    checks::reach(program, framework, diagnostics);
    checks::routes(program, framework, diagnostics);
    checks::tested(program, framework, diagnostics);
    checks::liquor(program, framework, diagnostics);
    checks::filling(program, framework, diagnostics);
    checks::headspace(program, framework, diagnostics);
    if (framework.method.is_stated()) check_method(program, framework, diagnostics);
  }
}

}  // namespace maslin::language
