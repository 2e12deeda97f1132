// SPDX-License-Identifier: Apache-2.0
#include "science/mixture.hpp"

#include <algorithm>
#include <initializer_list>

namespace maslin::science {
namespace {

constexpr double heaviest = 100'000;  // kg: a slip of the pen, not a kitchen

constexpr std::initializer_list<Substance> hexose_kinds = {Substance::glucose, Substance::fructose,
                                                           Substance::galactose};
constexpr std::initializer_list<Substance> disaccharide_kinds = {
    Substance::sucrose, Substance::maltose, Substance::lactose};
constexpr std::initializer_list<Substance> sugar_kinds = {Substance::glucose,   Substance::fructose,
                                                          Substance::galactose, Substance::sucrose,
                                                          Substance::maltose,   Substance::lactose};
constexpr std::initializer_list<Substance> fixed = {
    Substance::citric_acid,  Substance::malic_acid,  Substance::tartaric_acid,
    Substance::oxalic_acid,  Substance::lactic_acid, Substance::succinic_acid,
    Substance::organic_acids};

// Protons one molecule gives up when titrated, and its weight in g/mol (IUPAC). Acids of unknown
// kind lie between citric and malic.
struct Equivalent {
  Substance acid;
  double protons;
  double molar_mass;
};
constexpr Equivalent equivalents[] = {
    {Substance::acetic_acid, 1, 60.052},    {Substance::citric_acid, 3, 192.124},
    {Substance::malic_acid, 2, 134.087},    {Substance::tartaric_acid, 2, 150.087},
    {Substance::oxalic_acid, 2, 90.034},    {Substance::lactic_acid, 1, 90.078},
    {Substance::succinic_acid, 2, 118.088}, {Substance::organic_acids, 2, 133.45}};
constexpr double acetic_per_proton = 60.052;
constexpr double citric_per_proton = 192.124 / 3;

Range<Kilogram> sum(const Mixture& mixture, std::initializer_list<Substance> list) {
  Range<Kilogram> result;
  for (const Substance substance : list) result = result + mixture[substance];
  return result;
}

// What cannot be negative, but for rounding.
Kilogram at_least_none(Kilogram mass) { return std::max(mass, Kilogram(0)); }

double ratio(Kilogram part, Kilogram rest) {
  const Kilogram whole = part + rest;
  return whole > Kilogram(0) ? part / whole : 0;
}

// Part over part and rest: rises with the one, falls with the other. All of it weighs no more than
// the mixture.
Range<Share> share_beside(const Range<Kilogram>& part, const Range<Kilogram>& rest,
                          const Range<Kilogram>& mass) {
  const Kilogram most_rest = std::min(rest.high, at_least_none(mass.high - part.low));
  return {Share(ratio(part.low, most_rest)), Share(ratio(part.high, rest.low))};
}

Range<Share> share_of(const Range<Kilogram>& part, const Range<Kilogram>& whole) {
  return {Share(part.low / whole.high), Share(part.high / whole.low)};
}

// What is in the whole is no more than the whole, however its figures add up.
Range<Share> share_within(const Range<Kilogram>& part, const Range<Kilogram>& whole) {
  const Range<Share> share = share_of(part, whole);
  return {std::min(share.low, Share(1)), std::min(share.high, Share(1))};
}

Range<Kilogram> acidity(const Mixture& mixture, double grams_per_proton) {
  Range<Kilogram> result;
  for (const Equivalent& each : equivalents) {
    result = result + mixture[each.acid] * (each.protons * grams_per_proton / each.molar_mass);
  }
  return result;
}

bool has_kinds_of_sugar(const Composition& composition) {
  return std::any_of(sugar_kinds.begin(), sugar_kinds.end(),
                     [&](Substance kind) { return composition[kind].has_value(); });
}

// What the least of all figures leaves over for what no table gives.
Range<Share> anything_left(const Composition& composition) {
  const double rest = 1 - total(composition).low.to_double();
  return {Share(0), Share(std::max(rest, 0.0))};
}

}  // namespace

Computed<Mixture> Mixture::of(const std::vector<Part>& parts) {
  Mixture result;
  for (const Part& part : parts) {
    const double mass = part.mass.in_unit();
    if (const auto error = outside("weight, kg", mass, 0, heaviest)) return Failure{*error};
    result.add(*part.composition, part.mass);
  }
  if (!(result.mass_.low > Kilogram(0))) {
    return Failure{OutOfRange{"weight of the whole, kg", 0, 0.000'001, heaviest}};
  }
  return result;
}

void Mixture::add(const Composition& composition, Kilogram mass) {
  const auto put = [&](Substance substance, const Range<Share>& share) {
    at(substance) = at(substance) + Range<Kilogram>{share.low * mass, share.high * mass};
  };
  for (std::size_t i = 0; i < substance_count; ++i) {
    const auto substance = static_cast<Substance>(i);
    const bool sugar =
        substance == Substance::sugars ||
        std::find(sugar_kinds.begin(), sugar_kinds.end(), substance) != sugar_kinds.end();
    if (!sugar && composition[substance]) put(substance, shares(*composition[substance]));
  }
  if (!composition[Substance::water]) put(Substance::water, anything_left(composition));

  const std::optional<Bounds> total_sugars = science::sugars(composition);
  if (!total_sugars || !has_kinds_of_sugar(composition)) {
    put(Substance::sugars, total_sugars ? shares(*total_sugars) : anything_left(composition));
  } else {
    // The kinds at their least may add up to more than the least total, and at their most to less
    // than the greatest: they shrink to the one, and the other is of unknown kind.
    const Range<Share> whole = shares(*total_sugars);
    Range<Share> named;
    for (const Substance kind : sugar_kinds) named = named + shares(composition.or_none(kind));
    const double shrink = named.low > whole.low ? whole.low / named.low : 1;
    for (const Substance kind : sugar_kinds) {
      const Range<Share> share = shares(composition.or_none(kind));
      put(kind, {share.low * shrink, share.high});
    }
    put(Substance::sugars, {Share(0), std::max(whole.high - named.high, Share(0))});
  }
  mass_ = mass_ + Range<Kilogram>::exactly(mass);
}

Mixture operator+(const Mixture& a, const Mixture& b) {
  Mixture result = a;
  for (std::size_t i = 0; i < substance_count; ++i) {
    result.masses_[i] = a.masses_[i] + b.masses_[i];
  }
  result.mass_ = a.mass_ + b.mass_;
  return result;
}

Mixture Mixture::after(const BoiledDown& boiled) const {
  Mixture result = *this;
  const Kilogram water_there = (*this)[Substance::water].high;
  const double water_kept =
      water_there > Kilogram(0) ? std::min(boiled.water.high / water_there, 1.0) : 0;
  const Range<Kilogram> acid = (*this)[Substance::acetic_acid];
  result.at(Substance::water) = boiled.water;
  result.at(Substance::acetic_acid) = {boiled.acetic_acid_kept.low * acid.low,
                                       boiled.acetic_acid_kept.high * acid.high};
  result.at(Substance::alcohol) = {Kilogram(0), (*this)[Substance::alcohol].high * water_kept};
  result.mass_ = boiled.mass;
  return result;
}

Range<Kilogram> hexoses(const Mixture& mixture) { return sum(mixture, hexose_kinds); }
Range<Kilogram> disaccharides(const Mixture& mixture) { return sum(mixture, disaccharide_kinds); }
Range<Kilogram> sugars(const Mixture& mixture) {
  return hexoses(mixture) + disaccharides(mixture) + mixture[Substance::sugars];
}
Range<Kilogram> fixed_acids(const Mixture& mixture) { return sum(mixture, fixed); }

Range<Kilogram> aqueous_phase(const Mixture& mixture) {
  return sum(mixture, {Substance::water, Substance::acetic_acid, Substance::salt}) +
         fixed_acids(mixture) + sugars(mixture);
}

Range<Kilogram> volatiles(const Mixture& mixture) {
  return sum(mixture, {Substance::water, Substance::acetic_acid, Substance::alcohol});
}

Range<Share> soluble_solids(const Mixture& mixture) {
  return share_within(sugars(mixture) + fixed_acids(mixture) +
                          sum(mixture, {Substance::polyols, Substance::ash, Substance::salt}),
                      mixture.mass());
}

Range<Share> total_solids(const Mixture& mixture) {
  const Range<Share> away = share_within(volatiles(mixture), mixture.mass());
  return {Share(1) - away.high, Share(1) - away.low};
}

Range<Share> acidity_as_acetic(const Mixture& mixture) {
  return share_of(acidity(mixture, acetic_per_proton), mixture.mass());
}
Range<Share> acidity_as_citric(const Mixture& mixture) {
  return share_of(acidity(mixture, citric_per_proton), mixture.mass());
}

Range<Share> acetic_of_everything(const Mixture& mixture) {
  return share_within(mixture[Substance::acetic_acid], mixture.mass());
}

Range<Share> acetic_of_aqueous_phase(const Mixture& mixture) {
  const Range<Kilogram> rest =
      sum(mixture, {Substance::water, Substance::salt}) + fixed_acids(mixture) + sugars(mixture);
  return share_beside(mixture[Substance::acetic_acid], rest, mixture.mass());
}

Range<Share> acetic_of_volatiles(const Mixture& mixture) {
  return share_beside(mixture[Substance::acetic_acid],
                      sum(mixture, {Substance::water, Substance::alcohol}), mixture.mass());
}

Range<Share> salt_of_everything(const Mixture& mixture) {
  return share_within(mixture[Substance::salt], mixture.mass());
}

Range<Share> salt_of_aqueous_phase(const Mixture& mixture) {
  const Range<Kilogram> rest = sum(mixture, {Substance::water, Substance::acetic_acid}) +
                               fixed_acids(mixture) + sugars(mixture);
  return share_beside(mixture[Substance::salt], rest, mixture.mass());
}

Range<Share> sugars_of_everything(const Mixture& mixture) {
  return share_within(sugars(mixture), mixture.mass());
}

}  // namespace maslin::science
