// SPDX-License-Identifier: Apache-2.0
// The nutrition table of 100 g, in the order and rounding of Regulation (EU) 1169/2011, annex XV.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "science/nutrition.hpp"

namespace maslin::label {

struct NutritionRow {
  std::string what;
  std::optional<std::string> amount;  // as printed; nothing: no table gives it
  bool of_which = false;              // part of the row above
};

// Each at the middle of its range: a label bears one figure.
science::Nutrients middle_of(const Range<science::Nutrients>& nutrients);
std::vector<NutritionRow> nutrition_rows(const science::Nutrients& nutrients);

}  // namespace maslin::label
