// SPDX-License-Identifier: Apache-2.0
// Which ingredient belongs to which class: by what it says it is, and by the class's figures. A
// figure that is not known counts as its unfavourable answer: it makes low-acid, and never acid.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "language/program.hpp"

namespace maslin::language {

// Fills Program::classes_of; called once, when every class and ingredient is read.
void find_members(Program& program);

bool is_member(const Program& program, IngredientId ingredient, ClassId of_class);
// Of the class of this name; false where there is no such class.
bool is_of_class(const Program& program, IngredientId ingredient, std::string_view class_name);
bool takes(const Program& program, const Target& target, IngredientId ingredient);
// Every ingredient a target takes, in order of their ids.
std::vector<IngredientId> members(const Program& program, const Target& target);
// The same, the commonest first: what most tables know.
std::vector<IngredientId> commonest_members(const Program& program, const Target& target);

// Whether its entry leads to a class of the library, `ingredient butter is dairy`: a class of the
// user's own that stands under none says nothing of what a thing is.
bool says_its_kind(const Program& program, IngredientId ingredient);

// Why a route that the framework claims does not take an ingredient; none where all do. What does
// not say what kind of thing it is could be anything: the first refusal there is counts for it.
const Refusal* refusal_of(const Program& program, const Framework& framework,
                          IngredientId ingredient);
// In a cook's words.
std::string why_refused(const Program& program, const Refusal& refusal, IngredientId ingredient);

// A figure of an ingredient as a mass share (a pH as such); nothing when no table gives it.
std::optional<Bounds> figure_of(const Ingredient& ingredient, Property property);

}  // namespace maslin::language
