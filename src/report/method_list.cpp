// SPDX-License-Identifier: Apache-2.0
#include "report/method_list.hpp"

#include <array>

namespace maslin::report {
namespace {

constexpr std::size_t stage = 0;
constexpr std::size_t what = 1;
constexpr std::size_t how_much = 2;

constexpr std::array<std::string_view, 3> openings = {"add ", "pack ", "for that, "};

std::string_view opening_of(const std::vector<std::string>& row) {
  for (const std::string_view each : openings) {
    if (!row[how_much].empty() && row[what].rfind(each, 0) == 0) return each;
  }
  return {};
}

// What is done to one thing after another is said once.
bool goes_on(const Table& table, std::size_t row) {
  const std::string_view opening = opening_of(table.rows[row]);
  return row > 0 && table.rows[row][stage].empty() && !opening.empty() &&
         opening == opening_of(table.rows[row - 1]);
}

// With the sign that parts it from the next step of its stage: behind an element comes a blank.
void add_step(const Table& table, std::size_t i, Element& steps) {
  const auto& row = table.rows[i];
  const std::size_t begin = goes_on(table, i) ? opening_of(row).size() : 0;
  const bool last = i + 1 == table.rows.size() || !table.rows[i + 1][stage].empty();
  const std::string behind = last ? "" : goes_on(table, i + 1) ? "," : ";";
  const std::string& amount = row[how_much];
  const std::string words = unbroken(row[what].substr(begin));
  steps.add(Element("span").say(amount.empty() ? words + behind : words));
  if (!amount.empty()) steps.add(Element("strong").say(unbroken(amount) + behind));
}

}  // namespace

std::string unbroken(std::string_view text) {
  constexpr std::string_view hard_blank = "\u00A0";
  std::string result;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool after_number = i > 0 && text[i - 1] >= '0' && text[i - 1] <= '9';
    const std::string_view rest = text.substr(i);
    // "1 × 330 g"
    const bool around_times = rest.starts_with(" ×") ||
                              (i >= 2 && rest.starts_with(" ") && text.substr(0, i).ends_with("×"));
    const bool before_unit = rest.starts_with(" %") || rest.starts_with(" g") ||
                             rest.starts_with(" kg") || rest.starts_with(" ml");
    if (around_times || (after_number && before_unit)) {
      result += hard_blank;
    } else {
      result += text[i];
    }
  }
  return result;
}

Element method_steps(const Table& table) {
  Element list("dl");
  for (std::size_t i = 0; i < table.rows.size();) {
    Element group("div");
    group.add(Element("dt").say(table.rows[i][stage]));
    Element steps("dd");
    do {
      add_step(table, i++, steps);
    } while (i < table.rows.size() && table.rows[i][stage].empty());
    list.add(group.add(steps));
  }
  return list;
}

}  // namespace maslin::report
