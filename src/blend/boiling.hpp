// SPDX-License-Identifier: Apache-2.0
// Limits on what leaves the pan as rows of a linear programme. Acid boils away with a power of the
// water, so such a row is linear only for what is expected of boiling.
#pragma once

#include <array>
#include <vector>

#include "language/boilings.hpp"
#include "language/contents.hpp"
#include "language/program.hpp"
#include "science/composition.hpp"

namespace maslin::blend {

// The acid that is expected to be left, of what goes in before one boiling.
struct KeptAcid {
  Range<double> share{1, 1};
  // How far apart its least and its most can be in one and the same pan: so much may stand in the
  // aqueous phase without counting.
  double apart = 0;
};

// What is expected of boiling, and of what it leaves.
struct Boiling {
  // At least this share of the water is to stay, as a row; 0 where nothing is asked of it.
  double water_kept = 0;
  // Share of what can boil away that is left.
  double volatiles_kept = 1;
  // Of each boiling of the method, and after the last; see language::Boilings.
  std::vector<KeptAcid> acid_kept;
  // Whether the limits say how far to boil down. Where they do not, only the acid that makes the pH
  // may boil away: all else is at its unfavourable end while the water is all there.
  bool is_boiled_down = false;
  // Of what is left, for the share of the acid that is dissociated.
  Range<double> ph{3.5, 3.5};
  // Kilograms of each solute in a kilogram of the water that is left: where the curve of the water
  // activity is replaced by its tangent. The curve bends downwards, so the tangent lies above it.
  std::array<double, science::substance_count> per_water{};
};

// One end of a limit as a row: the sum over weights of `of`, and `of_boiled_off` times what boils
// off, is at least nothing (low end) or at most nothing (high end).
class LimitRow {
 public:
  // `limit` is computed and not linear.
  LimitRow(const language::Program& program, const language::Boilings& boilings,
           const language::Limit& limit, bool low, const Boiling& boiling);

  double of(const language::Stuff& stuff, const language::Slot& slot) const;
  double of_boiled_off() const { return of_boiled_off_; }

 private:
  // For each substance what a kilogram of it counts for; at the end that is unfavourable.
  using Weights = std::array<double, science::substance_count>;
  void weigh_acid(double bound);
  void weigh_stability(double bound);
  void weigh_water_activity(double bound);
  KeptAcid kept_of(const language::Slot& slot) const;
  double at_unfavourable_end(const science::Composition& composition, const KeptAcid& kept) const;
  double charge(const language::Stuff& stuff, const KeptAcid& kept) const;

  const language::Program& program_;
  const language::Limit& limit_;
  bool low_;
  const Boiling& boiling_;
  const language::Boilings& boilings_;
  Weights weights_{};
  Weights phase_{};  // of a substance as part of the whole that it is a share of
  double of_everything_ = 0;
  double of_acid_left_ = 0;   // of the acetic acid that stays
  double of_acid_apart_ = 0;  // of how far apart the least and the most of it can be
  double of_boiled_off_ = 0;
};

// What came about in a pan, to be expected when it is solved again. `kept` and pH give way a little
// to what is unfavourable.
Boiling observed(const language::Framework& framework, const language::Contents& pan);

}  // namespace maslin::blend
