// SPDX-License-Identifier: Apache-2.0
// What a route may ask to be read of a batch.
#pragma once

#include <string_view>
#include <vector>

namespace maslin::language {

std::vector<std::string_view> reading_names();

}  // namespace maslin::language
