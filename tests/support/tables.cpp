// SPDX-License-Identifier: Apache-2.0
#include "support/tables.hpp"

#include <fstream>
#include <stdexcept>

namespace maslin::test {
namespace {

// One line; a quoted cell may hold commas.
std::vector<std::string> cells(const std::string& line) {
  std::vector<std::string> result(1);
  bool quoted = false;
  for (const char c : line) {
    if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      result.emplace_back();
    } else if (c != '\r') {
      result.back() += c;
    }
  }
  return result;
}

}  // namespace

std::vector<Row> table(const std::string& name) { return table_at("data/" + name); }

std::vector<Row> table_at(const std::string& below) {
  const std::string path = std::string(MASLIN_SOURCE_DIR) + "/" + below;
  std::ifstream in(path);
  if (!in) throw std::runtime_error("cannot read " + path);
  std::string line;
  std::getline(in, line);
  const auto heads = cells(line);
  std::vector<Row> rows;
  while (std::getline(in, line)) {
    const auto values = cells(line);
    Row row;
    for (std::size_t i = 0; i < heads.size() && i < values.size(); ++i) row[heads[i]] = values[i];
    rows.push_back(std::move(row));
  }
  return rows;
}

}  // namespace maslin::test
