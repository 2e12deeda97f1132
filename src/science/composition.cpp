// SPDX-License-Identifier: Apache-2.0
#include "science/composition.hpp"

#include <initializer_list>

namespace maslin::science {
namespace {

constexpr std::string_view names[] = {
#define MASLIN_SUBSTANCE(identifier, name) name,
#include "science/substances.def"
#undef MASLIN_SUBSTANCE
};

constexpr std::initializer_list<Substance> kinds_of_sugar = {
    Substance::glucose, Substance::fructose, Substance::sucrose,
    Substance::maltose, Substance::lactose,  Substance::galactose};

// Grams of acetic acid that one gram is worth when titrated.
struct AcidEquivalent {
  Substance acid;
  Rational::Wide milligrams_per_gram;
};
// 60.052 * n / M, rounded to the milligram.
constexpr AcidEquivalent equivalents[] = {
    {Substance::citric_acid, 938},   {Substance::malic_acid, 896},
    {Substance::tartaric_acid, 800}, {Substance::oxalic_acid, 1334},
    {Substance::lactic_acid, 667},   {Substance::succinic_acid, 1017},
    {Substance::organic_acids, 900}, {Substance::acetic_acid, 1000}};

constexpr std::initializer_list<Substance> fixed = {
    Substance::citric_acid,  Substance::malic_acid,  Substance::tartaric_acid,
    Substance::oxalic_acid,  Substance::lactic_acid, Substance::succinic_acid,
    Substance::organic_acids};

Bounds sum(const Composition& composition, std::initializer_list<Substance> list) {
  Bounds result;
  for (const Substance substance : list) {
    const Bounds part = composition.or_none(substance);
    result.low += part.low;
    result.high += part.high;
  }
  return result;
}

Bounds plus(const Bounds& a, const Bounds& b) { return {a.low + b.low, a.high + b.high}; }

bool any(const Composition& composition, std::initializer_list<Substance> list) {
  for (const Substance substance : list) {
    if (composition[substance]) return true;
  }
  return false;
}

// A measured total beside its kinds holds both readings.
Bounds holding(const Bounds& a, const Bounds& b) {
  return {smaller(a.low, b.low), larger(a.high, b.high)};
}

}  // namespace

std::string_view name_of(Substance substance) { return names[static_cast<std::size_t>(substance)]; }

std::optional<Substance> substance_named(std::string_view name) {
  for (std::size_t i = 0; i < substance_count; ++i) {
    if (names[i] == name) return static_cast<Substance>(i);
  }
  return std::nullopt;
}

Bounds Composition::or_none(Substance s) const { return (*this)[s].value_or(Bounds{}); }

std::optional<Bounds> sugars(const Composition& composition) {
  const std::optional<Bounds>& whole = composition[Substance::sugars];
  if (!any(composition, kinds_of_sugar)) return whole;
  const Bounds kinds = sum(composition, kinds_of_sugar);
  return whole ? holding(*whole, kinds) : kinds;
}

Bounds fixed_acids(const Composition& composition) { return sum(composition, fixed); }

std::optional<Bounds> soluble_solids(const Composition& composition) {
  const std::optional<Bounds> sugar = sugars(composition);
  const bool plain_salt = composition[Substance::salt].has_value();
  if (!sugar && !plain_salt) return std::nullopt;
  Bounds result = plus(sugar.value_or(Bounds{}), fixed_acids(composition));
  result = plus(result, sum(composition, {Substance::polyols, Substance::ash, Substance::salt}));
  return Bounds{result.low, smaller(result.high, 1)};
}

std::optional<Bounds> total_solids(const Composition& composition) {
  if (!composition[Substance::water]) return std::nullopt;
  const Bounds volatiles =
      sum(composition, {Substance::water, Substance::acetic_acid, Substance::alcohol});
  return Bounds{larger(Rational(1) - volatiles.high, 0), larger(Rational(1) - volatiles.low, 0)};
}

Bounds acidity_as_acetic(const Composition& composition) {
  Bounds result;
  for (const AcidEquivalent& each : equivalents) {
    const Rational factor(each.milligrams_per_gram, 1000);
    const Bounds part = composition.or_none(each.acid);
    result.low += part.low * factor;
    result.high += part.high * factor;
  }
  return result;
}

Bounds total(const Composition& composition) {
  Bounds result =
      plus(sum(composition, {Substance::water, Substance::protein, Substance::fat, Substance::fibre,
                             Substance::starch, Substance::polyols, Substance::acetic_acid,
                             Substance::ash, Substance::alcohol, Substance::salt}),
           fixed_acids(composition));
  return plus(result, sugars(composition).value_or(Bounds{}));
}

}  // namespace maslin::science
