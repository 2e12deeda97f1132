// SPDX-License-Identifier: Apache-2.0
// From pan to shelf as data.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "plan/make.hpp"
#include "source/source.hpp"

namespace maslin::report {

// Adds "method", "boils", "clock", "jars" and "water_boils" to a plan, each where there is one.
void add_method_json(const Sources& sources, const language::Program& program,
                     const plan::Plan& plan, nlohmann::ordered_json& json);

}  // namespace maslin::report
