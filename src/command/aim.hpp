// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "driver/session.hpp"
#include "plan/draft.hpp"

namespace maslin::command {

// "4 kg finished", "3 kg prepared"; nothing after a report.
std::optional<plan::Aim> read_aim(Session& session, const std::string& text);

// "12 of 282 ml, 4 of 190 ml": jars to fill; nothing after a report.
std::optional<std::vector<language::JarStock>> read_jars(Session& session, const std::string& text);

}  // namespace maslin::command
