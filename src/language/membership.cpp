// SPDX-License-Identifier: Apache-2.0
#include "language/membership.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "language/context.hpp"

namespace maslin::language {
namespace {

// A pH that nobody has published counts as the highest there is: it makes low-acid, never acid.
const Bounds unknown_ph = Bounds::exactly(14);

bool meets(const Ingredient& ingredient, const Condition& condition) {
  auto figure = figure_of(ingredient, condition.property);
  if (!figure && condition.property == Property::ph) figure = unknown_ph;
  if (!figure) return false;
  const bool at_most = condition.comparison == Comparison::at_most;
  // Without a word for the end, the unfavourable one decides.
  const bool take_high = condition.end == End::highest || (condition.end == End::either && at_most);
  const Rational& value = take_high ? figure->high : figure->low;
  if (condition.strict) return at_most ? value < condition.value : value > condition.value;
  return at_most ? value <= condition.value : value >= condition.value;
}

using ClassSet = std::vector<bool>;

// What an ingredient says it is, and everything above that.
ClassSet declared_classes(const Program& program, const Ingredient& ingredient) {
  ClassSet classes(program.classes.size());
  std::vector<ClassId> open = ingredient.parents;
  while (!open.empty()) {
    const ClassId id = open.back();
    open.pop_back();
    if (classes[id.index]) continue;
    classes[id.index] = true;
    for (const ClassId parent : program[id].parents) open.push_back(parent);
  }
  return classes;
}

bool takes_by_figures(const Class& candidate, const Ingredient& ingredient,
                      const ClassSet& classes) {
  if (candidate.conditions.empty()) return false;
  const bool parents = std::all_of(candidate.parents.begin(), candidate.parents.end(),
                                   [&](ClassId parent) { return classes[parent.index]; });
  return parents && std::all_of(candidate.conditions.begin(), candidate.conditions.end(),
                                [&](const Condition& each) { return meets(ingredient, each); });
}

// A class by figures may stand on another class by figures, so this goes on until nothing is new.
void add_classes_by_figures(const Program& program, const Ingredient& ingredient,
                            ClassSet& classes) {
  for (bool grown = true; grown;) {
    grown = false;
    for (std::size_t i = 0; i < program.classes.size(); ++i) {
      if (classes[i] || !takes_by_figures(program.classes[i], ingredient, classes)) continue;
      classes[i] = true;
      grown = true;
    }
  }
}

}  // namespace

std::vector<IngredientId> commonest_members(const Program& program, const Target& target) {
  auto result = members(program, target);
  std::stable_sort(result.begin(), result.end(), [&](IngredientId a, IngredientId b) {
    return program[a].sources.size() > program[b].sources.size();
  });
  return result;
}

std::optional<Bounds> figure_of(const Ingredient& ingredient, Property property) {
  using science::Substance;
  switch (property) {
    case Property::ph:
      return ingredient.ph ? std::optional(ingredient.ph->value) : std::nullopt;
    case Property::acidity:
      return science::acidity_as_acetic(ingredient.composition);
    case Property::acetic_acid:
      return ingredient.composition.or_none(Substance::acetic_acid);
    case Property::sugars:
      return science::sugars(ingredient.composition);
    case Property::soluble_solids:
      return ingredient.soluble_solids ? std::optional(ingredient.soluble_solids->value)
                                       : science::soluble_solids(ingredient.composition);
    case Property::total_solids:
      return ingredient.total_solids ? std::optional(ingredient.total_solids->value)
                                     : science::total_solids(ingredient.composition);
    case Property::water:
      return ingredient.composition[Substance::water];
    case Property::salt:
      return ingredient.composition.or_none(Substance::salt);
    case Property::weight:
      return Bounds::exactly(1);
    default:
      return std::nullopt;
  }
}

void find_members(Program& program) {
  program.classes_of.clear();
  program.classes_of.reserve(program.ingredients.size());
  for (const Ingredient& ingredient : program.ingredients) {
    ClassSet classes = declared_classes(program, ingredient);
    add_classes_by_figures(program, ingredient, classes);
    program.classes_of.push_back(std::move(classes));
  }
}

bool is_member(const Program& program, IngredientId ingredient, ClassId of_class) {
  return program.classes_of[ingredient.index][of_class.index];
}

bool is_of_class(const Program& program, IngredientId ingredient, std::string_view class_name) {
  for (std::size_t i = 0; i < program.classes.size(); ++i) {
    if (program.classes[i].name == class_name) return is_member(program, ingredient, ClassId(i));
  }
  return false;
}

bool takes(const Program& program, const Target& target, IngredientId ingredient) {
  const bool named = target.of_class.valid() ? is_member(program, ingredient, target.of_class)
                                             : target.ingredient == ingredient;
  if (!named || target.narrowed.empty()) return named;
  return std::any_of(target.narrowed.begin(), target.narrowed.end(),
                     [&](const Target& narrow) { return takes(program, narrow, ingredient); });
}

std::vector<IngredientId> members(const Program& program, const Target& target) {
  std::vector<IngredientId> result;
  for (std::size_t i = 0; i < program.ingredients.size(); ++i) {
    if (takes(program, target, IngredientId(i))) result.push_back(IngredientId(i));
  }
  return result;
}

bool says_its_kind(const Program& program, IngredientId ingredient) {
  const auto& classes = program.classes_of[ingredient.index];
  const auto end = classes.begin() + static_cast<std::ptrdiff_t>(program.library_classes);
  return std::find(classes.begin(), end, true) != end;
}

const Refusal* refusal_of(const Program& program, const Framework& framework,
                          IngredientId ingredient) {
  for (const RouteClaim& claim : framework.routes) {
    for (const Refusal& refusal : program[claim.route].refusals) {
      if (!says_its_kind(program, ingredient)) return &refusal;
      for (const Target& target : refusal.targets) {
        if (takes(program, target, ingredient)) return &refusal;
      }
    }
  }
  return nullptr;
}

std::string why_refused(const Program& program, const Refusal& refusal, IngredientId ingredient) {
  if (says_its_kind(program, ingredient)) return refusal.because;
  std::vector<std::string> kinds;
  for (const Target& target : refusal.targets) kinds.push_back(target.name);
  return fmt::format(
      "nothing says what kind of thing {} is, so it could be {}, which the route "
      "refuses: {}",
      program[ingredient].name, one_of(kinds), refusal.because);
}

}  // namespace maslin::language
