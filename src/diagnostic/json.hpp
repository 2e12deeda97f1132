// SPDX-License-Identifier: Apache-2.0
// Diagnostics for programs.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "diagnostic/diagnostic.hpp"
#include "source/source.hpp"

namespace maslin {

// {"file", "begin": {"line", "column", "offset"}, "end": {…}}: lines and columns from 1, columns in
// characters, offsets in bytes from 0.
nlohmann::ordered_json place_json(const Sources& sources, Span span);

// In the order they are in.
nlohmann::ordered_json diagnostics_json(const Sources& sources, const Diagnostics& diagnostics);

}  // namespace maslin
