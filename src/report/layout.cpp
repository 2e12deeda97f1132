// SPDX-License-Identifier: Apache-2.0
#include "report/layout.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace maslin::report {
namespace {

// All widths and heights in mm, sizes of type in points; they follow sheet.css.
struct TypeScale {
  std::string_view name;
  double work, margin, checks, small_print;

  double size_at(Place place) const {
    switch (place) {
      case Place::work:
      case Place::method:
        return work;
      case Place::checks:
        return checks;
      case Place::margin:
        return margin;
      case Place::small_print:
        break;
    }
    return small_print;
  }
};
constexpr std::array<TypeScale, 5> scales = {{{"large", 12.5, 11.5, 10, 9},
                                              {"medium", 11.5, 10.5, 9, 8},
                                              {"usual", 11, 9.5, 8.5, 7},
                                              {"close", 11, 9, 8, 6.5},
                                              {"closest", 10, 8.2, 7.2, 6}}};

constexpr double page_height = 285;
constexpr double kept_free = 8;  // what an estimate may be wrong by
constexpr double wide_column = 123;
constexpr double narrow_column = 66;
constexpr double foot_column = 61;
constexpr int foot_columns = 3;
constexpr double header_height = 11;
constexpr double figures_height = 23.2;
constexpr double method_column = 94;
constexpr int method_columns = 2;
constexpr double boiling_height = 31;
constexpr double boiling_height_closest = 25;

constexpr double millimetres_a_point = 0.3528;
constexpr double infinite_width = 1e9;
constexpr double letter_width = 0.47;  // of the size, on an average
constexpr double line_height = 1.16;
constexpr double line_height_of_small_print = 1.05;
constexpr double weight_line_height = 1.26;

double width_at(Place place) {
  if (place == Place::method) return method_column;
  if (place == Place::margin) return narrow_column;
  return place == Place::small_print ? foot_column : wide_column;
}

std::size_t letters_of(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

// Where it is said when to stop, else where boiling down is spoken of at all.
Topic boiling_topic(const Sheet& sheet) {
  const bool any = std::any_of(sheet.sections.begin(), sheet.sections.end(),
                               [](const Section& each) { return each.topic == Topic::stop; });
  return any ? Topic::stop : Topic::boiling_down;
}

class Estimate {
 public:
  Estimate(const Sheet& sheet, const TypeScale& type) : sheet_(sheet), type_(type) {}

  double section(const Section& section, Place place) const {
    if (section.topic == Topic::cautions && place == Place::small_print) {
      constexpr double larger_by = 1.15;
      TypeScale larger = type_;
      larger.small_print *= larger_by;
      return Estimate(sheet_, larger).of(section, place);
    }
    return of(section, place);
  }

  // In columns, with weights that are set larger.
  double method(const Section& section) const {
    const double size = type_.work * millimetres_a_point;
    double lines = 0;
    std::size_t letters = 0;
    for (const auto& row : section.table.rows) {
      if (!row[0].empty()) lines += std::ceil(lines_of(std::exchange(letters, 0)));
      for (std::size_t i = 0; i < 3; ++i) letters += letters_of(row[i]) + 1;
    }
    lines += std::ceil(lines_of(letters));
    double height = lines * size * weight_line_height;
    for (const std::string& each : section.points) height += text(each, Place::checks);
    return size * 1.2 + 1.6 + (height + size) / method_columns;
  }

 private:
  double of(const Section& section, Place place) const {
    const double size = type_.size_at(place) * millimetres_a_point;
    double height = place == Place::small_print ? size * 1.15 + 0.9 : size * 1.2 + 1.3;
    for (const std::string& each : section.paragraphs) height += text(each, place);
    for (std::size_t i = 0; i < section.points.size(); ++i) {
      const bool brief = i + 1 == section.points.size() && !section.last_in_brief.empty();
      height += text(brief ? section.last_in_brief : section.points[i], place);
    }
    if (!section.table.rows.empty()) height += table(section.table, place);
    if (section.topic == boiling_topic(sheet_) && sheet_.boiling_down) {
      height += type_.name == "closest" ? boiling_height_closest : boiling_height;
    }
    return height;
  }

  double lines_of(std::size_t letters) const {
    constexpr double letter_width_with_bold = 0.5;
    return static_cast<double>(letters) * type_.work * millimetres_a_point *
           letter_width_with_bold / method_column;
  }

  double line(Place place) const {
    const bool small = place == Place::small_print;
    return type_.size_at(place) * millimetres_a_point *
           (small ? line_height_of_small_print : line_height);
  }

  double text(std::string_view text, Place place) const {
    const double letter = type_.size_at(place) * millimetres_a_point * letter_width;
    const double width = width_at(place) - 3;
    return std::ceil(static_cast<double>(letters_of(text)) * letter / width) * line(place) + 0.3;
  }

  // Where columns are wider than there is room, the widest are broken, and no more than is needed.
  double table(const Table& table, Place place) const {
    const std::vector<double> widths = widths_of(table, place);
    const double widest = widest_unbroken(widths, width_at(place));
    const double between = place == Place::small_print ? 0.2 : 0.9;
    const double weight = table.weighed.empty() ? 1 : 1.15;
    double height = table.weighed.empty() ? line(place) : 2 * line(place) * 0.75;
    for (const auto& row : table.rows) {
      double lines = weight;
      for (const std::string& cell : row) {
        lines = std::max(lines, std::ceil(width_of(cell, place) / widest));
      }
      height += line(place) * lines + between;
    }
    return height;
  }

  static double widest_unbroken(std::vector<double> widths, double room) {
    std::sort(widths.begin(), widths.end());
    for (std::size_t i = 0; i < widths.size(); ++i) {
      const double each = room / static_cast<double>(widths.size() - i);
      if (widths[i] > each) return each;
      room -= widths[i];
    }
    return infinite_width;
  }

  double width_of(const std::string& cell, Place place) const {
    constexpr double box = 15;
    constexpr double padding = 1.5;
    if (cell == blank) return box;
    const double smaller = place == Place::work ? 0.85 : 1;
    const double letter = type_.size_at(place) * millimetres_a_point * letter_width * smaller;
    return static_cast<double>(letters_of(cell)) * letter + padding;
  }

  std::vector<double> widths_of(const Table& table, Place place) const {
    std::vector<double> widths(table.heads.size(), 0);
    for (const auto& row : table.rows) {
      for (std::size_t i = 0; i < row.size() && i < widths.size(); ++i) {
        widths[i] = std::max(widths[i], width_of(row[i], place));
      }
    }
    return widths;
  }

  const Sheet& sheet_;
  const TypeScale& type_;
};

Place place_of(Topic topic) {
  switch (topic) {
    case Topic::other:
    case Topic::fits:
    case Topic::produce:
    case Topic::additions:
      return Place::work;
    case Topic::shares:
      return Place::checks;
    case Topic::method:
      return Place::method;
    case Topic::boiling_down:
    case Topic::stop:
    case Topic::keeping:
    case Topic::readings:
    case Topic::cautions:
      return Place::margin;
    case Topic::account:
    case Topic::limits:
    case Topic::pan:
    case Topic::clock:
    case Topic::jars:
    case Topic::process:
    case Topic::to_get:
    case Topic::cost:
    case Topic::pungency:
    case Topic::left_over:
    case Topic::assumed:
    case Topic::not_computed:
    case Topic::notes:
      break;
  }
  return Place::small_print;
}

// What may stand below the work or in the margin as well as at the foot, wherever room is left.
bool may_rise(Topic topic, const Sheet& sheet, bool crowded) {
  switch (topic) {
    case Topic::boiling_down:
      return boiling_topic(sheet) != topic;
    case Topic::fits:
      return crowded;
    case Topic::keeping:
    case Topic::account:
    case Topic::limits:
    case Topic::pan:
    case Topic::clock:
    case Topic::jars:
    case Topic::process:
    case Topic::to_get:
    case Topic::cost:
    case Topic::pungency:
    case Topic::left_over:
      return true;
    default:
      return false;
  }
}

// mm, of the parts of the page.
struct Heights {
  double wide = 0;
  double narrow = 0;
  double method = 0;
  double figures = 0;
  double foot = 0;  // in one column

  double& at(Place place) {
    switch (place) {
      case Place::method:
        return method;
      case Place::margin:
        return narrow;
      case Place::small_print:
        return foot;
      case Place::work:
      case Place::checks:
        break;
    }
    return wide;
  }
  // What is estimated against what a browser makes of it, part by part, over the examples.
  double page() const {
    constexpr double of_columns = 0.955;
    constexpr double of_method = 0.9;
    constexpr double of_foot = 0.93;
    constexpr double between = 3;
    return header_height + of_columns * std::max(wide, narrow) + of_method * method + figures +
           of_foot * foot / foot_columns + between;
  }
};

// Where the page grows least.
Place put_where_least(const Estimate& estimate, const Section& section, Heights& heights) {
  std::optional<Heights> best;
  Place chosen{};
  for (const Place place : {Place::margin, Place::checks, Place::small_print}) {
    Heights tried = heights;
    tried.at(place) += estimate.section(section, place);
    if (best && best->page() <= tried.page()) continue;
    best = tried;
    chosen = place;
  }
  heights = *best;
  return chosen;
}

// The row of jars grows smaller beside the strip, which keeps its size.
bool figures_apart(const Sheet& sheet) {
  const Length beside_jars(Rational(97));
  return sheet.jars && sheet.depth && beside_jars < sheet.depth->start;
}

double height_of_figures(const Sheet& sheet) {
  if (!sheet.jars && !sheet.depth) return 0;
  return figures_apart(sheet) ? 2 * figures_height : figures_height;
}

// On a crowded page the cautions go to the foot, over its whole width. What the estimate is of may
// be two sides, drawings and foot on one of their own.
Layout layout_with(const Sheet& sheet, const TypeScale& type, bool crowded, bool two_sides) {
  const Estimate estimate(sheet, type);
  Layout layout{type.name, {}, 0, boiling_topic(sheet), figures_apart(sheet)};
  Heights heights;
  heights.figures = height_of_figures(sheet);
  for (const Section& section : sheet.sections) {
    const bool to_foot = crowded && section.topic == Topic::cautions;
    const Place place = to_foot ? Place::small_print : place_of(section.topic);
    layout.places.push_back(place);
    if (may_rise(section.topic, sheet, crowded)) continue;
    heights.at(place) +=
        place == Place::method ? estimate.method(section) : estimate.section(section, place);
  }
  for (std::size_t i = 0; i < sheet.sections.size(); ++i) {
    if (!may_rise(sheet.sections[i].topic, sheet, crowded)) continue;
    layout.places[i] = put_where_least(estimate, sheet.sections[i], heights);
  }
  layout.two_sides = two_sides;
  if (two_sides) heights.figures = heights.foot = 0;
  layout.height = heights.page();
  return layout;
}

}  // namespace

Layout layout_for(const Sheet& sheet) {
  Layout layout;
  for (const bool crowded : {false, true}) {
    for (const TypeScale& type : scales) {
      layout = layout_with(sheet, type, crowded, false);
      if (layout.height + kept_free <= page_height) return layout;
    }
  }
  // It may be less than is estimated; what is surely more goes on behind.
  if (layout.height <= page_height + kept_free) return layout;
  for (const bool crowded : {false, true}) {
    for (const TypeScale& type : scales) {
      layout = layout_with(sheet, type, crowded, true);
      if (layout.height + kept_free <= page_height) return layout;
    }
  }
  return layout;
}

}  // namespace maslin::report
