// SPDX-License-Identifier: Apache-2.0
// Labels as plain text; what is emphasised is in capitals.
#pragma once

#include <string>

#include "label/label.hpp"

namespace maslin::report {

std::string label_text(const label::Label& label);
std::string card_text(const label::Label& label);

}  // namespace maslin::report
