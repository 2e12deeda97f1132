// SPDX-License-Identifier: Apache-2.0
#include "language/amounts.hpp"

#include <algorithm>

#include "language/membership.hpp"

namespace maslin::language {
namespace {

// Vinegar on sale for preserving is 5 g in 100 ml (USDA Complete Guide to Home Canning: at least
// 5 % acidity).
const Rational usual_strength(Rational::Wide{5}, Rational::Wide{100});

const Rational least_acid(Rational::Wide{2}, Rational::Wide{100});

bool is_credited_by_sort(Property property) {
  return property == Property::acidity || property == Property::acetic_acid;
}

}  // namespace

Rational stated_strength(const Addition& addition) {
  return addition.strength.value_or(usual_strength);
}

Rational amount_per_gram(const Program& program, const Addition& addition, const Stuff& stuff) {
  const Ingredient& ingredient = program[stuff.ingredient];
  // A stronger bottle stands for more of the stated strength.
  const Rational strength =
      stuff.acidity ? *stuff.acidity / stated_strength(addition) : Rational(1);
  switch (addition.measured) {
    case Measured::by_weight:
      return strength;
    case Measured::by_volume:
      if (!ingredient.density) return Rational::undefined();
      return strength / middle(ingredient.density->value);
    case Measured::by_count:
      if (!ingredient.piece) return Rational::undefined();
      return Rational(1) / middle(ingredient.piece->value);
  }
  return Rational::undefined();
}

Rational credit_per_gram(const Program& program, const Substitution& substitution,
                         const Framework& framework, const Stuff& stuff) {
  const Addition& addition = framework.additions[substitution.addition];
  const auto share = share_of(program, substitution.by, stuff);
  if (!share) return Rational::undefined();
  if (is_credited_by_sort(substitution.by)) {
    if (addition.measured == Measured::by_volume) return share->low / stated_strength(addition);
    return Rational::undefined();
  }
  if (addition.measured != Measured::by_weight) return Rational::undefined();
  // What dried fruit is expected to bring; the published range is shown beside it.
  return middle(*share);
}

std::optional<Bounds> share_of(const Program& program, Property property, const Stuff& stuff) {
  const Ingredient& ingredient = program[stuff.ingredient];
  const bool acid = property == Property::acetic_acid || property == Property::acidity;
  if (acid && stuff.acidity) {
    if (!ingredient.density) return std::nullopt;
    const Bounds& density = ingredient.density->value;
    return Bounds{*stuff.acidity / density.high, *stuff.acidity / density.low};
  }
  return figure_of(ingredient, property);
}

bool is_in_the_pan_anyway(const Program& program, const Framework& framework,
                          const Substitution& substitution, IngredientId ingredient) {
  const auto takes_it = [&](const Target& target) { return takes(program, target, ingredient); };
  for (std::size_t i = 0; i < framework.additions.size(); ++i) {
    if (i != substitution.addition && takes_it(framework.additions[i].target)) return true;
  }
  return std::any_of(framework.shares.begin(), framework.shares.end(),
                     [&](const ProduceShare& share) { return takes_it(share.target); });
}

bool allows_other_strength(const Framework& framework, std::size_t addition) {
  return std::any_of(framework.substitutions.begin(), framework.substitutions.end(),
                     [&](const Substitution& each) {
                       return each.addition == addition && each.by == Property::acetic_acid &&
                              each.donor.name == each.replaced.name;
                     });
}

Bounds other_strengths(const Addition& addition) {
  const Rational stated = stated_strength(addition);
  return {stated * Rational(Rational::Wide{4}, Rational::Wide{5}), stated * Rational(2)};
}

bool takes_strength(const Framework& framework, std::size_t addition, const Rational& acidity) {
  const Addition& stated = framework.additions[addition];
  if (acidity == stated_strength(stated)) return true;
  return allows_other_strength(framework, addition) && other_strengths(stated).contains(acidity);
}

bool is_acid_donor(const Program& program, const Stuff& stuff) {
  if (stuff.acidity) return true;
  const auto acidity = share_of(program, Property::acidity, stuff);
  return acidity && acidity->low >= least_acid;
}

bool needs_strength(const Ingredient& ingredient) {
  return ingredient.composition.or_none(science::Substance::acetic_acid).high >= least_acid;
}

bool is_of_finished(const Limit& limit) {
  if (limit.whole == Whole::finished_product) return true;
  return limit.whole == Whole::none;
}

bool joins_whole(const Program& program, const Limit& limit, IngredientId addition) {
  if (limit.whole != Whole::produce_and_water) return false;
  const Rational nearly_all(Rational::Wide{99}, Rational::Wide{100});
  const auto& composition = program[addition].composition;
  return composition.or_none(science::Substance::water).low >= nearly_all;
}

bool is_linear(const Limit& limit) {
  if (limit.whole == Whole::volatile_matter) return false;
  const bool of_produce =
      limit.whole == Whole::prepared_produce || limit.whole == Whole::produce_and_water;
  if (!limit.property) return of_produce || is_of_finished(limit);
  switch (*limit.property) {
    case Property::soluble_solids:
    case Property::total_solids:
    case Property::sugars:
    case Property::salt:
      return true;
    // Part of the acid boils away with the water.
    case Property::acetic_acid:
    case Property::acidity:
      return of_produce;
    default:
      return false;
  }
}

bool is_computed(const Limit& limit) {
  if (is_linear(limit)) return true;
  if (!limit.property) return false;
  switch (*limit.property) {
    case Property::ph:
    case Property::water_activity:
    case Property::stability_index:
      return limit.whole == Whole::none;
    case Property::acetic_acid:
      return true;
    case Property::acidity:
      return limit.whole == Whole::finished_product;
    default:
      return false;
  }
}

bool says_how_far(const Framework& framework) {
  return std::any_of(framework.limits.begin(), framework.limits.end(),
                     [](const Limit& limit) { return is_linear(limit) && is_of_finished(limit); });
}

science::Composition composition_of(const Program& program, const Stuff& stuff) {
  using science::Substance;
  const Ingredient& ingredient = program[stuff.ingredient];
  science::Composition result = ingredient.composition;
  if (const auto acid = share_of(program, Property::acetic_acid, stuff); acid && stuff.acidity) {
    // What is more acid holds less water, gram for gram.
    const Bounds before = result.or_none(Substance::acetic_acid);
    result[Substance::acetic_acid] = *acid;
    if (auto& water = result[Substance::water]) {
      *water = {larger(water->low + before.low - acid->high, 0),
                smaller(water->high + before.high - acid->low, 1)};
    }
  }
  if (!result[Substance::water] && ingredient.total_solids) {
    const Bounds& solids = ingredient.total_solids->value;
    result[Substance::water] = Bounds{Rational(1) - solids.high, Rational(1) - solids.low};
  }
  if (!science::sugars(result) && ingredient.soluble_solids) {
    // Acids and minerals are part of what a refractometer reads.
    result[Substance::sugars] = Bounds{0, ingredient.soluble_solids->value.high};
  }
  return result;
}

bool has_composition(const Program& program, IngredientId ingredient) {
  const auto composition = composition_of(program, {ingredient, std::nullopt});
  return composition[science::Substance::water].has_value();
}

}  // namespace maslin::language
