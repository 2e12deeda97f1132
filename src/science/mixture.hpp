// SPDX-License-Identifier: Apache-2.0
// What is in the pan: the weight of every substance, each a range because each figure is one.
#pragma once

#include <array>
#include <vector>

#include "quantity/real.hpp"
#include "science/composition.hpp"
#include "science/out_of_range.hpp"

namespace maslin::science {

// So much of a food, prepared.
struct Part {
  const Composition* composition = nullptr;  // always there
  Kilogram mass{};
};

// What boiling left of a mixture.
struct BoiledDown {
  Range<Kilogram> water;
  Range<Share> acetic_acid_kept;
  Range<Kilogram> mass;
};

class Mixture {
 public:
  // The sum of its parts. What no table gives counts so: acids, salt, minerals and the rest as
  // none; water and sugars as anything from none to all that the figures leave over. `sugars` holds
  // only sugars of unknown kind here, so that the kinds and it add up to the total.
  // Error: a weight below none or above 100 000 kg, and a whole of no weight.
  static Computed<Mixture> of(const std::vector<Part>& parts);

  Range<Kilogram> operator[](Substance s) const { return masses_[static_cast<std::size_t>(s)]; }
  Range<Kilogram> mass() const { return mass_; }

  friend Mixture operator+(const Mixture& a, const Mixture& b);
  // Less water, less acetic acid, and of alcohol nothing certain: at most the share of it that was
  // left of the water, since it boils away faster.
  Mixture after(const BoiledDown& boiled) const;

 private:
  Mixture() = default;
  void add(const Composition& composition, Kilogram mass);
  Range<Kilogram>& at(Substance s) { return masses_[static_cast<std::size_t>(s)]; }

  std::array<Range<Kilogram>, substance_count> masses_{};
  Range<Kilogram> mass_{};
};

// Sums of substances, kg.
Range<Kilogram> hexoses(const Mixture& mixture);        // glucose, fructose, galactose
Range<Kilogram> disaccharides(const Mixture& mixture);  // sucrose, maltose, lactose
Range<Kilogram> sugars(const Mixture& mixture);         // both, and those of unknown kind
Range<Kilogram> fixed_acids(const Mixture& mixture);    // every acid but acetic
// Water and what is dissolved in it: acids, salt and sugars. The basis of the stability index.
Range<Kilogram> aqueous_phase(const Mixture& mixture);
// What boils away: water, acetic acid, alcohol.
Range<Kilogram> volatiles(const Mixture& mixture);

// Each of the following is a mass share. Each takes the end of every figure that makes the result
// least, and then most: a part over the whole rises with the part and falls with the rest.

// What a refractometer would read: sugars, polyols, acids that do not boil away, minerals, salt.
Range<Share> soluble_solids(const Mixture& mixture);
// All that does not boil away.
Range<Share> total_solids(const Mixture& mixture);
// Titratable acidity, by equivalents (molar masses: IUPAC).
Range<Share> acidity_as_acetic(const Mixture& mixture);
Range<Share> acidity_as_citric(const Mixture& mixture);
// Acetic acid in a kilogram of everything, in the aqueous phase, in what boils away.
Range<Share> acetic_of_everything(const Mixture& mixture);
Range<Share> acetic_of_aqueous_phase(const Mixture& mixture);
Range<Share> acetic_of_volatiles(const Mixture& mixture);
// Salt that was added, not the sodium of the produce.
Range<Share> salt_of_everything(const Mixture& mixture);
Range<Share> salt_of_aqueous_phase(const Mixture& mixture);
Range<Share> sugars_of_everything(const Mixture& mixture);

}  // namespace maslin::science
