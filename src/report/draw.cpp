// SPDX-License-Identifier: Apache-2.0
#include "report/draw.hpp"

#include "plan/weights.hpp"

namespace maslin::report {

Drawer::Drawer(const language::Program& program, const language::Basket& basket,
               const language::Kitchen* kitchen)
    : program_(program) {
  const auto add = [&](const std::vector<language::Line>& lines, bool in_store) {
    for (const language::Line& line : lines) {
      if (!line.weight) continue;
      const Rational left = *line.weight - line.spoiled - line.keep_back;
      rests_.push_back({&line, in_store, left * plan::prepared_share(program, line)});
    }
  };
  add(basket.lines, false);
  if (kitchen != nullptr) add(kitchen->store, true);
}

std::vector<Drawn> Drawer::draw(const plan::Taken& taken) {
  std::vector<Drawn> result;
  if (taken.origin != language::Origin::basket && taken.origin != language::Origin::store) {
    return result;
  }
  const bool from_store = taken.origin == language::Origin::store;
  Rational wanted = taken.weight;
  for (Rest& rest : rests_) {
    const language::Line& line = *rest.line;
    const bool same = rest.in_store == from_store && line.ingredient == taken.ingredient &&
                      line.acidity == taken.acidity && line.use_first == taken.use_first &&
                      line.sulphited == taken.sulphited;
    if (!same || !rest.prepared.is_positive() || !wanted.is_positive()) continue;
    const Rational part = smaller(wanted, rest.prepared);
    rest.prepared -= part;
    wanted -= part;
    result.push_back({&line, part, part / plan::prepared_share(program_, line)});
  }
  return result;
}

}  // namespace maslin::report
