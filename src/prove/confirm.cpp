// SPDX-License-Identifier: Apache-2.0
#include "prove/confirm.hpp"

#include <cmath>

#include "blend/best.hpp"

namespace maslin::prove {
namespace {

using language::Line;

constexpr double kilograms = 10;
constexpr double grams = 1000;

Line line_of(language::IngredientId ingredient, const Rational& weight) {
  Line line;
  line.ingredient = ingredient;
  line.weight = weight;
  line.basis = language::WeighedAs::prepared;
  return line;
}

}  // namespace

bool is_refused(const Case& given, const Choice& choice, const Mix& mix) {
  language::Basket basket;
  for (std::size_t m = 0; m < mix.parts.size(); ++m) {
    // Rounded up to a milligram: what is missing of a share would be a reason of its own.
    const double milligrams = std::ceil(mix.parts[m] * kilograms * grams * grams);
    if (milligrams < 1) continue;
    basket.lines.push_back(line_of(
        given.members[m].ingredient,
        Rational(Rational::Wide(static_cast<long long>(milligrams)), Rational::Wide(1000))));
  }
  language::Kitchen kitchen;
  const Rational plenty(1000000);
  for (const language::Stuff& stuff : choice.additions) {
    Line line = line_of(stuff.ingredient, plenty);
    line.acidity = stuff.acidity;
    kitchen.store.push_back(std::move(line));
  }
  const blend::Grounding grounding{given.program, given.framework, basket, &kitchen};
  blend::Setting setting;
  setting.goal = {blend::GoalKind::prepared, kilograms};
  return blend::solve_best(grounding, setting).solution.status == blend::Status::infeasible;
}

}  // namespace maslin::prove
