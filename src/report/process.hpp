// SPDX-License-Identifier: Apache-2.0
// The minutes that go with a tested source, or why none do.
#pragma once

#include <optional>

#include "report/sheet.hpp"

namespace maslin::report {

// Nothing where the framework neither calls itself tested nor claims a tested process.
std::optional<Section> process_section(const language::Program& program, const plan::Plan& plan);

// "10 min up to 304.8 m, 15 min above".
std::string bands_text(const language::Process& row);

}  // namespace maslin::report
