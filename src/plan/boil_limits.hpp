// SPDX-License-Identifier: Apache-2.0
// Each boil is a batch of its own: what steps of the scales move from one boil to another must not
// take it outside the limits that the whole is inside of.
#pragma once

#include <optional>
#include <vector>

#include "plan/boils.hpp"

namespace maslin::plan {

// A plan that stands exactly at a limit cannot be divided by whole steps without one boil coming
// out beside it. Up to this share of the limit that is no more than trimming and pouring differ by
// (common practice, no source); beyond it the scales are too coarse for boils of this size.
inline const Rational as_poured(Rational::Wide{1}, Rational::Wide{100});

// A limit on what goes in by prepared produce, or a share of it, that one boil does not keep to.
struct BoilMiss {
  std::optional<std::size_t> limit;  // of the framework; else
  std::size_t share = 0;             // of its produce
  long boil = 1;                     // counted from 1
  Rational value;                    // the share reached, at the unfavourable end
  Rational by;                       // how far outside
  bool breaks_limit = false;         // by more than as_poured: no boil to make
};

// For each limit and share the boil that is furthest outside; none where every boil is inside.
std::vector<BoilMiss> missed_by_boils(const language::Program& program, const Draft& draft,
                                      const Boils& boils);

// Where the limit or the share is written.
Span span_of(const language::Framework& framework, const BoilMiss& miss);

}  // namespace maslin::plan
