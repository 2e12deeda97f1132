// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "blend/ground.hpp"
#include "plan/attempt.hpp"

namespace maslin::plan {

// What to add to the basket so that everything in it which fits the framework is used: "1.2 kg of
// apple (gross)". Empty where little is left, an aim was asked for, or nothing would do.
std::string what_would_use_up(const blend::Grounding& grounding, const Task& task,
                              const Attempt& attempt);

}  // namespace maslin::plan
