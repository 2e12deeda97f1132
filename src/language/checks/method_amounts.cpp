// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "language/checks/checks.hpp"
#include "language/uses.hpp"

namespace maslin::language::checks {
namespace {

// "1/4", "all", as a cook would say it.
std::string share_text(const Rational& share) {
  if (share == Rational(1)) return "all";
  for (const int below : {2, 3, 4, 5, 6, 8, 10}) {
    const Rational above = share * Rational(below);
    if (above.is_integer()) return fmt::format("{}/{}", above.to_decimal(0), below);
  }
  return (share * 100).to_decimal(1) + " %";
}

class AmountsCheck {
 public:
  AmountsCheck(const Framework& framework, Diagnostics& diagnostics)
      : framework_(framework), diagnostics_(diagnostics), uses_(uses_of(framework.method)) {}

  void run() {
    for (std::size_t i = 0; i < framework_.shares.size(); ++i) check({SlotKind::produce, i});
    for (std::size_t i = 0; i < framework_.additions.size(); ++i) check({SlotKind::addition, i});
    for (std::size_t i = 0; i < framework_.substitutions.size(); ++i) {
      // A donor that no step names goes with what it stands for.
      const Slot slot{SlotKind::substitute, i};
      if (used_in_all(uses_, slot).is_positive()) check(slot);
    }
    for (const Use& use : uses_) {
      if (use.aside && !entry_of(framework_.method, uses_, use)) report_left_aside(use);
    }
    check_taken_out();
    check_reductions();
  }

 private:
  void check(const Slot& slot) {
    const Target& target = target_of(framework_, slot);
    Rational sum;
    std::vector<const Use*> before;
    for (const Use& use : uses_) {
      if (!(use.slot == slot)) continue;
      if (use.rest && use.fraction.is_zero()) {
        report_nothing_left(use, before);
        return;
      }
      sum += use.fraction;
      if (sum > Rational(1)) {
        report_twice(use, before, sum);
        return;
      }
      before.push_back(&use);
    }
    if (sum < Rational(1)) report_never(target, before, sum);
  }

  void report_never(const Target& target, const std::vector<const Use*>& before,
                    const Rational& sum) {
    auto& found = diagnostics_.report(
        Code::never_added, target.span,
        sum.is_zero() ? fmt::format("no step of the method adds {}", target.name)
                      : fmt::format("{} of the {} is never added", share_text(Rational(1) - sum),
                                    target.name));
    for (const Use* use : before) {
      found.with_because(use->span,
                         fmt::format("{} of it goes in here", share_text(use->fraction)));
    }
    if (before.empty()) found.with_because(framework_.method.span, "the method");
    found.with_why(
        "what is weighed out and never goes in leaves the batch another than was planned");
    found.with_mend(sum.is_zero() ? fmt::format("name it in a stage: `add {}`", target.name)
                                  : fmt::format("add `the rest of {}` in a stage", target.name));
  }

  void report_twice(const Use& use, const std::vector<const Use*>& before, const Rational& sum) {
    const std::string& name = target_of(framework_, use.slot).name;
    auto& found =
        diagnostics_.report(Code::added_twice, use.span,
                            fmt::format("more {} is added than there is: {} % of it by here", name,
                                        (sum * 100).to_decimal(0)));
    for (const Use* each : before) {
      found.with_because(each->span,
                         fmt::format("{} of it goes in here", share_text(each->fraction)));
    }
    found.with_mend(
        before.size() == 1 && before.front()->fraction == Rational(1)
            ? fmt::format("name {} once, or divide it: `1/2 of {}` and `the rest of {}`", name,
                          name, name)
            : fmt::format("write `the rest of {}` for the last of it", name));
  }

  void report_nothing_left(const Use& use, const std::vector<const Use*>& before) {
    const std::string& name = target_of(framework_, use.slot).name;
    auto& found = diagnostics_.report(Code::nothing_left, use.span,
                                      fmt::format("nothing of the {} is left here", name));
    for (const Use* each : before) {
      found.with_because(each->span,
                         fmt::format("{} of it goes in here", share_text(each->fraction)));
    }
    found.with_mend("leave it out, or add less of it before");
  }

  void report_left_aside(const Use& use) {
    const std::string& name = target_of(framework_, use.slot).name;
    diagnostics_
        .report(Code::never_added, use.span,
                fmt::format("what lies in the {} here is not added afterwards, so the {} is not "
                            "either",
                            name, name))
        .with_mend("add it in a stage that follows");
  }

  // What comes out must have gone in.
  void check_taken_out() {
    const Method& method = framework_.method;
    for (std::size_t i = 0; i < method.stages.size(); ++i) {
      for (std::size_t j = 0; j < method.stages[i].steps.size(); ++j) {
        const Step& step = method.stages[i].steps[j];
        if (step.kind != StepKind::take_out) continue;
        for (const Part& part : step.parts) {
          for (const Slot& slot : part.slots) check_out(part, slot, {i, j});
        }
      }
    }
  }

  void check_out(const Part& part, const Slot& slot, const Place& here) {
    bool is_in = false;
    const Part* out = nullptr;  // what took it out before, and nothing was added since
    for (std::size_t i = 0; i <= here.stage; ++i) {
      const auto& steps = framework_.method.stages[i].steps;
      for (std::size_t j = 0; j < steps.size() && is_before({i, j}, here); ++j) {
        if (enters(slot, {i, j})) {
          is_in = true;
          out = nullptr;
        }
        if (const Part* taken =
                steps[j].kind == StepKind::take_out ? part_of(steps[j], slot) : nullptr) {
          out = taken;
        }
      }
    }
    if (is_in && out == nullptr) return;
    if (out != nullptr) {
      diagnostics_
          .report(Code::nothing_left, part.span,
                  fmt::format("the {} is out of the pan already", target_of(framework_, slot).name))
          .with_because(out->span, "taken out here")
          .with_mend("leave one of the two out");
      return;
    }
    diagnostics_
        .report(Code::nothing_left, part.span,
                fmt::format("no {} is in the pan yet", target_of(framework_, slot).name))
        .with_mend("take it out in a later step, or add it before");
  }

  bool enters(const Slot& slot, const Place& here) const {
    return std::any_of(uses_.begin(), uses_.end(), [&](const Use& use) {
      const auto entry = entry_of(framework_.method, uses_, use);
      return use.slot == slot && entry && *entry == here;
    });
  }

  static const Part* part_of(const Step& step, const Slot& slot) {
    for (const Part& part : step.parts) {
      if (std::find(part.slots.begin(), part.slots.end(), slot) != part.slots.end()) return &part;
    }
    return nullptr;
  }

  // Boiling only thickens: without anything more in the pan no later share can be lower.
  void check_reductions() {
    const Step* before = nullptr;
    const Method& method = framework_.method;
    for (std::size_t i = 0; i < method.stages.size(); ++i) {
      for (std::size_t j = 0; j < method.stages[i].steps.size(); ++j) {
        const Step& step = method.stages[i].steps[j];
        const bool anything = std::any_of(uses_.begin(), uses_.end(), [&](const Use& use) {
          return entry_of(method, uses_, use) == Place{i, j};
        });
        if (anything) before = nullptr;
        if (step.kind != StepKind::reduce || !step.solids) continue;
        if (before != nullptr && *step.solids < *before->solids) report_thinner(step, *before);
        before = &step;
      }
    }
  }

  void report_thinner(const Step& step, const Step& before) {
    diagnostics_
        .report(Code::figure_out_of_range, step.span,
                "what is boiled down further before cannot come to this")
        .with_because(before.span, "boiled down to here")
        .with_why("boiling takes water away, and nothing is added between the two")
        .with_mend("write the smaller share first, or leave one of the two out");
  }

  const Framework& framework_;
  Diagnostics& diagnostics_;
  std::vector<Use> uses_;
};

}  // namespace

void method_amounts(const Framework& framework, Diagnostics& diagnostics) {
  AmountsCheck(framework, diagnostics).run();
}

}  // namespace maslin::language::checks
