// SPDX-License-Identifier: Apache-2.0
// The keeping proof in words: what holds for every mix, or the mix that breaks a limit.
#pragma once

#include <string>
#include <vector>

#include "diagnostic/diagnostic.hpp"
#include "prove/mend.hpp"

namespace maslin::report {

struct Proved {
  language::FrameworkId framework;
  prove::Proof proof;
  std::string taste = {};  // the first of its tastes that does not hold though the framework does
};

// "45 % carrot, 30 % apple": to a tenth of a percent, the largest first.
std::string mix_text(const language::Program& program, const std::vector<prove::Ingredient>& mix);

// Reports a mix that breaks a limit, or that nothing was shown.
void tell_proof(const language::Program& program, const language::Framework& framework,
                const prove::Proof& proof, const std::vector<prove::Mend>& mends,
                Diagnostics& diagnostics);

// What `check` prints of a framework, a line or more.
std::string proof_text(const Sources& sources, const language::Program& program,
                       const language::Framework& framework, const Proved& proved);

// The word a verdict has in JSON.
std::string_view word_of(prove::Verdict verdict);

}  // namespace maslin::report
