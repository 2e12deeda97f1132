// SPDX-License-Identifier: Apache-2.0
// Tables of comma-separated values, the first line the heads.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace maslin::test {

using Row = std::map<std::string, std::string>;

// A table by its path below the root of the sources, or by its name in data/. Both throw when the
// file cannot be read.
std::vector<Row> table_at(const std::string& path);
std::vector<Row> table(const std::string& name);

}  // namespace maslin::test
