// SPDX-License-Identifier: Apache-2.0
#include "label/went_in.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "label/basis.hpp"
#include "language/amounts.hpp"
#include "language/membership.hpp"
#include "plan/weights.hpp"

namespace maslin::label {
namespace {

using language::Boil;
using language::Framework;
using language::IngredientId;
using language::Line;
using language::Program;
using language::Slot;
using language::SlotKind;

// All that a boil used of one ingredient.
struct Put {
  IngredientId ingredient;
  Rational weight;  // g, ready for the pan
  std::optional<Rational> acidity;
  bool sulphited = false;
  Span span;
};

std::vector<plan::Taken>& list_of(plan::Draft& draft, SlotKind kind) {
  if (kind == SlotKind::produce) return draft.produce;
  return kind == SlotKind::addition ? draft.additions : draft.substitutes;
}

std::vector<Put> put_in(const Program& program, const Boil& boil) {
  std::vector<Put> all;
  for (const Line& line : boil.used) {
    auto same = std::find_if(all.begin(), all.end(),
                             [&](const Put& each) { return each.ingredient == line.ingredient; });
    if (same == all.end()) same = all.insert(all.end(), {line.ingredient, {}, {}, {}, line.span});
    const Rational whole = line.weight.value_or(Rational()) - line.spoiled - line.keep_back;
    same->weight += whole * plan::prepared_share(program, line);
    if (line.acidity) same->acidity = line.acidity;
    same->sulphited = same->sulphited || line.sulphited;
  }
  return all;
}

class Reader {
 public:
  Reader(const Recording& recording, Diagnostics& diagnostics)
      : recording_(recording),
        program_(recording.program),
        framework_(recording.program[recording.task.framework]),
        diagnostics_(diagnostics),
        put_(put_in(recording.program, recording.boil)) {
    result_.draft.task = recording.task;
  }

  std::optional<WentIn> run() {
    if (!check_admitted()) return std::nullopt;
    if (recording_.plan != nullptr) planned_ = planned();
    add_planned();
    add_others();
    if (!check_enough()) return std::nullopt;
    return std::move(result_);
  }

 private:
  // What the plan weighs out for this boil.
  plan::Draft planned() const {
    plan::Draft draft = recording_.plan->verified.draft();
    const plan::Boils& boils = recording_.plan->afternoon.boils;
    if (boils.count == 1) return draft;
    for (auto* list : {&draft.produce, &draft.additions, &draft.substitutes}) {
      for (plan::Taken& taken : *list) taken.weight = Rational();
    }
    for (const plan::BoilItem& item : boils.items) {
      const bool first = recording_.boil.number <= item.dealt.first_boils;
      plan::Taken& taken = list_of(draft, item.taken.list)[item.taken.index];
      taken.weight += (first ? item.dealt.first : item.dealt.others) * item.grams_per_unit;
    }
    return draft;
  }

  const Put* put_of(IngredientId ingredient) const {
    const auto found = std::find_if(put_.begin(), put_.end(),
                                    [&](const Put& each) { return each.ingredient == ingredient; });
    return found == put_.end() ? nullptr : &*found;
  }

  Rational planned_of(IngredientId ingredient) const {
    Rational sum;
    for (const plan::TakenId& id : plan::all_taken(planned_)) {
      const plan::Taken& taken = plan::taken_of(planned_, id);
      if (taken.ingredient == ingredient) sum += taken.weight;
    }
    return sum;
  }

  // An ingredient in several slots is divided among them as the plan divides it.
  void add_planned() {
    std::vector<IngredientId> told;
    for (const plan::TakenId& id : plan::all_taken(planned_)) {
      plan::Taken taken = plan::taken_of(planned_, id);
      if (!taken.weight.is_positive()) continue;
      const Rational whole = planned_of(taken.ingredient);
      if (const Put* put = put_of(taken.ingredient)) {
        taken.weight = put->weight * (taken.weight / whole);
        complete(taken, *put);
      } else if (std::find(told.begin(), told.end(), taken.ingredient) == told.end()) {
        told.push_back(taken.ingredient);
        result_.from_plan.push_back(
            fmt::format("{} {}", program_[taken.ingredient].name, plan::weight_text(whole)));
      }
      if (taken.weight.is_positive()) list_of(result_.draft, id.list).push_back(taken);
    }
  }

  void add_others() {
    for (const Put& put : put_) {
      if (!put.weight.is_positive() || planned_of(put.ingredient).is_positive()) continue;
      const Slot slot = *slot_for(put.ingredient);
      plan::Taken taken;
      taken.slot = slot.index;
      taken.ingredient = put.ingredient;
      taken.origin = language::Origin::basket;
      taken.weight = put.weight;
      complete(taken, put);
      list_of(result_.draft, slot.kind).push_back(taken);
    }
  }

  // What a line of the batch leaves unsaid may stand on the line it was taken from.
  void complete(plan::Taken& taken, const Put& put) const {
    taken.amount = taken.weight;
    taken.tool = plan::Tool::scales;
    taken.sulphited = taken.sulphited || put.sulphited;
    if (put.acidity) taken.acidity = put.acidity;
    const auto take_from = [&](const std::vector<Line>& lines) {
      for (const Line& line : lines) {
        if (line.ingredient != put.ingredient) continue;
        taken.sulphited = taken.sulphited || line.sulphited;
        if (!taken.acidity) taken.acidity = line.acidity;
      }
    };
    if (recording_.task.basket.valid()) take_from(program_[recording_.task.basket].lines);
    if (recording_.kitchen() != nullptr) take_from(recording_.kitchen()->store);
    if (!taken.acidity && language::needs_strength(program_[put.ingredient])) {
      taken.acidity = stated_for(put.ingredient);
    }
  }

  std::optional<Rational> stated_for(IngredientId ingredient) const {
    for (const language::Addition& addition : framework_.additions) {
      if (takes(program_, addition.target, ingredient)) return stated_strength(addition);
    }
    return std::nullopt;
  }

  // The first place of the framework that takes it.
  std::optional<Slot> slot_for(IngredientId ingredient) const {
    for (std::size_t i = 0; i < framework_.shares.size(); ++i) {
      if (takes(program_, framework_.shares[i].target, ingredient)) {
        return Slot{SlotKind::produce, i};
      }
    }
    for (std::size_t i = 0; i < framework_.additions.size(); ++i) {
      if (takes(program_, framework_.additions[i].target, ingredient)) {
        return Slot{SlotKind::addition, i};
      }
    }
    for (std::size_t i = 0; i < framework_.substitutions.size(); ++i) {
      if (is_donor(framework_.substitutions[i], ingredient)) return Slot{SlotKind::substitute, i};
    }
    return std::nullopt;
  }

  bool is_donor(const language::Substitution& substitution, IngredientId ingredient) const {
    const auto& only = substitution.only;
    const auto admits = [&](const language::Target& each) {
      return takes(program_, each, ingredient);
    };
    return admits(substitution.donor) &&
           (only.empty() || std::any_of(only.begin(), only.end(), admits));
  }

  bool check_admitted() {
    bool good = true;
    for (const Put& put : put_) {
      const std::string& name = program_[put.ingredient].name;
      const language::Refusal* refusal = refusal_of(program_, framework_, put.ingredient);
      if (slot_for(put.ingredient) && refusal == nullptr) continue;
      auto& found = diagnostics_.report(
          Code::not_admitted, put.span,
          fmt::format("`{}` takes no {}, and this boil used some", framework_.name, name));
      found.with_because(framework_.span, "of this framework");
      found.with_why(refusal != nullptr && !refusal->because.empty()
                         ? refusal->because
                         : "a label of it would be of something else than the framework describes");
      found.with_mend(
          "name what it was by the name the framework knows, or write a framework that takes it");
      good = false;
    }
    return good;
  }

  // Without a plan for it, all that the framework asks for must be there.
  bool check_enough() {
    std::vector<std::string> missing;
    const auto is_there = [&](const language::Target& target) {
      return std::any_of(put_.begin(), put_.end(),
                         [&](const Put& put) { return takes(program_, target, put.ingredient); });
    };
    if (recording_.plan == nullptr) {
      for (const language::ProduceShare& share : framework_.shares) {
        if (share.range.low.is_positive() && !is_there(share.target)) {
          missing.push_back(share.target.name);
        }
      }
      for (std::size_t i = 0; i < framework_.additions.size(); ++i) {
        const language::Addition& addition = framework_.additions[i];
        if (addition.range.low.is_positive() && !is_there(addition.target) && !is_replaced(i)) {
          missing.push_back(addition.target.name);
        }
      }
    }
    const bool nothing = !ingoing_of(result_.draft).is_positive();
    if (missing.empty() && !nothing) return true;
    auto& found = report_not_recorded(
        recording_,
        missing.empty() ? "nothing went into this boil"
                        : fmt::format("how much went into this boil of {} is not recorded",
                                      fmt::join(missing, ", ")),
        diagnostics_);
    found.with_mend("write it into `used`; `sugar 0 g` where there was none of it");
    return false;
  }

  bool is_replaced(std::size_t addition) const {
    return std::any_of(put_.begin(), put_.end(), [&](const Put& put) {
      return std::any_of(framework_.substitutions.begin(), framework_.substitutions.end(),
                         [&](const auto& each) {
                           return each.addition == addition && is_donor(each, put.ingredient);
                         });
    });
  }

  const Recording& recording_;
  const Program& program_;
  const Framework& framework_;
  Diagnostics& diagnostics_;
  std::vector<Put> put_;
  plan::Draft planned_;
  WentIn result_;
};

}  // namespace

std::optional<WentIn> went_in(const Recording& recording, Diagnostics& diagnostics) {
  return Reader(recording, diagnostics).run();
}

Diagnostic& report_not_recorded(const Recording& recording, std::string message,
                                Diagnostics& diagnostics) {
  auto& found = diagnostics.report(Code::not_recorded, recording.boil.span, std::move(message));
  if (!recording.task.basket.valid()) {
    found.with_why(
        "what a boil does not say is taken from the plan, and without a basket there is none");
    found.with_mend("name the file with the basket as well");
  } else if (recording.plan == nullptr) {
    found.with_why("what a boil does not say is taken from the plan, and that has no such boil");
  }
  return found;
}

}  // namespace maslin::label
