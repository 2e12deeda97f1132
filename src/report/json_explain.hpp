// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "language/program.hpp"
#include "report/explain.hpp"
#include "source/source.hpp"

namespace maslin::report {

// What was explained as text, and as values: all things of that name, and the first of each kind
// under the name of its kind as well.
nlohmann::ordered_json explain_json(const Sources& sources, const language::Program& program,
                                    const std::string& name, const Explanation& explanation);

}  // namespace maslin::report
