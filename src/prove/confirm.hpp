// SPDX-License-Identifier: Apache-2.0
// A mix that a bound speaks against, put to the planner itself.
#pragma once

#include "prove/case.hpp"
#include "prove/worst_mix.hpp"

namespace maslin::prove {

// Whether the planner, with this mix and plenty of all that is added, finds no plan.
bool is_refused(const Case& given, const Choice& choice, const Mix& mix);

}  // namespace maslin::prove
