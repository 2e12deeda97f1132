// SPDX-License-Identifier: Apache-2.0
// The resolved standard library as bytes. The build makes them once with this same code, so that a
// run neither parses nor resolves what never changes.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "language/resolve.hpp"

namespace maslin::language {

std::string encode(const Resolved& resolved);

// Nothing when the bytes are not a whole image of this very build.
std::optional<Resolved> decode(std::string_view bytes);

}  // namespace maslin::language
