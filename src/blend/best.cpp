// SPDX-License-Identifier: Apache-2.0
#include "blend/best.hpp"

#include <algorithm>
#include <cmath>

#include "blend/layout.hpp"
#include "science/evaporation.hpp"

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

std::optional<language::Contents> pan_of(const Grounding& grounding, const Solved& solved) {
  std::vector<language::InPan> parts;
  double ingoing = 0;
  for (ColumnIndex column = 0; column < solved.blend.columns.size(); ++column) {
    if (!is_weight(solved.blend, column)) continue;
    const double kilograms = solved.solution.columns[column];
    if (kilograms <= 0) continue;
    const Supply& supply = solved.blend.supplies[solved.blend.columns[column].supply];
    parts.push_back({stuff_of(supply), Kilogram(kilograms)});
    ingoing += kilograms;
  }
  std::optional<Kilogram> finished;
  if (solved.blend.evaporated) {
    finished = Kilogram(ingoing - solved.solution.columns[*solved.blend.evaporated]);
  }
  auto pan = language::Contents::of(grounding.program, parts, finished);
  if (!pan) return std::nullopt;
  return std::move(pan.value());
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
    Boiling next = observed(*pan);
    if (water_kept > 0) {
      next.water_kept = water_kept;
      next.acid_kept.low = setting.boiling->acid_kept.low;
    }
    setting.boiling = next;
    last = solve_again(grounding, setting);
  }
  return std::nullopt;
}

// Boiled down less far, more of the acid stays: from what came about up to nothing boiled off, the
// first that fits. Where none does, the one that comes nearest.
Solved solve_boiled_less(const Grounding& grounding, Setting setting, Solved nearest) {
  constexpr int steps = 8;
  double missing = fits(nearest) ? infinity : relax(nearest.blend.program).total;
  const Boiling begin = *setting.boiling;
  const double volatility = science::acetic_acid_unfavourable.in_unit();
  const double least = std::pow(std::max(begin.acid_kept.low, 1e-3), 1 / volatility);
  for (int step = 1; step <= steps; ++step) {
    Boiling boiling = begin;
    boiling.water_kept = least + (1 - least) * step / steps;
    boiling.acid_kept.low = std::pow(boiling.water_kept, volatility);
    boiling.acid_kept.high = 1;
    setting.boiling = boiling;
    Solved candidate = solve_again(grounding, setting);
    if (auto settled = settle(grounding, setting, candidate)) return std::move(*settled);
    if (fits(candidate)) continue;
    const double total = relax(candidate.blend.program).total;
    if (total < missing) {
      missing = total;
      nearest = std::move(candidate);
    }
  }
  return nearest;
}

Solved solve_boiled(const Grounding& grounding, const Setting& setting) {
  Solved last = solve_again(grounding, setting);
  const auto& limits = grounding.framework.limits;
  if (!std::any_of(limits.begin(), limits.end(), is_curved) || !fits(last)) return last;
  if (auto settled = settle(grounding, setting, last)) return std::move(*settled);
  if (!last.blend.evaporated) return last;
  const Setting setting_before = last.setting;
  return solve_boiled_less(grounding, setting_before, std::move(last));
}

}  // namespace

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
