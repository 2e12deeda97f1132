// SPDX-License-Identifier: Apache-2.0
#include "report/label_text.hpp"

#include <fmt/format.h>

#include <utf8proc.h>

#include "report/label_sheet.hpp"
#include "report/sheet.hpp"
#include "report/text.hpp"

namespace maslin::report {
namespace {

// Of every alphabet; what is no UTF-8 stays as it is.
std::string capitals(const std::string& text) {
  std::string result;
  for (std::size_t i = 0; i < text.size();) {
    utf8proc_int32_t code_point = 0;
    const auto length =
        utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()) + i,
                         static_cast<utf8proc_ssize_t>(text.size() - i), &code_point);
    if (length <= 0) {
      result += text[i++];
      continue;
    }
    utf8proc_uint8_t bytes[4];
    const auto written = utf8proc_encode_char(utf8proc_toupper(code_point), bytes);
    result.append(reinterpret_cast<const char*>(bytes), static_cast<std::size_t>(written));
    i += static_cast<std::size_t>(length);
  }
  return result;
}

std::string plain(const LabelLine& line) {
  std::string text;
  for (const label::Words& words : line) {
    text += words.emphasised ? capitals(words.text) : words.text;
  }
  return text;
}

std::vector<std::string> blank_points(const label::Label& label) {
  std::vector<std::string> points;
  for (const label::Blank& each : label.blanks) {
    points.push_back(fmt::format("{}: {} ({})", each.what, blank, each.why));
  }
  return points;
}

Section lots_section(const label::Label& label) {
  Section section{"Lots", {}, {}, {}, Topic::other};
  for (const label::Lots& lots : label.lots) {
    for (long boil = lots.first; boil <= lots.last; ++boil) {
      section.points.push_back(fmt::format("{}: {}", label::lot_mark(label, boil),
                                           fmt::join(net_lines(label, lots), "; ")));
    }
  }
  return section;
}

Section nutrition_section(const label::Label& label) {
  Section section{nutrition_title(label), {}, {}, {}, Topic::other};
  section.table.heads = {"", "amount"};
  for (const label::NutritionRow& row : label.nutrition) {
    section.table.rows.push_back(
        {(row.of_which ? "  " : "") + row.what, row.amount.value_or(std::string(blank) + " g")});
  }
  return section;
}

std::string one_text(const label::Label& label) {
  Sheet sheet;
  sheet.title = label_title(label);
  if (label.record) sheet.head.push_back(record_line(label));
  sheet.head.push_back(law_line(label));
  Section jar{"On every jar", {}, {}, {}, Topic::other};
  jar.paragraphs.push_back("Ingredients: " + plain(ingredient_line(label)) + ".");
  if (!label.quantities.empty()) {
    jar.paragraphs.push_back(fmt::format("Quantities: {}", fmt::join(label.quantities, ", ")));
  }
  for (const std::string& line : keeping_lines(label)) jar.paragraphs.push_back(line);
  sheet.sections.push_back(std::move(jar));
  sheet.sections.push_back(lots_section(label));
  if (!label.nutrition.empty()) sheet.sections.push_back(nutrition_section(label));
  sheet.sections.push_back({"To fill in", {}, {}, blank_points(label), Topic::other});
  if (!label.notes.empty()) {
    sheet.sections.push_back({"For the maker", {}, {}, label.notes, Topic::other});
  }
  return to_text(sheet);
}

std::string one_card(const label::Label& label) {
  Sheet sheet;
  sheet.title = "Allergens: " + label_title(label);
  if (label.record) sheet.head.push_back(record_line(label));
  sheet.head.push_back(law_line(label));
  Section card{"What is stated of what is used", {}, {}, {}, Topic::other};
  for (const label::CardRow& row : label.card) card.points.push_back(plain(card_line(label, row)));
  card.paragraphs = card_notes(label);
  sheet.sections.push_back(std::move(card));
  return to_text(sheet);
}

// One below the other.
template <class Print>
std::string texts_of(const std::vector<label::Label>& labels, const Print& print) {
  std::string text;
  for (const label::Label& label : labels) {
    if (!text.empty()) text += "\n";
    text += print(label);
  }
  return text;
}

}  // namespace

std::string label_text(const std::vector<label::Label>& labels) {
  return texts_of(labels, one_text);
}

std::string card_text(const std::vector<label::Label>& labels) {
  return texts_of(labels, one_card);
}

}  // namespace maslin::report
