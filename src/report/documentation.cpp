// SPDX-License-Identifier: Apache-2.0
#include "report/documentation.hpp"

#include <algorithm>

namespace maslin::report {
namespace {

// The line that ends before `end`, and where it begins.
std::string_view line_before(std::string_view text, std::size_t end) {
  const std::size_t newline = end == 0 ? std::string_view::npos : text.rfind('\n', end - 1);
  const std::size_t begin = newline == std::string_view::npos ? 0 : newline + 1;
  std::string_view line = text.substr(begin, end - begin);
  while (!line.empty() && line.back() == '\r') line.remove_suffix(1);
  return line;
}

}  // namespace

std::vector<std::string> documentation_of(const Sources& sources, Span name) {
  const std::string_view text = sources.file(name.file).text();
  std::vector<std::string> lines;
  std::size_t end = text.rfind('\n', name.begin);
  while (end != std::string_view::npos) {
    std::string_view line = line_before(text, end);
    if (line.substr(0, 2) != "##") break;
    line.remove_prefix(2);
    if (!line.empty() && line.front() == ' ') line.remove_prefix(1);
    lines.emplace_back(line);
    end = end == 0 ? std::string_view::npos : text.rfind('\n', end - 1);
  }
  std::reverse(lines.begin(), lines.end());
  return lines;
}

std::string documentation_text(const Sources& sources, Span name) {
  std::string text;
  for (const std::string& line : documentation_of(sources, name)) {
    text += (text.empty() ? "" : "\n") + line;
  }
  return text;
}

}  // namespace maslin::report
