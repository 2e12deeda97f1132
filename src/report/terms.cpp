// SPDX-License-Identifier: Apache-2.0
#include "report/terms.hpp"

#include <algorithm>

#include "base/embedded.hpp"
#include "base/spelling.hpp"

namespace maslin::report {
namespace {

constexpr std::string_view title_mark = "# ";
constexpr std::string_view also_mark = "Also: ";
constexpr std::string_view part_mark = "## ";

std::vector<std::string> split_at_semicolons(std::string_view text) {
  std::vector<std::string> result;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(';'), text.size());
    std::string_view each = text.substr(0, end);
    while (each.starts_with(' ')) each.remove_prefix(1);
    if (!each.empty()) result.emplace_back(each);
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return result;
}

Term read_page(std::string_view page) {
  Term term;
  while (!page.empty()) {
    const std::size_t end = std::min(page.find('\n'), page.size());
    const std::string_view line = page.substr(0, end);
    page.remove_prefix(std::min(end + 1, page.size()));
    if (line.starts_with(part_mark)) {
      term.parts.push_back({lower_case(line.substr(part_mark.size())), {}});
    } else if (line.starts_with(title_mark)) {
      term.name = line.substr(title_mark.size());
    } else if (line.starts_with(also_mark)) {
      term.also = split_at_semicolons(line.substr(also_mark.size()));
    } else if (!line.empty() && !term.parts.empty()) {
      std::string& text = term.parts.back().text;
      if (!text.empty()) text += ' ';
      text += line;
    }
  }
  return term;
}

}  // namespace

const std::vector<Term>& all_terms() {
  static const std::vector<Term> terms = [] {
    std::vector<Term> all;
    for (const embedded::File& file : embedded::term_pages()) all.push_back(read_page(file.text));
    std::sort(all.begin(), all.end(),
              [](const Term& a, const Term& b) { return lower_case(a.name) < lower_case(b.name); });
    return all;
  }();
  return terms;
}

const Term* term_named(std::string_view name) {
  const std::string wanted = lower_case(name);
  for (const Term& term : all_terms()) {
    if (lower_case(term.name) == wanted) return &term;
    const bool also = std::any_of(term.also.begin(), term.also.end(), [&](const std::string& each) {
      return lower_case(each) == wanted;
    });
    if (also) return &term;
  }
  return nullptr;
}

}  // namespace maslin::report
