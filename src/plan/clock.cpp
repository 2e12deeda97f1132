// SPDX-License-Identifier: Apache-2.0
#include "plan/clock.hpp"

#include <algorithm>
#include <cmath>

#include "science/boiling.hpp"
#include "science/evaporation.hpp"

namespace maslin::plan {
namespace {

using language::StepKind;
using Minutes = Range<Minute>;

// To warm what is in the pan, kJ for a kilogram and a degree: syrup to water (from memory).
constexpr Range<double> heat_capacity{3.2, 4.2};
// What stands in the kitchen before it goes in, °C.
constexpr Range<double> room_heat{10, 25};
constexpr double seconds = 60;

Minutes operator+(const Minutes& a, const Minutes& b) { return {a.low + b.low, a.high + b.high}; }

Minutes minutes(const Range<Duration>& time) {
  return {Minute(time.low.to_double() / seconds), Minute(time.high.to_double() / seconds)};
}

// Whole minutes, outwards.
Range<Duration> durations(const Minutes& time) {
  const auto whole = [](double value) {
    return Duration(Rational(static_cast<long>(value)) * Rational(60));
  };
  return {whole(std::floor(time.low.in_unit())), whole(std::ceil(time.high.in_unit()))};
}

Range<Share> efficiency_of(language::HobKind kind) {
  switch (kind) {
    case language::HobKind::electric:
      return science::efficiency(science::Hob::electric);
    case language::HobKind::induction:
      return science::efficiency(science::Hob::induction);
    case language::HobKind::gas:
      return science::efficiency(science::Hob::gas);
    case language::HobKind::not_stated:
      break;
  }
  return {science::efficiency(science::Hob::gas).low,
          science::efficiency(science::Hob::induction).high};
}

Mass tens_of_grams(double kilograms) {
  return Mass(Rational(static_cast<long>(kilograms * 100)) * Rational(10));
}

// By weighing the boiling pan twice, each time right to half a step of the scales. Nothing where it
// was not done, or less was lost than such scales can tell.
std::optional<Range<KilogramPerHour>> rate_measured(const language::Hob& hob,
                                                    const Rational& scale_step) {
  if (!hob.weighed_twice) return std::nullopt;
  const language::WeighedTwice& weighed = *hob.weighed_twice;
  const auto rate = science::calibrated_rate(
      {Kilogram(weighed.lost.to_double() / 1000), Kilogram(0),
       Minute(weighed.between.to_double() / seconds), Kilogram(scale_step.to_double() / 1000)});
  if (!rate) return std::nullopt;
  return rate.value();
}

class ClockMaker {
 public:
  ClockMaker(const VerifiedPlan& plan, const language::Hob& hob, const Rational& scale_step,
             Celsius boil, const Timeline& timeline, const Course& course, const Boils& boils)
      : plan_(plan), boil_(boil), timeline_(timeline), course_(course), boils_(boils) {
    const Range<Share> efficiency = efficiency_of(hob.kind);
    const double rated = hob.power.to_double() / 1000;
    net_ = {Kilowatt(rated * efficiency.low.in_unit()),
            Kilowatt(rated * efficiency.high.in_unit())};
    low_flame_ = {net_.low * turned_down.to_double(), net_.high};
    clock_.kind_assumed = hob.kind == language::HobKind::not_stated;
    measured_ = rate_measured(hob, scale_step);
    clock_.measured = measured_.has_value();
  }

  std::optional<Clock> run(const std::optional<JarPlan>& jars) {
    if (timeline_.empty()) {
      without_method();
    } else {
      for (std::size_t i = 0; i < timeline_.size(); ++i) {
        if (timeline_[i].stage->days_before > 0) continue;
        for (std::size_t j = 0; j < timeline_[i].steps.size(); ++j) take(i, j);
      }
    }
    if (clock_.marks.empty() || !rate()) return std::nullopt;
    Minutes filling;
    if (jars) {
      long count = 0;
      for (const long each : jars->used) count += each;
      const double each_boil = static_cast<double>(count) / static_cast<double>(boils_.count);
      filling = minutes(for_each_jar) * each_boil;
    }
    now_ = now_ + filling;
    mark(ClockMark::What::last_lid, 0, 0);
    clock_.all_boils = durations(now_ * static_cast<double>(boils_.count));
    return std::move(clock_);
  }

 private:
  void mark(ClockMark::What what, std::size_t stage, std::size_t step) {
    clock_.marks.push_back({what, stage, step, durations(now_)});
  }

  Kilogram each_boil(const Rational& grams) const {
    return Kilogram(grams.to_double() / 1000 / static_cast<double>(boils_.count));
  }

  void take(std::size_t i, std::size_t j) {
    const TimelineStep& step = timeline_[i].steps[j];
    if (!step.for_jars) {
      for (const Item& item : step.entering) cold_ += weight_of(plan_.draft(), item);
    }
    if (!is_heat(step.step->kind)) {
      before_ = course_.after[i][j];
      return;
    }
    if (cold_.is_positive()) {
      now_ = now_ + warming(each_boil(cold_));
      cold_ = 0;
      mark(ClockMark::What::at_the_boil, i, j);
    }
    const auto lasting = step.step->lasting;
    Minutes time = lasting ? minutes(lasting->time) : Minutes{};
    if (step.step->kind == StepKind::reduce) {
      const Minutes boiled = boiling_off(before_, course_.after[i][j]);
      time = {std::max(time.low, boiled.low), std::max(time.high, boiled.high)};
    }
    now_ = now_ + time;
    before_ = course_.after[i][j];
    mark(ClockMark::What::step_done, i, j);
  }

  void without_method() {
    if (!plan_.finished()) return;
    const Rational ingoing = plan_.ingoing().in_base();
    now_ = warming(each_boil(ingoing));
    mark(ClockMark::What::at_the_boil, 0, 0);
    now_ = now_ + boiling_off(Range<Mass>::exactly(Mass(ingoing)),
                              Range<Mass>::exactly(Mass(plan_.finished()->in_base())));
    mark(ClockMark::What::boiled_down, 0, 0);
  }

  Minutes warming(Kilogram cold) const {
    const auto time = [&](double capacity, double from, Kilowatt power) {
      const double heat = cold.in_unit() * capacity * (boil_.in_unit() - from);
      return Minute(heat / power.in_unit() / seconds);
    };
    return {time(heat_capacity.low, room_heat.high, net_.high),
            time(heat_capacity.high, room_heat.low, net_.low)};
  }

  Minutes boiling_off(const Range<Mass>& before, const Range<Mass>& after) const {
    const auto time = [&](const Rational& grams) -> std::optional<Minutes> {
      const Kilogram water = each_boil(larger(grams, 0));
      const auto found = measured_ ? science::evaporation_time(water, *measured_)
                                   : science::evaporation_time(water, low_flame_, boil_);
      if (!found) return std::nullopt;
      return found.value();
    };
    const auto least = time(before.low.in_base() - after.high.in_base());
    const auto most = time(before.high.in_base() - after.low.in_base());
    if (!least || !most) return {};
    return {least->low, most->high};
  }

  // How much a pan at this heat loses in an hour.
  bool rate() {
    if (measured_) {
      clock_.water_in_an_hour = {tens_of_grams(measured_->low.in_unit()),
                                 tens_of_grams(measured_->high.in_unit())};
      return true;
    }
    const auto latent = science::latent_heat(boil_);
    if (!latent) return false;
    const auto in_an_hour = [&](Kilowatt power) {
      return tens_of_grams(power.in_unit() * 3600 / latent.value().in_unit());
    };
    clock_.water_in_an_hour = {in_an_hour(low_flame_.low), in_an_hour(low_flame_.high)};
    return true;
  }

  const VerifiedPlan& plan_;
  Celsius boil_;
  const Timeline& timeline_;
  const Course& course_;
  const Boils& boils_;
  Range<Kilowatt> net_;
  Range<Kilowatt> low_flame_;
  std::optional<Range<KilogramPerHour>> measured_;
  Minutes now_;
  Rational cold_;       // g that came in since the pan was last at the boil
  Range<Mass> before_;  // in the pan before the step
  Clock clock_;
};

}  // namespace

std::optional<Height> height_of(const language::Kitchen* kitchen) {
  Height height;
  height.assumed = kitchen == nullptr || !kitchen->altitude;
  if (!height.assumed) height.altitude = *kitchen->altitude;
  const auto boil = science::boiling_point_at(Metre(height.altitude.to_double() / 1000));
  if (!boil) return std::nullopt;
  const long tenths = std::lround(boil.value().in_unit() * 10);
  height.water_boils = Temperature(Rational(Rational::Wide{tenths}, Rational::Wide{10}));
  return height;
}

std::optional<Clock> make_clock(const language::Program& program, const VerifiedPlan& plan,
                                const Timeline& timeline, const Course& course, const Boils& boils,
                                const std::optional<JarPlan>& jars) {
  const auto id = plan.draft().task.kitchen;
  if (!id.valid() || !program[id].hob || boils.too_many) return std::nullopt;
  const auto height = height_of(&program[id]);
  if (!height) return std::nullopt;
  const Celsius boil(height->water_boils.to_double());
  const Rational step = tools_of(program, id).scale_step;
  return ClockMaker(plan, *program[id].hob, step, boil, timeline, course, boils).run(jars);
}

}  // namespace maslin::plan
