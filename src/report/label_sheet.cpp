// SPDX-License-Identifier: Apache-2.0
#include "report/label_sheet.hpp"

#include <fmt/format.h>

#include "report/sheet.hpp"
#include "report/words.hpp"

namespace maslin::report {

std::string label_title(const label::Label& label) { return label.name.value_or(blank); }

LabelLine ingredient_line(const label::Label& label) {
  LabelLine line;
  for (const label::Phrase& each : label.ingredients) {
    if (!line.empty()) line.push_back({", ", false});
    line.insert(line.end(), each.begin(), each.end());
  }
  if (!label.not_stated.empty()) {
    line.push_back(
        {fmt::format("; allergens not stated for {}: {}", fmt::join(label.not_stated, ", "), blank),
         false});
  }
  return line;
}

std::vector<std::string> keeping_lines(const label::Label& label) {
  const std::string best = label.best_within
                               ? fmt::format("Best before: {} ({} from the date made)", blank,
                                             duration_text(*label.best_within))
                               : fmt::format("Keep cold. Best before: {}", blank);
  return {best, "Once opened, keep in the refrigerator and use soon.",
          fmt::format("Made: {}", blank), fmt::format("Made by: {}", blank)};
}

std::string net_text(const label::Label& label, const std::optional<Mass>& net) {
  const bool ounces = label.law != nullptr && label.law->says_ounces;
  if (!net) return fmt::format("net {0}{1} g", ounces ? blank + std::string(" oz, ") : "", blank);
  const std::string grams = net->in_base().to_decimal(0) + " g";
  if (!ounces) return "net " + grams;
  // Of the avoirdupois ounce, and never overstated.
  const Rational in_ounces =
      net->in_base() / Rational(Rational::Wide{28349523125}, Rational::Wide{1000000000});
  const Rational tenth(Rational::Wide{1}, Rational::Wide{10});
  return fmt::format("net {} oz ({})", in_ounces.floor_to(tenth).to_decimal(1), grams);
}

std::vector<std::string> net_lines(const label::Label& label, const label::Lots& lots) {
  if (lots.jars.empty()) return {net_text(label, std::nullopt)};
  std::vector<std::string> lines;
  for (const label::JarContents& jar : lots.jars) {
    lines.push_back(fmt::format("{} jar{} of {} ml{}: {}", jar.count, jar.count == 1 ? "" : "s",
                                jar.holds.in_base().to_decimal(0), jar.net ? "" : ", not full",
                                net_text(label, jar.net)));
  }
  return lines;
}

std::string record_line(const label::Label& label) {
  if (!label.record) return {};
  return fmt::format("batch {}, boil {}: by what was used", label.record->batch,
                     label.record->boil);
}

std::string law_line(const label::Label& label) {
  if (label.law == nullptr) return "law: none given";
  const std::string day =
      label.law_as_of ? fmt::format(", as of {}", text_of(*label.law_as_of)) : "";
  return fmt::format("law: {}{} ({})", label.law->name, day, label.law->source);
}

std::string nutrition_title(const label::Label& label) {
  if (label.law == nullptr || label.law->table_per_100_g) return "Nutrition per 100 g";
  return "In 100 g, to work the panel out from";
}

LabelLine card_line(const label::Label& label, const label::CardRow& row) {
  if (row.in.empty() && !label.not_stated.empty()) {
    return {{fmt::format("{}: {}", row.allergen, blank), false}};
  }
  if (row.in.empty()) {
    return {{fmt::format("{}: stated for nothing that is used", row.allergen), false}};
  }
  return {{row.allergen, true}, {fmt::format(": in {}", fmt::join(row.in, ", ")), false}};
}

std::vector<std::string> card_notes(const label::Label& label) {
  std::vector<std::string> notes;
  if (!label.not_stated.empty()) {
    notes.push_back(
        fmt::format("Allergens are not stated for {}: read the packets, and fill in the blanks.",
                    fmt::join(label.not_stated, ", ")));
  }
  notes.emplace_back(
      "This is what the ingredients' entries state. It says nothing of traces from the kitchen.");
  return notes;
}

}  // namespace maslin::report
