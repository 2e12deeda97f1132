// SPDX-License-Identifier: Apache-2.0
// What only the cook can know, as blanks to fill in.
#pragma once

#include "plan/verify.hpp"
#include "report/sheet.hpp"

namespace maslin::report {

Section readings_section(const plan::VerifiedPlan& plan);

}  // namespace maslin::report
