// SPDX-License-Identifier: Apache-2.0
#include "report/vessel_lines.hpp"

#include <fmt/format.h>

#include "language/checks/checks.hpp"
#include "plan/volumes.hpp"
#include "plan/weights.hpp"

namespace maslin::report {
namespace {

// Of a vessel that something ferments in a quarter stays empty, for the gas that lifts it (common
// practice, no source).
const Rational left_free(Rational::Wide{1}, Rational::Wide{4});

std::string liquor_text(const plan::Liquor& liquor) {
  const auto grams = [](const Bounds& share) {
    const std::string low = (share.low * 100).to_decimal(2);
    const std::string high = (share.high * 100).to_decimal(2);
    return low == high ? low : low + " to " + high;
  };
  std::string text = fmt::format(
      "The liquor that covers it holds {} g of acetic acid in 100 g as it is poured, and the "
      "whole jar {} g once it has gone through.",
      grams(liquor.poured), grams(liquor.whole_jar));
  if (liquor.water.is_positive()) {
    text += fmt::format(" {} of the liquor is water poured in.", plan::percent_text(liquor.water));
  }
  return text;
}

// Divided among the jars by the room there is in each.
std::string for_each_jar(const plan::Liquor& liquor, const plan::JarPlan& jars) {
  Rational room;
  for (std::size_t i = 0; i < jars.sizes.size(); ++i) {
    room += Rational(jars.sizes[i].fill) * Rational(jars.used[i]);
  }
  std::string text;
  for (std::size_t i = 0; i < jars.sizes.size() && room.is_positive(); ++i) {
    if (jars.used[i] == 0) continue;
    const Rational grams =
        (liquor.weight.in_base() * Rational(jars.sizes[i].fill) / room).round_to(5);
    text += fmt::format("{}about {} into a jar of {} ml", text.empty() ? "" : ", ",
                        plan::weight_text(grams), jars.sizes[i].holds.in_base().to_decimal(0));
  }
  return text.empty() ? text : "Of the liquor goes " + text + ", and no piece stands out of it.";
}

std::string floor_text(const language::Program& program, const language::Framework& framework,
                       const plan::Liquor& liquor) {
  const auto floor = language::liquor_floor(program, framework);
  if (!floor) return {};
  const Rational& asked = floor->floor->acidity;
  const Rational margin = liquor.acidity.low - asked;
  const auto percent = [](const Rational& value) { return (value * 100).to_decimal(2) + " %"; };
  return fmt::format(
      "Before sugar and salt that is vinegar of {}; the route {} asks for {} of what covers a "
      "pack: {}.",
      percent(liquor.acidity.low), program[floor->claim->route].name, percent(asked),
      margin.is_negative() ? "tested with less, in these amounts alone"
                           : "margin " + percent(margin));
}

}  // namespace

void add_liquor_lines(const language::Program& program, const plan::Plan& plan, Section& part) {
  const auto& liquor = plan.afternoon.liquor;
  if (!liquor) return;
  const language::Framework& framework = program[plan.verified.draft().task.framework];
  part.points.push_back(liquor_text(*liquor));
  const auto add = [&](std::string text) {
    if (!text.empty()) part.points.push_back(std::move(text));
  };
  if (plan.afternoon.jars && !language::ferments(framework.method)) {
    add(for_each_jar(*liquor, *plan.afternoon.jars));
  }
  add(floor_text(program, framework, *liquor));
}

void add_vessel_line(const language::Program& program, const plan::Plan& plan, Section& part) {
  const plan::Draft& draft = plan.verified.draft();
  if (!language::ferments(program[draft.task.framework].method)) return;
  std::vector<plan::Item> items;
  for (const plan::TimelineStage& stage : plan.afternoon.timeline) {
    for (const plan::TimelineStep& step : stage.steps) {
      items.insert(items.end(), step.entering.begin(), step.entering.end());
    }
  }
  if (items.empty()) return;
  const Range<Volume> volume = plan::ingoing_volume(program, draft, items);
  const auto litres = [](const Rational& ml) { return (ml / Rational(1000)).to_decimal(1); };
  const Rational vessel = (volume.high.in_base() / (Rational(1) - left_free)).ceil_to(500);
  part.points.push_back(fmt::format(
      "It ferments in glass or stoneware of {} l or more: {} to {} l pressed down under its brine, "
      "and a quarter left free for the gas that lifts it.",
      litres(vessel), litres(volume.low.in_base()), litres(volume.high.in_base())));
}

}  // namespace maslin::report
