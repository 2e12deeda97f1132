// SPDX-License-Identifier: Apache-2.0
// Random frameworks with limits on what leaves the pan, as text. Figures are invented; whether a
// framework holds is for the proof to say.
#pragma once

#include <random>
#include <string>

namespace maslin::test {

struct FrameworkKind {
  double vinegar = 1;  // more of it, and more frameworks hold
};

std::string random_framework(std::mt19937& random, const FrameworkKind& kind = {});

}  // namespace maslin::test
