// SPDX-License-Identifier: Apache-2.0
// What a plan weighs, as lines that do not depend on the order of anything.
#pragma once

#include <string>
#include <vector>

#include "support/planning.hpp"

namespace maslin::test {

std::vector<std::string> amounts(const Planned& planned);

// Grams of produce a plan may be smaller by than its linear programme, for its weights are whole
// steps of the scales.
double lost_to_rounding(const Planned& planned, double step);

}  // namespace maslin::test
