// SPDX-License-Identifier: Apache-2.0
// Random baskets that do not fit: a case that has a plan is drawn, and one or two of its amounts
// are changed until there is none.
#pragma once

#include <random>
#include <string>

#include "plan/make.hpp"
#include "property/random_case.hpp"

namespace maslin::test {

struct RandomMisfit {
  std::string text;
  plan::Aim aim;
};

// Most of them do not fit; the caller looks.
RandomMisfit random_misfit(std::mt19937& random);

}  // namespace maslin::test
