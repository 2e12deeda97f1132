// SPDX-License-Identifier: Apache-2.0
// From which lines of the basket an amount is taken, and how much of each that is as brought in.
#pragma once

#include <optional>
#include <vector>

#include "language/program.hpp"
#include "plan/draft.hpp"

namespace maslin::report {

struct Drawn {
  const language::Line* line = nullptr;
  Rational prepared;  // g
  Rational gross;     // g as on the line: gross where it was weighed so
};

// Goes through the lines in the order they were written, so each is used up before the next.
class Drawer {
 public:
  Drawer(const language::Program& program, const language::Basket& basket,
         const language::Kitchen* kitchen);

  std::vector<Drawn> draw(const plan::Taken& taken);

 private:
  struct Rest {
    const language::Line* line;
    bool in_store;
    Rational prepared;
  };
  const language::Program& program_;
  std::vector<Rest> rests_;
};

}  // namespace maslin::report
