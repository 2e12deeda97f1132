// SPDX-License-Identifier: Apache-2.0
#include "science/boiling_stages.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace maslin::science {
namespace {

Range<double> operator+(const Range<double>& a, const Range<double>& b) {
  return {a.low + b.low, a.high + b.high};
}

// Let T be all the water that ever goes in less what is boiled away so far, and W the part of it in
// the pan. A boiling that takes the share l of W leaves 1 - l of it, and 1 - l W / T of T. So of
// the water that is there from stage k on there stays in the end
//
//   T at the end / T before k, times (1 - l) / (1 - l W / T) for k and each stage after it.
//
// A factor is least when l is most and W / T least; where nothing goes in later, W is T and it
// is 1. Taking each at its worst bounds every course of events.
class AcidBounds {
 public:
  AcidBounds(const std::vector<BoilingStage>& stages, const std::optional<Settling>& settling,
             const Range<Volatility>& volatility)
      : stages_(stages), settling_(settling), volatility_(volatility) {}

  Computed<std::vector<Range<Share>>> run() {
    add_up();
    if (const auto error = boil()) return Failure{*error};
    kept_.assign(stages_.size(), {0, 1});
    // What is known of the acid that stays says more of the water, and the other way round.
    constexpr int rounds = 4;
    for (int round = 0; round < rounds; ++round) bound_acid();
    std::vector<Range<Share>> result;
    for (const Range<double>& each : kept_) result.push_back({Share(each.low), Share(each.high)});
    return result;
  }

 private:
  // Kilograms that go in before a stage.
  struct Entering {
    Range<double> water;  // alcohol too, as much of it as there may be
    Range<double> acid;
    double weight = 0;
    Range<double> solids;

    friend Entering operator+(const Entering& a, const Entering& b) {
      return {a.water + b.water, a.acid + b.acid, a.weight + b.weight, a.solids + b.solids};
    }
  };
  // What a stage comes to.
  struct Boiled {
    Range<double> lost;
    double share = 0;       // l at the most
    double in_the_pan = 1;  // W / T at the least
  };

  void add_up() {
    for (const BoilingStage& stage : stages_) {
      Entering each;
      if (stage.entering) {
        const Range<Kilogram> acid = (*stage.entering)[Substance::acetic_acid];
        const Range<Kilogram> away = volatiles(*stage.entering);
        const Range<Share> solids = soluble_solids(*stage.entering);
        const Kilogram mass = stage.entering->mass().high;
        each = {{(away.low - acid.low).in_unit(), (away.high - acid.high).in_unit()},
                {acid.low.in_unit(), acid.high.in_unit()},
                mass.in_unit(),
                {(solids.low * mass).in_unit(), (solids.high * mass).in_unit()}};
      }
      all_ = all_ + each;
      entering_.push_back(each);
    }
    if (settling_) to_lose_ = std::max(all_.weight - settling_->finished.in_unit(), 0.0);
  }

  // What has gone in, and what has boiled away, before a stage boils.
  struct Pan {
    Entering in;
    Range<double> lost{0, 0};
    double water = 0;  // that is there at the least

    Range<double> weight() const { return {in.weight - lost.high, in.weight - lost.low}; }
    double most_volatile() const { return in.water.high + in.acid.high - lost.low; }
  };

  Range<double> lost_in(std::size_t index, const Pan& pan) const {
    const BoilingStage& stage = stages_[index];
    const Range<double> weight = pan.weight();
    Range<double> lost{stage.loses.low.in_unit() * weight.low,
                       stage.loses.high.in_unit() * weight.high};
    if (stage.to_soluble_solids) {
      const double per_solids = 1 / stage.to_soluble_solids->in_unit();
      lost = {std::max(weight.low - pan.in.solids.high * per_solids, 0.0),
              std::max(weight.high - pan.in.solids.low * per_solids, 0.0)};
    }
    const double most = std::min(pan.most_volatile(), left_to_lose(pan).high);
    return {std::min(lost.low, most), std::min(lost.high, most)};
  }

  // After the settling stage the weight is known from the end backwards.
  std::vector<Range<double>> lost_after_settling() const {
    std::vector<Range<double>> lost(stages_.size(), {0, 0});
    double most_after = settling_->finished.in_unit();
    for (std::size_t i = stages_.size(); i-- > settling_->stage + 1;) {
      const double share = std::min(stages_[i].loses.high.in_unit(), 0.99);
      lost[i].high = std::min(std::max(most_after, 0.0) * share / (1 - share), to_lose_);
      most_after += lost[i].high - entering_[i].weight;
    }
    return lost;
  }

  Range<double> left_to_lose(const Pan& pan) const {
    return {std::max(to_lose_ - pan.lost.high, 0.0), std::max(to_lose_ - pan.lost.low, 0.0)};
  }

  std::optional<OutOfRange> boil() {
    std::vector<Range<double>> later(stages_.size(), {0, 0});
    double most_later = 0;
    if (settling_) {
      later = lost_after_settling();
      for (const Range<double>& each : later) most_later += each.high;
    }
    Pan pan;
    for (std::size_t i = 0; i < stages_.size(); ++i) {
      pan.in = pan.in + entering_[i];
      pan.water = std::max(pan.water + entering_[i].water.low, pan.in.water.low - pan.lost.high);
      Range<double> lost = later[i];
      if (settling_ && i == settling_->stage) {
        lost = left_to_lose(pan);
        lost.low = std::max(lost.low - most_later, 0.0);
        if (lost.low > pan.most_volatile()) {
          return OutOfRange{runs_dry, lost.low, 0, pan.most_volatile()};
        }
      } else if (!settling_ || i < settling_->stage) {
        lost = lost_in(i, pan);
      } else {
        lost.high = std::min(lost.high, stages_[i].loses.high.in_unit() * pan.weight().high);
      }
      lost.high = std::min(lost.high, pan.most_volatile());
      boiled_.push_back(boiled(pan, lost));
      pan.water = std::max(pan.water - lost.high, 0.0);
      pan.lost = pan.lost + lost;
      if (settling_) pan.lost.high = std::min(pan.lost.high, to_lose_);
    }
    return std::nullopt;
  }

  // Of less water the same is a greater part. Whatever was lost before, all together lose no more
  // than is missing; so much of so little is most while nothing is lost yet.
  Boiled boiled(const Pan& pan, const Range<double>& lost) const {
    const auto part = [](double of, double water) {
      if (!(of > 0)) return 0.0;
      return of < water ? of / water : 1.0;
    };
    Boiled result{lost, part(lost.high, pan.water), 1};
    if (settling_) {
      const double all_missing =
          part(left_to_lose(pan).high, std::max(pan.in.water.low - pan.lost.low, 0.0));
      result.share = std::min(result.share, all_missing);
    }
    const double later = all_.water.high - pan.in.water.high;
    if (later > a_drop) result.in_the_pan = pan.water / (pan.water + later);
    return result;
  }

  void bound_acid() {
    Range<double> acid{0, 0};  // that boils away in all
    for (std::size_t k = 0; k < stages_.size(); ++k) {
      acid.low += (1 - kept_[k].high) * entering_[k].acid.low;
      acid.high += (1 - kept_[k].low) * entering_[k].acid.high;
    }
    for (std::size_t k = 0; k < stages_.size(); ++k) {
      double lost_before_least = 0;  // of water: the rest may have been acid
      double lost_before_most = 0;
      for (std::size_t h = 0; h < k; ++h) {
        lost_before_least += boiled_[h].lost.low;
        lost_before_most += boiled_[h].lost.high;
      }
      lost_before_most = std::min(lost_before_most, to_lose_);
      lost_before_least = std::max(lost_before_least - acid.high, 0.0);
      Range<double> stays{1, 1};
      if (settling_) {
        const double least_left = all_.water.low - (to_lose_ - acid.low);
        const double most_left = all_.water.high - (to_lose_ - acid.high);
        stays = {least_left / std::max(all_.water.low - lost_before_least, a_drop),
                 most_left / std::max(all_.water.high - lost_before_most, a_drop)};
      }
      for (std::size_t h = k; h < stages_.size(); ++h) {
        const Boiled& boiled = boiled_[h];
        if (!settling_) {
          stays.low *= 1 - boiled.share;
        } else if (boiled.in_the_pan < 1) {
          stays.low *= (1 - boiled.share) / (1 - boiled.share * boiled.in_the_pan);
        }
      }
      const bool nothing_more =
          std::all_of(boiled_.begin() + static_cast<std::ptrdiff_t>(k), boiled_.end(),
                      [](const Boiled& each) { return !(each.lost.high > 0); });
      if (nothing_more) stays = {1, 1};
      kept_[k] = {std::max(kept_[k].low, to_acid(stays.low, volatility_.high)),
                  std::min(kept_[k].high, to_acid(stays.high, volatility_.low))};
    }
  }

  static double to_acid(double water_stays, Volatility volatility) {
    return std::pow(std::clamp(water_stays, 0.0, 1.0), volatility.in_unit());
  }

  static constexpr double a_drop = 1e-12;

  const std::vector<BoilingStage>& stages_;
  const std::optional<Settling>& settling_;
  const Range<Volatility>& volatility_;
  std::vector<Entering> entering_;
  Entering all_;
  double to_lose_ = std::numeric_limits<double>::infinity();
  std::vector<Boiled> boiled_;
  std::vector<Range<double>> kept_;
};

}  // namespace

Computed<std::vector<Range<Share>>> acid_kept_by_stage(const std::vector<BoilingStage>& stages,
                                                       const std::optional<Settling>& settling,
                                                       const Range<Volatility>& volatility) {
  for (const Volatility each : {volatility.low, volatility.high}) {
    if (const auto error = outside("volatility relative to water", each.in_unit(), 0, 2)) {
      return Failure{*error};
    }
  }
  return AcidBounds(stages, settling, volatility).run();
}

}  // namespace maslin::science
