// SPDX-License-Identifier: Apache-2.0
// The boilings of a method one after another, and through which of them each thing goes: what goes
// in late has lost less of its acid.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "language/program.hpp"
#include "language/uses.hpp"

namespace maslin::language {

// One time on the hob.
struct OnTheHob {
  Bounds loses;                    // share of the weight in the pan, where no target is stated
  std::optional<Rational> solids;  // the share of soluble solids that it is boiled down to
};

// A part of what a slot takes.
struct Passing {
  std::size_t from = 0;  // the first boiling it goes through; their number: none
  Rational fraction = 1;
};

class Boilings {
 public:
  explicit Boilings(const Framework& framework);

  const std::vector<OnTheHob>& all() const { return all_; }
  // The one that boils down to what the framework's limits ask for; nothing where they do not say
  // how far.
  const std::optional<std::size_t>& settling() const { return settling_; }
  // Where that one stands; at the end of the method when no step is on the hob.
  Place settling_place() const { return places_[*settling_]; }
  // Adds up to the whole. What no step names is there from the start, and so is what stands in for
  // something where that is.
  std::vector<Passing> of(const Slot& slot) const;
  // The share of it that is in the pan when it settles; all where nothing settles.
  Rational settled_share(const Slot& slot) const;

 private:
  std::size_t after(const Place& place) const;

  const Framework& framework_;
  std::vector<Use> uses_;
  std::vector<Place> places_;  // of each boiling, beside all_
  std::vector<OnTheHob> all_;
  std::optional<std::size_t> settling_;
};

}  // namespace maslin::language
