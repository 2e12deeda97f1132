// SPDX-License-Identifier: Apache-2.0
#include "report/label_html.hpp"

#include <fmt/format.h>

#include "report/label_sheet.hpp"
#include "report/markup.hpp"
#include "report/sheet.hpp"

namespace maslin::report {
namespace {

Element paragraph(const std::string& text) { return Element("p").say(text); }

void add_line(Element& element, const LabelLine& line) {
  // Kept on one line: a child would stand on a line of its own, and blanks would come in.
  for (const label::Words& words : line) {
    if (words.emphasised) {
      element.run(Element("strong").say(words.text));
    } else {
      element.say(words.text);
    }
  }
}

Element list_of(const std::vector<std::string>& points) {
  Element list("ul");
  for (const std::string& point : points) list.add(Element("li").say(point));
  return list;
}

Element nutrition_table(const label::Label& label) {
  Element body("tbody");
  for (const label::NutritionRow& row : label.nutrition) {
    Element head = Element("th").with("scope", "row");
    if (row.of_which) head.with("class", "part");
    body.add(Element("tr")
                 .add(head.say(row.what))
                 .add(Element("td").say(row.amount.value_or(std::string(blank) + " g"))));
  }
  return Element("table").add(Element("caption").say(nutrition_title(label))).add(body);
}

// What is stuck on the jars of one boil.
Element one_label(const label::Label& label, const label::Lots& lots, long boil) {
  Element article("article");
  article.add(Element("h2").say(label_title(label)));
  Element ingredients("p");
  ingredients.say("Ingredients: ");
  add_line(ingredients, ingredient_line(label));
  article.add(ingredients.say("."));
  for (const std::string& each : label.quantities) article.add(paragraph(each));
  for (const std::string& each : net_lines(lots)) article.add(paragraph(each));
  for (const std::string& each : keeping_lines(label)) article.add(paragraph(each));
  article.add(paragraph("Lot: " + label::lot_mark(label, boil)));
  const bool table = label.law == nullptr || label.law->table_per_100_g;
  if (table && !label.nutrition.empty()) article.add(nutrition_table(label));
  return article;
}

Element for_the_maker(const label::Label& label) {
  Element section = Element("section").with("class", "maker");
  section.add(Element("h2").say("To fill in"));
  std::vector<std::string> points;
  for (const label::Blank& each : label.blanks) {
    points.push_back(fmt::format("{}: {} ({})", each.what, blank, each.why));
  }
  section.add(list_of(points));
  const bool panel = label.law != nullptr && !label.law->table_per_100_g;
  if (panel && !label.nutrition.empty()) section.add(nutrition_table(label));
  if (!label.notes.empty()) {
    section.add(Element("h2").say("For the maker")).add(list_of(label.notes));
  }
  return section.add(paragraph(law_line(label)));
}

std::string page_of(const std::string& title, const Element& main) {
  return html_page(title, style_sheet("label.css"), Element("body").add(main));
}

}  // namespace

std::string label_html(const label::Label& label) {
  const std::string title = "Labels: " + label_title(label);
  Element labels = Element("div").with("class", "labels");
  for (const label::Lots& lots : label.lots) {
    for (long boil = lots.first; boil <= lots.last; ++boil) {
      labels.add(one_label(label, lots, boil));
    }
  }
  return page_of(
      title, Element("main").add(Element("h1").say(title)).add(labels).add(for_the_maker(label)));
}

std::string card_html(const label::Label& label) {
  const std::string title = "Allergens: " + label_title(label);
  Element list("ul");
  for (const label::CardRow& row : label.card) {
    Element point("li");
    add_line(point, card_line(label, row));
    list.add(point);
  }
  Element main("main");
  main.add(Element("h1").say(title));
  for (const std::string& note : card_notes(label)) main.add(paragraph(note));
  return page_of(title, main.add(list).add(paragraph(law_line(label))));
}

}  // namespace maslin::report
