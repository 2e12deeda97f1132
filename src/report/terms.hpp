// SPDX-License-Identifier: Apache-2.0
// What the words of a sheet mean: one page a term, in the folder `terms`. A page has its name as
// its title, perhaps a line `Also:` of other names with semicolons between them (the words that a
// sheet prints among them), and parts under `##`.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace maslin::report {

struct TermPart {
  std::string head;  // in lower case: "what it is", "unit", "worked out", …
  std::string text;  // on one line
};

struct Term {
  std::string name;
  std::vector<std::string> also;
  std::vector<TermPart> parts;
};

// By name.
const std::vector<Term>& all_terms();
// By its name or another of its names, capital letters aside; null where there is none.
const Term* term_named(std::string_view name);

}  // namespace maslin::report
