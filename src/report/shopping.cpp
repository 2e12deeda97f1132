// SPDX-License-Identifier: Apache-2.0
#include "report/shopping.hpp"

#include <fmt/format.h>

#include "plan/weights.hpp"
#include "report/text.hpp"

namespace maslin::report {
namespace {

using plan::weight_text;

std::string to_take(const Purchase& purchase) {
  if (!purchase.packs) return weight_text(purchase.weight) + (purchase.gross ? " (gross)" : "");
  return fmt::format("{} of {}", purchase.packs->to_decimal(0), weight_text(*purchase.pack));
}

std::vector<std::string> row_for(const ShoppingLine& line) {
  const auto& purchase = line.purchase;
  return {line.what, to_take(purchase), weight_text(line.needed.in_base()),
          line.at_hand.is_zero() ? "" : weight_text(line.at_hand.in_base()),
          purchase.cost ? purchase.cost->to_decimal(2, true) : ""};
}

// Nothing where no line has a price.
std::string total_of(const std::vector<ShoppingLine>& lines) {
  const Rational hundredth(Rational::Wide{1}, Rational::Wide{100});
  Rational sum;
  std::size_t priced = 0;
  for (const ShoppingLine& line : lines) {
    if (!line.purchase.cost) continue;
    sum += line.purchase.cost->round_to(hundredth);  // what is shown adds up
    ++priced;
  }
  if (priced == 0) return {};
  std::string text = "It costs " + sum.to_decimal(2, true);
  if (priced < lines.size()) {
    text += fmt::format(" without the {} of {} that have no price", lines.size() - priced,
                        lines.size());
  }
  return text + ".";
}

}  // namespace

std::string to_shopping(const Sheet& sheet) {
  Sheet list;
  list.title = "To get for " + sheet.title;
  Section section;
  section.title = "What to get";
  if (sheet.shopping.empty()) section.paragraphs.emplace_back("Nothing.");
  section.table.heads = {"what", "get", "needed, ready for the pan", "of that at hand", "costs"};
  for (const ShoppingLine& line : sheet.shopping) section.table.rows.push_back(row_for(line));
  if (const std::string total = total_of(sheet.shopping); !total.empty()) {
    section.points.push_back(total);
  }
  list.head = sheet.head;
  list.sections.push_back(std::move(section));
  return to_text(list);
}

}  // namespace maslin::report
