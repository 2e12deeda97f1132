// SPDX-License-Identifier: Apache-2.0
#include "science/acidity.hpp"
#include "science/found.hpp"
#include "science/heat.hpp"
#include "science/keeping.hpp"
#include "science/water_activity.hpp"

namespace maslin::test {
namespace {

using namespace science;

AqueousShares aqueous(const Inputs& in) {
  return {percent(in.number("acetic")), percent(in.number("salt")), percent(in.number("hexose")),
          percent(in.number("disaccharide"))};
}

PH ph(const Inputs& in) { return PH(in.number("pH")); }
Range<PH> ph_exactly(const Inputs& in) { return Range<PH>::exactly(ph(in)); }

const std::map<std::string, WeakAcid> acids = {{"acetic", WeakAcid::acetic},
                                               {"citric", WeakAcid::citric},
                                               {"malic", WeakAcid::malic},
                                               {"tartaric", WeakAcid::tartaric},
                                               {"lactic", WeakAcid::lactic}};

std::vector<Dissolved> dissolved(const Inputs& in) {
  std::vector<Dissolved> result;
  for (const auto& [name, acid] : acids) {
    if (in.has(name)) result.push_back({acid, MolePerLitre(in.number(name))});
  }
  return result;
}

std::string class_name(FoodClass food) {
  switch (food) {
    case FoodClass::acid:
      return "acid";
    case FoodClass::acidified:
      return "acidified";
    case FoodClass::low_acid:
      return "low-acid";
    case FoodClass::too_dry:
      break;
  }
  return "too dry";
}

Found class_found(const Inputs& in) {
  return class_name(must(class_of_food(
      {ph(in), WaterActivity(in.number("aw")), in.yes("of low-acid food"), in.yes("tomato")})));
}

// Percent of one solute in water.
Found one_solute(const Inputs& in) {
  const std::map<std::string, NorrishSolute> norrish_solutes = {{"sucrose", solutes::sucrose},
                                                                {"glucose", solutes::glucose},
                                                                {"fructose", solutes::fructose}};
  const auto per_water = [&](const std::string& name) {
    return in.number(name) / (100 - in.number(name));
  };
  for (const auto& [name, solute] : norrish_solutes) {
    if (in.has(name)) return must(norrish(solute, Share(per_water(name)))).in_unit();
  }
  constexpr double moles = 1000 / 58.443;
  return must(salt_solution(MolePerKilogram(per_water("salt") * moles))).in_unit();
}

std::string lack_name(HotFillLack lack) {
  switch (lack) {
    case HotFillLack::acid:
      return "acid";
    case HotFillLack::filling_heat:
      return "filling heat";
    case HotFillLack::jar_heat:
      return "jar heat";
    case HotFillLack::holding:
      break;
  }
  return "holding";
}

Found hot_fill(const Inputs& in) {
  std::string result;
  for (const HotFillLack lack :
       hot_fill_lacks({ph(in), Celsius(in.number("filling")), Celsius(in.number("jar")),
                       Minute(in.number("held"))})) {
    result += (result.empty() ? "" : ", ") + lack_name(lack);
  }
  return result.empty() ? "none" : result;
}

Celsius from_fahrenheit(double degrees) { return Celsius((degrees - 32) / 1.8); }

Finders heat_finders() {
  return {
      {"holding time",
       [](const Inputs& in) {
         return must(holding_time(ph(in), from_fahrenheit(in.number("fahrenheit")))).in_unit();
       }},
      {"lethality",
       [](const Inputs& in) {
         const Celsius at(in.number("celsius"));
         return must(
             process_lethality(ph(in), {{Minute(0), at}, {Minute(in.number("minutes")), at}}));
       }},
      {"hot fill lacks", hot_fill},
  };
}

Finders acid_finders() {
  return {
      {"pH of a solution",
       [](const Inputs& in) {
         return must(ph_of_solution(dissolved(in), MolePerLitre(in.number_or("charge", 0))))
             .in_unit();
       }},
      {"buffer area",
       [](const Inputs& in) {
         constexpr double of_the_source = 100;
         return of_the_source * protons_between(dissolved(in), PH(2), PH(12)).in_unit();
       }},
      {"acidity as acetic",
       [](const Inputs& in) {
         const Mixture mixture = mixture_of(in);
         return acidity_as_acetic(mixture).low.in_unit() * mixture.mass().low.in_unit();
       }},
      {"acidity as citric",
       [](const Inputs& in) {
         const Mixture mixture = mixture_of(in);
         return acidity_as_citric(mixture).low.in_unit() * mixture.mass().low.in_unit();
       }},
  };
}

Finders water_finders() {
  return {
      {"one solute", one_solute},
      {"salt solution",
       [](const Inputs& in) {
         return must(salt_solution(MolePerKilogram(in.number("molality")))).in_unit();
       }},
      {"sucrose solution",
       [](const Inputs& in) {
         return must(norrish(solutes::sucrose, Share(in.number("molality") * 0.34230))).in_unit();
       }},
      {"water activity of a mixture",
       [](const Inputs& in) { return must(water_activity(mixture_of(in))).high.in_unit(); }},
      {"water activity below",
       [](const Inputs& in) {
         return yes_or_no(must(water_activity(mixture_of(in))).high <
                          WaterActivity(in.number("line")));
       }},
  };
}

Finders index_finders() {
  return {
      {"dissociated acetic acid",
       [](const Inputs& in) { return must(dissociated_acetic(ph(in))).in_unit(); }},
      {"stability index",
       [](const Inputs& in) { return must(stability_index(aqueous(in), ph(in))).in_unit(); }},
      {"pathogen index",
       [](const Inputs& in) { return must(pathogen_index(aqueous(in), ph(in))).in_unit(); }},
      {"stability index exceeds the line",
       [](const Inputs& in) {
         return yes_or_no(exceeds_line(must(stability_index(aqueous(in), ph(in)))));
       }},
      {"pathogen index exceeds the line",
       [](const Inputs& in) {
         return yes_or_no(exceeds_line(must(pathogen_index(aqueous(in), ph(in)))));
       }},
      {"stability index of a mixture",
       [](const Inputs& in) {
         return must(stability_index(mixture_of(in), ph_exactly(in))).low.in_unit();
       }},
      {"pathogen index of a mixture",
       [](const Inputs& in) {
         return must(pathogen_index(mixture_of(in), ph_exactly(in))).low.in_unit();
       }},
  };
}

Finders rule_finders() {
  const auto of_volatiles = [](const Inputs& in) {
    return must(acid_in_volatiles(percent(in.number("acidity")), percent(in.number("solids"))));
  };
  return {
      {"acetic acid in volatiles of a mixture",
       [](const Inputs& in) {
         ph(in);
         return in_percent(acetic_of_volatiles(mixture_of(in)).low);
       }},
      {"mixture reaches the acetic line",
       [](const Inputs& in) {
         ph(in);
         return yes_or_no(reaches_acetic_line(acetic_of_volatiles(mixture_of(in)).low));
       }},
      {"acid in volatiles", [=](const Inputs& in) { return in_percent(of_volatiles(in)); }},
      {"acid in volatiles reaches the line",
       [=](const Inputs& in) { return yes_or_no(reaches_acetic_line(of_volatiles(in))); }},
      {"sweet pickle acetic acid",
       [](const Inputs& in) {
         return in_percent(must(sweet_pickle_acetic(percent(in.number("sugar")))));
       }},
      {"class of food", class_found},
      {"low-acid line",
       [](const Inputs& in) {
         const bool kingdom = in.text("where") == "United Kingdom";
         return low_acid_line(kingdom ? Jurisdiction::united_kingdom : Jurisdiction::united_states)
             .in_unit();
       }},
  };
}

}  // namespace

Finders keeping_finders() {
  Finders all = index_finders();
  for (Finders part : {rule_finders(), water_finders(), acid_finders(), heat_finders()}) {
    all.merge(part);
  }
  return all;
}

}  // namespace maslin::test
