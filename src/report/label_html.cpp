// SPDX-License-Identifier: Apache-2.0
#include "report/label_html.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/label_sheet.hpp"
#include "report/markup.hpp"
#include "report/sheet.hpp"

namespace maslin::report {
namespace {

// On forty pages or so. A page of more is more than a browser prints at ease.
constexpr std::size_t most_labels = 300;

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

// One to cut out: what it is stuck on, and whose lot it is of.
struct Cut {
  long boil = 1;
  std::optional<Mass> net;
};

// As many as there are jars, or one of each kind.
std::vector<Cut> cuts_of(const label::Label& label, bool one_of_each) {
  std::vector<Cut> cuts;
  for (const label::Lots& lots : label.lots) {
    for (long boil = lots.first; boil <= lots.last; ++boil) {
      for (const label::JarContents& jar : lots.jars) {
        cuts.insert(cuts.end(), one_of_each ? 1 : static_cast<std::size_t>(jar.count),
                    {boil, jar.net});
      }
      if (lots.jars.empty()) cuts.push_back({boil, std::nullopt});
    }
  }
  return cuts;
}

bool has_table(const label::Label& label) {
  return (label.law == nullptr || label.law->table_per_100_g) && !label.nutrition.empty();
}

std::string ingredients_text(const label::Label& label) {
  std::string text = "Ingredients: ";
  for (const label::Words& words : ingredient_line(label)) text += words.text;
  return text;
}

// Labels in a column of a page, as many as the longest text lets stand there. The letters are as
// small as the law lets them be, so that it goes by what a line of them holds.
int rows_of(const label::Label& label) {
  constexpr double page = 280;  // mm, as the style sheet divides it
  constexpr double edges = 6;
  constexpr double line = 3.6;
  constexpr double title_line = 5.6;
  constexpr std::size_t signs_of_title = 32;
  constexpr double table = 40;
  const std::size_t signs = has_table(label) ? 34 : 62;
  const auto lines = [](const std::string& text, std::size_t in_a_line) {
    return static_cast<double>(text.size() / in_a_line + 1);
  };
  double height = lines(ingredients_text(label), signs) * line;
  for (const std::string& each : label.quantities) height += lines(each, signs) * line;
  for (const std::string& each : keeping_lines(label)) height += lines(each, signs) * line;
  height += lines("Lot: " + label::lot_mark(label, label.lots.back().last), signs) * line + line;
  if (has_table(label)) height = std::max(height, table);
  height += edges + lines(label_title(label), signs_of_title) * title_line;
  for (int rows = 4; rows > 1; --rows) {
    if (page / rows >= height) return rows;
  }
  return 1;
}

// What is stuck on one jar.
Element one_label(const label::Label& label, const Cut& cut) {
  Element article("article");
  article.add(Element("h2").say(label_title(label)));
  Element ingredients("p");
  ingredients.say("Ingredients: ");
  add_line(ingredients, ingredient_line(label));
  Element words("div");
  words.add(ingredients.say("."));
  for (const std::string& each : label.quantities) words.add(paragraph(each));
  words.add(Element("p").with("class", "net").say(net_text(label, cut.net)));
  for (const std::string& each : keeping_lines(label)) words.add(paragraph(each));
  words.add(paragraph("Lot: " + label::lot_mark(label, cut.boil)));
  article.add(words);
  if (has_table(label)) article.add(nutrition_table(label));
  return article;
}

Element pages_of_labels(const label::Label& label, const std::vector<Cut>& cuts) {
  const int rows = rows_of(label);
  const auto on_a_page = static_cast<std::size_t>(rows) * 2;
  Element labels = Element("div").with("class", "labels");
  for (std::size_t begin = 0; begin < cuts.size(); begin += on_a_page) {
    Element page = Element("div").with("class", fmt::format("page rows-{}", rows));
    const std::size_t end = std::min(begin + on_a_page, cuts.size());
    for (std::size_t i = begin; i < end; ++i) page.add(one_label(label, cuts[i]));
    labels.add(page);
  }
  return labels;
}

Element for_the_maker(const label::Label& label, const std::string& how_many) {
  Element section = Element("section").with("class", "maker");
  if (label.record) section.add(paragraph(record_line(label)));
  section.add(paragraph(how_many));
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

std::string label_html(const std::vector<label::Label>& labels) {
  const std::string title = "Labels: " + label_title(labels.front());
  Element main("main");
  main.add(Element("h1").say(title));
  for (const label::Label& label : labels) {
    std::vector<Cut> cuts = cuts_of(label, false);
    std::string how_many =
        cuts.size() == 1 ? "One label to cut out."
                         : fmt::format("{} labels to cut out, one for every jar.", cuts.size());
    if (cuts.size() > most_labels / labels.size()) {
      how_many = fmt::format(
          "{} jars are too many to print here: one label of each kind is below. "
          "The text says how many of each.",
          cuts.size());
      cuts = cuts_of(label, true);
      if (cuts.size() > most_labels) {
        how_many += fmt::format(" Only the first {} kinds are.", most_labels);
        cuts.resize(most_labels);
      }
    }
    main.add(for_the_maker(label, how_many)).add(pages_of_labels(label, cuts));
  }
  return page_of(title, main);
}

std::string card_html(const std::vector<label::Label>& labels) {
  const std::string title = "Allergens: " + label_title(labels.front());
  Element main("main");
  main.add(Element("h1").say(title));
  for (const label::Label& label : labels) {
    Element list("ul");
    for (const label::CardRow& row : label.card) {
      Element point("li");
      add_line(point, card_line(label, row));
      list.add(point);
    }
    if (label.record) main.add(paragraph(record_line(label)));
    for (const std::string& note : card_notes(label)) main.add(paragraph(note));
    main.add(list).add(paragraph(law_line(label)));
  }
  return page_of(title, main);
}

}  // namespace maslin::report
