// SPDX-License-Identifier: Apache-2.0
#include "language/boilings.hpp"

#include <algorithm>

#include "language/amounts.hpp"

namespace maslin::language {
namespace {

// A reduction that says no weight may take anything from nothing to all that is missing.
OnTheHob on_the_hob(const Step& step) {
  if (step.kind != StepKind::reduce) return {{0, most_lost(step)}, std::nullopt};
  if (step.weight) {
    const Rational lost = Rational(1) - *step.weight;
    return {{lost, lost}, std::nullopt};
  }
  return {{0, 1}, step.solids};
}

}  // namespace

Boilings::Boilings(const Framework& framework)
    : framework_(framework), uses_(uses_of(framework.method)) {
  std::optional<std::size_t> last_reduction;
  const auto& stages = framework.method.stages;
  for (std::size_t i = 0; i < stages.size(); ++i) {
    for (std::size_t j = 0; j < stages[i].steps.size(); ++j) {
      const Step& step = stages[i].steps[j];
      if (!is_heat(step.kind)) continue;
      if (step.kind == StepKind::reduce) last_reduction = all_.size();
      all_.push_back(on_the_hob(step));
      places_.push_back({i, j});
    }
  }
  if (!says_how_far(framework)) return;
  if (all_.empty()) {
    all_.push_back({{0, 1}, std::nullopt});
    places_.push_back(end_of(framework.method));
  }
  settling_ = last_reduction.value_or(all_.size() - 1);
}

std::size_t Boilings::after(const Place& place) const {
  const auto first = std::find_if(places_.begin(), places_.end(),
                                  [&](const Place& each) { return is_before(place, each); });
  return static_cast<std::size_t>(first - places_.begin());
}

std::vector<Passing> Boilings::of(const Slot& slot) const {
  std::vector<Passing> result;
  Rational left = 1;
  for (const Use& use : uses_) {
    if (!(use.slot == slot) || !use.fraction.is_positive() || !left.is_positive()) continue;
    const auto entry = entry_of(framework_.method, uses_, use);
    if (!entry) continue;
    const Rational fraction = smaller(use.fraction, left);
    left -= fraction;
    // What is packed lies in the jars, and what is in the pan is poured over it.
    const bool packed =
        framework_.method.stages[entry->stage].steps[entry->step].kind == StepKind::pack;
    result.push_back({packed ? all_.size() : after(*entry), fraction});
  }
  if (!left.is_positive()) return result;
  if (result.empty() && slot.kind == SlotKind::substitute) {
    return of({SlotKind::addition, framework_.substitutions[slot.index].addition});
  }
  result.push_back({0, left});
  return result;
}

Rational Boilings::settled_share(const Slot& slot) const {
  if (!settling_) return 1;
  Rational sum;
  for (const Passing& each : of(slot)) {
    if (each.from <= *settling_) sum += each.fraction;
  }
  return sum;
}

}  // namespace maslin::language
