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

std::size_t columns_run_over(const Table& table, std::size_t row,
                             const std::vector<std::size_t>& columns, std::size_t at) {
  const std::vector<std::string>& cells = table.rows[row];
  if (cells[columns[at]].empty() || is_figure(cells[columns[at]])) return 1;
  const bool rest_empty =
      std::all_of(columns.begin() + static_cast<std::ptrdiff_t>(at) + 1, columns.end(),
                  [&](std::size_t column) { return cells[column].empty(); });
  return rest_empty ? columns.size() - at : 1;
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
