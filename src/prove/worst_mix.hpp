// SPDX-License-Identifier: Apache-2.0
// The mix that does worst by one ray: the worst member of each share, and of the shares the worst
// division.
#pragma once

#include <optional>
#include <vector>

#include "prove/case.hpp"

namespace maslin::prove {

struct Mix {
  std::vector<double> parts;  // by member, of the produce; they add up to 1
  double value = 0;           // the sum of scores
};

// The greatest sum of `scores` (by member) over all mixes that are admitted. Nothing when no mix
// is.
std::optional<Mix> worst_mix(const Case& given, const std::vector<Cap>& caps,
                             const std::vector<double>& scores);

}  // namespace maslin::prove
