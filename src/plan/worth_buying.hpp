// SPDX-License-Identifier: Apache-2.0
// What might be bought to make a plan possible.
#pragma once

#include <vector>

#include "blend/ground.hpp"
#include "plan/make.hpp"

namespace maslin::plan {

// For each part of the framework that lacks something: the commonest of what it takes, first what
// most tables know. Fruit sour enough to be an acid is not offered as produce: nobody wants
// kilograms of lemons in a chutney.
std::vector<std::vector<language::IngredientId>> worth_buying(
    const language::Program& program, const Task& task,
    const std::vector<blend::StatementInfo>& conflict);

}  // namespace maslin::plan
