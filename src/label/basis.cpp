// SPDX-License-Identifier: Apache-2.0
#include "label/basis.hpp"

#include "plan/volumes.hpp"

namespace maslin::label {

FinishedMass middle_of(const Range<FinishedMass>& finished) {
  return FinishedMass(middle({finished.low.in_base(), finished.high.in_base()}));
}

Mass ingoing_of(const plan::Draft& draft) {
  Mass sum;
  for (const plan::TakenId& id : plan::all_taken(draft)) {
    sum += Mass(plan::taken_of(draft, id).weight);
  }
  return sum;
}

Mass net_of(const language::Program& program, const plan::Draft& draft, FinishedMass finished,
            long fill) {
  const Range<Volume> room =
      plan::hot_volume(plan::solids_in(program, draft), Range<FinishedMass>::exactly(finished));
  return Mass((Rational(fill) * finished.in_base() / room.high.in_base()).floor_to(1));
}

Basis basis_of(const language::Program& program, const plan::Plan& plan) {
  Basis basis;
  basis.draft = plan.verified.draft();
  basis.finished = plan.afternoon.course.finish;
  basis.mark = program[basis.draft.task.basket].name;
  basis.boils = plan.afternoon.boils.too_many ? 1 : plan.afternoon.boils.count;
  const auto& jars = plan.afternoon.jars;
  if (!jars) {
    basis.lots.push_back({1, basis.boils, {}});
    return basis;
  }
  for (const plan::FilledBoils& boils : jars->boils) {
    Lots lots{boils.first, boils.last, {}};
    for (std::size_t i = 0; i < boils.filling.full.size(); ++i) {
      if (boils.filling.full[i] == 0) continue;
      lots.jars.push_back(
          {jars->sizes[i].holds, boils.filling.full[i],
           net_of(program, basis.draft, middle_of(basis.finished), jars->sizes[i].fill)});
    }
    if (boils.filling.part_size) {
      basis.part_filled = true;
      lots.jars.push_back({jars->sizes[*boils.filling.part_size].holds, 1, std::nullopt});
    }
    basis.lots.push_back(std::move(lots));
  }
  return basis;
}

}  // namespace maslin::label
