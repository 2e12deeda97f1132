// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "language/program.hpp"
#include "source/source.hpp"

namespace maslin::report {

// What the user's files declare and was checked, and what was not.
nlohmann::ordered_json check_json(const Sources& sources, const language::Program& program);

}  // namespace maslin::report
