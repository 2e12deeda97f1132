// SPDX-License-Identifier: Apache-2.0
#include "science/boiling.hpp"
#include "science/evaporation.hpp"
#include "science/found.hpp"

namespace maslin::test {
namespace {

using namespace science;

Celsius temperature(const Inputs& in) { return Celsius(in.number("temperature")); }
Metre altitude(const Inputs& in) { return Metre(in.number("altitude")); }
Share solids(const Inputs& in) { return percent(in.number("solids")); }

double rise(const Inputs& in) {
  const Kilopascal pressure = must(pressure_at(altitude(in)));
  return must(boiling_rise(solids(in), percent(in.number("inverted")), pressure)).in_unit();
}

Computed<Reduction> reduction(const Inputs& in) {
  const auto volatility = Range<Volatility>::exactly(Volatility(in.number("volatility")));
  return reduce_to_total_solids(mixture_of(in), percent(in.number("target")), volatility);
}

Range<Kilowatt> power(const Inputs& in) {
  return Range<Kilowatt>::exactly(Kilowatt(in.number("power")));
}

Finders boil_finders() {
  return {
      {"pressure at", [](const Inputs& in) { return must(pressure_at(altitude(in))).in_unit(); }},
      {"boiling point at",
       [](const Inputs& in) { return must(boiling_point_at(altitude(in))).in_unit(); }},
      {"boiling point",
       [](const Inputs& in) {
         return must(boiling_point(Kilopascal(in.number("pressure")))).in_unit();
       }},
      {"vapour pressure",
       [](const Inputs& in) {
         return must(vapour_pressure(Celsius(in.number("kelvin") - 273.15))).in_unit();
       }},
      {"sucrose at a temperature",
       [](const Inputs& in) {
         return must(sucrose_activity(percent(in.number("sucrose")), temperature(in))).in_unit();
       }},
      {"boiling rise", rise},
      {"setting point, high end",
       [](const Inputs& in) {
         return must(setting_point(altitude(in), solids(in))).high.in_unit();
       }},
      {"setting point, low end",
       [](const Inputs& in) {
         return must(setting_point(altitude(in), solids(in))).low.in_unit();
       }},
  };
}

Finders reduction_finders() {
  return {
      {"acid kept",
       [](const Inputs& in) {
         return must(acid_kept(Kilogram(in.number("before")), Kilogram(in.number("after")),
                               Volatility(in.number("volatility"))))
             .in_unit();
       }},
      {"reduced batch, acid left",
       [](const Inputs& in) {
         return must(reduction(in)).left[Substance::acetic_acid].low.in_unit();
       }},
      {"reduced batch, acetic acid in volatiles",
       [](const Inputs& in) {
         return in_percent(acetic_of_volatiles(must(reduction(in)).left).low);
       }},
      {"reduced batch, acetic acid in everything",
       [](const Inputs& in) {
         return in_percent(acetic_of_everything(must(reduction(in)).left).low);
       }},
      {"reduced batch, weight",
       [](const Inputs& in) { return must(reduction(in)).left.mass().low.in_unit(); }},
      {"reduced batch, boiled away",
       [](const Inputs& in) { return must(reduction(in)).boiled_away.low.in_unit(); }},
      {"reduction is refused", [](const Inputs& in) { return yes_or_no(!reduction(in).ok()); }},
      {"latent heat",
       [](const Inputs& in) { return must(latent_heat(temperature(in))).in_unit(); }},
      {"evaporation rate",
       [](const Inputs& in) {
         const auto time = must(evaporation_time(Kilogram(1), power(in), temperature(in)));
         return 60 / time.low.in_unit();
       }},
      {"evaporation time",
       [](const Inputs& in) {
         return must(evaporation_time(Kilogram(in.number("water")), power(in), temperature(in)))
             .high.in_unit();
       }},
  };
}

}  // namespace

Finders boiling_finders() {
  Finders all = boil_finders();
  Finders part = reduction_finders();
  all.merge(part);
  return all;
}

}  // namespace maslin::test
