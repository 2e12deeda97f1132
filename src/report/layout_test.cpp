// SPDX-License-Identifier: Apache-2.0
#include "report/layout.hpp"

#include <gtest/gtest.h>

#include <string_view>
#include <utility>

namespace maslin::report {
namespace {

Section section_about(Topic topic, std::size_t points) {
  const std::string sentence = "Boiling sugar and vinegar scald: a deep pan, and long sleeves.";
  return {"A title", {}, {}, std::vector<std::string>(points, sentence), topic};
}

Sheet sheet_of(std::vector<Section> sections) {
  Sheet sheet;
  sheet.title = "Chutney";
  sheet.sections = std::move(sections);
  return sheet;
}

TEST(Layout, TheMoreThereIsTheSmallerTheType) {
  const auto type = [](std::size_t points) {
    return layout_for(sheet_of({section_about(Topic::readings, points)})).type;
  };
  EXPECT_EQ(type(5), "large");
  EXPECT_EQ(type(1000), "closest");
  std::vector<std::string_view> seen;
  for (std::size_t points = 5; points < 60; ++points) {
    if (seen.empty() || seen.back() != type(points)) seen.push_back(type(points));
  }
  EXPECT_EQ(seen, (std::vector<std::string_view>{"large", "medium", "usual", "close", "closest"}));
}

TEST(Layout, WhatOneSideDoesNotHoldGoesOnTheOther) {
  const auto layout = [](std::size_t points) {
    return layout_for(
        sheet_of({section_about(Topic::readings, 30), section_about(Topic::assumed, points)}));
  };
  EXPECT_FALSE(layout(20).two_sides);
  EXPECT_TRUE(layout(300).two_sides);
  EXPECT_NE(layout(300).type, "closest") << "there is room for larger type then";
}

TEST(Layout, EverySectionHasItsPlace) {
  const Layout layout =
      layout_for(sheet_of({section_about(Topic::produce, 1), section_about(Topic::shares, 1),
                           section_about(Topic::cautions, 1), section_about(Topic::assumed, 1),
                           section_about(Topic::other, 1)}));
  EXPECT_EQ(layout.places, (std::vector<Place>{Place::work, Place::checks, Place::margin,
                                               Place::small_print, Place::work}));
}

TEST(Layout, FiguresToCheckRiseWhereTheWideColumnHasRoom) {
  const auto place = [](std::size_t readings) {
    return layout_for(sheet_of({section_about(Topic::produce, 6), section_about(Topic::limits, 4),
                                section_about(Topic::readings, readings)}))
        .places[1];
  };
  EXPECT_EQ(place(30), Place::checks);
  EXPECT_EQ(place(1), Place::margin);
}

TEST(Layout, CautionsLeaveTheMarginOnlyOfACrowdedPage) {
  const auto place = [](std::size_t readings) {
    return layout_for(sheet_of({section_about(Topic::readings, readings),
                                section_about(Topic::cautions, 6)}))
        .places[1];
  };
  EXPECT_EQ(place(10), Place::margin);
  EXPECT_EQ(place(45), Place::small_print);
}

TEST(Layout, DrawingsTakeTheirRoom) {
  Sheet sheet = sheet_of({section_about(Topic::produce, 3)});
  const double without = layout_for(sheet).height;
  sheet.depth = DepthStrip{Length(97), Length(54)};
  sheet.jars = JarRow{{{Volume(282), 4, 1, false}}};
  EXPECT_GT(layout_for(sheet).height, without + 20);
}

}  // namespace
}  // namespace maslin::report
