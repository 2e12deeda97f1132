// SPDX-License-Identifier: Apache-2.0
// What the boilings of a method may leave of the acid, whatever mix is brought.
#pragma once

#include "prove/case.hpp"

namespace maslin::prove {

// As `seen` for one mix, with the acid kept bounded for every mix of the case when this share of
// the water is to stay.
//
// Let T be all the water that ever goes in, less what is boiled away so far; W the part of it that
// is in the pan. A boiling that takes the share l of W leaves (1 - l) of it, and 1 - l W / T of T.
// So of what is in the pan from one boiling on there stays, as water, the share that stays of T
// times (1 - l) / (1 - l W / T) for each boiling: least when l is most and W / T least. Where
// nothing goes in later, W is T and the boiling counts for nothing.
blend::Boiling bounded(const Case& given, const Choice& choice, const blend::Boiling& seen,
                       double water_kept);

}  // namespace maslin::prove
