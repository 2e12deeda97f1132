// SPDX-License-Identifier: Apache-2.0
// What the sheet draws of the way from pan to shelf.
#pragma once

#include "plan/make.hpp"
#include "report/sheet.hpp"

namespace maslin::report {

// Adds the row of jars and the depths, where they are known, and makes the boiling down that of one
// boil, with its time.
void add_afternoon_figures(const plan::Plan& plan, Sheet& sheet);

}  // namespace maslin::report
