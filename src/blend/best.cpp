// SPDX-License-Identifier: Apache-2.0
#include "blend/best.hpp"

#include <algorithm>
#include <cmath>

#include "blend/layout.hpp"

namespace maslin::blend {
namespace {

constexpr std::size_t most_choices = 4;  // two to this power of programmes at the most

// Whether `a` is better than `b` under the objectives in their order.
bool better(const Solved& a, const Solved& b) {
  constexpr double tolerance = 1e-7;
  const auto& objectives = a.blend.program.objectives;
  for (std::size_t i = 0; i < objectives.size(); ++i) {
    const double first = a.solution.objective_values[i];
    const double second = b.solution.objective_values[i];
    if (std::abs(first - second) <= tolerance * (1 + std::abs(first))) continue;
    return (objectives[i].direction == Direction::maximise) == (first > second);
  }
  return false;
}

bool fits(const Solved& solved) { return solved.solution.status == Status::optimal; }

// ---- Boiling ------------------------------------------------------------------------------------

bool is_curved(const language::Limit& limit) { return is_computed(limit) && !is_linear(limit); }

// All that goes in.
struct Pan {
  std::vector<language::InPan> parts;
  double weight = 0;  // kg
  double water = 0;   // at the least
};

Pan in_the_pan(const Grounding& grounding, const Solved& solved) {
  Pan pan;
  for (ColumnIndex column = 0; column < solved.blend.columns.size(); ++column) {
    if (!is_weight(solved.blend, column)) continue;
    const double kilograms = solved.solution.columns[column];
    if (kilograms <= 0) continue;
    const ColumnInfo& info = solved.blend.columns[column];
    const language::Stuff stuff = stuff_of(solved.blend.supplies[info.supply]);
    pan.parts.push_back({stuff, Kilogram(kilograms), slot_of(info)});
    pan.weight += kilograms;
    const auto composition = composition_of(grounding.program, stuff);
    pan.water += kilograms * composition.or_none(science::Substance::water).low.to_double();
  }
  return pan;
}

bool meets_curved_limits(const Grounding& grounding, const language::Contents& pan) {
  // The programme holds its rows this nearly; the verifier judges the rounded plan by itself.
  constexpr double tolerance = 1e-6;
  const auto& limits = grounding.framework.limits;
  return std::all_of(limits.begin(), limits.end(), [&](const language::Limit& limit) {
    if (!is_curved(limit)) return true;
    const auto value = pan.value_of(limit);
    if (!value) return false;
    const double low = limit.range.low.to_double();
    const double high = limit.range.high.to_double();
    return (!limit.has_low || value->low >= low - tolerance * low) &&
           (!limit.has_high || value->high <= high + tolerance * high);
  });
}

// The least acid that is expected of what leaves the pan: where a limit has the pH, its row holds
// it there, however little acid there was before.
void expect_no_higher(const language::Framework& framework, Boiling& boiling) {
  for (const language::Limit& limit : framework.limits) {
    if (limit.property != language::Property::ph || !limit.has_high) continue;
    boiling.ph.high = std::min(boiling.ph.high, limit.range.high.to_double());
  }
}

// As sour as anything that is kept by its acid: what settles then is as sour. Else more acid is
// never tried, for what there was of it did not count.
void expect_sour(Boiling& boiling) {
  constexpr double line = 4.6;  // 21 CFR 114.3
  boiling.ph.high = std::min(boiling.ph.high, line);
}

// Solves with what came about before until it comes about. Nothing when it never does, or when
// nothing fits; `last` is then the latest programme.
std::optional<Solved> settle(const Grounding& grounding, Setting setting, Solved& last) {
  constexpr int most_rounds = 8;
  const double water_kept = setting.boiling ? setting.boiling->water_kept : 0;
  for (int round = 0; round < most_rounds; ++round) {
    if (!fits(last)) return std::nullopt;
    const auto pan = pan_of(grounding, last);
    if (!pan) return std::nullopt;
    if (meets_curved_limits(grounding, *pan)) return last;
    Boiling next = observed(grounding.framework, *pan);
    if (water_kept > 0) {
      // Never more than was counted on before, so that it comes to rest.
      next.water_kept = water_kept;
      for (std::size_t i = 0; i < next.acid_kept.size(); ++i) {
        double& low = next.acid_kept[i].share.low;
        low = std::min(low, setting.boiling->acid_kept[i].share.low);
      }
    }
    expect_no_higher(grounding.framework, next);
    setting.boiling = next;
    last = solve_again(grounding, setting);
  }
  return std::nullopt;
}

// How far to boil down where what came about does not settle: boiled down less far, more of the
// acid stays; boiled down further, less water is left free. One share of the water after another is
// asked to stay, and the programme that comes nearest is kept.
class HowFar {
 public:
  // `pan` is of a programme that has a solution.
  HowFar(const Grounding& grounding, Solved begin, Pan pan)
      : grounding_(grounding),
        pan_(std::move(pan)),
        begin_(*begin.setting.boiling),
        setting_(begin.setting) {
    missing_ = fits(begin) ? infinity : relax(begin.blend.program).total;
    expect_sour(begin_);
    came_about_ = std::max(begin_.volatiles_kept, 1e-3);
    nearest_ = std::move(begin);
    nearest_at_ = came_about_;
  }

  Solved run() {
    constexpr int steps = 8;
    for (int step = 1; step <= steps && !settled_; ++step) {
      try_at(came_about_ + (1 - came_about_) * step / steps);
    }
    const auto& limits = grounding_.framework.limits;
    const bool may_want_less = std::any_of(limits.begin(), limits.end(), [](const auto& limit) {
      return limit.property == language::Property::water_activity;
    });
    for (int step = steps - 1; may_want_less && step >= 1 && !settled_; --step) {
      try_at(came_about_ * step / steps);
    }
    // What is missed grows to both sides of one place, so what fits lies beside the nearest.
    constexpr double fine = 1.0 / 40;
    const double middle = nearest_at_;
    for (const int step : {-1, 1, -2, 2, -3, 3}) {
      const double at = middle + step * fine;
      if (!settled_ && at > 0 && at < 1) try_at(at);
    }
    return std::move(nearest_);
  }

 private:
  void try_at(double water_kept) {
    const auto boiling = boiled_to(water_kept);
    if (!boiling) return;
    setting_.boiling = *boiling;
    Solved candidate = solve_again(grounding_, setting_);
    if (auto settled = settle(grounding_, setting_, candidate)) {
      nearest_ = std::move(*settled);
      settled_ = true;
      return;
    }
    if (fits(candidate)) return;
    const double total = relax(candidate.blend.program).total;
    if (total >= missing_) return;
    missing_ = total;
    nearest_ = std::move(candidate);
    nearest_at_ = water_kept;
  }

  // What it would come to if the same were boiled down so far.
  std::optional<Boiling> boiled_to(double water_kept) const {
    const double away = (1 - water_kept) * pan_.water;
    const auto pan = language::Contents::of(grounding_.program, grounding_.framework, pan_.parts,
                                            Kilogram(pan_.weight - away));
    if (!pan) return std::nullopt;
    Boiling boiling = observed(grounding_.framework, *pan);
    boiling.water_kept = water_kept;
    for (KeptAcid& each : boiling.acid_kept) each.share.high = 1;
    boiling.ph = begin_.ph;
    return boiling;
  }

  const Grounding& grounding_;
  Pan pan_;
  Boiling begin_;
  Setting setting_;
  double came_about_ = 1;  // share of the water that stayed
  double missing_ = infinity;
  Solved nearest_;
  double nearest_at_ = 1;
  bool settled_ = false;
};

Solved solve_boiled(const Grounding& grounding, const Setting& setting) {
  Solved last = solve_again(grounding, setting);
  const auto& limits = grounding.framework.limits;
  if (!std::any_of(limits.begin(), limits.end(), is_curved) || !fits(last)) return last;
  Pan pan = in_the_pan(grounding, last);
  if (auto settled = settle(grounding, setting, last)) return std::move(*settled);
  // Of a pan with nothing in it nothing came about.
  if (!last.setting.boiling) return last;
  if (!last.blend.evaporated) {
    Setting sour = last.setting;
    expect_sour(*sour.boiling);
    Solved candidate = solve_again(grounding, sour);
    auto settled = settle(grounding, sour, candidate);
    return settled ? std::move(*settled) : last;
  }
  return HowFar(grounding, std::move(last), std::move(pan)).run();
}

}  // namespace

science::Computed<language::Contents> pan_of(const Grounding& grounding, const Solved& solved) {
  const Pan pan = in_the_pan(grounding, solved);
  std::optional<Kilogram> finished;
  if (solved.blend.evaporated) {
    finished = Kilogram(pan.weight - solved.solution.columns[*solved.blend.evaporated]);
  }
  return language::Contents::of(grounding.program, grounding.framework, pan.parts, finished);
}

Solved solve_again(const Grounding& grounding, const Setting& setting) {
  Solved solved;
  solved.setting = setting;
  solved.blend = ground(grounding, setting);
  solved.solution = solve(solved.blend.program);
  return solved;
}

Solved solve_best(const Grounding& grounding, const Setting& setting) {
  Solved best = solve_boiled(grounding, setting);
  const std::size_t full = std::min(best.blend.full_substitutions, most_choices);
  for (std::size_t choice = 1; choice < (std::size_t{1} << full); ++choice) {
    Setting other = setting;
    other.at_cap.assign(best.blend.full_substitutions, false);
    for (std::size_t i = 0; i < full; ++i) other.at_cap[i] = ((choice >> i) & 1) != 0;
    Solved candidate = solve_boiled(grounding, other);
    const bool take = fits(candidate) && (!fits(best) || better(candidate, best));
    if (take) best = std::move(candidate);
  }
  return best;
}

}  // namespace maslin::blend
