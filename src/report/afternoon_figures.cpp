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

struct LastReduction {
  std::size_t stage = 0;
  std::size_t step = 0;
};

std::optional<LastReduction> last_reduction(const plan::Timeline& timeline) {
  for (std::size_t i = timeline.size(); i-- > 0;) {
    for (std::size_t j = timeline[i].steps.size(); j-- > 0;) {
      if (timeline[i].steps[j].step->kind == language::StepKind::reduce) return {{i, j}};
    }
  }
  return std::nullopt;
}

// In the pan when it begins, of the whole batch.
Range<Mass> before(const plan::Afternoon& afternoon, const LastReduction& last) {
  if (last.step > 0) return afternoon.course.after[last.stage][last.step - 1];
  for (std::size_t i = last.stage; i-- > 0;) {
    if (!afternoon.course.after[i].empty()) return afternoon.course.after[i].back();
  }
  return {};
}

// How long it takes, in a quick and in a slow kitchen: from the mark before its own.
std::optional<Range<Duration>> time_of(const plan::Afternoon& afternoon,
                                       const std::optional<LastReduction>& last) {
  using What = plan::ClockMark::What;
  if (!afternoon.clock) return std::nullopt;
  Range<Duration> from;
  for (const plan::ClockMark& mark : afternoon.clock->marks) {
    const bool done =
        last ? mark.what == What::step_done && mark.stage == last->stage && mark.step == last->step
             : mark.what == What::boiled_down;
    if (done) {
      return Range<Duration>{Duration(mark.at.low.in_base() - from.low.in_base()),
                             Duration(mark.at.high.in_base() - from.high.in_base())};
    }
    from = mark.at;
  }
  return std::nullopt;
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
  BoilingDown& drawn = *sheet.boiling_down;
  const auto last = last_reduction(afternoon.timeline);
  drawn.time = time_of(afternoon, last);
  const Rational count(boils.count);
  const auto each = [&](const auto& mass) {
    return IngoingMass((mass.in_base() / count).round_to(Rational(1)));
  };
  if (last) {
    const Range<Mass> weight = before(afternoon, *last);
    drawn.from = {each(weight.low), each(weight.high)};
  } else {
    drawn.from = {each(drawn.from.low), each(drawn.from.high)};
  }
  if (boils.count == 1 || !boils.stop) return;
  drawn.stop = boils.stop->contents;
  if (drawn.window) drawn.window = boils.stop->window;
}

}  // namespace maslin::report
