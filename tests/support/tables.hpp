// SPDX-License-Identifier: Apache-2.0
// The tables of data/: comma-separated values, the first line the heads.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace maslin::test {

using Row = std::map<std::string, std::string>;

// Throws when the file cannot be read.
std::vector<Row> table(const std::string& name);

}  // namespace maslin::test
