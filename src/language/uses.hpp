// SPDX-License-Identifier: Apache-2.0
// What each step of a method brings into the pan, as exact shares of what the framework asks for.
#pragma once

#include <optional>
#include <vector>

#include "language/program.hpp"

namespace maslin::language {

// One thing that one step uses up.
struct Use {
  Slot slot;
  Rational fraction;      // of the slot's whole; nought where nothing was left
  std::size_t stage = 0;  // where it is named
  std::size_t step = 0;
  std::size_t part = 0;  // index in the step's parts; of no meaning for what is soaked in
  bool aside = false;    // soaked, macerated or salted in: it follows what lies in it
  bool rest = false;     // asked for as the rest
  Span span;
};

// In the order of the method.
std::vector<Use> uses_of(const Method& method);

// What all steps together use of a slot, as a share of its whole.
Rational used_in_all(const std::vector<Use>& uses, const Slot& slot);

// Where a use enters the pan or the jars: where it stands, or, when it is set aside, where the
// first of what lies in it is added. Nothing when that never is.
struct Place {
  std::size_t stage = 0;
  std::size_t step = 0;

  friend bool operator==(const Place&, const Place&) = default;
};
bool is_before(const Place& a, const Place& b);
std::optional<Place> entry_of(const Method& method, const std::vector<Use>& uses, const Use& use);

// The least time on the hob in steps of which `counts` holds, from one place of the method to
// another; what is packed into jars is not on the hob.
template <class Counts>
Duration heated_between(const Method& method, const Place& from, const Place& to,
                        const Counts& counts) {
  Duration sum;
  for (std::size_t i = from.stage; i < method.stages.size(); ++i) {
    const auto& steps = method.stages[i].steps;
    for (std::size_t j = 0; j < steps.size(); ++j) {
      const Place here{i, j};
      if (is_before(here, from) || !is_before(here, to) || !counts(steps[j].kind)) continue;
      if (steps[j].lasting) sum += steps[j].lasting->time.low;
    }
  }
  return sum;
}
inline Place end_of(const Method& method) { return {method.stages.size(), 0}; }

const Target& target_of(const Framework& framework, const Slot& slot);

}  // namespace maslin::language
