// SPDX-License-Identifier: Apache-2.0
#include "plan/timeline.hpp"

#include <algorithm>

namespace maslin::plan {
namespace {

using language::Framework;
using language::Place;
using language::Slot;
using language::SlotKind;
using language::StepKind;
using language::Use;

class TimelineMaker {
 public:
  TimelineMaker(const language::Program& program, const VerifiedPlan& plan)
      : draft_(plan.draft()),
        framework_(program[plan.draft().task.framework]),
        uses_(language::uses_of(framework_.method)) {}

  Timeline run() {
    Timeline timeline;
    const auto& stages = framework_.method.stages;
    for (std::size_t i = 0; i < stages.size(); ++i) {
      TimelineStage stage;
      stage.stage = &stages[i];
      for (std::size_t j = 0; j < stages[i].steps.size(); ++j) {
        stage.steps.push_back(make_step(stages[i].steps[j], {i, j}));
      }
      timeline.push_back(std::move(stage));
    }
    return timeline;
  }

 private:
  TimelineStep make_step(const language::Step& step, const Place& here) {
    TimelineStep result;
    result.step = &step;
    result.in_the_pan = in_the_pan_;
    result.for_jars = step.kind == StepKind::pack;
    for (const Use& use : uses_) {
      const auto items = items_of(use);
      if (Place{use.stage, use.step} == here) {
        result.items.insert(result.items.end(), items.begin(), items.end());
      }
      if (entry_of(framework_.method, uses_, use) == here) {
        result.entering.insert(result.entering.end(), items.begin(), items.end());
      }
    }
    if (!result.for_jars) {
      in_the_pan_.insert(in_the_pan_.end(), result.entering.begin(), result.entering.end());
    }
    return result;
  }

  // Everything taken for a slot, and for what stands in for it where no step names that.
  std::vector<Item> items_of(const Use& use) const {
    std::vector<Item> items;
    if (!use.fraction.is_positive()) return items;
    for (const TakenId& id : all_taken(draft_)) {
      const Taken& taken = taken_of(draft_, id);
      const Slot own{id.list, taken.slot};
      const bool follows = id.list == SlotKind::substitute && use.slot == replaced_by(taken) &&
                           !language::used_in_all(uses_, own).is_positive();
      if (own == use.slot || follows) items.push_back({id, use.fraction, use.aside});
    }
    return items;
  }

  Slot replaced_by(const Taken& donor) const {
    return {SlotKind::addition, framework_.substitutions[donor.slot].addition};
  }

  const Draft& draft_;
  const Framework& framework_;
  std::vector<Use> uses_;
  std::vector<Item> in_the_pan_;
};

}  // namespace

const Taken& taken_of(const Draft& draft, const TakenId& id) {
  switch (id.list) {
    case SlotKind::produce:
      return draft.produce[id.index];
    case SlotKind::addition:
      return draft.additions[id.index];
    case SlotKind::substitute:
      break;
  }
  return draft.substitutes[id.index];
}

std::vector<TakenId> all_taken(const Draft& draft) {
  std::vector<TakenId> all;
  const auto add = [&](SlotKind list, std::size_t count) {
    for (std::size_t i = 0; i < count; ++i) all.push_back({list, i});
  };
  add(SlotKind::produce, draft.produce.size());
  add(SlotKind::addition, draft.additions.size());
  add(SlotKind::substitute, draft.substitutes.size());
  return all;
}

Timeline make_timeline(const language::Program& program, const VerifiedPlan& plan) {
  return TimelineMaker(program, plan).run();
}

std::vector<Item> through_the_pan(const Draft& draft, const Timeline& timeline) {
  std::vector<Item> items;
  for (const TimelineStage& stage : timeline) {
    for (const TimelineStep& step : stage.steps) {
      if (step.for_jars) continue;
      items.insert(items.end(), step.entering.begin(), step.entering.end());
    }
  }
  if (!timeline.empty()) return items;
  for (const TakenId& id : all_taken(draft)) items.push_back({id, 1, false});
  return items;
}

Rational weight_of(const Draft& draft, const Item& item) {
  return taken_of(draft, item.taken).weight * item.share;
}

}  // namespace maslin::plan
