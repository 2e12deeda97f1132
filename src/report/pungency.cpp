// SPDX-License-Identifier: Apache-2.0
#include "report/pungency.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "language/membership.hpp"
#include "science/pungency.hpp"

namespace maslin::report {
namespace {

constexpr double grams_in_kilogram = 1000;

science::Pods pods_of(const language::Ingredient& ingredient, const plan::Taken& taken) {
  science::Pods pods;
  pods.mass = Kilogram(taken.weight.to_double() / grams_in_kilogram);
  const Bounds dry = language::figure_of(ingredient, language::Property::total_solids)
                         .value_or(Bounds{Rational(0), Rational(1)});
  pods.dry_matter = {Share(dry.low.to_double()), Share(dry.high.to_double())};
  const Bounds& heat = ingredient.pungency->value;
  pods.dry = {Scoville(heat.low.to_double()), Scoville(heat.high.to_double())};
  return pods;
}

double to_two_figures(double value, bool up) {
  if (value <= 0) return 0;
  const double step = std::pow(10, std::floor(std::log10(value)) - 1);
  const double steps = value / step;
  return (up ? std::ceil(steps) : std::floor(steps)) * step;
}

}  // namespace

std::optional<Pungency> pungency_of(const language::Program& program, const plan::Plan& plan) {
  const plan::Draft& draft = plan.verified.draft();
  const Scoville sweet = science::pungency_of(science::Pod::sweet).high;
  std::vector<science::Pods> pods;
  Pungency result;
  for (const plan::TakenId& id : plan::all_taken(draft)) {
    const plan::Taken& taken = plan::taken_of(draft, id);
    const language::Ingredient& ingredient = program[taken.ingredient];
    if (!ingredient.pungency) continue;
    pods.push_back(pods_of(ingredient, taken));
    if (pods.back().dry.high > sweet) result.pods.push_back(ingredient.name);
  }
  if (result.pods.empty()) return std::nullopt;
  std::sort(result.pods.begin(), result.pods.end());
  result.pods.erase(std::unique(result.pods.begin(), result.pods.end()), result.pods.end());
  const Range<FinishedMass>& finish = plan.afternoon.course.finish;
  const auto of = [&](const FinishedMass& mass) {
    return science::pungency(pods, Kilogram(mass.to_double() / grams_in_kilogram));
  };
  const auto mildest = of(finish.high);
  const auto hottest = of(finish.low);
  if (!mildest || !hottest) return std::nullopt;
  result.finished = {mildest->low, hottest->high};
  return result;
}

std::string text_of(const Range<Scoville>& range) {
  return fmt::format("{:.0f} to {:.0f}", to_two_figures(range.low.in_unit(), false),
                     to_two_figures(range.high.in_unit(), true));
}

}  // namespace maslin::report
