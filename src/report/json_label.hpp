// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json_fwd.hpp>

#include "label/label.hpp"

namespace maslin::report {

// Labels and card in one. What is a blank on paper is not there, and listed under "blanks".
nlohmann::ordered_json labels_json(const std::vector<label::Label>& labels);

}  // namespace maslin::report
