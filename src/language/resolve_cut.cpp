// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {

using syntax::Kind;
using syntax::View;

std::optional<CutSize> read_cut(Context& context, View cut) {
  if (!cut) return std::nullopt;
  CutSize size;
  size.span = cut.span();
  const View written = cut.child(Kind::range);
  if (!written) {
    size.text = text_of(text_child(cut));
    return size;
  }
  constexpr const char* example = "cut 8 .. 10 mm";
  const auto range = read_range(context, written);
  if (!range || !expect_dimension(context, range->first, dimensions::length, "how small it is cut",
                                  example)) {
    return std::nullopt;
  }
  const Bounds sensible{1, 300};  // mm
  if (!range->has_low || !range->has_high || !sensible.contains(range->bounds.low) ||
      !sensible.contains(range->bounds.high)) {
    context
        .report(Code::figure_out_of_range, written.span(),
                "a cut lies between 1 and 300 mm, and this does not")
        .with_mend(fmt::format("write for example `{}`", example));
    return std::nullopt;
  }
  const std::string low = range->bounds.low.to_decimal(1);
  const std::string high = range->bounds.high.to_decimal(1);
  size.text = (low == high ? low : low + " to " + high) + " mm";
  size.at_most = Length(range->bounds.high);
  return size;
}

}  // namespace maslin::language
