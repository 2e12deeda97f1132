// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "diagnostic/diagnostic.hpp"
#include "language/names.hpp"
#include "language/program.hpp"
#include "report/explain.hpp"
#include "source/source.hpp"

namespace maslin::report {

// A diagnostic and its page.
nlohmann::ordered_json explain_json(Code code);

// What was explained as text, and under the name of its kind its figures as values.
nlohmann::ordered_json explain_json(const Sources& sources, const language::Program& program,
                                    const language::Names& names, const std::string& name,
                                    const Explanation& explanation);

}  // namespace maslin::report
