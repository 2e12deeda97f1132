// SPDX-License-Identifier: Apache-2.0
// Times, spoons and other things as a cook reads them.
#pragma once

#include <string>
#include <vector>

#include "language/program.hpp"
#include "quantity/exact.hpp"

namespace maslin::report {

// "own", "traditional", "tested by …", or "own, after …" where a plan is not what was tested.
std::string status_text(const language::Framework& framework, bool as_tested);
// "8 weeks": in the largest unit that leaves a whole number.
std::string duration_text(const Duration& duration);
// "2 tbsp 1¼ tsp": to the quarter teaspoon.
std::string spoons_text(const Rational& millilitres);
// "CoFID 2015 14-319, 14-320; Ciqual 2020 13039": the entries of one table together.
std::string sources_text(const std::vector<std::string>& sources);
// Each without its entry: "CoFID 2015".
std::vector<std::string> tables_of(const std::vector<std::string>& sources);

}  // namespace maslin::report
