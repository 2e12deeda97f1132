// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "report/figures.hpp"
#include "report/markup.hpp"

namespace maslin::report {

// The weight in the pan coming down at a steady boil, and the window in which to stop: two lines
// where the time is known as a range, else one on a scale without times.
Element draw_boiling(const BoilingDown& boiling, const std::string& id);

}  // namespace maslin::report
