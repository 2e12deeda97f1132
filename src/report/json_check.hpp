// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <vector>

#include "report/proof.hpp"
#include "source/source.hpp"

namespace maslin::report {

// What the user's files declare and was checked, what was not, and what was proved of each
// framework.
nlohmann::ordered_json check_json(const Sources& sources, const language::Program& program,
                                  const std::vector<Proved>& proved);

}  // namespace maslin::report
