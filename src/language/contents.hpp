// SPDX-License-Identifier: Apache-2.0
// What is in the pan and what leaves it: every figure of it over the ranges of the tables. Not
// linear, so in floating point; whoever judges by it keeps to the unfavourable end.
#pragma once

#include <optional>
#include <vector>

#include "language/amounts.hpp"
#include "science/acidity.hpp"
#include "science/mixture.hpp"

namespace maslin::language {

struct InPan {
  Stuff stuff;
  Kilogram mass{};
};

class Contents {
 public:
  // `finished` is what is left when it is boiled down; nothing where it is not boiled down. All of
  // the acetic acid is taken to be in the pan from when the water begins to go.
  // Error: weights that cannot be.
  static science::Computed<Contents> of(const Program& program, const std::vector<InPan>& parts,
                                        std::optional<Kilogram> finished);

  const science::Mixture& left() const { return left_; }
  const Range<Share>& acid_kept() const { return acid_kept_; }
  science::Computed<science::MixturePh> ph() const;
  science::Computed<Range<WaterActivity>> water_activity() const;

  // What a limit that is not linear is held against, in its own measure: a mass share, a pH, a
  // water activity, points of an index.
  science::Computed<Range<double>> value_of(const Limit& limit) const;

 private:
  explicit Contents(const science::Mixture& ingoing) : left_(ingoing) {}

  std::vector<science::Composition> compositions_;
  std::vector<science::AcidPart> acid_parts_;  // without their compositions
  science::Mixture left_;
  Range<Share> acid_kept_{Share(1), Share(1)};
  Kilogram boiled_away_{};
};

}  // namespace maslin::language
