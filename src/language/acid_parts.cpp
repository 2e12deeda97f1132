// SPDX-License-Identifier: Apache-2.0
#include "language/acid_parts.hpp"

namespace maslin::language {

science::AcidPart acid_part_of(const Program& program, const Stuff& stuff) {
  const Ingredient& ingredient = program[stuff.ingredient];
  science::AcidPart part;
  if (ingredient.ph) part.published_ph = ph_range(ingredient.ph->value);
  if (ingredient.ash_alkalinity) {
    const Bounds& charge = ingredient.ash_alkalinity->value;
    part.ash_alkalinity = Range<MolePerKilogram>{MolePerKilogram(charge.low.to_double()),
                                                 MolePerKilogram(charge.high.to_double())};
  }
  return part;
}

}  // namespace maslin::language
