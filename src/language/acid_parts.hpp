// SPDX-License-Identifier: Apache-2.0
// An ingredient as a balance of charges sees it.
#pragma once

#include "language/amounts.hpp"
#include "science/acidity.hpp"

namespace maslin::language {

// Its published pH and the measured alkalinity of its ash, where it has them. The composition is
// not there yet and the weight is none: both are the caller's to put in.
science::AcidPart acid_part_of(const Program& program, const Stuff& stuff);

}  // namespace maslin::language
