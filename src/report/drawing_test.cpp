// SPDX-License-Identifier: Apache-2.0
// Where the strokes of the drawings stand.
#include <gtest/gtest.h>

#include <algorithm>
#include <regex>
#include <string>
#include <vector>

#include "report/drawing_boiling.hpp"
#include "report/drawing_depth.hpp"
#include "report/drawing_jars.hpp"
#include "report/drawing_shares.hpp"

namespace maslin::report {
namespace {

Rational part(long numerator, long denominator) {
  return {Rational::Wide{numerator}, Rational::Wide{denominator}};
}

// An attribute of every element of a kind, in order.
std::vector<double> values(const std::string& markup, const std::string& element,
                           const std::string& attribute) {
  std::vector<double> result;
  const std::regex pattern("<" + element + "[^>]* " + attribute + "=\"([0-9.]+)\"");
  for (std::sregex_iterator at(markup.begin(), markup.end(), pattern), end; at != end; ++at) {
    result.push_back(std::stod((*at)[1]));
  }
  return result;
}

bool says(const std::string& markup, const std::string& text) {
  return markup.find(">" + text + "<") != std::string::npos;
}

TEST(ShareBar, TheScaleEndsAtTheNextTenth) {
  EXPECT_EQ(end_of_scale({}), part(1, 10));
  EXPECT_EQ(end_of_scale({{"a", part(15, 100), {part(1, 10), part(20, 100)}, {}}}), part(2, 10));
  EXPECT_EQ(end_of_scale({{"a", part(21, 100), {0, part(20, 100)}, {}}}), part(3, 10));
  EXPECT_EQ(end_of_scale({{"a", 1, {0, 1}, {}}}), Rational(1));
}

TEST(ShareBar, StandsWhereTheFiguresAre) {
  const ShareBar bar{"onion", part(1, 4), {part(1, 10), part(4, 10)}, part(3, 10)};
  const std::string markup = draw_share(bar, part(1, 2), "x").markup();
  // 50 mm wide, 0.6 mm at either side.
  const auto boxes = values(markup, "rect", "x");
  const auto widths = values(markup, "rect", "width");
  ASSERT_EQ(boxes.size(), 1U);
  EXPECT_NEAR(boxes[0], 0.6 + 0.2 * 48.8, 0.01);
  EXPECT_NEAR(widths[0], 0.6 * 48.8, 0.01);
  const auto lines = values(markup, "line", "x1");
  ASSERT_EQ(lines.size(), 3U);  // the scale, what is preferred, what was reached
  EXPECT_NEAR(lines[1], 0.6 + 0.6 * 48.8, 0.01);
  EXPECT_NEAR(lines[2], 0.6 + 0.5 * 48.8, 0.01);
  EXPECT_TRUE(says(markup, "onion: 25 %"));
  EXPECT_TRUE(says(markup, "allowed 10 .. 40 %, preferred 30 %"));
}

TEST(BoilingDown, TheWindowStandsAboutTheStop) {
  const BoilingDown boiling{Range<IngoingMass>::exactly(IngoingMass(8000)),
                            FinishedMass(4400),
                            Range<FinishedMass>{FinishedMass(4200), FinishedMass(4700)},
                            {}};
  const std::string markup = draw_boiling(boiling, "x").markup();
  const double above = values(markup, "rect", "y").at(0);
  const double below = above + values(markup, "rect", "height").at(0);
  const double stop = values(markup, "line", "y2").at(2);  // after the two edges of the field
  EXPECT_GT(stop, above);
  EXPECT_LT(stop, below);
  // 20.5 mm for 8000 g down to 4200 g less a quarter of the way: from 5 mm.
  EXPECT_NEAR(stop, 5 + 20.5 * (8000 - 4400) / (8000 - (4200 - (8000 - 4200) / 4.0)), 0.02);
  for (const char* text : {"8 kg in the pan", "stop at 4.4 kg", "at most 4.7 kg", "at least 4.2 kg",
                           "boiling, at a steady heat"}) {
    EXPECT_TRUE(says(markup, text)) << text;
  }
}

TEST(BoilingDown, ARangeOfTimesIsTwoLines) {
  BoilingDown boiling{Range<IngoingMass>::exactly(IngoingMass(8000)), FinishedMass(4400), {}, {}};
  const auto once = values(draw_boiling(boiling, "x").markup(), "line", "x1").size();
  boiling.time = {Duration(3600), Duration(7200)};
  const std::string markup = draw_boiling(boiling, "x").markup();
  EXPECT_EQ(values(markup, "line", "x1").size(), once + 1);
  EXPECT_TRUE(says(markup, "boiling 60 to 120 min"));
  const auto ends = values(markup, "line", "x2");
  EXPECT_NEAR(ends.at(3) - 0.5, (ends.at(2) - 0.5) / 2, 0.01);
}

TEST(BoilingDown, NothingToBoilOffIsDrawnToo) {
  const std::string markup =
      draw_boiling({Range<IngoingMass>::exactly(IngoingMass(1000)), FinishedMass(1000), {}, {}},
                   "x")
          .markup();
  EXPECT_EQ(markup.find("nan"), std::string::npos);
  EXPECT_EQ(markup.find("inf"), std::string::npos);
}

TEST(JarRow, DrawsEveryJarAsFullAsItIs) {
  const JarRow row{{{Volume(720), 3, 1, false}, {Volume(190), 1, part(1, 2), true}}};
  const std::string markup = jar_row(row, "x").markup();
  const auto heights = values(markup, "rect", "height");
  ASSERT_EQ(heights.size(), 3U * 4U);  // glass, lid and content of four jars
  EXPECT_NEAR(heights[2], heights[0], 0.01);
  EXPECT_NEAR(heights[11], heights[9] / 2, 0.01);
  // The glass of 190 ml beside that of 720 ml: as the cube roots.
  EXPECT_NEAR(heights[9] / heights[0], 0.6414, 0.002);
  EXPECT_TRUE(says(markup, "3 × 720 ml"));
  EXPECT_TRUE(says(markup, "1 × 190 ml, part"));
}

TEST(JarRow, VeryManyAreOne) {
  const std::string markup = jar_row({{{Volume(282), 1000, 1, false}}}, "x").markup();
  EXPECT_EQ(values(markup, "rect", "height").size(), 3U);
  EXPECT_TRUE(says(markup, "1000 × 282 ml"));
  EXPECT_EQ(values(jar_row({}, "x").markup(), "rect", "height").size(), 0U);
}

TEST(JarRow, StaysAsWideAsThePage) {
  const JarRow row{
      {{Volume(720), 12, 1, false}, {Volume(282), 40, 1, false}, {Volume(190), 30, 1, false}}};
  const std::string markup = jar_row(row, "x").markup();
  const auto rights = values(markup, "rect", "x");
  EXPECT_LE(*std::max_element(rights.begin(), rights.end()), 123);
}

TEST(DepthStrip, IsDrawnOnlyWhereItCanBeMeasured) {
  const auto drawn = [](int start, int stop) {
    return depth_strip({Length(start), Length(stop)}, "x").has_value();
  };
  EXPECT_TRUE(drawn(97, 54));
  EXPECT_TRUE(drawn(97, 97));
  EXPECT_TRUE(drawn(300, 200));
  EXPECT_FALSE(drawn(54, 97));
  EXPECT_FALSE(drawn(97, 0));
  EXPECT_FALSE(drawn(400, 54));
  EXPECT_FALSE(depth_strip({Length(Rational::undefined()), Length(5)}, "x").has_value());
}

TEST(DepthStrip, NamesItsDepths) {
  const std::string markup = depth_strip({Length(240), Length(150)}, "x")->markup();
  EXPECT_TRUE(says(markup, "start 240 mm"));
  EXPECT_TRUE(says(markup, "stop 150 mm"));
  EXPECT_TRUE(says(markup, "100 mm from the tip"));
}

}  // namespace
}  // namespace maslin::report
