// SPDX-License-Identifier: Apache-2.0
// Whether a plan is what its source tested, as JSON. Minutes are there only where they follow.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "plan/tested.hpp"
#include "source/source.hpp"

namespace maslin::report {

nlohmann::ordered_json tested_json(const Sources& sources, const language::Program& program,
                                   language::FrameworkId framework, const plan::Tested& tested);

}  // namespace maslin::report
