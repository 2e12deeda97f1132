// SPDX-License-Identifier: Apache-2.0
// Where the parts of a sheet stand on one side of A4, and how large the type may be. A page without
// script cannot measure itself, so heights are estimated from how much there is to read.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "report/sheet.hpp"

namespace maslin::report {

enum class Place : std::uint8_t {
  work,         // the wide column: what the hands need
  method,       // below the columns, over their whole width
  checks,       // below it: figures to look at once
  margin,       // the narrow column: what to heed and to write down
  small_print,  // the foot of the page
};

struct Layout {
  std::string_view type;                // how large the type is, as a class of the style sheet
  std::vector<Place> places;            // of the sections of the sheet
  double height = 0;                    // mm, estimated
  Topic boiling = Topic::boiling_down;  // of the section that the curve is drawn in
  bool two_sides = false;               // one does not hold it: drawings and foot go on the other
  bool figures_apart = false;           // the jars and the strip find no room side by side
};

// The largest type that fits the page; where none does, the largest that fits with the small print
// on the other side.
Layout layout_for(const Sheet& sheet);

}  // namespace maslin::report
