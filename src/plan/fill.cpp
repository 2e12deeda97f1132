// SPDX-License-Identifier: Apache-2.0
#include "plan/fill.hpp"

#include <algorithm>

namespace maslin::plan {
namespace {

// A little more than the jars take, so that the last one is full too.
const Bounds near_enough{Rational(1), 1 + tasted};

Rational expected(const language::Program& program, const Plan& plan) {
  const Range<Volume> volume = expected_volume(program, plan.verified, plan.afternoon.course);
  return middle({volume.low.in_base(), volume.high.in_base()});
}

// As much more or less as the jars take more or less than what was planned, up to the next weight
// of the scales.
Rational scaled(const language::Program& program, const Task& task, const Plan& plan,
                const Rational& wanted) {
  const Rational step = tools_of(program, task.kitchen).scale_step;
  const Rational prepared = plan.verified.prepared_total().in_base();
  return (prepared * wanted * middle(near_enough) / expected(program, plan)).ceil_to(step);
}

// What so many equal boils fill of these jars to the brim: a jar that two boils would share stays
// empty.
Rational room_for_boils(const language::Program& program, const Task& task, const Rational& room,
                        long boils) {
  const language::Framework& framework = program[task.framework];
  const Rational hundredth(Rational::Wide{1}, Rational::Wide{100});
  for (Rational part(1); part.is_positive(); part -= hundredth) {
    const Volume each(room * part / Rational(boils));
    const JarPlan jars =
        plan_jars(task.jars, headspace_of(program, framework), {each, each}, boils);
    const bool all_full = std::none_of(jars.boils.begin(), jars.boils.end(), [](const auto& each) {
      return each.filling.part_size.has_value();
    });
    if (jars.left_ml > 0 || !all_full) continue;
    long filled = 0;
    for (std::size_t i = 0; i < jars.sizes.size(); ++i) filled += jars.used[i] * jars.sizes[i].fill;
    return Rational(filled);
  }
  return room;
}

}  // namespace

Volume room_in(const language::Program& program, const language::Framework& framework,
               const std::vector<language::JarStock>& jars) {
  const Length headspace = headspace_of(program, framework).height;
  long sum = 0;
  for (const JarSize& size : jar_sizes(jars, headspace)) sum += size.fill * size.count;
  return Volume(Rational(sum));
}

Aim aim_to_fill(const language::Program& program, const Task& task) {
  const language::Framework& framework = program[task.framework];
  const Rational room = room_in(program, framework, task.jars).in_base();
  Rational wanted = room;
  Task trial = task;
  trial.aim = Aim{};
  trial.jars.clear();  // volumes do not depend on them, and a mend sought for them would ask here
  // Volume goes by the weight of the batch as long as the mix stays the same; twice is near enough.
  constexpr int tries = 5;
  for (int i = 0; i < tries; ++i) {
    Diagnostics unheard;
    const Made made = make_plan(program, trial, unheard);
    if (!made.plan) return trial.aim;
    const Boils& boils = made.plan->afternoon.boils;
    if (trial.aim.kind == AimKind::prepared && boils.count > 1 && !boils.too_many) {
      wanted = room_for_boils(program, task, room, boils.count);
    }
    const Rational reached = expected(program, *made.plan) / wanted;
    if (trial.aim.kind == AimKind::prepared && near_enough.contains(reached)) break;
    trial.aim = {AimKind::prepared, scaled(program, task, *made.plan, wanted)};
  }
  return trial.aim;
}

}  // namespace maslin::plan
