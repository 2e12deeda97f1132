// SPDX-License-Identifier: Apache-2.0
#include "report/purchase.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "plan/salting.hpp"
#include "plan/weights.hpp"
#include "report/draw.hpp"

namespace maslin::report {
namespace {

const language::Line* line_in(const std::vector<language::Line>& lines, const plan::Taken& taken) {
  for (const language::Line& line : lines) {
    if (line.to_buy && line.ingredient == taken.ingredient && line.acidity == taken.acidity &&
        line.use_first == taken.use_first && line.sulphited == taken.sulphited) {
      return &line;
    }
  }
  return nullptr;
}

bool is_fetched(const plan::Taken& taken) {
  return taken.origin == language::Origin::to_buy || taken.origin == language::Origin::to_have;
}

bool is_same_thing(const plan::Taken& a, const plan::Taken& b) {
  return a.ingredient == b.ingredient && a.acidity == b.acidity && a.origin == b.origin &&
         a.use_first == b.use_first && a.sulphited == b.sulphited;
}

Purchase purchase_of(const language::Program& program, const language::Basket& basket,
                     const language::Kitchen* kitchen, const plan::Taken& taken) {
  Purchase purchase;
  purchase.ingredient = taken.ingredient;
  purchase.acidity = taken.acidity;
  purchase.weight = taken.weight;
  if (const auto& edible = program[taken.ingredient].edible) {
    purchase.edible = middle(edible->value);
    purchase.weight = taken.weight / purchase.edible;
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
  purchase.price = line->price;
  if (line->price) purchase.cost = paid * *line->price;
  return purchase;
}

void put(std::vector<plan::Taken>& things, const plan::Taken& taken) {
  const auto same = std::find_if(things.begin(), things.end(), [&](const plan::Taken& thing) {
    return is_same_thing(thing, taken);
  });
  if (same == things.end()) {
    things.push_back(taken);
  } else {
    same->weight += taken.weight;
  }
}

Rational draw(Drawer& drawer, plan::Taken salt, language::Origin origin) {
  salt.origin = origin;
  Rational sum;
  for (const Drawn& each : drawer.draw(salt)) sum += each.prepared;
  return sum;
}

}  // namespace

std::vector<plan::Taken> salt_beside(const language::Program& program, const plan::Plan& plan) {
  using language::Origin;
  const plan::Draft& draft = plan.verified.draft();
  const auto salt = plan::salt_beside(program, plan.afternoon.saltings);
  if (!salt) return {};
  const language::Basket& basket = program[draft.task.basket];
  const bool any = draft.task.kitchen.valid();
  const language::Kitchen* kitchen = any ? &program[draft.task.kitchen] : nullptr;
  Drawer drawer(program, basket, kitchen);
  for (const plan::TakenId& id : plan::all_taken(draft)) drawer.draw(taken_of(draft, id));
  std::vector<plan::Taken> parts;
  plan::Taken rest = *salt;
  const auto take = [&](Origin origin, const Rational& weight) {
    if (!weight.is_positive()) return;
    parts.push_back(rest);
    parts.back().origin = origin;
    parts.back().weight = weight;
    rest.weight -= weight;
  };
  for (const Origin origin : {Origin::basket, Origin::store}) {
    take(origin, draw(drawer, rest, origin));
  }
  const bool listed =
      line_in(basket.lines, *salt) != nullptr || (any && line_in(kitchen->store, *salt) != nullptr);
  take(listed ? Origin::to_buy : Origin::to_have, rest.weight);
  return parts;
}

std::vector<Purchase> purchases_of(const language::Program& program, const plan::Plan& plan) {
  const plan::Draft& draft = plan.verified.draft();
  std::vector<plan::Taken> things;
  for (const auto* list : {&draft.produce, &draft.additions, &draft.substitutes}) {
    for (const plan::Taken& taken : *list) {
      if (is_fetched(taken)) put(things, taken);
    }
  }
  for (const plan::Taken& salt : salt_beside(program, plan)) {
    if (is_fetched(salt)) put(things, salt);
  }
  const language::KitchenId kitchen = draft.task.kitchen;
  std::vector<Purchase> purchases;
  purchases.reserve(things.size());
  for (const plan::Taken& thing : things) {
    purchases.push_back(purchase_of(program, program[draft.task.basket],
                                    kitchen.valid() ? &program[kitchen] : nullptr, thing));
  }
  return purchases;
}

std::vector<ShoppingLine> shopping_lines(const language::Program& program, const plan::Plan& plan) {
  const plan::Draft& draft = plan.verified.draft();
  const auto salt = salt_beside(program, plan);
  std::vector<ShoppingLine> lines;
  for (const Purchase& purchase : purchases_of(program, plan)) {
    ShoppingLine line;
    line.what = program[purchase.ingredient].name;
    if (purchase.acidity) {
      line.what += fmt::format(", {} acidity", plan::percent_text(*purchase.acidity));
    }
    for (const auto* list : {&draft.produce, &draft.additions, &draft.substitutes}) {
      for (const plan::Taken& taken : *list) {
        if (taken.ingredient != purchase.ingredient || taken.acidity != purchase.acidity) continue;
        line.needed += PreparedMass(taken.weight);
        if (!is_fetched(taken)) line.at_hand += PreparedMass(taken.weight);
      }
    }
    for (const plan::Taken& part : salt) {
      if (part.ingredient != purchase.ingredient) continue;
      line.needed += PreparedMass(part.weight);
      if (!is_fetched(part)) line.at_hand += PreparedMass(part.weight);
    }
    line.purchase = purchase;
    lines.push_back(std::move(line));
  }
  return lines;
}

}  // namespace maslin::report
