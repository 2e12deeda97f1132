// SPDX-License-Identifier: Apache-2.0
// How sour the liquor is that covers what is packed, and what of that is left in the jar.
#pragma once

#include <optional>

#include "plan/timeline.hpp"

namespace maslin::plan {

// Shares of acetic acid by weight, over the ranges of the tables.
struct Liquor {
  Bounds poured;     // in the liquor as it is poured
  Bounds whole_jar;  // in all that is in the jar, once liquor and produce are alike throughout
  Rational water;    // share of water that is added to the liquor
};

// Nothing where the method packs nothing, or the pan holds no liquor.
std::optional<Liquor> liquor_of(const language::Program& program, const VerifiedPlan& plan,
                                const Timeline& timeline);

}  // namespace maslin::plan
