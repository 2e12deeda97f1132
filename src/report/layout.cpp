// SPDX-License-Identifier: Apache-2.0
#include "report/layout.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace maslin::report {
namespace {

// All widths and heights in mm, sizes of type in points; they follow sheet.css.
struct TypeScale {
  std::string_view name;
  double work, margin, checks, small_print;

  double size_at(Place place) const {
    switch (place) {
      case Place::work:
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
                                              {"closest", 10.5, 8.5, 7.5, 6}}};

constexpr double page_height = 285;
constexpr double kept_free = 4;  // what an estimate may be wrong by
constexpr double wide_column = 123;
constexpr double narrow_column = 66;
constexpr double foot_column = 61;
constexpr int foot_columns = 3;
constexpr double header_height = 11;
constexpr double strip_height = 23;
constexpr double jars_height = 24;
constexpr double boiling_height = 31;

constexpr double millimetres_a_point = 0.3528;
constexpr double letter_width = 0.48;  // of the size, on an average
constexpr double line_height = 1.16;

double width_at(Place place) {
  if (place == Place::margin) return narrow_column;
  return place == Place::small_print ? foot_column : wide_column;
}

std::size_t letters_of(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

class Estimate {
 public:
  Estimate(const Sheet& sheet, const TypeScale& type) : sheet_(sheet), type_(type) {}

  double section(const Section& section, Place place) const {
    const double size = type_.size_at(place) * millimetres_a_point;
    double height = size * (place == Place::small_print ? 1.3 : 1.2) + 1.6;
    for (const std::string& each : section.paragraphs) height += text(each, place);
    for (const std::string& each : section.points) height += text(each, place);
    if (!section.table.rows.empty()) height += table(section.table, place);
    if (section.topic == Topic::boiling_down && sheet_.boiling_down) height += boiling_height;
    return height;
  }

 private:
  double line(Place place) const {
    return type_.size_at(place) * millimetres_a_point * line_height;
  }

  double text(std::string_view text, Place place) const {
    const double letter = type_.size_at(place) * millimetres_a_point * letter_width;
    const double width = width_at(place) - 3;
    return std::ceil(static_cast<double>(letters_of(text)) * letter / width) * line(place) + 0.3;
  }

  // A row is as high as what it says in all takes in its width, and that is seldom more than two
  // lines; a weight is set larger.
  double table(const Table& table, Place place) const {
    const double letter = type_.size_at(place) * millimetres_a_point * letter_width;
    const double between = place == Place::small_print ? 0.1 : 0.9;
    double height = table.weighed.empty() ? line(place) : 2 * line(place) * 0.75;
    for (const auto& row : table.rows) {
      double width = 0;
      for (const std::string& cell : row)
        width += static_cast<double>(letters_of(cell)) * letter + 2;
      const double lines = width > width_at(place) ? 2 : 1;
      const double weight = table.weighed.empty() ? 1 : 1.15;
      height += line(place) * std::max(lines, weight) + between;
    }
    return height;
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
    case Topic::boiling_down:
    case Topic::keeping:
    case Topic::readings:
    case Topic::cautions:
      return Place::margin;
    case Topic::account:
    case Topic::limits:
    case Topic::to_get:
    case Topic::left_over:
    case Topic::assumed:
    case Topic::not_computed:
      break;
  }
  return Place::small_print;
}

// What may also stand below the work, where that leaves the columns more alike in height.
bool may_rise(Topic topic) {
  return topic == Topic::account || topic == Topic::limits || topic == Topic::to_get ||
         topic == Topic::left_over;
}

// With the first `risen` of those that may.
Layout layout_with(const Sheet& sheet, const TypeScale& type, int risen) {
  const Estimate estimate(sheet, type);
  Layout layout{type.name, {}, 0};
  double wide = sheet.jars ? jars_height : 0;
  double narrow = 0;
  double foot = 0;
  for (const Section& section : sheet.sections) {
    Place place = place_of(section.topic);
    if (may_rise(section.topic) && risen > 0) {
      place = Place::checks;
      --risen;
    }
    layout.places.push_back(place);
    double& column = place == Place::margin ? narrow : place == Place::small_print ? foot : wide;
    column += estimate.section(section, place);
  }
  layout.height = header_height + std::max(wide, narrow) + foot / foot_columns + 3;
  if (sheet.depth) layout.height += strip_height;
  return layout;
}

}  // namespace

Layout layout_for(const Sheet& sheet) {
  const auto most = static_cast<int>(
      std::count_if(sheet.sections.begin(), sheet.sections.end(),
                    [](const Section& section) { return may_rise(section.topic); }));
  Layout best;
  for (const TypeScale& type : scales) {
    best = layout_with(sheet, type, 0);
    for (int risen = 1; risen <= most; ++risen) {
      Layout other = layout_with(sheet, type, risen);
      if (other.height < best.height) best = std::move(other);
    }
    if (best.height + kept_free <= page_height) break;
  }
  return best;
}

}  // namespace maslin::report
