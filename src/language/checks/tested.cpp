// SPDX-License-Identifier: Apache-2.0
#include "language/tested.hpp"

#include <fmt/format.h>

#include "language/checks/checks.hpp"

namespace maslin::language::checks {

void tested(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  const bool says_so = framework.status == Status::tested && framework.status_span.file.valid();
  if (!says_so) return;
  const auto lapses = lapses_of(program, framework);
  if (lapses.empty()) return;
  auto& found = diagnostics.report(Code::tested_lapses, framework.status_span,
                                   "this framework is not what its source tested");
  for (const Lapse& lapse : lapses) found.with_because(lapse.span, lapse.because);
  found.with_why("minutes and months are of the tested recipe alone, to the letter");
  found.with_mend("state the amounts of the source, each of one thing");
  found.with_mend("or write `status own` and name the source under `source`");
}

}  // namespace maslin::language::checks
