// SPDX-License-Identifier: Apache-2.0
// All that goes by one name: `sugar` is an ingredient and a keeping route.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "diagnostic/diagnostic.hpp"
#include "language/names.hpp"
#include "language/program.hpp"
#include "report/terms.hpp"

namespace maslin::report {

using Meaning =
    std::variant<language::IngredientId, language::ClassId, language::FrameworkId,
                 language::RouteId, const language::Standard*, const Term*, language::UnitId, Code>;

// "ingredient", as it may stand before a name to ask for that kind alone.
std::string_view kind_of(const Meaning& meaning);

// In the order in which a cook is likely to mean them. `route sugar` is the route alone, `jam in
// Great Britain` the standard of that place.
std::vector<Meaning> meanings_of(const language::Program& program, const language::Names& names,
                                 const std::string& name);

// Known names that are like one that means nothing, at most four.
std::vector<std::string> names_near(const language::Program& program, const language::Names& names,
                                    const std::string& name);

}  // namespace maslin::report
