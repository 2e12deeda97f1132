// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "report/figures.hpp"
#include "report/markup.hpp"

namespace maslin::report {

// The jars side by side, larger ones larger, each with how full it is; of very many of one size one
// stands for all.
Element jar_row(const JarRow& row, const std::string& id);

}  // namespace maslin::report
