// SPDX-License-Identifier: Apache-2.0
#include "report/cost.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "report/draw.hpp"
#include "report/purchase.hpp"

namespace maslin::report {
namespace {

using language::Program;

Rational to_hundredth(const Rational& money) {
  return money.round_to(Rational(Rational::Wide{1}, Rational::Wide{100}));
}

// What one thing taken costs; nothing where a part of it has no price.
class Prices {
 public:
  Prices(const Program& program, const plan::Plan& plan, const language::Kitchen* kitchen)
      : drawer_(program, program[plan.verified.draft().task.basket], kitchen),
        purchases_(purchases_of(program, plan)) {}

  std::optional<Rational> of(const plan::Taken& taken) {
    const auto drawn = drawer_.draw(taken);
    if (drawn.empty()) return of_bought(taken);
    Rational sum;
    for (const Drawn& each : drawn) {
      if (!each.line->price) return std::nullopt;
      sum += each.gross * *each.line->price;
    }
    return sum;
  }

 private:
  std::optional<Rational> of_bought(const plan::Taken& taken) const {
    for (const Purchase& each : purchases_) {
      if (each.ingredient != taken.ingredient || each.acidity != taken.acidity || !each.price) {
        continue;
      }
      return taken.weight / each.edible * *each.price;
    }
    return std::nullopt;
  }

  Drawer drawer_;
  std::vector<Purchase> purchases_;
};

// The dearest, where one size is listed at several: no jar is told cheaper than it may be.
std::optional<Rational> price_of_jar(const language::Kitchen* kitchen, const Volume& holds) {
  std::optional<Rational> price;
  if (kitchen == nullptr) return price;
  for (const language::JarStock& stock : kitchen->jars) {
    if (stock.holds == holds && stock.price && (!price || *price < *stock.price)) {
      price = stock.price;
    }
  }
  return price;
}

void add_jars(const plan::JarPlan& jars, long boils, const language::Kitchen* kitchen, Cost& cost) {
  const Rational millilitres =
      Rational(jars.expected_ml.low + jars.expected_ml.high) * Rational(boils) / Rational(2);
  for (std::size_t i = 0; i < jars.sizes.size(); ++i) {
    if (jars.used[i] == 0) continue;
    const plan::JarSize& size = jars.sizes[i];
    const Rational share = smaller(Rational(1), Rational(size.fill) / millilitres);
    cost.by_jar.push_back({size.holds, jars.used[i], to_hundredth(cost.contents * share),
                           price_of_jar(kitchen, size.holds)});
    const auto& price = cost.by_jar.back().jar;
    if (price) cost.jars = cost.jars.value_or(Rational(0)) + *price * Rational(jars.used[i]);
  }
  if (!cost.jars) return;
  cost.jars = to_hundredth(*cost.jars);
  for (const JarCost& each : cost.by_jar) {
    if (each.jar) continue;
    cost.unpriced.push_back(fmt::format("jars of {} ml", each.holds.in_base().to_decimal(0)));
  }
}

}  // namespace

std::optional<Cost> cost_of(const Program& program, const plan::Plan& plan) {
  const plan::Draft& draft = plan.verified.draft();
  const auto* kitchen = draft.task.kitchen.valid() ? &program[draft.task.kitchen] : nullptr;
  Prices prices(program, plan, kitchen);
  Cost cost;
  bool any = false;
  std::set<std::string> unpriced;
  const auto add = [&](const plan::Taken& taken) {
    if (const auto price = prices.of(taken)) {
      cost.contents += *price;
      any = true;
    } else {
      unpriced.insert(program[taken.ingredient].name);
    }
  };
  for (const plan::TakenId& id : plan::all_taken(draft)) add(plan::taken_of(draft, id));
  for (const plan::Taken& salt : salt_beside(program, plan)) add(salt);
  cost.contents = to_hundredth(cost.contents);
  cost.unpriced.assign(unpriced.begin(), unpriced.end());
  if (plan.afternoon.jars)
    add_jars(*plan.afternoon.jars, plan.afternoon.boils.count, kitchen, cost);
  if (!any && !cost.jars) return std::nullopt;
  return cost;
}

std::string cost_text(const Cost& cost) {
  const auto money = [](const Rational& amount) { return amount.to_decimal(2, true); };
  // What has no price is no part of it, and is told beside it.
  std::string text =
      fmt::format("{} comes to {}", cost.unpriced.empty() ? "The batch" : "What has a price",
                  money(cost.in_all()));
  if (cost.jars) {
    text += fmt::format(": {} for what goes in and {} for jars", money(cost.contents),
                        money(*cost.jars));
  }
  text += ".";
  if (cost.by_jar.empty()) return text;
  std::string jars;
  for (const JarCost& each : cost.by_jar) {
    jars += fmt::format("{}{} of {} ml", jars.empty() ? "" : ", ", money(each.in_all()),
                        each.holds.in_base().to_decimal(0));
  }
  return text + " By the full jar: " + jars + ".";
}

}  // namespace maslin::report
