// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <vector>

#include "language/amounts.hpp"
#include "language/checks/checks.hpp"
#include "language/membership.hpp"

namespace maslin::language::checks {
namespace {

using Has = std::function<bool(IngredientId)>;

// The members of a target that lack something, as long as one could be meant. A class of which some
// member has it stays: what the basket brings decides then.
void require(const Program& program, const Target& target, const Has& has, Code code, Span rule,
             const std::string& lacking, Diagnostics& diagnostics) {
  const auto all = members(program, target);
  std::string names;
  for (const IngredientId id : all) {
    if (has(id)) return;
    if (names.size() < 60) names += (names.empty() ? "" : ", ") + program[id].name;
  }
  if (all.empty()) return;
  auto& found = diagnostics.report(code, rule,
                                   fmt::format("no figure is known for {} of {}", lacking, names));
  for (std::size_t i = 0; i < all.size() && i < 3; ++i) {
    found.with_because(program[all[i]].span, "this has none");
  }
  found.with_mend(code == Code::missing_figure
                      ? "give the figure where the ingredient is declared, or leave the rule out"
                      : "state it by weight, or give the figure where the ingredient is declared");
}

void check_addition(const Program& program, const Addition& addition, Diagnostics& diagnostics) {
  if (addition.measured == Measured::by_volume) {
    require(
        program, addition.target, [&](IngredientId id) { return program[id].density.has_value(); },
        Code::volume_without_density, addition.range_span, "the density", diagnostics);
  } else if (addition.measured == Measured::by_count) {
    require(
        program, addition.target, [&](IngredientId id) { return program[id].piece.has_value(); },
        Code::missing_piece, addition.range_span, "the weight of a piece", diagnostics);
  }
}

bool goes_by_composition(const Limit& limit) {
  return limit.property == Property::water_activity || limit.property == Property::stability_index;
}

// Whoever must be in the pan and has no composition.
std::vector<IngredientId> without_composition(const Program& program, const Framework& framework) {
  std::vector<const Target*> targets;
  for (const ProduceShare& share : framework.shares) targets.push_back(&share.target);
  for (const Addition& addition : framework.additions) targets.push_back(&addition.target);
  std::vector<IngredientId> lacking;
  for (const Target* target : targets) {
    const auto all = members(program, *target);
    const bool known = std::any_of(all.begin(), all.end(),
                                   [&](IngredientId id) { return has_composition(program, id); });
    if (!known) lacking.insert(lacking.end(), all.begin(), all.end());
  }
  return lacking;
}

// Whether anything that may go in is wet: what is dissolved in water goes by it.
bool holds_water(const Program& program, const Framework& framework) {
  const Rational dry(Rational::Wide{2}, Rational::Wide{100});
  const auto is_wet = [&](const auto& slot) {
    const auto all = members(program, slot.target);
    return std::any_of(all.begin(), all.end(), [&](IngredientId id) {
      const auto water = figure_of(program[id], Property::water);
      return !water || water->high > dry;
    });
  };
  return std::any_of(framework.shares.begin(), framework.shares.end(), is_wet) ||
         std::any_of(framework.additions.begin(), framework.additions.end(), is_wet);
}

// What is not linear goes by the whole composition. One report, however many limits do.
bool check_compositions(const Program& program, const Framework& framework,
                        Diagnostics& diagnostics) {
  std::vector<const Limit*> limits;
  for (const Limit& limit : framework.limits) {
    if (goes_by_composition(limit)) limits.push_back(&limit);
  }
  if (limits.empty()) return true;
  const auto lacking = without_composition(program, framework);
  if (lacking.empty() && !holds_water(program, framework)) {
    diagnostics
        .report(Code::missing_figure, limits[0]->span,
                fmt::format("nothing that goes in holds water, and a {} is of what is dissolved in "
                            "it",
                            name_of(*limits[0]->property)))
        .with_mend("add what is wet: water, vinegar, fresh produce; or leave the limit out");
    return false;
  }
  if (lacking.empty()) return true;
  std::string names;
  for (const IngredientId id : lacking) {
    if (names.size() < 60) names += (names.empty() ? "" : ", ") + program[id].name;
  }
  auto& found = diagnostics.report(Code::missing_figure, limits[0]->span,
                                   fmt::format("no composition is known of {}, and a {} goes by it",
                                               names, name_of(*limits[0]->property)));
  for (std::size_t i = 0; i < lacking.size() && i < 3; ++i) {
    found.with_because(program[lacking[i]].span, "this has none");
  }
  for (std::size_t i = 1; i < limits.size(); ++i) {
    found.with_because(limits[i]->span, "this goes by it too");
  }
  found.with_mend(
      "give it where the ingredient is declared, as a table of foods has it: `composition water "
      "74.5 g, sugars 10.6 g`; or leave the limit out");
  return false;
}

void check_substitution(const Program& program, const Framework& framework,
                        const Substitution& substitution, Diagnostics& diagnostics) {
  if (substitution.donor.name == substitution.replaced.name) return;
  const Addition& addition = framework.additions[substitution.addition];
  const bool by_acid =
      substitution.by == Property::acidity || substitution.by == Property::acetic_acid;
  // An acid that is not exchanged by its acid is told of by `directions`.
  if (!by_acid && acidifies(program, addition)) return;
  if (by_acid != (addition.measured == Measured::by_volume)) {
    diagnostics
        .report(
            Code::wrong_dimension, substitution.span,
            fmt::format("{} is added {}, and that cannot be exchanged by {}", addition.target.name,
                        addition.measured == Measured::by_volume  ? "by volume"
                        : addition.measured == Measured::by_count ? "by count"
                                                                  : "by weight",
                        name_of(substitution.by)))
        .with_because(addition.range_span, "stated here")
        .with_mend(by_acid ? "state the acid by volume: `460 ml`" : "state it by weight: `300 g`");
    return;
  }
  require(
      program, substitution.donor,
      [&](IngredientId id) {
        return share_of(program, substitution.by, {id, std::nullopt}).has_value();
      },
      Code::missing_figure, substitution.span, fmt::format("the {}", name_of(substitution.by)),
      diagnostics);
}

}  // namespace

void figures(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  for (const Addition& addition : framework.additions) {
    check_addition(program, addition, diagnostics);
  }
  for (const Substitution& substitution : framework.substitutions) {
    check_substitution(program, framework, substitution, diagnostics);
  }
  // Shares go by the composition too, and that it is missing was told.
  if (!check_compositions(program, framework, diagnostics)) return;
  for (const Limit& limit : framework.limits) {
    if (!limit.property || !is_linear(limit)) continue;
    for (const ProduceShare& share : framework.shares) {
      require(
          program, share.target,
          [&](IngredientId id) {
            return share_of(program, *limit.property, {id, std::nullopt}).has_value();
          },
          Code::missing_figure, limit.span, fmt::format("the {}", name_of(*limit.property)),
          diagnostics);
    }
  }
}

void compositions(const Program& program, Diagnostics& diagnostics) {
  // Tables round and measure by different methods; a few grams over are no mistake.
  const Rational most(Rational::Wide{103}, Rational::Wide{100});
  for (const IngredientId id : program.own_ingredients) {
    const Ingredient& ingredient = program[id];
    const Rational least = science::total(ingredient.composition).low;
    if (least <= most) continue;
    diagnostics
        .report(Code::composition_over, ingredient.composition_span,
                fmt::format("100 g of {} is made of {} g", ingredient.name,
                            (least * 100).to_decimal(1)))
        .with_mend("the figures are per 100 g edible; look for one that is given twice");
  }
}

}  // namespace maslin::language::checks
