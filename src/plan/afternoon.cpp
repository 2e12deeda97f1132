// SPDX-License-Identifier: Apache-2.0
#include "plan/afternoon.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "language/amounts.hpp"
#include "language/checks/checks.hpp"
#include "language/recipe.hpp"
#include "plan/filling.hpp"
#include "plan/weights.hpp"
#include "science/boiling.hpp"

namespace maslin::plan {
namespace {

// More boils in a row than this are no afternoon (common practice, no source).
constexpr long many_boils = 8;

const language::Kitchen* kitchen_of(const language::Program& program, const VerifiedPlan& plan) {
  const auto id = plan.draft().task.kitchen;
  return id.valid() ? &program[id] : nullptr;
}

// Those that were asked for, else those of the kitchen.
std::vector<language::JarStock> jars_of(const language::Program& program,
                                        const VerifiedPlan& plan) {
  const auto& asked = plan.draft().task.jars;
  const language::Kitchen* kitchen = kitchen_of(program, plan);
  if (!asked.empty() || kitchen == nullptr) return asked;
  return kitchen->jars;
}

// A jam's thermometer, to half a degree outwards.
std::optional<Range<Temperature>> set_at(const language::Method& method, const Height& height) {
  if (!is_boiled_to_a_set(method)) return std::nullopt;
  const auto solids = solids_at_the_end(method);
  const auto set =
      science::setting_point(Metre(height.altitude.to_double() / 1000), Share(solids->to_double()));
  if (!set) return std::nullopt;
  const auto halves = [](double value) {
    return Temperature(Rational(Rational::Wide{static_cast<long>(value)}, Rational::Wide{2}));
  };
  return Range<Temperature>{halves(std::floor(set.value().low.in_unit() * 2)),
                            halves(std::ceil(set.value().high.in_unit() * 2))};
}

// The name of something in the plan that is acid; empty where nothing is.
std::string acid_in(const language::Program& program, const Draft& draft) {
  const Rational sour(Rational::Wide{45}, Rational::Wide{10});  // pH: the law's line, the stricter
  for (const TakenId& id : all_taken(draft)) {
    const Taken& taken = taken_of(draft, id);
    const language::Ingredient& ingredient = program[taken.ingredient];
    if (is_acid_donor(program, {taken.ingredient, taken.acidity}) ||
        (ingredient.ph && ingredient.ph->value.low < sour)) {
      return ingredient.name;
    }
  }
  return {};
}

void report_pan(const language::Program& program, const VerifiedPlan& plan, const Boils& boils,
                Diagnostics& diagnostics) {
  const language::Kitchen* kitchen = kitchen_of(program, plan);
  if (kitchen == nullptr || !kitchen->pan) return;
  const auto& method = program[plan.draft().task.framework].method;
  const std::string acid = acid_in(program, plan.draft());
  if (kitchen->pan->reacts_with_acid && !acid.empty() && is_heated(method)) {
    diagnostics
        .report(
            Code::reactive_pan, kitchen->pan->span,
            fmt::format("{} is acid, and would be boiled in bare {}", acid, kitchen->pan->material))
        .with_why("acid takes up the metal: it taints what is in the pan, and some of it is poison")
        .with_mend("use a pan of stainless steel, of whole enamel, or lined");
  }
  if (!boils.too_many && boils.count <= many_boils) return;
  auto& found = diagnostics.report(
      Code::pan_too_small, kitchen->pan->span,
      boils.too_many
          ? fmt::format("this would be more than {} boils in this pan", most_boils)
          : fmt::format("this would be {} boils in this pan, one after another", boils.count));
  found.with_why(
      fmt::format("what waits to be boiled does not get better, and at the start a pan may be no "
                  "more than {} full",
                  percent_text(boils.fill)));
  found.with_mend("boil in a larger pan, or make a smaller batch: `--aim \"3 kg prepared\"`");
}

void report_misses(const language::Program& program, const VerifiedPlan& plan,
                   const std::vector<BoilMiss>& misses, Diagnostics& diagnostics) {
  const language::Framework& framework = program[plan.draft().task.framework];
  for (const BoilMiss& miss : misses) {
    if (!miss.breaks_limit) continue;
    diagnostics
        .report(Code::boil_misses_limit, span_of(framework, miss),
                fmt::format("boil {} would be {} points outside this limit", miss.boil,
                            (miss.by * 100)
                                .ceil_to(Rational(Rational::Wide{1}, Rational::Wide{100}))
                                .to_decimal(2)))
        .with_because(kitchen_of(program, plan)->pan->span, "in this pan")
        .with_why(
            "the whole is inside, but these scales cannot divide it evenly enough; each boil "
            "keeps or spoils by itself")
        .with_mend("boil it in one larger pan, or weigh with finer scales");
  }
}

void report_no_jars(const language::Kitchen& kitchen, const language::Filling& filling,
                    Diagnostics& diagnostics) {
  diagnostics
      .report(Code::no_jars, kitchen.span, "the method fills jars, and this kitchen says of none")
      .with_because(filling.span, "filled here")
      .with_mend("write how many there are of which size: `jars 24 of 282 ml, 6 of 720 ml`");
}

// Jars that are asked for must be there.
void report_missing(const language::Kitchen& kitchen, const std::vector<JarSize>& asked,
                    Diagnostics& diagnostics) {
  if (kitchen.jars.empty()) return;
  const auto there = jar_sizes(kitchen.jars, Length());
  for (const JarSize& size : asked) {
    long count = 0;
    for (const JarSize& each : there) count += each.holds == size.holds ? each.count : 0;
    if (count >= size.count) continue;
    diagnostics
        .report(Code::jars_too_few, kitchen.jars.front().span,
                fmt::format("{} jars of {} ml are to be filled, and this kitchen has {}",
                            size.count, size.holds.in_base().to_decimal(0), count))
        .with_mend("fill those that are there, or write the others into the kitchen");
  }
}

void report_jars(const language::Program& program, const VerifiedPlan& plan,
                 const Afternoon& afternoon, Diagnostics& diagnostics) {
  const language::Kitchen* kitchen = kitchen_of(program, plan);
  if (kitchen == nullptr) return;
  const auto& method = program[plan.draft().task.framework].method;
  if (!afternoon.jars) {
    if (method.filling && kitchen->jars.empty()) {
      report_no_jars(*kitchen, *method.filling, diagnostics);
    }
    return;
  }
  if (!plan.draft().task.jars.empty()) {
    report_missing(*kitchen, afternoon.jars->sizes, diagnostics);
  }
  if (afternoon.jars->left_ml == 0) return;
  auto& found = diagnostics.report(
      Code::jars_too_few, kitchen->jars.front().span,
      fmt::format("the jars are too few by about {} ml", afternoon.jars->left_ml));
  for (std::size_t i = 1; i < kitchen->jars.size(); ++i) {
    found.with_because(kitchen->jars[i].span, "and these");
  }
  found.with_why("what is hot and has no jar cools down in the pan");
  found.with_mend("have more jars ready, or make a smaller batch");
}

}  // namespace

Headspace headspace_of(const language::Program& program, const language::Framework& framework) {
  const language::Method& method = framework.method;
  if (method.filling && method.filling->headspace) return {*method.filling->headspace, false};
  Length height = is_boiled_to_a_set(method) ? headspace_of_jam : usual_headspace;
  for (const language::RouteClaim& claim : framework.routes) {
    const language::Route& route = program[claim.route];
    const language::Recipe* recipe = recipe_for(route, claim.product);
    if (recipe != nullptr && recipe->headspace) return {*recipe->headspace, true};
    if (!route.headspace) continue;
    height = std::clamp(height, route.headspace->range.low, route.headspace->range.high);
  }
  return {height, true};
}

Range<Volume> expected_volume(const language::Program& program, const VerifiedPlan& plan,
                              const Course& course) {
  const Range<Volume> hot = hot_volume(solids_in(program, plan.draft()), course.finish);
  return {hot.low * (Rational(1) - sticks), hot.high};
}

Afternoon plan_afternoon(const language::Program& program, const VerifiedPlan& plan) {
  Afternoon afternoon;
  const language::Kitchen* kitchen = kitchen_of(program, plan);
  const language::Method& method = program[plan.draft().task.framework].method;
  afternoon.timeline = make_timeline(program, plan);
  afternoon.saltings = saltings_of(plan.draft(), afternoon.timeline);
  afternoon.course = make_course(program, plan, afternoon.timeline);
  afternoon.boils = make_boils(program, plan, afternoon.timeline, afternoon.course);
  afternoon.misses = missed_by_boils(program, plan.draft(), afternoon.boils);
  afternoon.liquor = liquor_of(program, plan, afternoon.timeline);
  afternoon.height = height_of(kitchen);
  if (afternoon.height) afternoon.set = set_at(method, *afternoon.height);
  const bool fills = method.filling.has_value() || !method.is_stated();
  auto stock = jars_of(program, plan);
  afternoon.tested = judge_tested(program, plan, stock);
  if (!stock.empty() && fills && !afternoon.boils.too_many) {
    const Rational boils(afternoon.boils.count);
    const Range<Volume> whole = expected_volume(program, plan, afternoon.course);
    afternoon.jars = plan_jars(stock, headspace_of(program, program[plan.draft().task.framework]),
                               {whole.low / boils, whole.high / boils}, afternoon.boils.count);
  }
  afternoon.clock = make_clock(program, plan, afternoon.timeline, afternoon.course, afternoon.boils,
                               afternoon.jars);
  return afternoon;
}

void report_kitchen(const language::Program& program, const VerifiedPlan& plan,
                    const Afternoon& afternoon, Diagnostics& diagnostics) {
  report_pan(program, plan, afternoon.boils, diagnostics);
  report_misses(program, plan, afternoon.misses, diagnostics);
  report_jars(program, plan, afternoon, diagnostics);
  if (afternoon.liquor) report_cover(program, plan, *afternoon.liquor, diagnostics);
  report_filling_heat(program, plan, afternoon.height, diagnostics);
  if (afternoon.tested) report_tested(program, plan, *afternoon.tested, diagnostics);
}

bool check_boiling(const language::Program& program, const Draft& draft, Diagnostics& diagnostics) {
  const language::Framework& framework = program[draft.task.framework];
  if (!framework.method.is_stated()) return true;
  bool good = true;
  for (const TakenId& id : all_taken(draft)) {
    const Taken& taken = taken_of(draft, id);
    const language::Ingredient& ingredient = program[taken.ingredient];
    if (!is_unsafe_raw(ingredient) || !taken.weight.is_positive()) continue;
    language::Slot slot{id.list, taken.slot};
    if (id.list == language::SlotKind::substitute) {
      slot = {language::SlotKind::addition, framework.substitutions[taken.slot].addition};
    }
    if (language::boiled_for(framework, slot) >= ingredient.boil_first) continue;
    auto& found = diagnostics.report(
        Code::unboiled, language::target_of(framework, slot).span,
        fmt::format("{} is taken for `{}`, and the method does not boil it long enough",
                    ingredient.name, language::target_of(framework, slot).name));
    language::explain_boiling(framework, slot, ingredient, found);
    good = false;
  }
  return good;
}

}  // namespace maslin::plan
