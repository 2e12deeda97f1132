// SPDX-License-Identifier: Apache-2.0
// What something is, its numbers and where they come from.
#pragma once

#include <string>

#include "language/names.hpp"
#include "language/program.hpp"
#include "source/source.hpp"

namespace maslin::report {

struct Explanation {
  bool found = false;
  std::string text;  // the answer, or what near things there are
};

// A diagnostic's name is answered elsewhere. An empty name, or `ingredients`, `classes`,
// `frameworks`, `codes`, `composition` or `units`, lists what there is.
Explanation explain(const Sources& sources, const language::Program& program,
                    const language::Names& names, const std::string& name);

}  // namespace maslin::report
