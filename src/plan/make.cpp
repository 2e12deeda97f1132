// SPDX-License-Identifier: Apache-2.0
#include "plan/make.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "language/amounts.hpp"
#include "language/boilings.hpp"
#include "plan/attempt.hpp"
#include "plan/mend.hpp"
#include "plan/misfit.hpp"
#include "plan/use_up.hpp"
#include "plan/weights.hpp"
#include "science/boiling_stages.hpp"

namespace maslin::plan {
namespace {

void offer(const std::vector<Mend>& mends, Diagnostic& found) {
  constexpr std::size_t most = 4;
  for (std::size_t i = 0; i < mends.size() && i < most; ++i) {
    found.with_mend(mends[i].text);
    if (!mends[i].edits.empty()) {
      found.with_fix({Fix::Kind::suggested, mends[i].text, mends[i].edits});
    }
  }
}

void report_too_fine(const blend::Grounding& grounding, language::KitchenId kitchen,
                     const std::vector<Breach>& breaches, Diagnostics& diagnostics) {
  const Tools tools = tools_of(grounding.program, kitchen);
  auto& found = diagnostics.report(
      Code::too_fine, grounding.framework.span,
      fmt::format("there is a plan, but not one that scales to {} can weigh inside every range",
                  weight_text(tools.scale_step)));
  std::string broken;
  for (const Breach& breach : breaches) broken += (broken.empty() ? "" : "; ") + breach.text;
  if (!broken.empty()) found.with_why("after rounding: " + broken);
  found.with_mend("make a larger batch, or use finer scales");
}

// Whether what is to boil away is in the pan when the method says so.
bool check_reduction(const blend::Grounding& grounding, const Solved& solved,
                     Diagnostics& diagnostics) {
  const language::Boilings boilings(grounding.framework);
  if (!boilings.settling()) return true;
  blend::Setting setting = solved.setting;
  setting.may_run_dry = true;
  setting.boiling.reset();
  const Solved dry = blend::solve_again(grounding, setting);
  if (dry.solution.status != blend::Status::optimal) return true;
  const auto pan = blend::pan_of(grounding, dry);
  if (pan || pan.error().what != science::runs_dry) return true;
  const language::Place place = boilings.settling_place();
  const auto& stages = grounding.framework.method.stages;
  if (place.stage >= stages.size()) return true;
  const auto in_grams = [](double kilograms) {
    constexpr double grams = 1000;
    return weight_text(Rational(std::lround(kilograms * grams)));
  };
  diagnostics
      .report(Code::boils_dry, stages[place.stage].steps[place.step].span,
              fmt::format("here {} would have to boil away, and of what is in the pan by then at "
                          "most {} can",
                          in_grams(pan.error().value), in_grams(pan.error().high)))
      .with_why("how far to boil down counts what goes in later as well")
      .with_mend("boil down in a later stage, when what holds the most water is in the pan");
  return false;
}

}  // namespace

Made make_plan(const language::Program& program, const Task& task, Diagnostics& diagnostics) {
  const language::Kitchen* kitchen = task.kitchen.valid() ? &program[task.kitchen] : nullptr;
  const blend::Grounding grounding{program, program[task.framework], program[task.basket], kitchen};
  Made made;
  const std::size_t before = diagnostics.all().size();
  if (!check_grounding(grounding, diagnostics)) {
    made.mends = find_mends(program, task, Misfit{});
    for (std::size_t i = before; i < diagnostics.all().size(); ++i) {
      Diagnostic& each = diagnostics.all()[i];
      if (each.code != Code::nothing_of_class || made.mends.empty()) continue;
      each.mends.clear();
      offer(made.mends, each);
      break;
    }
    return made;
  }
  if (task.aim.kind == AimKind::finished && !says_how_far(grounding.framework)) {
    diagnostics
        .report(Code::bad_aim, grounding.framework.span,
                "this framework does not say how far to boil down, so no finished weight follows")
        .with_mend("aim at prepared produce, for example `--aim \"3 kg prepared\"`")
        .with_mend("or add a limit such as `soluble solids 36 .. 46 %`");
    return made;
  }
  Attempt attempt = attempt_plan(grounding, task);
  const bool fits_nothing =
      attempt.outcome == Outcome::misfit || attempt.outcome == Outcome::nothing;
  if (fits_nothing && !check_reduction(grounding, attempt.solved, diagnostics)) return made;
  if (attempt.outcome == Outcome::planned) {
    if (!check_boiling(program, attempt.plan->verified.draft(), diagnostics)) return made;
    attempt.plan->use_up = what_would_use_up(grounding, task, attempt);
    attempt.plan->afternoon = plan_afternoon(program, attempt.plan->verified);
    const auto& liquor = attempt.plan->afternoon.liquor;
    if (liquor && !check_liquor(program, attempt.plan->verified, *liquor,
                                attempt.plan->afternoon.tested, diagnostics)) {
      return made;
    }
    report_kitchen(program, attempt.plan->verified, attempt.plan->afternoon, diagnostics);
    made.plan = std::move(attempt.plan);
    return made;
  }
  const bool asked_for_little =
      attempt.outcome == Outcome::nothing && task.aim.kind != AimKind::most;
  if (attempt.outcome == Outcome::too_fine || asked_for_little) {
    report_too_fine(grounding, task.kitchen, attempt.breaches, diagnostics);
    return made;
  }
  const Misfit misfit = find_misfit(grounding, task, attempt);
  made.mends = find_mends(program, task, misfit);
  const std::size_t first = diagnostics.all().size();
  report_misfit(grounding, task, misfit, made.mends, diagnostics);
  if (first < diagnostics.all().size()) offer(made.mends, diagnostics.all()[first]);
  return made;
}

}  // namespace maslin::plan
