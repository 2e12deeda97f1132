// SPDX-License-Identifier: Apache-2.0
// What is in the pan and what leaves it: every figure of it over the ranges of the tables. Not
// linear, so in floating point; whoever judges by it keeps to the unfavourable end.
#pragma once

#include <optional>
#include <vector>

#include "language/amounts.hpp"
#include "language/method.hpp"
#include "science/acidity.hpp"
#include "science/mixture.hpp"

namespace maslin::language {

struct InPan {
  Stuff stuff;
  Kilogram mass{};
  Slot slot;  // of the framework, that it is taken for
};

class Contents {
 public:
  // `finished` is what is left when it is boiled down, as the method has it, stage by stage. Where
  // it is not boiled down, what a simmer takes counts against the acid that makes the pH, and all
  // the water is there: then every other figure is at its unfavourable end.
  // Error: weights that cannot be.
  static science::Computed<Contents> of(const Program& program, const Framework& framework,
                                        const std::vector<InPan>& parts,
                                        std::optional<Kilogram> finished);

  const science::Mixture& left() const { return left_; }
  // Of the acetic acid, by the boiling before which it goes in; 1 after the last.
  const std::vector<Range<Share>>& acid_kept() const { return acid_kept_; }
  // Share of what can boil away that is left, at the least.
  Share volatiles_kept() const;
  science::Computed<science::MixturePh> ph() const;
  science::Computed<Range<WaterActivity>> water_activity() const;

  // What a limit that is not linear is held against, in its own measure: a mass share, a pH, a
  // water activity, points of an index.
  science::Computed<Range<double>> value_of(const Limit& limit) const;

 private:
  explicit Contents(const science::Mixture& ingoing) : ingoing_(ingoing), left_(ingoing) {}

  std::vector<science::Composition> compositions_;
  std::vector<science::AcidPart> acid_parts_;  // without their compositions
  science::Mixture ingoing_;
  science::Mixture left_;
  std::vector<Range<Share>> acid_kept_;
};

}  // namespace maslin::language
