// SPDX-License-Identifier: Apache-2.0
#include "science/fruit.hpp"

namespace maslin::science {
namespace {

constexpr double heaviest = 100'000;  // kg
constexpr double most_refuse = 0.95;

std::optional<OutOfRange> bad_weight(Kilogram weight) {
  return outside("weight, kg", weight.in_unit(), 0, heaviest);
}

}  // namespace

Computed<Share> mixed_minimum(const std::vector<FruitMinimum>& fruits) {
  Kilogram whole;
  double sum = 0;
  for (const FruitMinimum& each : fruits) {
    if (const auto error = bad_weight(each.fruit)) return Failure{*error};
    if (const auto error = outside("least fruit", each.minimum.in_unit(), 0, 1)) {
      return Failure{*error};
    }
    whole = whole + each.fruit;
    sum += each.minimum.in_unit() * each.fruit.in_unit();
  }
  if (!(whole > Kilogram(0))) return Failure{OutOfRange{"fruit, kg", 0, 1e-6, heaviest}};
  return Share(sum / whole.in_unit());
}

Computed<Kilogram> least_fruit(Kilogram sweetener, const Parts& parts) {
  if (const auto error = bad_weight(sweetener)) return Failure{*error};
  for (const double each : {parts.fruit, parts.sweetener}) {
    if (const auto error = outside("parts", each, 1e-6, 1000)) return Failure{*error};
  }
  return sweetener * (parts.fruit / parts.sweetener);
}

double fruit_factor(ButterFruit fruit) {
  constexpr double factors[] = {7.5, 7.0, 7.0, 8.5, 6.5, 7.0, 7.0, 7.5};
  return factors[static_cast<std::size_t>(fruit)];
}

Computed<Kilogram> fruit_behind(Kilogram soluble_solids, ButterFruit fruit) {
  if (const auto error = bad_weight(soluble_solids)) return Failure{*error};
  return soluble_solids * fruit_factor(fruit);
}

Computed<Kilogram> gross_for(Kilogram prepared, Share refuse) {
  if (const auto error = bad_weight(prepared)) return Failure{*error};
  if (const auto error = outside("refuse", refuse.in_unit(), 0, most_refuse)) {
    return Failure{*error};
  }
  return prepared / (1 - refuse.in_unit());
}

Computed<Kilogram> prepared_of(Kilogram gross, Share refuse) {
  if (const auto error = bad_weight(gross)) return Failure{*error};
  if (const auto error = outside("refuse", refuse.in_unit(), 0, most_refuse)) {
    return Failure{*error};
  }
  return gross * (1 - refuse.in_unit());
}

}  // namespace maslin::science
