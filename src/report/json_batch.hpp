// SPDX-License-Identifier: Apache-2.0
// What is known of the batch as a whole: cost, pungency, how it keeps and how it sets.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "plan/make.hpp"

namespace maslin::report {

void add_batch_json(const language::Program& program, const plan::Plan& plan,
                    nlohmann::ordered_json& json);

}  // namespace maslin::report
