// SPDX-License-Identifier: Apache-2.0
#include "report/purchase.hpp"

namespace maslin::report {
namespace {

const language::Line* line_in(const std::vector<language::Line>& lines, const plan::Taken& taken) {
  for (const language::Line& line : lines) {
    if (line.to_buy && line.ingredient == taken.ingredient && line.acidity == taken.acidity &&
        line.use_first == taken.use_first) {
      return &line;
    }
  }
  return nullptr;
}

}  // namespace

Purchase purchase_of(const language::Program& program, const language::Basket& basket,
                     const language::Kitchen* kitchen, const plan::Taken& taken) {
  Purchase purchase;
  purchase.ingredient = taken.ingredient;
  purchase.acidity = taken.acidity;
  purchase.weight = taken.weight;
  if (const auto& edible = program[taken.ingredient].edible) {
    purchase.weight = taken.weight / middle(edible->value);
    purchase.gross = edible->value.low < Rational(1);
  }
  if (taken.origin != language::Origin::to_buy) return purchase;
  purchase.listed = true;
  const language::Line* line = line_in(basket.lines, taken);
  if (line == nullptr && kitchen != nullptr) line = line_in(kitchen->store, taken);
  if (line == nullptr) return purchase;
  Rational paid = purchase.weight;
  if (line->pack && line->pack->is_positive()) {
    purchase.pack = line->pack;
    purchase.packs = (purchase.weight / *line->pack).ceil_to(1);
    paid = *purchase.packs * *line->pack;
  }
  if (line->price) purchase.cost = paid * *line->price;
  return purchase;
}

}  // namespace maslin::report
