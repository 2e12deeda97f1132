// SPDX-License-Identifier: Apache-2.0
// A framework beside the amounts of the recipe whose minutes it claims.
#pragma once

#include <string>
#include <vector>

#include "language/tested.hpp"

namespace maslin::language {

// The amounts that a row of this table was tested with; none where the table does not hold them.
const Recipe* recipe_for(const Route& route, const std::string& product);

// Where the amounts of a framework, or the room it leaves in a jar, are not those of the recipe
// its claim names. A route that holds no amounts for it gives no minutes: that is a lapse as well.
std::vector<Lapse> beside_recipe(const Program& program, const Framework& framework,
                                 const RouteClaim& claim);

}  // namespace maslin::language
