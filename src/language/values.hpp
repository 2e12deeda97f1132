// SPDX-License-Identifier: Apache-2.0
// From written quantities to exact ones.
#pragma once

#include <optional>

#include "language/context.hpp"

namespace maslin::language {

// A written measure. `dimension` is of the value divided by what stands after `per`.
struct Measure {
  Rational value;      // base units
  Rational scale = 1;  // base units in one of the unit as written, `per` included
  Dimension dimension;
  UnitId unit;           // as written; invalid for a plain number
  bool percent = false;  // the unit was %
  bool has_per = false;
  bool computed = false;  // from named values, in brackets
  syntax::View whole;     // after `of`; invalid when nothing stands there
  Span span;
};

// Where there is no end, `has_low` or `has_high` is false and that end of `bounds` is zero.
struct MeasureRange {
  Bounds bounds;
  Dimension dimension;
  bool has_low = true;
  bool has_high = true;
  Measure first;  // as written, for its unit and whole
  Span span;
};

// Nothing after a report. `view` is a number, quantity, measure or range node respectively.
std::optional<Rational> read_number(Context& context, syntax::View view);
std::optional<Measure> read_quantity(Context& context, syntax::View view);
std::optional<Measure> read_measure(Context& context, syntax::View view);
std::optional<MeasureRange> read_range(Context& context, syntax::View view);

// The unit a `unit` node names, or nothing after a report.
std::optional<UnitId> read_unit(Context& context, syntax::View view);
bool is_unit(const Context& context, std::string_view word);

// Reports and returns false when the measure is not of this dimension. `what` is the subject: "a
// trim".
bool expect_dimension(Context& context, const Measure& measure, const Dimension& wanted,
                      std::string_view what, std::string_view example);

// A plain weight, volume, … of one quantity; nothing after a report.
std::optional<Rational> read_plain(Context& context, syntax::View quantity, const Dimension& wanted,
                                   std::string_view what, std::string_view example);

// The first child that is a number or a bad_number.
syntax::View number_child(syntax::View parent);

}  // namespace maslin::language
