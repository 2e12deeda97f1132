// SPDX-License-Identifier: Apache-2.0
// What would mend a framework that a mix breaks: one range changed, as little as serves, and the
// whole proved again.
#pragma once

#include <cstdint>
#include <vector>

#include "prove/proof.hpp"

namespace maslin::prove {

struct Mend {
  enum class Kind : std::uint8_t {
    raise_addition,  // the most of an addition
    lower_share,     // the most of a share
    loosen_limit,    // a limit of the framework's own
  };
  Kind kind{};
  std::size_t index = 0;    // of the addition, share or limit
  bool of_low_end = false;  // of a limit: its lower end
  Rational bound;           // the end of the range then, as the program keeps it
};

std::vector<Mend> find_mends(const language::Program& program, const language::Framework& framework,
                             const Proof& proof);

}  // namespace maslin::prove
