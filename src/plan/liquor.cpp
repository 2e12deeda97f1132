// SPDX-License-Identifier: Apache-2.0
#include "plan/liquor.hpp"

#include <fmt/format.h>

#include "language/amounts.hpp"
#include "language/checks/checks.hpp"
#include "language/membership.hpp"

namespace maslin::plan {
namespace {

// What is in the pan or the jars: its weight, its acetic acid and the water poured into it, g.
struct Sum {
  Rational weight;
  Bounds acid;
  Rational water;
  Bounds sour;       // volume of what has a strength stated, ml
  Bounds dissolved;  // the acid in that, g
  Bounds other;      // volume of other liquids, ml
  Rational liquids;  // weight of all liquids, g
};

Bounds operator+(const Bounds& a, const Bounds& b) { return {a.low + b.low, a.high + b.high}; }

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
  if (!liquid) return;
  sum.liquids += weight;
  const auto& figure = program[taken.ingredient].density;
  const Bounds density = figure ? figure->value : Bounds::exactly(1);
  const Bounds volume{weight / density.high, weight / density.low};
  if (!taken.acidity) {
    sum.other = sum.other + volume;
    return;
  }
  sum.sour = sum.sour + volume;
  sum.dissolved = sum.dissolved + Bounds{volume.low * *taken.acidity, volume.high * *taken.acidity};
}

// A heavy vinegar takes up less room beside the water, a light one more.
Bounds acidity_of(const Sum& sum) {
  const Rational least = sum.sour.low + sum.other.high;
  const Rational most = sum.sour.high + sum.other.low;
  if (!least.is_positive() || !most.is_positive()) return {};
  return {sum.dissolved.low / least, sum.dissolved.high / most};
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
  const Rational pieces = packed.weight - packed.liquids;
  const Rational cover =
      pieces.is_positive() ? (poured.weight + packed.liquids) / pieces : Rational(1);
  return Liquor{acidity_of(poured),
                part(poured.acid, poured.weight),
                part(acid, poured.weight + packed.weight),
                poured.water / poured.weight,
                cover,
                Mass(poured.weight)};
}

void report_cover(const language::Program& program, const VerifiedPlan& plan, const Liquor& liquor,
                  Diagnostics& diagnostics) {
  const language::Method& method = program[plan.draft().task.framework].method;
  if (language::ferments(method) || liquor.cover >= least_cover) return;
  diagnostics
      .report(Code::uncovered, method.span,
              fmt::format("{} g of liquor is to cover each kilogram of what is packed",
                          (liquor.cover * 1000).to_decimal(0)))
      .with_why(
          "pieces packed tight leave about a third of the jar to the liquor, half as much as "
          "they weigh; what stands out of it spoils")
      .with_mend("write more vinegar for each kilogram into the framework, or pack less");
}

bool check_liquor(const language::Program& program, const VerifiedPlan& plan, const Liquor& liquor,
                  const std::optional<Tested>& tested, Diagnostics& diagnostics) {
  const language::Framework& framework = program[plan.draft().task.framework];
  const auto floor = language::liquor_floor(program, framework);
  const bool as_tested = tested && tested->of_the_mix.empty();
  if (!floor || as_tested || liquor.acidity.low >= floor->floor->acidity) return true;
  report_weak_liquor(program, *floor, liquor.acidity.low, liquor.water.is_positive(),
                     framework.method.span, diagnostics);
  return false;
}

}  // namespace maslin::plan
