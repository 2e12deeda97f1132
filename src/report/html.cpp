// SPDX-License-Identifier: Apache-2.0
#include "report/html.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/drawing_boiling.hpp"
#include "report/drawing_depth.hpp"
#include "report/drawing_jars.hpp"
#include "report/drawing_shares.hpp"
#include "report/layout.hpp"
#include "report/markup.hpp"
#include "report/method_list.hpp"
#include "report/table.hpp"

namespace maslin::report {
namespace {

// As the name of a window, where a long one is of no use.
std::string shortened(std::string_view title) {
  constexpr std::size_t most_letters = 60;
  std::size_t letters = 0;
  for (std::size_t i = 0; i < title.size(); ++i) {
    const bool begins_letter = (title[i] & 0xC0) != 0x80;
    if (begins_letter && letters++ == most_letters) return std::string(title.substr(0, i)) + "…";
  }
  return std::string(title);
}

class Page {
 public:
  explicit Page(const Sheet& sheet) : sheet_(sheet), layout_(layout_for(sheet)) {}

  std::string run() {
    const bool titled = sheet_.title.find_first_not_of(' ') != std::string::npos;
    const std::string title = titled ? sheet_.title : "without a title";
    Element header("header");
    header.add(Element("h1").say(title));
    if (!sheet_.head.empty()) header.add(list(sheet_.head));
    Element main("main");
    main.add(header);
    add_part(main, "work", Place::work);
    add_part(main, "method", Place::method);
    add_part(main, "checks", Place::checks);
    add_part(main, "margin", Place::margin);
    add_figures(main);
    add_part(main, "small", Place::small_print);
    std::string classes(layout_.type);
    if (layout_.two_sides) classes += " two-sides";
    return html_page(shortened(title), style_sheet("sheet.css"),
                     Element("body").with("class", classes).add(main));
  }

 private:
  // Nothing where nothing stands there.
  void add_part(Element& main, std::string_view name, Place place) {
    Element part = Element("div").with("class", name);
    bool any = false;
    for (std::size_t i = 0; i < sheet_.sections.size(); ++i) {
      if (layout_.places[i] != place) continue;
      part.add(section(sheet_.sections[i]));
      any = true;
    }
    if (any) main.add(part);
  }

  Element section(const Section& section) {
    Element element("section");
    const bool boiling = section.topic == layout_.boiling && sheet_.boiling_down;
    if (boiling) element.with("class", "boiling");
    if (section.topic == Topic::cautions) element.with("class", "cautions");
    if (section.topic == Topic::fits) element.with("class", "fits");
    element.add(Element("h2").say(section.title));
    for (const std::string& paragraph : section.paragraphs) {
      element.add(Element("p").say(unbroken(paragraph)));
    }
    if (boiling) element.add(draw_boiling(*sheet_.boiling_down, "boiling"));
    if (section.topic == Topic::method) {
      element.add(method_steps(section.table));
    } else if (!section.table.rows.empty()) {
      element.add(table(section));
    }
    if (!section.points.empty()) element.add(list(points_on_page(section)));
    return element;
  }

  static std::vector<std::string> points_on_page(const Section& section) {
    std::vector<std::string> points = section.points;
    if (!section.last_in_brief.empty()) points.back() = section.last_in_brief;
    return points;
  }

  static Element list(const std::vector<std::string>& points) {
    Element list("ul");
    for (const std::string& point : points) list.add(Element("li").say(unbroken(point)));
    return list;
  }

  static Element figure(const Element& drawing, std::string_view caption) {
    return Element("figure").add(drawing).add(Element("figcaption").say(caption));
  }

  void add_figures(Element& main) const {
    if (!sheet_.depth && !sheet_.jars) return;
    Element part =
        Element("div").with("class", layout_.figures_apart ? "figures apart" : "figures");
    if (sheet_.jars) part.add(figure(jar_row(*sheet_.jars, "jars"), "The jars to fill"));
    if (sheet_.depth) add_depth(part);
    main.add(part);
  }

  // Only its true size makes the strip of use, so the page says how to find out.
  void add_depth(Element& part) const {
    const auto strip = depth_strip(*sheet_.depth, "depth");
    if (!strip) return;
    part.add(figure(*strip,
                    "Lay a wooden spoon along the line and mark both depths, which are rough. "
                    "Print at 100 %: "
                    "the small strokes must be 10 mm apart on paper.")
                 .with("class", "strip"));
  }

  // ---- Tables -----------------------------------------------------------------------------------

  Element table(const Section& section) {
    const Table& table = section.table;
    const auto columns = filled_columns(table);
    // A share has its bar only where every one has.
    const bool bars = section.topic == Topic::shares && sheet_.shares.size() == table.rows.size();
    Element head("tr");
    for (const std::size_t column : columns) head.add(head_cell(table, column));
    if (bars) {
      head.add(
          Element("th")
              .with("scope", "col")
              .say(fmt::format("0 to {} %", (end_of_scale(sheet_.shares) * 100).to_decimal(0))));
    }
    Element body("tbody");
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
      Element row("tr");
      for (std::size_t at = 0; at < columns.size();) {
        const std::size_t over = columns_run_over(table, i, columns, at);
        row.add(cell(table, i, columns[at], over));
        at += over;
      }
      if (bars) row.add(Element("td").add(bar(i)));
      body.add(row);
    }
    return Element("table")
        .add(Element("caption").say(section.title))
        .add(Element("thead").add(head))
        .add(body);
  }

  Element bar(std::size_t index) const {
    return draw_share(sheet_.shares[index], end_of_scale(sheet_.shares),
                      fmt::format("share-{}", index + 1));
  }

  static std::string class_of(const Table& table, std::size_t column) {
    const auto& weighed = table.weighed;
    if (std::find(weighed.begin(), weighed.end(), column) != weighed.end()) return "weight";
    const bool filled_in = std::any_of(table.rows.begin(), table.rows.end(),
                                       [&](const auto& row) { return row[column] == blank; });
    if (filled_in) return "by-hand";
    return is_right(table, column) ? "figure" : "";
  }

  static Element head_cell(const Table& table, std::size_t column) {
    if (table.heads[column].empty()) return Element("td");
    Element cell = Element("th").with("scope", "col");
    const std::string kind = class_of(table, column);
    if (!kind.empty()) cell.with("class", kind);
    return cell.say(table.heads[column]);
  }

  static Element cell(const Table& table, std::size_t row, std::size_t column, std::size_t over) {
    const std::string& text = table.rows[row][column];
    if (text == blank) return Element("td").with("class", "by-hand box");
    const bool heads_row = column == 0 && !text.empty();
    Element cell = heads_row ? Element("th").with("scope", "row") : Element("td");
    if (over > 1) cell.with("colspan", std::to_string(over));
    const std::string kind = class_of(table, column);
    if (!heads_row && over == 1 && !kind.empty()) cell.with("class", kind);
    return cell.say(unbroken(text));
  }

  const Sheet& sheet_;
  Layout layout_;
};

}  // namespace

std::string to_html(const Sheet& sheet) { return Page(sheet).run(); }

}  // namespace maslin::report
