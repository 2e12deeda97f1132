// SPDX-License-Identifier: Apache-2.0
// Why a figure was not computed: what went in lies outside the range in which the source holds.
#pragma once

#include <optional>
#include <string_view>

#include "base/result.hpp"

namespace maslin::science {

// `value`, `low` and `high` in the unit that `what` names ("altitude, m"); not a number when there
// is no such value at all.
struct OutOfRange {
  std::string_view what;
  double value = 0;
  double low = 0;
  double high = 0;
};

template <class Value>
using Computed = Result<Value, OutOfRange>;

// Nothing when low <= value <= high. What is not a number is outside.
inline std::optional<OutOfRange> outside(std::string_view what, double value, double low,
                                         double high) {
  if (low <= value && value <= high) return std::nullopt;
  return OutOfRange{what, value, low, high};
}

}  // namespace maslin::science
