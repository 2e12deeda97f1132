// SPDX-License-Identifier: Apache-2.0
// The steps of a method in a cook's words, with the weights of one boil.
#pragma once

#include <string>

#include "language/program.hpp"
#include "plan/afternoon.hpp"

namespace maslin::report {

// "simmer 25 min, covered, until a skewer slides in".
std::string step_text(const language::Step& step);
// The same with the names of all that goes in: "add onion, 1/2 of vinegar and all spice".
std::string whole_step_text(const language::Step& step);
// "fill hot, at 85 °C or more, 13 mm below the rim; lids on at once".
std::string filling_text(const language::Filling& filling);
// What goes in: "432 g", "2 pieces", "1 tbsp"; "3 × 435 g, 4 × 430 g" where the first three boils
// get a step more than the other four.
std::string dealt_text(const plan::Boils& boils, const plan::BoilItem& item, plan::Tool tool);
// "25 min", "20 to 30 min", "at least 20 min", "3 to 5 weeks".
std::string lasting_text(const language::Lasting& lasting);
// "1 h 20 min", "3 weeks".
std::string time_text(const Duration& time);
// "2 h 10 min to 3 h".
std::string time_range_text(const Range<Duration>& time);

}  // namespace maslin::report
