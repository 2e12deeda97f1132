// SPDX-License-Identifier: Apache-2.0
// The strip of depths as it comes out of the printer, measured with a ruler of dots.
#include <gtest/gtest.h>

#include <utility>

#include "html/browser.hpp"
#include "report/html.hpp"

namespace maslin::html_test {
namespace {

// How far the ink goes on from here.
std::size_t run_right(const Picture& picture, std::size_t x, std::size_t y) {
  std::size_t end = x;
  while (end < picture.width && picture.is_ink(end, y)) ++end;
  return end - x;
}
std::size_t ink_above_and_below(const Picture& picture, std::size_t x, std::size_t y) {
  std::size_t top = y;
  while (top > 0 && picture.is_ink(x, top - 1)) --top;
  std::size_t bottom = y;
  while (bottom + 1 < picture.height && picture.is_ink(x, bottom + 1)) ++bottom;
  return bottom - top + 1;
}

struct Line {
  std::size_t x = 0;
  std::size_t y = 0;
  std::size_t length = 0;
};

// The longest level line in the lower part of the page, where the rule under the title is not.
Line edge_of(const Picture& picture) {
  Line longest;
  for (std::size_t y = picture.height / 16; y < picture.height; ++y) {
    for (std::size_t x = 0; x < picture.width; ++x) {
      const std::size_t length = picture.is_ink(x, y) ? run_right(picture, x, y) : 0;
      if (length > longest.length) longest = {x, y, length};
      x += length;
    }
  }
  return longest;
}

// The middles of the upright marks longer than 7 mm that cross the edge, mm from its beginning; the
// strokes of the scale are shorter.
std::vector<double> marks_on(const Picture& picture, const Line& edge) {
  std::vector<double> marks;
  std::size_t wide = 0;
  for (std::size_t x = edge.x; x <= edge.x + edge.length; ++x) {
    const bool mark =
        x < edge.x + edge.length && millimetres(ink_above_and_below(picture, x, edge.y)) > 7;
    if (mark) {
      ++wide;
    } else if (wide > 0) {
      marks.push_back(millimetres(x - edge.x) - millimetres(wide) / 2);
      wide = 0;
    }
  }
  return marks;
}

std::vector<double> printed_marks(int start, int stop) {
  report::Sheet sheet;
  sheet.title = "Strip";
  sheet.depth = report::DepthStrip{Length(start), Length(stop)};
  const json_test::Folder folder;
  folder.write("strip.html", report::to_html(sheet));
  print_pdf(folder, "strip");
  const Picture picture = picture_of(folder, "strip");
  return marks_on(picture, edge_of(picture));
}

TEST(DepthStrip, IsPrintedInItsTrueSize) {
  for (const auto& [start, stop] : {std::pair(97, 54), std::pair(185, 20), std::pair(64, 60)}) {
    const auto marks = printed_marks(start, stop);
    ASSERT_EQ(marks.size(), 3U) << start << " and " << stop;
    EXPECT_NEAR(marks[1] - marks[0], stop, 0.5);
    EXPECT_NEAR(marks[2] - marks[0], start, 0.5);
  }
}

TEST(DepthStrip, OfADeepPanBeginsAWholeNumberOfFiveCentimetresFromTheTip) {
  const auto marks = printed_marks(240, 150);
  ASSERT_EQ(marks.size(), 3U);
  EXPECT_NEAR(marks[1] - marks[0], 50, 0.5);
  EXPECT_NEAR(marks[2] - marks[0], 140, 0.5);
}

}  // namespace
}  // namespace maslin::html_test
