// SPDX-License-Identifier: Apache-2.0
// What something is, its numbers and where they come from: everything of one name.
#pragma once

#include <string>
#include <vector>

#include "language/names.hpp"
#include "language/program.hpp"
#include "report/meanings.hpp"
#include "source/source.hpp"

namespace maslin::report {

struct Explained {
  Meaning meaning;
  std::string text;
};

struct Explanation {
  bool found = false;
  std::string text;               // the answer, or what near things there are
  std::vector<Explained> things;  // none for a list of what there is
};

// An empty name, or `ingredients`, `classes`, `frameworks`, `routes`, `standards`, `terms`,
// `codes`, `composition` or `units`, lists what there is.
Explanation explain(const Sources& sources, const language::Program& program,
                    const language::Names& names, const std::string& name);

}  // namespace maslin::report
