// SPDX-License-Identifier: Apache-2.0
#include "plan/boils.hpp"

#include <algorithm>

namespace maslin::plan {
namespace {

const Rational circle(Rational::Wide{355}, Rational::Wide{452});  // a quarter of pi, to 1e-7
const Rational a_tenth(Rational::Wide{1}, Rational::Wide{10});
const Rational cubic_millimetres(1000);  // in a millilitre

class BoilMaker {
 public:
  BoilMaker(const language::Program& program, const VerifiedPlan& plan, const Timeline& timeline,
            const Course& course)
      : program_(program),
        plan_(plan),
        draft_(plan.draft()),
        timeline_(timeline),
        course_(course),
        kitchen_(draft_.task.kitchen.valid() ? &program[draft_.task.kitchen] : nullptr),
        tools_(tools_of(program, draft_.task.kitchen)) {}

  Boils run() {
    whole_ = ingoing_volume(program_, draft_, through_the_pan(draft_, timeline_));
    count();
    const Rational boils(result_.count);
    result_.ingoing = {whole_.low / boils, whole_.high / boils};
    if (result_.too_many) return std::move(result_);
    for (const TakenId& id : all_taken(draft_)) deal_out(id);
    order_items();
    result_.weigh = {IngoingMass(least_), IngoingMass(most_)};
    start();
    stop();
    depths();
    return std::move(result_);
  }

 private:
  // ---- How many ---------------------------------------------------------------------------------

  const language::Pan* pan() const {
    return kitchen_ != nullptr && kitchen_->pan ? &*kitchen_->pan : nullptr;
  }

  void count() {
    const auto& method = program_[draft_.task.framework].method;
    result_.fill = is_boiled_to_a_set(method) ? fill_with_syrup : fill_of_a_pan;
    if (pan() == nullptr) return;
    result_.pan_known = true;
    const Rational room = pan()->holds.in_base() * result_.fill;
    const Rational boils = (whole_.high.in_base() / room).ceil_to(1);
    result_.too_many = !(boils <= Rational(most_boils));
    if (!result_.too_many) {
      result_.count = std::max(1L, static_cast<long>(boils.to_double()));
    }
  }

  // ---- What goes into each ----------------------------------------------------------------------

  Rational step_of(const Taken& taken) const {
    switch (taken.tool) {
      case Tool::scales:
        return tools_.scale_step;
      case Tool::spoons:
        return tools_.spoon_step.value_or(Rational(1));
      case Tool::count:
        break;
    }
    return 1;
  }

  void deal_out(const TakenId& id) {
    const Taken& taken = taken_of(draft_, id);
    if (!taken.amount.is_positive()) return;
    const Rational step = step_of(taken);
    const Dealt whole = deal(taken.amount, step, result_.count);
    const Rational even = taken.amount / Rational(result_.count);
    if (absolute(whole.others - even) > a_tenth * even ||
        absolute(whole.first - even) > a_tenth * even) {
      result_.uneven.push_back(id);
    }
    const Rational unit = taken.weight / taken.amount;
    most_ += (whole.first_boils > 0 ? whole.first : whole.others) * unit;
    least_ += (whole.first_boils < result_.count ? whole.others : whole.first) * unit;
    std::vector<BoilItem> items = items_of(id, unit);
    std::vector<Rational> shares;
    shares.reserve(items.size());
    for (const BoilItem& item : items) shares.push_back(item.dealt.first);
    const auto first = divide(whole.first, step, shares);
    const auto others = divide(whole.others, step, shares);
    for (std::size_t i = 0; i < items.size(); ++i) {
      items[i].dealt = {whole.first_boils, first[i], others[i]};
      result_.items.push_back(items[i]);
    }
  }

  // Where it goes in; the share of it stands where the amount will.
  std::vector<BoilItem> items_of(const TakenId& id, const Rational& unit) const {
    std::vector<BoilItem> items;
    for (std::size_t i = 0; i < timeline_.size(); ++i) {
      for (std::size_t j = 0; j < timeline_[i].steps.size(); ++j) {
        for (const Item& item : timeline_[i].steps[j].items) {
          if (item.taken == id) items.push_back({id, i, j, item.aside, {0, item.share, 0}, unit});
        }
      }
    }
    if (items.empty()) items.push_back({id, 0, 0, false, {0, 1, 0}, unit});
    return items;
  }

  void order_items() {
    std::stable_sort(result_.items.begin(), result_.items.end(),
                     [](const BoilItem& a, const BoilItem& b) {
                       return language::is_before({a.stage, a.step}, {b.stage, b.step});
                     });
  }

  // ---- When to stop -----------------------------------------------------------------------------

  void start() {
    if (!tools_.scale_limit) return;
    const bool known = pan() != nullptr && pan()->weighs;
    const Rational pan_weight = known ? pan()->weighs->in_base() : Rational(0);
    result_.scales_carry_start = pan_weight + result_.weigh.high.in_base() <= *tools_.scale_limit;
  }

  void stop() {
    if (!course_.is_boiled_down) return;
    StopWeight stop;
    const Rational whole = plan_.ingoing().in_base();
    const Bounds finish{course_.finish.low.in_base(), course_.finish.high.in_base()};
    const Rational contents =
        (middle(finish) / Rational(result_.count)).round_to(tools_.scale_step);
    Bounds window = Bounds::exactly(contents);
    if (const auto limits = plan_.window()) {
      // The fullest boil may not be stopped later, nor the least full one earlier, than it holds.
      const Rational low = limits->least.in_base() * most_ / whole;
      const Rational high = limits->most.in_base() * least_ / whole;
      window = {low.ceil_to(tools_.scale_step), high.floor_to(tools_.scale_step)};
      if (window.high < window.low) window = {low, larger(low, high)};
    }
    const Rational target = smaller(larger(contents, window.low), window.high);
    stop.contents = FinishedMass(target);
    stop.window = {FinishedMass(smaller(window.low, target)), FinishedMass(window.high)};
    if (pan() != nullptr) stop.pan = pan()->weighs;
    const Rational pan_weight = stop.pan ? stop.pan->in_base() : Rational(0);
    if (tools_.scale_limit) {
      stop.scales_carry_it = pan_weight + window.high <= *tools_.scale_limit;
    }
    result_.stop = stop;
  }

  void depths() {
    if (pan() == nullptr || !pan()->across) return;
    const Rational width = pan()->across->in_base();
    const Rational area = circle * width * width;
    const auto depth = [&](const Range<Volume>& volume) {
      return Range<Length>{Length(volume.low.in_base() * cubic_millimetres / area),
                           Length(volume.high.in_base() * cubic_millimetres / area)};
    };
    Depths depths;
    depths.start = depth(result_.ingoing);
    depths.stop = depths.start;
    if (result_.stop) {
      const Bounds solids = solids_in(program_, draft_);
      const Rational boils(result_.count);
      depths.stop = depth(hot_volume({solids.low / boils, solids.high / boils},
                                     Range<FinishedMass>::exactly(result_.stop->contents)));
    }
    result_.depths = depths;
  }

  const language::Program& program_;
  const VerifiedPlan& plan_;
  const Draft& draft_;
  const Timeline& timeline_;
  const Course& course_;
  const language::Kitchen* kitchen_;
  Tools tools_;
  Range<Volume> whole_;
  Rational most_;   // g in the fullest boil
  Rational least_;  // g in the least full one
  Boils result_;
};

}  // namespace

bool is_boiled_to_a_set(const language::Method& method) {
  const auto solids = language::solids_at_the_end(method);
  return solids && *solids >= syrup_solids;
}

Dealt deal(const Rational& amount, const Rational& step, long boils) {
  const Rational count(boils);
  const Rational steps = amount / step;
  if (!steps.is_integer()) return {boils, amount / count, amount / count};
  const Rational each = (steps / count).floor_to(1);
  const Rational more = steps - each * count;
  if (more.is_zero()) return {boils, each * step, each * step};
  return {static_cast<long>(more.to_double()), (each + 1) * step, each * step};
}

std::vector<Rational> divide(const Rational& amount, const Rational& step,
                             const std::vector<Rational>& shares) {
  std::vector<Rational> parts;
  Rational left = amount;
  for (const Rational& share : shares) {
    parts.push_back((amount * share).floor_to(step));
    left -= parts.back();
  }
  // The steps that are left go to the largest of what was cut off, earlier ones first.
  std::vector<std::size_t> order(shares.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return amount * shares[b] - parts[b] < amount * shares[a] - parts[a];
  });
  for (std::size_t i = 0; i < order.size() && left >= step; ++i) {
    parts[order[i]] += step;
    left -= step;
  }
  if (!parts.empty()) parts.back() += left;
  return parts;
}

Boils make_boils(const language::Program& program, const VerifiedPlan& plan,
                 const Timeline& timeline, const Course& course) {
  return BoilMaker(program, plan, timeline, course).run();
}

}  // namespace maslin::plan
