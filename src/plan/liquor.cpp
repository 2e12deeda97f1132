// SPDX-License-Identifier: Apache-2.0
#include "plan/liquor.hpp"

#include "language/amounts.hpp"
#include "language/membership.hpp"

namespace maslin::plan {
namespace {

// What is in the pan or the jars: its weight, its acetic acid and the water poured into it, g.
struct Sum {
  Rational weight;
  Bounds acid;
  Rational water;
};

// From here on a liquid without acid is water poured in, by its share of water.
const Rational as_good_as_water(Rational::Wide{99}, Rational::Wide{100});

void add(const language::Program& program, const Draft& draft, const Item& item, Sum& sum) {
  const Taken& taken = taken_of(draft, item.taken);
  const Rational weight = weight_of(draft, item);
  const auto acid = language::share_of(program, language::Property::acetic_acid,
                                       {taken.ingredient, taken.acidity});
  sum.weight += weight;
  if (acid) sum.acid = {sum.acid.low + weight * acid->low, sum.acid.high + weight * acid->high};
  const auto water = language::figure_of(program[taken.ingredient], language::Property::water);
  const bool liquid = language::is_of_class(program, taken.ingredient, "liquid");
  if (liquid && water && water->low >= as_good_as_water) sum.water += weight;
}

Bounds part(const Bounds& amount, const Rational& whole) {
  return {amount.low / whole, amount.high / whole};
}

}  // namespace

std::optional<Liquor> liquor_of(const language::Program& program, const VerifiedPlan& plan,
                                const Timeline& timeline) {
  Sum poured;
  Sum packed;
  for (const TimelineStage& stage : timeline) {
    for (const TimelineStep& step : stage.steps) {
      for (const Item& item : step.entering) {
        add(program, plan.draft(), item, step.for_jars ? packed : poured);
      }
    }
  }
  if (!packed.weight.is_positive() || !poured.weight.is_positive()) return std::nullopt;
  const Bounds acid{poured.acid.low + packed.acid.low, poured.acid.high + packed.acid.high};
  return Liquor{part(poured.acid, poured.weight), part(acid, poured.weight + packed.weight),
                poured.water / poured.weight};
}

}  // namespace maslin::plan
