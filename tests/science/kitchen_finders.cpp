// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <sstream>

#include "science/brine.hpp"
#include "science/found.hpp"
#include "science/fruit.hpp"
#include "science/nutrition.hpp"
#include "science/pungency.hpp"
#include "science/sugar_solution.hpp"

namespace maslin::test {
namespace {

using namespace science;

Kilogram kilogram(const Inputs& in, const std::string& key) { return Kilogram(in.number(key)); }

// "0.020/12/5000 0.005/90/40000": figures of one thing, then the next.
std::vector<std::vector<double>> listed(const std::string& text) {
  std::vector<std::vector<double>> result;
  std::istringstream things(text);
  for (std::string thing; things >> thing;) {
    std::istringstream figures(thing);
    result.emplace_back();
    for (std::string figure; std::getline(figures, figure, '/');) {
      result.back().push_back(std::stod(figure));
    }
  }
  return result;
}

Found pungency_found(const Inputs& in) {
  std::vector<Pods> pods;
  for (const auto& figures : listed(in.text("pods"))) {
    pods.push_back({Kilogram(figures.at(0)), Range<Share>::exactly(percent(figures.at(1))),
                    Range<Scoville>::exactly(Scoville(figures.at(2)))});
  }
  return must(pungency(pods, kilogram(in, "batch"))).high.in_unit();
}

Found mixed_found(const Inputs& in) {
  std::vector<FruitMinimum> fruits;
  for (const auto& figures : listed(in.text("fruits"))) {
    fruits.push_back({Kilogram(figures.at(0)), percent(figures.at(1))});
  }
  return in_percent(must(mixed_minimum(fruits)));
}

Found least_fruit_found(const Inputs& in) {
  const std::map<std::string, Parts> parts = {{"jam group one", jam_group_one},
                                              {"jam group two", jam_group_two},
                                              {"fruit butter", fruit_butter}};
  return must(least_fruit(kilogram(in, "sweetener"), parts.at(in.text("parts")))).in_unit();
}

Found fruit_behind_found(const Inputs& in) {
  const std::map<std::string, ButterFruit> fruits = {
      {"apple", ButterFruit::apple}, {"apricot", ButterFruit::apricot},
      {"grape", ButterFruit::grape}, {"peach", ButterFruit::peach},
      {"pear", ButterFruit::pear},   {"plum", ButterFruit::plum},
      {"prune", ButterFruit::prune}, {"quince", ButterFruit::quince}};
  return must(fruit_behind(kilogram(in, "solids"), fruits.at(in.text("fruit")))).in_unit();
}

Found equilibrium_found(const Inputs& in) {
  const BrinedJar jar{kilogram(in, "vegetables"), percent(in.number_or("water", 100)),
                      kilogram(in, "brine"), percent(in.number("strength"))};
  const bool everything = in.text("basis") == "everything";
  return in_percent(
      must(equilibrium_salt(jar, everything ? SaltBasis::everything : SaltBasis::salt_and_water)));
}

Nutrients nutrients_of(const Inputs& in) {
  const std::map<std::string, Share Nutrients::*> fields = {
      {"carbohydrate", &Nutrients::carbohydrate},
      {"polyols", &Nutrients::polyols},
      {"protein", &Nutrients::protein},
      {"fat", &Nutrients::fat},
      {"alcohol", &Nutrients::alcohol},
      {"organic acids", &Nutrients::organic_acids},
      {"fibre", &Nutrients::fibre}};
  Nutrients result;
  for (const auto& [name, field] : fields) result.*field = percent(in.number_or(name, 0));
  return result;
}

Found declared_found(const Inputs& in) {
  const std::map<std::string, Declared> kinds = {
      {"fat", Declared::fat},       {"saturates", Declared::saturates},
      {"sugars", Declared::sugars}, {"carbohydrate", Declared::carbohydrate},
      {"fibre", Declared::fibre},   {"protein", Declared::protein},
      {"salt", Declared::salt}};
  const Rounded rounded =
      must(declared(kinds.at(in.text("nutrient")), percent(in.number("grams"))));
  return fmt::format("{}{:.{}f}", rounded.negligible ? "<" : "", in_percent(rounded.amount),
                     rounded.decimals);
}

Finders sugar_finders() {
  return {
      {"sucrose density",
       [](const Inputs& in) {
         return must(sucrose_density(percent(in.number("sucrose")))).in_unit();
       }},
      {"sucrose solubility",
       [](const Inputs& in) {
         return in_percent(must(sucrose_solubility(Celsius(in.number("temperature")))));
       }},
      {"crystallises",
       [](const Inputs& in) {
         return yes_or_no(must(crystallises(kilogram(in, "sucrose"), kilogram(in, "water"),
                                            Celsius(in.number("temperature")))));
       }},
      {"volume",
       [](const Inputs& in) {
         return must(volume_of(kilogram(in, "mass"), KilogramPerCubicMetre(in.number("density"))))
             .in_unit();
       }},
  };
}

Finders label_finders() {
  return {
      {"energy, kJ",
       [](const Inputs& in) { return energy_per_100_g(nutrients_of(in)).kilojoules.in_unit(); }},
      {"energy, kcal",
       [](const Inputs& in) { return energy_per_100_g(nutrients_of(in)).kilocalories.in_unit(); }},
      {"salt of sodium",
       [](const Inputs& in) { return in_percent(salt_of_sodium(percent(in.number("sodium")))); }},
      {"declared", declared_found},
  };
}

Finders salt_and_fruit_finders() {
  return {
      {"dry salting",
       [](const Inputs& in) {
         return in_percent(must(dry_salting(kilogram(in, "salt"), kilogram(in, "vegetables"))));
       }},
      {"brine strength",
       [](const Inputs& in) {
         return in_percent(must(brine_strength(kilogram(in, "salt"), kilogram(in, "water"))));
       }},
      {"equilibrium salt", equilibrium_found},
      {"pungency", pungency_found},
      {"mixed fruit minimum", mixed_found},
      {"least fruit", least_fruit_found},
      {"fruit behind solids", fruit_behind_found},
      {"prepared",
       [](const Inputs& in) {
         return must(prepared_of(kilogram(in, "gross"), percent(in.number("refuse")))).in_unit();
       }},
      {"gross",
       [](const Inputs& in) {
         return must(gross_for(kilogram(in, "prepared"), percent(in.number("refuse")))).in_unit();
       }},
  };
}

}  // namespace

Finders kitchen_finders() {
  Finders all = salt_and_fruit_finders();
  for (Finders part : {sugar_finders(), label_finders()}) all.merge(part);
  return all;
}

}  // namespace maslin::test
