// SPDX-License-Identifier: Apache-2.0
// The linear programme of a plan, so that others can work it out again from the same texts.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "blend/ground.hpp"
#include "plan/draft.hpp"
#include "source/source.hpp"

namespace maslin::report {

// In kilograms (credits in kilograms, litres or thousands of pieces). A bound that is not there is
// none.
nlohmann::ordered_json blend_json(const Sources& sources, const plan::Task& task,
                                  const blend::Grounding& grounding, const blend::Setting& setting,
                                  const blend::Blend& blend);

}  // namespace maslin::report
