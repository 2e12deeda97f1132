// SPDX-License-Identifier: Apache-2.0
// Labels as plain text; what is emphasised is in capitals.
#pragma once

#include <string>

#include "label/label.hpp"

namespace maslin::report {

std::string label_text(const std::vector<label::Label>& labels);
std::string card_text(const std::vector<label::Label>& labels);

}  // namespace maslin::report
