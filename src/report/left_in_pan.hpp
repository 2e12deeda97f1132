// SPDX-License-Identifier: Apache-2.0
// What is left in the pan of one boil when a step of the method is done.
#pragma once

#include <cstddef>
#include <string>

#include "plan/afternoon.hpp"

namespace maslin::report {

// "; about 2.2 kg are left then", as it follows the words of the step; how little may be left where
// this hob can boil off more than is to go. Empty where nothing is to be said.
std::string left_in_pan(const plan::Draft& draft, const plan::Afternoon& afternoon,
                        std::size_t stage, std::size_t step);

}  // namespace maslin::report
