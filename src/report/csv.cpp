// SPDX-License-Identifier: Apache-2.0
#include "report/csv.hpp"

#include "diagnostic/render.hpp"

namespace maslin::report {
namespace {

// No more digits than any scales show.
constexpr int places = 3;

std::string number(const Rational& value) { return value.to_decimal(places); }
std::string number(const std::optional<Rational>& value) { return value ? number(*value) : ""; }

std::string row_of(const std::vector<std::string>& cells) {
  std::string row;
  for (const std::string& cell : cells) row += csv_cell(cell) + ",";
  row.pop_back();
  return row + "\r\n";
}

std::vector<std::string> cells_of(const ShoppingLine& line) {
  const Purchase& purchase = line.purchase;
  return {line.what,
          number(line.needed.in_base()),
          number(line.at_hand.in_base()),
          number(purchase.weight),
          purchase.gross ? "gross" : "as it is used",
          number(purchase.pack),
          number(purchase.packs),
          purchase.cost ? purchase.cost->to_decimal(2, true) : "",
          purchase.listed ? "to buy" : "not listed"};
}

}  // namespace

std::string csv_cell(std::string_view raw) {
  std::string text = printable(raw);
  // A blank before the sign does not keep every spreadsheet from reading a formula.
  const std::size_t first = text.find_first_not_of(' ');
  if (first != std::string::npos &&
      std::string_view("=+-@").find(text[first]) != std::string::npos) {
    text.insert(0, "'");
  }
  if (text.find_first_of(",\"'") == std::string::npos) return text;
  std::string cell = "\"";
  for (const char c : text) {
    if (c == '"') cell += '"';
    cell += c;
  }
  return cell + "\"";
}

std::string to_csv(const Sheet& sheet) {
  std::string text = row_of({"what", "needed_g", "at_hand_g", "to_get_g", "sold_as", "pack_g",
                             "packs", "cost", "listed"});
  for (const ShoppingLine& line : sheet.shopping) text += row_of(cells_of(line));
  return text;
}

}  // namespace maslin::report
