// SPDX-License-Identifier: Apache-2.0
#include "report/markdown.hpp"

#include <algorithm>
#include <string_view>

#include "diagnostic/render.hpp"
#include "report/table.hpp"

namespace maslin::report {
namespace {

// Signs that mean something wherever they stand. `:`, `.` and `@` make links of bare addresses.
bool is_markup(std::string_view text, std::size_t at) {
  constexpr std::string_view anywhere = "\\`*_[]|~$@^";
  if (anywhere.find(text[at]) != std::string_view::npos) return true;
  if (text[at] == ':') return text.substr(at + 1, 2) == "//";
  return text[at] == '.' && at >= 3 && text.substr(at - 3, 3) == "www";
}

// How many characters at the start would make a heading, a list or a rule of the line: the sign
// to be marked is the last of them. 0 where there is none.
std::size_t opening(std::string_view text) {
  if (text.empty()) return 0;
  if (std::string_view("#-+=").find(text[0]) != std::string_view::npos) return 1;
  const std::size_t digits = text.find_first_not_of("0123456789");
  if (digits == 0 || digits == std::string_view::npos) return 0;
  const bool number = text[digits] == '.' || text[digits] == ')';
  const bool ends = digits + 1 == text.size() || text[digits + 1] == ' ';
  return number && ends ? digits + 1 : 0;
}

std::string escaped(const std::string& raw) {
  const std::string text = printable(raw);
  const std::size_t first = opening(text);
  std::string result;
  for (std::size_t i = 0; i < text.size(); ++i) {
    switch (text[i]) {
      case '&':
        result += "&amp;";
        break;
      case '<':
        result += "&lt;";
        break;
      case '>':
        result += "&gt;";
        break;
      default:
        if (is_markup(text, i) || i + 1 == first) result += '\\';
        result += text[i];
    }
  }
  return result;
}

// A line to write on stays one.
std::string cell_text(const std::string& cell) { return cell == blank ? cell : escaped(cell); }

std::string row_text(const std::vector<std::string>& cells,
                     const std::vector<std::size_t>& columns) {
  std::string text = "|";
  for (const std::size_t column : columns) text += " " + cell_text(cells[column]) + " |";
  return text + "\n";
}

std::string table_text(const Table& table) {
  const std::vector<std::size_t> columns = filled_columns(table);
  std::string text = row_text(table.heads, columns) + "|";
  for (const std::size_t column : columns) text += is_right(table, column) ? " ---: |" : " --- |";
  text += "\n";
  for (const auto& row : table.rows) text += row_text(row, columns);
  return text;
}

std::string list_text(const std::vector<std::string>& points) {
  std::string text;
  for (const std::string& point : points) text += "- " + escaped(point) + "\n";
  return text;
}

std::string section_text(const Section& section) {
  std::string text = "\n## " + escaped(section.title) + "\n";
  for (const std::string& paragraph : section.paragraphs) text += "\n" + escaped(paragraph) + "\n";
  if (!section.table.rows.empty()) text += "\n" + table_text(section.table);
  if (!section.points.empty()) text += "\n" + list_text(section.points);
  return text;
}

}  // namespace

std::string to_markdown(const Sheet& sheet) {
  std::string text = "# " + escaped(sheet.title) + "\n";
  if (!sheet.head.empty()) text += "\n" + list_text(sheet.head);
  for (const Section& section : sheet.sections) text += section_text(section);
  return text;
}

}  // namespace maslin::report
