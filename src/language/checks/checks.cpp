// SPDX-License-Identifier: Apache-2.0
#include "language/checks/checks.hpp"

#include <fmt/format.h>

namespace maslin::language {

void run_checks(const Program& program, Diagnostics& diagnostics) {
  checks::class_cycles(program, diagnostics);
  checks::compositions(program, diagnostics);
  for (std::size_t i = program.library_frameworks; i < program.frameworks.size(); ++i) {
    const Framework& framework = program.frameworks[i];
    // A child leaves to its parent what it does not say; a broken one was reported already.
    if (framework.poisoned || framework.refines.valid()) continue;
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
  }
}

}  // namespace maslin::language
