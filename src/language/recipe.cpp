// SPDX-License-Identifier: Apache-2.0
#include "language/recipe.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "language/amounts.hpp"
#include "language/membership.hpp"

namespace maslin::language {
namespace {

const Rational hundred(100);

Bounds in_percent(const Bounds& share) { return {share.low * hundred, share.high * hundred}; }

std::string range_text(const Bounds& range, std::string_view unit) {
  const std::string low = range.low.to_decimal(1);
  const std::string high = range.high.to_decimal(1);
  return low == high ? fmt::format("{} {}", low, unit)
                     : fmt::format("{} to {} {}", low, high, unit);
}

// Whether a line of the recipe takes all that a slot of the framework could be.
bool takes_all(const Program& program, const Target& of_recipe, const Target& of_framework) {
  const auto all = members(program, of_framework);
  return !all.empty() && std::all_of(all.begin(), all.end(), [&](IngredientId id) {
    return takes(program, of_recipe, id);
  });
}

// Grams for a kilogram of produce, where both are measured of the same thing.
std::optional<Bounds> grams(const Program& program, const Addition& addition, IngredientId thing) {
  const bool acid = needs_strength(program[thing]);
  const Stuff stuff{thing, acid ? std::optional(stated_strength(addition)) : std::nullopt};
  const Rational each = amount_per_gram(program, addition, stuff);
  if (!each.is_defined() || !each.is_positive()) return std::nullopt;
  return Bounds{addition.range.low / each, addition.range.high / each};
}

class RecipeComparison {
 public:
  RecipeComparison(const Program& program, const Framework& framework, const Recipe& recipe)
      : program_(program), framework_(framework), recipe_(recipe) {}

  std::vector<Lapse> run() {
    slots(framework_.shares, recipe_.shares);
    slots(framework_.additions, recipe_.additions);
    strengths();
    headspace();
    return std::move(lapses_);
  }

 private:
  static std::string_view unit_of(const ProduceShare&) { return "%"; }
  static std::string_view unit_of(const Addition&) { return "g"; }

  // Of what the framework has, in the same measure as the recipe's line.
  std::optional<Bounds> amount(const ProduceShare& share, IngredientId) const {
    return in_percent(share.range);
  }
  std::optional<Bounds> amount(const Addition& addition, IngredientId thing) const {
    return grams(program_, addition, thing);
  }

  template <class SlotType>
  void slots(const std::vector<SlotType>& ours, const std::vector<SlotType>& tested) {
    std::vector<bool> found(ours.size(), false);
    for (const SlotType& line : tested) {
      std::vector<const SlotType*> taken;
      for (std::size_t i = 0; i < ours.size(); ++i) {
        if (found[i] || !takes_all(program_, line.target, ours[i].target)) continue;
        found[i] = true;
        taken.push_back(&ours[i]);
      }
      if (!taken.empty()) {
        compare(line, taken);
      } else if (line.range.low.is_positive()) {
        add(fmt::format("`{}` of the tested recipe is left out", line.target.name), line.span);
      }
    }
    for (std::size_t i = 0; i < ours.size(); ++i) {
      if (found[i]) continue;
      add(fmt::format("`{}` is not in the tested recipe", ours[i].target.name),
          ours[i].target.span);
    }
  }

  // Two kinds of pepper may stand for the one line that the recipe has of peppers.
  template <class SlotType>
  void compare(const SlotType& line, const std::vector<const SlotType*>& taken) {
    Bounds ours = Bounds::exactly(0);
    std::optional<Bounds> asked;
    for (const SlotType* each : taken) {
      const IngredientId thing = members(program_, each->target).front();
      const auto one = amount(*each, thing);
      asked = amount(line, thing);
      if (!one || !asked) {
        add(fmt::format("`{}` cannot be held against the tested recipe: it is measured otherwise",
                        each->target.name),
            each->range_span);
        return;
      }
      ours = {ours.low + one->low, ours.high + one->high};
    }
    if (asked->low <= ours.low && ours.high <= asked->high) return;
    const SlotType& first = *taken.front();
    add(fmt::format("`{}` comes to {}, and {} was tested", line.target.name,
                    range_text(ours, unit_of(first)), range_text(*asked, unit_of(first))),
        first.range_span);
  }

  void strengths() {
    for (const Addition& line : recipe_.additions) {
      for (const Addition& ours : framework_.additions) {
        const auto all = members(program_, ours.target);
        const bool acid = std::any_of(all.begin(), all.end(), [&](IngredientId id) {
          return needs_strength(program_[id]) && takes(program_, line.target, id);
        });
        if (!acid || stated_strength(ours) == stated_strength(line)) continue;
        add(fmt::format("`{}` is stated at another acidity than was tested", ours.target.name),
            ours.span);
      }
    }
  }

  void headspace() {
    const auto& filling = framework_.method.filling;
    if (!recipe_.headspace || !filling || !filling->headspace) return;
    if (*filling->headspace == *recipe_.headspace) return;
    add(fmt::format("jars are filled {} mm below the rim, and {} mm was tested",
                    filling->headspace->in_base().to_decimal(1),
                    recipe_.headspace->in_base().to_decimal(1)),
        filling->span);
  }

  void add(std::string because, Span span) { lapses_.push_back({std::move(because), span}); }

  const Program& program_;
  const Framework& framework_;
  const Recipe& recipe_;
  std::vector<Lapse> lapses_;
};

}  // namespace

const Recipe* recipe_for(const Route& route, const std::string& product) {
  const auto found = std::find_if(route.recipes.begin(), route.recipes.end(),
                                  [&](const Recipe& recipe) { return recipe.product == product; });
  return found == route.recipes.end() ? nullptr : &*found;
}

std::vector<Lapse> beside_recipe(const Program& program, const Framework& framework,
                                 const RouteClaim& claim) {
  const Route& route = program[claim.route];
  const Recipe* recipe = recipe_for(route, claim.product);
  if (recipe != nullptr) return RecipeComparison(program, framework, *recipe).run();
  return {{fmt::format("the table has minutes for `{}` and not its amounts, so nothing can be held "
                       "against them",
                       claim.product),
           claim.span}};
}

}  // namespace maslin::language
