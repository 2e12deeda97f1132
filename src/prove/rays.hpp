// SPDX-License-Identifier: Apache-2.0
// Ways to add rows up so that nothing the planner chooses counts any more (Farkas). What is left
// speaks of the mix alone, and every way that matters is a sum of these.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace maslin::prove {

struct Ray {
  struct Part {
    std::size_t row = 0;
    double weight = 0;  // above 0
  };
  std::vector<Part> parts;
};

// The elementary rays of { weights >= 0, the rows' coefficients add up to nothing }, each with a
// support that no other is within. Nothing when there would be more than `most` sets to try.
std::optional<std::vector<Ray>> elementary_rays(const std::vector<std::vector<double>>& rows,
                                                std::size_t most);

}  // namespace maslin::prove
