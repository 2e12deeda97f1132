// SPDX-License-Identifier: Apache-2.0
#include "plan/tested.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "language/amounts.hpp"
#include "plan/weights.hpp"

namespace maslin::plan {
namespace {

using language::Framework;
using language::JarStock;
using language::Kitchen;
using language::Lapse;
using language::Process;
using language::Route;

std::string millilitres(const Volume& volume) { return volume.in_base().to_decimal(0) + " ml"; }

std::string metres(const Length& height) {
  return (height.in_base() / Rational(1000)).to_decimal(1) + " m";
}

bool is_near(const Rational& reached, const Rational& wanted) {
  return absolute(reached - wanted) <= wanted * as_tested;
}

// What is weighed out, beside what the text of the framework asks for.
class MixJudge {
 public:
  MixJudge(const language::Program& program, const VerifiedPlan& plan)
      : program_(program),
        plan_(plan),
        draft_(plan.draft()),
        framework_(program[draft_.task.framework]) {}

  std::vector<Lapse> run() {
    lapses_ = lapses_of(program_, framework_);
    if (!lapses_.empty()) return std::move(lapses_);
    swaps();
    strengths();
    amounts();
    return std::move(lapses_);
  }

 private:
  void swaps() {
    for (std::size_t i = 0; i < framework_.substitutions.size(); ++i) {
      const auto& swap = framework_.substitutions[i];
      const bool weighed = std::any_of(
          draft_.substitutes.begin(), draft_.substitutes.end(),
          [&](const Taken& taken) { return taken.slot == i && taken.weight.is_positive(); });
      const bool credited = i < draft_.credits.size() && draft_.credits[i].is_positive();
      if (!weighed && !credited) continue;
      lapses_.push_back(
          {fmt::format("`{}` stands for `{}`", swap.donor.name, swap.replaced.name), swap.span});
    }
  }

  void strengths() {
    for (const Taken& taken : draft_.additions) {
      const auto& addition = framework_.additions[taken.slot];
      const Rational asked = stated_strength(addition);
      if (!taken.acidity || *taken.acidity == asked) continue;
      lapses_.push_back(
          {fmt::format("{} has {} acidity, and {} was tested", program_[taken.ingredient].name,
                       percent_text(*taken.acidity), percent_text(asked)),
           addition.span});
    }
  }

  void amounts() {
    for (std::size_t i = 0; i < framework_.shares.size(); ++i) {
      const auto& share = framework_.shares[i];
      if (!is_near(plan_.shares()[i], share.range.low)) too_far(share.target.name, share.span);
    }
    for (std::size_t i = 0; i < framework_.additions.size(); ++i) {
      const auto& addition = framework_.additions[i];
      const Rational& reached = plan_.additions()[i];
      const bool less_acid = reached < addition.range.low && is_acid(i);
      if (less_acid || !is_near(reached, addition.range.low)) {
        too_far(addition.target.name, addition.span);
      }
    }
  }

  bool is_acid(std::size_t addition) const {
    return std::any_of(draft_.additions.begin(), draft_.additions.end(), [&](const Taken& taken) {
      return taken.slot == addition && taken.acidity.has_value();
    });
  }

  void too_far(const std::string& name, Span span) {
    lapses_.push_back(
        {fmt::format("with these scales `{}` comes out beside what was tested", name), span});
  }

  const language::Program& program_;
  const VerifiedPlan& plan_;
  const Draft& draft_;
  const Framework& framework_;
  std::vector<Lapse> lapses_;
};

// The jars and the altitude, beside the table that is claimed.
class KitchenJudge {
 public:
  KitchenJudge(const language::Program& program, const Task& task, Tested& result)
      : framework_(program[task.framework]),
        route_(program[result.claim->route]),
        kitchen_(task.kitchen.valid() ? &program[task.kitchen] : nullptr),
        task_(task),
        rows_(rows_for(route_, result.claim->product)),
        result_(result) {}

  void run(std::vector<JarStock>& stock) {
    jars(stock);
    altitude(stock);
    if (!result_.of_the_kitchen.empty()) result_.times.clear();
  }

 private:
  Span place() const { return kitchen_ != nullptr ? kitchen_->span : result_.claim->span; }

  void lapse(std::string because, std::string mend, Span span) {
    result_.of_the_kitchen.push_back({std::move(because), span, std::move(mend)});
  }

  bool fits(const JarStock& jar) const {
    return row_for(route_, result_.claim->product, jar.holds) != nullptr;
  }

  void jars(std::vector<JarStock>& stock) {
    if (stock.empty()) {
      lapse("nothing says what jars are filled", "write them into the kitchen: `jars 24 of 282 ml`",
            place());
      return;
    }
    const auto too_large = std::stable_partition(stock.begin(), stock.end(),
                                                 [&](const JarStock& jar) { return fits(jar); });
    if (too_large == stock.end()) return;
    // What was asked for is filled, and what is the only jar there is too: then nothing is tested.
    if (!task_.jars.empty() || too_large == stock.begin()) {
      const Volume holds = too_large->holds;
      lapse(fmt::format("jars of {} are larger than any in the table, which ends at {}",
                        millilitres(holds), millilitres(rows_.back()->largest_jar)),
            "fill smaller ones", task_.jars.empty() ? too_large->span : place());
      return;
    }
    result_.left_out.assign(too_large, stock.end());
    stock.erase(too_large, stock.end());
  }

  void altitude(const std::vector<JarStock>& stock) {
    if (kitchen_ == nullptr || !kitchen_->altitude) {
      lapse("nothing says how high the kitchen lies", "write it into the kitchen: `altitude 140 m`",
            place());
      return;
    }
    for (const Process* row : rows_) {
      const bool used = std::any_of(stock.begin(), stock.end(), [&](const JarStock& jar) {
        return row_for(route_, result_.claim->product, jar.holds) == row;
      });
      if (!used) continue;
      if (const auto time = time_at(*row, *kitchen_->altitude)) {
        result_.times.push_back({row, *time});
        continue;
      }
      lapse(fmt::format("the kitchen lies at {}, and the table ends at {}",
                        metres(*kitchen_->altitude), metres(*row->steps.back().up_to)),
            {}, place());
      return;
    }
  }

  const Framework& framework_;
  const Route& route_;
  const Kitchen* kitchen_;
  const Task& task_;
  std::vector<const Process*> rows_;
  Tested& result_;
};

void report_left_out(const Route& route, const Tested& tested, Diagnostics& diagnostics) {
  const JarStock& first = tested.left_out.front();
  auto& found = diagnostics.report(
      Code::jar_not_tested, first.span,
      fmt::format("jars of {} are larger than any in the tested table, and are left out",
                  millilitres(first.holds)));
  for (std::size_t i = 1; i < tested.left_out.size(); ++i) {
    found.with_because(tested.left_out[i].span, "and these");
  }
  found.with_because(rows_for(route, tested.claim->product).back()->span,
                     "the largest in the table");
  found.with_why("heat takes longer to the middle of a larger jar, and nobody has tested how long");
  found.with_mend("fill the smaller ones");
}

void report_outside(const Route& route, const Tested& tested, Diagnostics& diagnostics) {
  for (const Lapse& lapse : tested.of_the_kitchen) {
    auto& found = diagnostics.report(
        Code::outside_table, lapse.span,
        fmt::format("no minutes follow from the tested table: {}", lapse.because));
    found.with_because(rows_for(route, tested.claim->product).back()->span, "the table");
    found.with_why("the minutes are of the tested recipe, in its jars and at its altitude");
    if (!lapse.mend.empty()) found.with_mend(lapse.mend);
    found.with_mend(lapse.mend.empty() ? "keep it cold" : "or keep it cold");
  }
}

}  // namespace

std::optional<Tested> judge_tested(const language::Program& program, const VerifiedPlan& plan,
                                   std::vector<JarStock>& stock) {
  const Framework& framework = program[plan.draft().task.framework];
  Tested result;
  result.claim = claimed_process(framework);
  if (framework.status != language::Status::tested && result.claim == nullptr) return std::nullopt;
  result.of_the_mix = MixJudge(program, plan).run();
  if (result.of_the_mix.empty() && result.claim != nullptr) {
    KitchenJudge(program, plan.draft().task, result).run(stock);
  }
  return result;
}

void report_tested(const language::Program& program, const VerifiedPlan& plan, const Tested& tested,
                   Diagnostics& diagnostics) {
  const Framework& framework = program[plan.draft().task.framework];
  if (tested.claim != nullptr) {
    const Route& route = program[tested.claim->route];
    if (!tested.left_out.empty()) report_left_out(route, tested, diagnostics);
    report_outside(route, tested, diagnostics);
  }
  // What its text says was reported when it was checked.
  if (tested.of_the_mix.empty() || !lapses_of(program, framework).empty()) return;
  auto& found = diagnostics.report(Code::tested_lapses, framework.status_span,
                                   "this plan is not what the source tested");
  for (const Lapse& lapse : tested.of_the_mix) found.with_because(lapse.span, lapse.because);
  found.with_why("minutes and months are of the tested recipe alone, to the letter");
  found.with_mend("take what the source says, in the strength it says");
  found.with_mend("where only the scales are too coarse: make a larger batch");
}

}  // namespace maslin::plan
