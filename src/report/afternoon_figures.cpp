// SPDX-License-Identifier: Apache-2.0
#include "report/afternoon_figures.hpp"

#include <algorithm>
#include <map>

namespace maslin::report {
namespace {

Length middle_of(const Range<Length>& length) {
  return Length(middle({length.low.in_base(), length.high.in_base()}).round_to(1));
}

// Full ones first, then those that are not, largest first in both.
JarRow jar_row_of(const plan::JarPlan& plan) {
  std::vector<long> full(plan.sizes.size());
  std::map<std::pair<std::size_t, long>, long> part_filled;  // by size and ml
  for (const plan::FilledBoils& each : plan.boils) {
    const long boils = each.last - each.first + 1;
    for (std::size_t i = 0; i < each.filling.full.size(); ++i) {
      full[i] += boils * each.filling.full[i];
    }
    if (each.filling.part_size) {
      part_filled[{*each.filling.part_size, each.filling.part_ml}] += boils;
    }
  }
  JarRow row;
  const auto add = [&](std::size_t size, long count, long millilitres, bool part) {
    const Volume holds = plan.sizes[size].holds;
    row.jars.push_back(
        {holds, static_cast<int>(count), Rational(millilitres) / holds.in_base(), part});
  };
  for (std::size_t i = 0; i < full.size(); ++i) {
    if (full[i] > 0) add(i, full[i], plan.sizes[i].fill, false);
  }
  for (const auto& [jar, count] : part_filled) add(jar.first, count, jar.second, true);
  return row;
}

// From the last boil-up before the end of boiling down to that end, in a quick and in a slow
// kitchen.
std::optional<Range<Duration>> time_of(const plan::Afternoon& afternoon) {
  using What = plan::ClockMark::What;
  if (!afternoon.clock) return std::nullopt;
  std::optional<Range<Duration>> from;
  std::optional<Range<Duration>> time;
  for (const plan::ClockMark& mark : afternoon.clock->marks) {
    if (mark.what == What::at_the_boil) from = mark.at;
    const bool reduced =
        mark.what == What::boiled_down ||
        (mark.what == What::step_done &&
         afternoon.timeline[mark.stage].steps[mark.step].step->kind == language::StepKind::reduce);
    if (!reduced || !from) continue;
    time = {Duration(mark.at.low.in_base() - from->low.in_base()),
            Duration(mark.at.high.in_base() - from->high.in_base())};
  }
  return time;
}

}  // namespace

void add_afternoon_figures(const plan::Plan& plan, Sheet& sheet) {
  const plan::Afternoon& afternoon = plan.afternoon;
  const plan::Boils& boils = afternoon.boils;
  if (afternoon.jars) {
    JarRow row = jar_row_of(*afternoon.jars);
    if (!row.jars.empty()) sheet.jars = std::move(row);
  }
  if (boils.depths) {
    sheet.depth = DepthStrip{middle_of(boils.depths->start), middle_of(boils.depths->stop)};
  }
  if (!sheet.boiling_down || boils.too_many) return;
  sheet.boiling_down->time = time_of(afternoon);
  if (boils.count == 1 || !boils.stop) return;
  const Rational ingoing = sheet.boiling_down->ingoing.in_base() / Rational(boils.count);
  sheet.boiling_down->ingoing = IngoingMass(ingoing.round_to(1));
  sheet.boiling_down->stop = boils.stop->contents;
  if (sheet.boiling_down->window) sheet.boiling_down->window = boils.stop->window;
}

}  // namespace maslin::report
