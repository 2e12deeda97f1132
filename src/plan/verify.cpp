// SPDX-License-Identifier: Apache-2.0
#include "plan/verify.hpp"

#include "plan/verify_parts.hpp"

namespace maslin::plan {
namespace {

using language::Addition;
using language::ProduceShare;
using language::Program;

const Rational kilogram(1000);  // g

bool has_every_credit(const Draft& draft, std::size_t substitutions, Breaches& breaches) {
  if (draft.credits.size() == substitutions) return true;
  breaches.push_back({Breach::Kind::malformed, 0, "not one credit for each substitution"});
  return false;
}

// Whether the task names things that exist.
bool names_what_exists(const Program& program, const Task& task, Breaches& breaches) {
  const bool kitchen = !task.kitchen.valid() || task.kitchen.index < program.kitchens.size();
  if (kitchen && task.framework.index < program.frameworks.size() &&
      task.basket.index < program.baskets.size()) {
    return true;
  }
  breaches.push_back({Breach::Kind::malformed, 0, "there is no such framework, basket or kitchen"});
  return false;
}

Case case_of(const Program& program, const Draft& draft) {
  const Task& task = draft.task;
  Case given{program,
             draft,
             program[task.framework],
             program[task.basket],
             task.kitchen.valid() ? &program[task.kitchen] : nullptr,
             tools_of(program, task.kitchen),
             {},
             {},
             {}};
  const auto add = [&](SlotKind kind, const std::vector<Taken>& list) {
    for (const Taken& taken : list) {
      given.pan.push_back({kind, given.pan.size(), &taken});
      given.ingoing += IngoingMass(taken.weight);
      if (kind == SlotKind::produce) given.total += PreparedMass(taken.weight);
    }
  };
  add(SlotKind::produce, draft.produce);
  add(SlotKind::addition, draft.additions);
  add(SlotKind::substitute, draft.substitutes);
  return given;
}

// Whether an amount lies in its range, give or take.
bool lies_in(const Rational& amount, const Bounds& range, const Rational& tolerance) {
  return amount >= range.low - tolerance && amount <= range.high + tolerance;
}

}  // namespace

class Verifier {
 public:
  explicit Verifier(const Case& given) : given_(given) {}

  Result<VerifiedPlan, Breaches> run() {
    if (!check_taken(given_, breaches_)) return Failure{std::move(breaches_)};
    // Sums too large to be reckoned with are no weights either.
    if (!given_.total.is_positive() || !given_.ingoing.is_positive()) {
      breaches_.push_back({Breach::Kind::malformed, 0, "there is no produce"});
      return Failure{std::move(breaches_)};
    }
    VerifiedPlan plan;
    plan.leftovers_ = check_at_hand(given_, breaches_);
    plan.shares_ = check_shares();
    plan.additions_ = check_additions();
    plan.accounts_ = check_credits(given_, breaches_);
    plan.limits_ = check_limits(given_, breaches_);
    plan.window_ = check_finished(given_, breaches_);
    check_aim();
    if (!breaches_.empty()) return Failure{std::move(breaches_)};
    plan.draft_ = given_.draft;
    plan.total_ = given_.total;
    plan.ingoing_ = given_.ingoing;
    if (given_.draft.finished) plan.finished_ = FinishedMass(*given_.draft.finished);
    return plan;
  }

 private:
  std::vector<Rational> check_shares() {
    std::vector<Rational> reached;
    const Rational total = given_.total.in_base();
    for (std::size_t i = 0; i < given_.framework.shares.size(); ++i) {
      const ProduceShare& share = given_.framework.shares[i];
      Rational sum;
      int count = 0;
      for (const Taken& taken : given_.draft.produce) {
        if (taken.slot != i) continue;
        sum += taken.weight;
        ++count;
      }
      reached.push_back(sum / total);
      const Bounds range{share.range.low * total, share.range.high * total};
      const Rational steps = given_.tools.scale_step * Rational(count > 0 ? count : 1);
      const bool is_narrow = share.range.is_exact() || range.high - range.low < steps;
      const bool holds = lies_in(sum, range, is_narrow ? steps : Rational(0));
      if (holds && reached.back().is_defined()) continue;
      say(Breach::Kind::share, i, share.target.name, sum, range);
    }
    return reached;
  }

  std::vector<Rational> check_additions() {
    std::vector<Rational> reached;
    for (std::size_t i = 0; i < given_.framework.additions.size(); ++i) {
      const Addition& addition = given_.framework.additions[i];
      const Rational amount = amount_taken(given_, i) + amount_credited(given_, i);
      reached.push_back(amount * kilogram / given_.total.in_base());
      const Bounds range{wanted_at(given_, addition.range.low),
                         wanted_at(given_, addition.range.high)};
      const Steps steps = steps_of(given_, i);
      const bool is_narrow = addition.range.is_exact() || range.high - range.low < steps.largest;
      const bool holds = lies_in(amount, range, is_narrow ? steps.sum : Rational(0));
      if (holds && reached.back().is_defined()) continue;
      say(Breach::Kind::addition, i, addition.target.name, amount, range);
    }
    return reached;
  }

  void check_aim() {
    const Aim& aim = given_.draft.task.aim;
    const auto count = [](const auto& list) { return Rational(static_cast<long>(list.size())); };
    const Rational& step = given_.tools.scale_step;
    Rational reached = aim.weight;
    Rational tolerance;
    switch (aim.kind) {
      case AimKind::most:
        return;
      case AimKind::prepared:
        reached = given_.total.in_base();
        tolerance = count(given_.draft.produce) * step;
        break;
      case AimKind::finished:
        reached = given_.draft.finished.value_or(Rational::undefined());
        // A pan is not stopped more closely than to a hundredth.
        tolerance = most_of(step * count(given_.pan), aim.weight / 100);
        break;
    }
    if (absolute(reached - aim.weight) <= tolerance) return;
    say(Breach::Kind::aim, 0, "the aim", reached, Bounds::exactly(aim.weight));
  }

  void say(Breach::Kind kind, std::size_t index, const std::string& name, const Rational& amount,
           const Bounds& range) {
    breaches_.push_back({kind, index,
                         name + ": " + amount.to_decimal(3) + " for " + range.low.to_decimal(3) +
                             " to " + range.high.to_decimal(3)});
  }

  const Case& given_;
  Breaches breaches_;
};

Result<VerifiedPlan, std::vector<Breach>> verify(const language::Program& program,
                                                 const Draft& draft) {
  Breaches breaches;
  if (!names_what_exists(program, draft.task, breaches) ||
      !has_every_credit(draft, program[draft.task.framework].substitutions.size(), breaches)) {
    return Failure{std::move(breaches)};
  }
  return Verifier(case_of(program, draft)).run();
}

}  // namespace maslin::plan
