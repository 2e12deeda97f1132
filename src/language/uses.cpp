// SPDX-License-Identifier: Apache-2.0
#include "language/uses.hpp"

#include <algorithm>

namespace maslin::language {
namespace {

bool brings(StepKind kind) { return kind == StepKind::add || kind == StepKind::pack; }

class Walk {
 public:
  explicit Walk(const Method& method) : method_(method) {}

  std::vector<Use> run() {
    for (stage_ = 0; stage_ < method_.stages.size(); ++stage_) {
      const auto& steps = method_.stages[stage_].steps;
      for (step_ = 0; step_ < steps.size(); ++step_) {
        const Step& step = steps[step_];
        if (step.in) take(*step.in, 0, true);
        if (!brings(step.kind)) continue;
        for (std::size_t i = 0; i < step.parts.size(); ++i) take(step.parts[i], i, false);
      }
    }
    return std::move(uses_);
  }

 private:
  void take(const Part& part, std::size_t index, bool aside) {
    for (const Slot& slot : part.slots) {
      Rational fraction = part.fraction;
      if (part.rest) fraction = larger(Rational(1) - used_in_all(uses_, slot), 0);
      uses_.push_back({slot, fraction, stage_, step_, index, aside, part.rest, part.span});
    }
  }

  const Method& method_;
  std::vector<Use> uses_;
  std::size_t stage_ = 0;
  std::size_t step_ = 0;
};

bool has_step(const Method& method, bool (*is_kind)(StepKind)) {
  return std::any_of(method.stages.begin(), method.stages.end(), [&](const Stage& stage) {
    return std::any_of(stage.steps.begin(), stage.steps.end(),
                       [&](const Step& step) { return is_kind(step.kind); });
  });
}

}  // namespace

std::vector<Use> uses_of(const Method& method) { return Walk(method).run(); }

Rational used_in_all(const std::vector<Use>& uses, const Slot& slot) {
  Rational sum;
  for (const Use& use : uses) {
    if (use.slot == slot) sum += use.fraction;
  }
  return sum;
}

bool is_before(const Place& a, const Place& b) {
  return a.stage < b.stage || (a.stage == b.stage && a.step < b.step);
}

std::optional<Place> entry_of(const Method& method, const std::vector<Use>& uses, const Use& use) {
  const Place here{use.stage, use.step};
  if (!use.aside) return here;
  const std::vector<Part>& held = method.stages[use.stage].steps[use.step].parts;
  const auto lies_in_it = [&](const Slot& slot) {
    return std::any_of(held.begin(), held.end(), [&](const Part& part) {
      return std::find(part.slots.begin(), part.slots.end(), slot) != part.slots.end();
    });
  };
  for (const Use& other : uses) {
    const Place there{other.stage, other.step};
    if (!other.aside && is_before(here, there) && lies_in_it(other.slot)) return there;
  }
  return std::nullopt;
}

bool is_heated(const Method& method) { return !method.is_stated() || has_step(method, is_heat); }

bool ferments(const Method& method) {
  return has_step(method, [](StepKind kind) { return kind == StepKind::ferment; });
}

bool only_simmers(const Method& method) {
  return method.is_stated() && is_heated(method) &&
         !has_step(method, [](StepKind kind) { return kind == StepKind::reduce; });
}

Rational most_lost(const Step& step) {
  struct Loss {
    long at_least;    // percent, however short
    long in_an_hour;  // percent
    long at_most;     // percent, however long
  };
  const Loss loss = step.lid == Lid::covered ? Loss{3, 6, 20} : Loss{10, 30, 60};
  Rational percent(loss.at_least);
  if (step.lasting) {
    const Rational hours = step.lasting->time.high.in_base() / Rational(3600);
    percent = larger(percent, hours * Rational(loss.in_an_hour));
  }
  return smaller(percent, Rational(loss.at_most)) / Rational(100);
}

std::optional<Rational> solids_at_the_end(const Method& method) {
  std::optional<Rational> solids;
  for (const Stage& stage : method.stages) {
    for (const Step& step : stage.steps) {
      if (step.kind == StepKind::reduce) solids = step.solids;
    }
  }
  return solids;
}

const Target& target_of(const Framework& framework, const Slot& slot) {
  switch (slot.kind) {
    case SlotKind::produce:
      return framework.shares[slot.index].target;
    case SlotKind::addition:
      return framework.additions[slot.index].target;
    case SlotKind::substitute:
      break;
  }
  return framework.substitutions[slot.index].donor;
}

}  // namespace maslin::language
