// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "report/figures.hpp"
#include "report/markup.hpp"

namespace maslin::report {

// Where the scale of several bars ends: the next tenth above all they show, at most the whole.
Rational end_of_scale(const std::vector<ShareBar>& bars);

// One bar on a scale from nothing to `end`: a box for what is allowed, a thick stroke for what was
// reached, a broken one for what is preferred.
Element draw_share(const ShareBar& bar, const Rational& end, const std::string& id);

}  // namespace maslin::report
