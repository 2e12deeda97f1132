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

// Work that a proof may take, counted in steps and never in time: the same text gives the same
// verdict on any machine.
class Effort {
 public:
  explicit Effort(std::size_t steps) : left_(steps) {}
  // False when it is used up.
  bool spend(std::size_t steps) {
    left_ = steps < left_ ? left_ - steps : 0;
    return left_ > 0;
  }
  bool is_used_up() const { return left_ == 0; }
  std::size_t left() const { return left_; }

 private:
  std::size_t left_;
};

// The elementary rays of { weights >= 0, the rows' coefficients add up to nothing }, each with a
// support that no other is within. Nothing when there would be more than `most` sets to try, or the
// effort is used up.
std::optional<std::vector<Ray>> elementary_rays(const std::vector<std::vector<double>>& rows,
                                                std::size_t most, Effort& effort);

}  // namespace maslin::prove
