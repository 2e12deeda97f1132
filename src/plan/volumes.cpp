// SPDX-License-Identifier: Apache-2.0
#include "plan/volumes.hpp"

#include "language/membership.hpp"

namespace maslin::plan {
namespace {

Bounds solids_of(const language::Program& program, const Taken& taken) {
  const auto share =
      language::figure_of(program[taken.ingredient], language::Property::total_solids);
  if (share) return {taken.weight * share->low, taken.weight * share->high};
  return {0, taken.weight};
}

// A gram a millilitre, less what solids save; more solids than there is weight are none.
Bounds room(const Bounds& weight, const Bounds& solids) {
  const Rational most_solids = smaller(solids.high, weight.low);
  return {weight.low - most_solids * room_saved.high, weight.high - solids.low * room_saved.low};
}

}  // namespace

Range<Volume> ingoing_volume(const language::Program& program, const Draft& draft,
                             const std::vector<Item>& items) {
  Bounds sum;
  for (const Item& item : items) {
    const Bounds solids = solids_of(program, taken_of(draft, item.taken));
    Bounds each = room(Bounds::exactly(weight_of(draft, item)),
                       {solids.low * item.share, solids.high * item.share});
    if (item.taken.list == language::SlotKind::produce) {
      each = {each.low * raw_swelling.low, each.high * raw_swelling.high};
    }
    sum = {sum.low + each.low, sum.high + each.high};
  }
  return {Volume(sum.low), Volume(sum.high)};
}

Bounds solids_in(const language::Program& program, const Draft& draft) {
  Bounds sum;
  for (const TakenId& id : all_taken(draft)) {
    const Bounds each = solids_of(program, taken_of(draft, id));
    sum = {sum.low + each.low, sum.high + each.high};
  }
  return sum;
}

Range<Volume> hot_volume(const Bounds& solids, const Range<FinishedMass>& finished) {
  const Bounds cold = room({finished.low.in_base(), finished.high.in_base()}, solids);
  return {Volume(cold.low * hot_swelling.low), Volume(cold.high * hot_swelling.high)};
}

}  // namespace maslin::plan
