// SPDX-License-Identifier: Apache-2.0
// From pan to shelf on the sheet: the pan, the method with its weights, when to stop, the jars.
#pragma once

#include <vector>

#include "plan/make.hpp"
#include "report/sheet.hpp"

namespace maslin::report {

// In the order in which the cook needs them; none where there is nothing to say.
std::vector<Section> method_sections(const language::Program& program, const plan::Plan& plan);

}  // namespace maslin::report
