// SPDX-License-Identifier: Apache-2.0
#include "report/text.hpp"

#include <utf8proc.h>

#include <algorithm>
#include <string_view>

#include "diagnostic/render.hpp"
#include "report/table.hpp"

namespace maslin::report {
namespace {

constexpr std::size_t page_width = 96;

std::size_t width_of(std::string_view text) {
  std::size_t width = 0;
  for (std::size_t i = 0; i < text.size();) {
    utf8proc_int32_t code_point = 0;
    const auto length =
        utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()) + i,
                         static_cast<utf8proc_ssize_t>(text.size() - i), &code_point);
    if (length <= 0) break;
    width += static_cast<std::size_t>(std::max(0, utf8proc_charwidth(code_point)));
    i += static_cast<std::size_t>(length);
  }
  return width;
}

bool starts_with_digit(std::string_view cell) {
  return !cell.empty() && cell[0] >= '0' && cell[0] <= '9';
}

// Words with nothing behind them in their row: they run on over the columns that are empty.
bool runs_on(const std::vector<std::string>& row, std::size_t column) {
  return column + 1 < row.size() && !starts_with_digit(row[column]) &&
         std::all_of(row.begin() + static_cast<std::ptrdiff_t>(column) + 1, row.end(),
                     [](const std::string& cell) { return cell.empty(); });
}

std::string table_text(const Table& table) {
  std::vector<std::size_t> widths(table.heads.size());
  for (std::size_t i = 0; i < table.heads.size(); ++i) {
    widths[i] = width_of(table.heads[i]);
    for (const auto& row : table.rows) {
      if (!runs_on(row, i)) widths[i] = std::max(widths[i], width_of(row[i]));
    }
  }
  std::string text;
  const std::vector<std::size_t> columns = filled_columns(table);
  const auto line = [&](const std::vector<std::string>& cells, bool head) {
    std::string out = " ";
    std::size_t column = 1;
    for (const std::size_t i : columns) {
      if (!head && runs_on(cells, i)) {
        out += ' ' + wrapped(cells[i], column + 1);
        break;
      }
      column += widths[i] + 2;
      const std::string fill(widths[i] - width_of(cells[i]), ' ');
      out += ' ' + (is_right(table, i) ? fill + cells[i] : cells[i] + fill) + ' ';
    }
    out.erase(out.find_last_not_of(' ') + 1);
    text += out + "\n";
  };
  line(table.heads, true);
  for (const auto& row : table.rows) line(row, false);
  return text;
}

std::string section_text(const Section& section) {
  std::string text = section.title + "\n";
  for (const std::string& paragraph : section.paragraphs) {
    text += "  " + wrapped(paragraph, 2) + "\n";
  }
  if (!section.table.rows.empty()) text += table_text(section.table);
  for (const std::string& point : section.points) text += "  - " + wrapped(point, 4) + "\n";
  return text;
}

// Names and notes come from files: nothing of them may steer a terminal.
std::string safe_lines(const std::string& text) {
  std::string result;
  std::size_t at = 0;
  while (at <= text.size()) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    result += printable(std::string_view(text).substr(at, end - at));
    if (end < text.size()) result += '\n';
    at = end + 1;
  }
  return result;
}

}  // namespace

std::string wrapped(const std::string& text, std::size_t indent) {
  std::string result;
  std::size_t column = indent;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t blank = std::min(text.find(' ', at), text.size());
    const std::string_view word = std::string_view(text).substr(at, blank - at);
    const std::size_t width = width_of(word);
    if (column > indent && column + 1 + width > page_width) {
      result += "\n" + std::string(indent, ' ');
      column = indent;
    } else if (column > indent) {
      result += ' ';
      ++column;
    }
    result += word;
    column += width;
    at = blank + 1;
  }
  return result;
}

std::string to_text(const Sheet& sheet) {
  std::string text = sheet.title + "\n";
  for (const std::string& line : sheet.head) text += wrapped(line, 0) + "\n";
  for (const Section& section : sheet.sections) text += "\n" + section_text(section);
  return safe_lines(text);
}

}  // namespace maslin::report
