// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "language/program.hpp"
#include "plan/make.hpp"
#include "source/source.hpp"

namespace maslin::report {

// All that the sheet tells, as values: schema/maslin.schema.json.
nlohmann::ordered_json plan_json(const Sources& sources, const language::Program& program,
                                 const plan::Plan& plan);

}  // namespace maslin::report
