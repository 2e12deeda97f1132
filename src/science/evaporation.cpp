// SPDX-License-Identifier: Apache-2.0
#include "science/evaporation.hpp"

#include <algorithm>
#include <cmath>

#include "science/bisection.hpp"

namespace maslin::science {
namespace {

// All that boils away, before and after.
struct Volatiles {
  Kilogram before{};
  Kilogram after{};
};

// With the fewest readings in favour, and with the most.
struct Ends {
  Volatiles low;
  Volatiles high;
  Range<Kilogram> finished;
};

std::optional<OutOfRange> bad_volatility(Volatility volatility) {
  return outside("volatility relative to water", volatility.in_unit(), 0, 2);
}

// Share of the water left, r, when water and acid together come down to `after`:
// r (before - acid) + acid r^v = after. Rises from none to all with r.
double water_left(const Volatiles& volatiles, Kilogram acid, Volatility volatility) {
  if (volatiles.after >= volatiles.before) return 1;
  const Kilogram water = volatiles.before - acid;
  const auto too_much = [&](double r) {
    return (r * water + std::pow(r, volatility.in_unit()) * acid - volatiles.after).in_unit();
  };
  return crossing(0, 1, too_much).value_or(0);
}

std::optional<OutOfRange> bad_ends(const Mixture& mixture, const Ends& ends) {
  const Kilogram most = mixture.mass().high;
  if (!(ends.low.after > Kilogram(0))) {
    return OutOfRange{"finished weight, kg", ends.finished.low.in_unit(),
                      (most - ends.low.before).in_unit(), most.in_unit()};
  }
  // Less than a millionth to boil away is rounding.
  if (!(ends.low.after < ends.low.before * (1 - 1e-6))) {
    return OutOfRange{"finished weight, kg", ends.finished.low.in_unit(), 0,
                      mixture.mass().low.in_unit()};
  }
  return std::nullopt;
}

Reduction left_of(const Mixture& mixture, const Ends& ends, const Range<Share>& acid_kept) {
  const Range<Kilogram> acid = mixture[Substance::acetic_acid];
  const Range<Kilogram> finished{ends.finished.low,
                                 std::min(ends.finished.high, mixture.mass().high)};
  const Kilogram high_after = std::min(ends.high.after, ends.high.before);
  const BoiledDown boiled{{std::max(ends.low.after - acid_kept.high * acid.high, Kilogram(0)),
                           high_after - acid_kept.low * acid.low},
                          acid_kept,
                          finished};
  return Reduction{{std::max(mixture.mass().low - finished.high, Kilogram(0)),
                    mixture.mass().high - finished.low},
                   acid_kept,
                   mixture.after(boiled)};
}

// Less water left takes more acid along, and so does more volatility; more acid leaves less room
// for water.
Computed<Reduction> reduced(const Mixture& mixture, const Ends& ends,
                            const Range<Volatility>& volatility) {
  for (const Volatility each : {volatility.low, volatility.high}) {
    if (const auto error = bad_volatility(each)) return Failure{*error};
  }
  if (const auto error = bad_ends(mixture, ends)) return Failure{*error};
  const Range<Kilogram> acid = mixture[Substance::acetic_acid];
  const auto kept = [](const Volatiles& volatiles, Kilogram of_acid, Volatility v) {
    return Share(std::pow(water_left(volatiles, of_acid, v), v.in_unit()));
  };
  return left_of(
      mixture, ends,
      {kept(ends.low, acid.high, volatility.high), kept(ends.high, acid.low, volatility.low)});
}

Ends down_to(const Mixture& mixture, Kilogram finished) {
  const Range<Kilogram> before = volatiles(mixture);
  const Range<Kilogram> mass = mixture.mass();
  return {{before.low, before.low - (mass.high - finished)},
          {before.high, before.high - (mass.low - finished)},
          Range<Kilogram>::exactly(finished)};
}

std::optional<OutOfRange> bad_target(Share target) {
  return outside("solids aimed at, kg per kg", target.in_unit(), 0.001, 0.999);
}

}  // namespace

Computed<Share> acid_kept(Kilogram before, Kilogram after, Volatility volatility) {
  if (const auto error = bad_volatility(volatility)) return Failure{*error};
  if (!(before > Kilogram(0))) {
    return Failure{OutOfRange{"water before, kg", before.in_unit(), 0.000'001, 100'000}};
  }
  if (const auto error = outside("water after, kg", after.in_unit(), 0, before.in_unit())) {
    return Failure{*error};
  }
  return Share(std::pow(after / before, volatility.in_unit()));
}

Computed<Reduction> reduce_to_total_solids(const Mixture& mixture, Share target,
                                           const Range<Volatility>& volatility) {
  if (const auto error = bad_target(target)) return Failure{*error};
  const Range<Kilogram> before = volatiles(mixture);
  const Range<Kilogram> solids{std::max(mixture.mass().low - before.high, Kilogram(0)),
                               mixture.mass().high - before.low};
  const double per_solids = 1 / target.in_unit();
  const Ends ends{{before.high, solids.low * (per_solids - 1)},
                  {before.low, solids.high * (per_solids - 1)},
                  solids * per_solids};
  return reduced(mixture, ends, volatility);
}

Computed<Reduction> reduce_to_soluble_solids(const Mixture& mixture, Share target,
                                             const Range<Volatility>& volatility) {
  if (const auto error = bad_target(target)) return Failure{*error};
  const Range<Kilogram> before = volatiles(mixture);
  const Range<Share> share = soluble_solids(mixture);
  const Range<Kilogram> mass = mixture.mass();
  const Range<Kilogram> finished{share.low * mass.low * (1 / target.in_unit()),
                                 share.high * mass.high * (1 / target.in_unit())};
  const Ends ends{{before.low, before.low - (mass.high - finished.low)},
                  {before.high, before.high - (mass.low - finished.high)},
                  finished};
  return reduced(mixture, ends, volatility);
}

Computed<Reduction> reduce_to_weight(const Mixture& mixture, Kilogram finished,
                                     const Range<Volatility>& volatility) {
  return reduced(mixture, down_to(mixture, finished), volatility);
}

Computed<Reduction> reduced_with(const Mixture& mixture, Kilogram finished,
                                 const Range<Share>& acid_kept) {
  const Ends ends = down_to(mixture, finished);
  if (const auto error = bad_ends(mixture, ends)) return Failure{*error};
  return left_of(mixture, ends, acid_kept);
}

Computed<KilojoulePerKilogram> latent_heat(Celsius boiling_point) {
  const double t = boiling_point.in_unit();
  if (const auto error = outside("boiling point, °C", t, 85, 110)) return Failure{*error};
  constexpr double at_85 = 2295.4;
  constexpr double at_100 = 2256.5;
  constexpr double at_110 = 2229.7;
  return KilojoulePerKilogram(t < 100 ? at_100 + (at_85 - at_100) * (100 - t) / 15
                                      : at_100 + (at_110 - at_100) * (t - 100) / 10);
}

Range<Share> efficiency(Hob hob) {
  switch (hob) {
    case Hob::induction:
      return {Share(0.80), Share(0.90)};
    case Hob::electric:
      return {Share(0.70), Share(0.80)};
    case Hob::gas:
      break;
  }
  return {Share(0.25), Share(0.50)};
}

Computed<Range<Minute>> evaporation_time(Kilogram water, const Range<Kilowatt>& net_power,
                                         Celsius boiling_point) {
  const auto heat = latent_heat(boiling_point);
  if (!heat) return Failure{heat.error()};
  constexpr double seconds_per_hour = 3600;
  const auto rate = [&](Kilowatt power) {
    return KilogramPerHour(power.in_unit() * seconds_per_hour / heat->in_unit());
  };
  for (const Kilowatt each : {net_power.low, net_power.high}) {
    if (const auto error = outside("net power, kW", each.in_unit(), 0.01, 100)) {
      return Failure{*error};
    }
  }
  return evaporation_time(water, Range<KilogramPerHour>{rate(net_power.low), rate(net_power.high)});
}

Computed<Range<KilogramPerHour>> calibrated_rate(const Weighing& weighing) {
  const double minutes = weighing.between.in_unit();
  if (const auto error = outside("time between weighings, min", minutes, 1, 600)) {
    return Failure{*error};
  }
  if (const auto error = outside("step of the scales, kg", weighing.scale_step.in_unit(), 0, 1)) {
    return Failure{*error};
  }
  const Kilogram lost = weighing.before - weighing.after;
  const Kilogram doubt = weighing.scale_step;  // half a step at each weighing
  if (!(lost > doubt)) {
    return Failure{
        OutOfRange{"weight lost, kg", lost.in_unit(), doubt.in_unit(), weighing.before.in_unit()}};
  }
  const double per_hour = 60 / minutes;
  return Range<KilogramPerHour>{KilogramPerHour((lost - doubt).in_unit() * per_hour),
                                KilogramPerHour((lost + doubt).in_unit() * per_hour)};
}

Computed<Range<Minute>> evaporation_time(Kilogram water, const Range<KilogramPerHour>& rate) {
  if (const auto error = outside("water to boil away, kg", water.in_unit(), 0, 100'000)) {
    return Failure{*error};
  }
  for (const KilogramPerHour each : {rate.low, rate.high}) {
    if (const auto error = outside("rate, kg/h", each.in_unit(), 0.001, 1000)) {
      return Failure{*error};
    }
  }
  const auto minutes = [&](KilogramPerHour at) {
    return Minute(water.in_unit() / at.in_unit() * 60);
  };
  return Range<Minute>{minutes(rate.high), minutes(rate.low)};
}

}  // namespace maslin::science
