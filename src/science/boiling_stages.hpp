// SPDX-License-Identifier: Apache-2.0
// Boiling in stages: what goes in late has lost less, and what went in early has lost more than one
// boiling of everything together would have it.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "science/mixture.hpp"

namespace maslin::science {

// What goes into the pan, and then how much boils away.
struct BoilingStage {
  std::optional<Mixture> entering;
  // Of the weight that is in the pan then.
  Range<Share> loses{};
  // Or down to this share of soluble solids.
  std::optional<Share> to_soluble_solids;
};

// The stage that boils down until all that is left, with what goes in after it, has this weight.
struct Settling {
  std::size_t stage = 0;
  Kilogram finished{};
};

// What an error names when more is to boil away than there is then: value and high are what is to
// boil away and what there is that can.
inline constexpr std::string_view runs_dry = "boiled away, kg";

// Acetic acid that is left in the end, of what goes in before each stage: 0 to 1. Where a stage
// `settles`, all stages together lose what is then missing, and the ranges of the others only say
// where; its own range does not count. The range holds every course of events, with a volatility
// anywhere in its range: shares multiply from stage to stage (Rayleigh, as acid_kept), and no more
// acid leaves than its part of the vapour.
// Error: `runs_dry`, or a volatility outside 0 to 2.
Computed<std::vector<Range<Share>>> acid_kept_by_stage(const std::vector<BoilingStage>& stages,
                                                       const std::optional<Settling>& settling,
                                                       const Range<Volatility>& volatility);

}  // namespace maslin::science
