// SPDX-License-Identifier: Apache-2.0
// What covers a pack, and what a ferment stands in: lines of the method.
#pragma once

#include "plan/make.hpp"
#include "report/sheet.hpp"

namespace maslin::report {

// The liquor of a pack, how much of it goes into a jar, and how it stands beside the floor of the
// route; nothing where nothing is packed.
void add_liquor_lines(const language::Program& program, const plan::Plan& plan, Section& part);

// How large a vessel a ferment asks for; nothing where nothing ferments.
void add_vessel_line(const language::Program& program, const plan::Plan& plan, Section& part);

}  // namespace maslin::report
