// SPDX-License-Identifier: Apache-2.0
// Labels to cut out, one a boil, as a page without script; what is emphasised is bold.
#pragma once

#include <string>

#include "label/label.hpp"

namespace maslin::report {

std::string label_html(const std::vector<label::Label>& labels);
std::string card_html(const std::vector<label::Label>& labels);

}  // namespace maslin::report
