// SPDX-License-Identifier: Apache-2.0
// Weights and shares in words, one way everywhere.
#pragma once

#include <string>

#include "language/program.hpp"
#include "quantity/exact.hpp"

namespace maslin::plan {

// Grams below a kilogram, kilograms above, to the gram: "540 g", "1.805 kg". Grams below 20 keep
// up to two decimals.
std::string weight_text(const Rational& grams);
// "12 %", "12.5 %": to a tenth of a percent.
std::string percent_text(const Rational& share);
// "12 .. 20 %".
std::string range_text(const Bounds& shares);

// The share of a line's gross weight that is ready for the pan; 1 where it is weighed prepared.
Rational prepared_share(const language::Program& program, const language::Line& line);

}  // namespace maslin::plan
