// SPDX-License-Identifier: Apache-2.0
// What every form of a table goes by.
#pragma once

#include <vector>

#include "report/sheet.hpp"

namespace maslin::report {

// Those that have anything in them; the others need not be shown.
std::vector<std::size_t> filled_columns(const Table& table);

// Figures stand to the right of their column, words to the left.
bool is_right(const Table& table, std::size_t column);

// Over how many of these columns a cell runs: words with nothing behind them in their row run on
// over the columns that are empty. `at` is an index into `columns`.
std::size_t columns_run_over(const Table& table, std::size_t row,
                             const std::vector<std::size_t>& columns, std::size_t at);

}  // namespace maslin::report
