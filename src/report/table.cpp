// SPDX-License-Identifier: Apache-2.0
#include "report/table.hpp"

#include <algorithm>
#include <string_view>

namespace maslin::report {
namespace {

bool is_figure(std::string_view cell) { return !cell.empty() && cell[0] >= '0' && cell[0] <= '9'; }

}  // namespace

std::vector<std::size_t> filled_columns(const Table& table) {
  std::vector<std::size_t> columns;
  for (std::size_t i = 0; i < table.heads.size(); ++i) {
    const bool any = std::any_of(table.rows.begin(), table.rows.end(),
                                 [&](const auto& row) { return !row[i].empty(); });
    if (any) columns.push_back(i);
  }
  return columns;
}

bool is_right(const Table& table, std::size_t column) {
  bool any = false;
  for (const auto& row : table.rows) {
    if (row[column].empty()) continue;
    if (!is_figure(row[column])) return false;
    any = true;
  }
  return any;
}

}  // namespace maslin::report
