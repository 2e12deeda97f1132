// SPDX-License-Identifier: Apache-2.0
#include "blend/boiling.hpp"

#include <algorithm>
#include <cmath>

#include "science/evaporation.hpp"
#include "science/keeping.hpp"
#include "science/mixture.hpp"
#include "science/water_activity.hpp"

namespace maslin::blend {
namespace {

using language::Property;
using language::Whole;
using science::Substance;

constexpr std::size_t index_of(Substance substance) { return static_cast<std::size_t>(substance); }

// The logarithm of the water activity of one solute alone, and its slope.
struct Tangent {
  double value = 0;
  double slope = 0;
};

double log_activity(Substance substance, double per_water) {
  namespace solutes = science::solutes;
  if (substance == Substance::salt) {
    constexpr double moles_per_kilogram = 1000 / 58.443;  // IUPAC
    const auto found = science::salt_solution(MolePerKilogram(per_water * moles_per_kilogram));
    return found ? std::log(found->in_unit()) : 0;
  }
  // Of unknown kind: as what lowers it least, as science::water_activity has it at its high end.
  const science::NorrishSolute& solute = [&]() -> const science::NorrishSolute& {
    switch (substance) {
      case Substance::glucose:
      case Substance::galactose:
        return solutes::glucose;
      case Substance::fructose:
        return solutes::fructose;
      case Substance::maltose:
        return solutes::maltose;
      case Substance::lactose:
        return solutes::lactose;
      case Substance::acetic_acid:
        return solutes::acetic_acid;
      case Substance::citric_acid:
      case Substance::organic_acids:
        return solutes::citric_acid;
      case Substance::malic_acid:
        return solutes::malic_acid;
      case Substance::tartaric_acid:
        return solutes::tartaric_acid;
      case Substance::lactic_acid:
        return solutes::lactic_acid;
      case Substance::oxalic_acid:
        return solutes::oxalic_acid;
      case Substance::succinic_acid:
        return solutes::succinic_acid;
      case Substance::polyols:
        return solutes::mannitol;
      default:
        return solutes::sucrose;
    }
  }();
  const auto found = science::norrish(solute, Share(per_water));
  return found ? std::log(found->in_unit()) : 0;
}

constexpr std::array dissolved = {
    Substance::glucose,     Substance::fructose,      Substance::galactose,
    Substance::sucrose,     Substance::maltose,       Substance::lactose,
    Substance::sugars,      Substance::polyols,       Substance::citric_acid,
    Substance::malic_acid,  Substance::tartaric_acid, Substance::oxalic_acid,
    Substance::lactic_acid, Substance::succinic_acid, Substance::organic_acids,
    Substance::acetic_acid, Substance::salt};

Tangent tangent_at(Substance substance, double per_water) {
  constexpr double step = 1e-5;
  const double at = std::max(per_water, step);
  const double above = log_activity(substance, at + step);
  const double below = log_activity(substance, at - step);
  return {log_activity(substance, at), (above - below) / (2 * step)};
}

constexpr std::array hexoses = {Substance::glucose, Substance::fructose, Substance::galactose};
constexpr std::array fixed_acids = {Substance::citric_acid,   Substance::malic_acid,
                                    Substance::tartaric_acid, Substance::oxalic_acid,
                                    Substance::lactic_acid,   Substance::succinic_acid,
                                    Substance::organic_acids};

// How far apart the least and the most acid that is kept can be: the wider, the more of it may
// stand in the aqueous phase without counting.
double widest_keeping() {
  constexpr int steps = 20;
  const auto& volatility = science::acetic_acid_volatility;
  double widest = 0;
  for (int i = 1; i < steps; ++i) {
    const double water_kept = i / static_cast<double>(steps);
    widest = std::max(widest, std::pow(water_kept, volatility.low.in_unit()) -
                                  std::pow(water_kept, volatility.high.in_unit()));
  }
  constexpr double between_the_steps = 1.01;
  return widest * between_the_steps;
}

}  // namespace

LimitRow::LimitRow(const language::Program& program, const language::Limit& limit, bool low,
                   const Boiling& boiling)
    : program_(program), limit_(limit), low_(low), boiling_(boiling) {
  const double bound = (low ? limit.range.low : limit.range.high).to_double();
  switch (*limit.property) {
    case Property::acetic_acid:
    case Property::acidity:
      weigh_acid(bound);
      break;
    case Property::stability_index:
      weigh_stability(bound);
      break;
    case Property::water_activity:
      weigh_water_activity(bound);
      break;
    default:
      break;
  }
}

void LimitRow::weigh_acid(double bound) {
  const double kept = low_ ? boiling_.acid_kept.low : boiling_.acid_kept.high;
  weights_[index_of(Substance::acetic_acid)] = kept;
  of_boiled_off_ = bound;
  if (limit_.whole == Whole::volatile_matter) {
    // All that boils away was water, acid or alcohol before.
    for (const Substance each : {Substance::water, Substance::acetic_acid, Substance::alcohol}) {
      weights_[index_of(each)] -= bound;
    }
    // Alcohol may all be gone, and more water left instead, or still be there.
    if (boils() && low_) weights_[index_of(Substance::alcohol)] -= bound;
    return;
  }
  of_everything_ = -bound;
}

void LimitRow::weigh_stability(double bound) {
  const double kept = low_ ? boiling_.acid_kept.low : boiling_.acid_kept.high;
  const auto dissociated =
      science::dissociated_acetic(PH(low_ ? boiling_.ph.high : boiling_.ph.low));
  const double whole = dissociated ? 1 - dissociated->in_unit() : 0;
  // As science::stability_index: points for each hundredth of the aqueous phase, each share at its
  // least beside the phase at its most, or the other way round.
  constexpr double hundredths = 100;
  const auto put = [&](Substance substance, double points) {
    weights_[index_of(substance)] = hundredths * points;
    phase_[index_of(substance)] = -bound;
  };
  put(Substance::water, 0);
  put(Substance::acetic_acid, 15.75 * whole * kept);
  put(Substance::salt, 3.08);
  for (const Substance each : fixed_acids) put(each, 0);
  for (const Substance each : hexoses) put(each, 1);
  for (const Substance each : {Substance::sucrose, Substance::maltose, Substance::lactose}) {
    put(each, 0.5);
  }
  put(Substance::sugars, low_ ? 0.5 : 1);
  if (boils() && low_) {
    // What boils off is acid and alcohol too, and leaves so much more water.
    const double apart =
        std::min(widest_keeping(), boiling_.acid_kept.high - boiling_.acid_kept.low);
    phase_[index_of(Substance::acetic_acid)] -= bound * apart;
    phase_[index_of(Substance::alcohol)] = -bound;
  }
  of_boiled_off_ = bound;
}

void LimitRow::weigh_water_activity(double bound) {
  double of_water = -std::log(std::max(bound, 1e-3));
  for (const Substance each : dissolved) {
    const double per_water = boiling_.per_water[index_of(each)];
    const Tangent tangent = tangent_at(each, per_water);
    weights_[index_of(each)] = tangent.slope;
    of_water += tangent.value - tangent.slope * per_water;
  }
  weights_[index_of(Substance::water)] = of_water;
  of_boiled_off_ = -of_water;
  // Acid and alcohol that boil off are no water that does: so much more of it is left.
  const double kept = boiling_.acid_kept.low;
  double& of_acid = weights_[index_of(Substance::acetic_acid)];
  of_acid_left_ = kept * (of_acid - (boils() ? of_water : 0));
  of_acid = boils() ? of_water : 0;
  if (boils()) weights_[index_of(Substance::alcohol)] = of_water;
}

double LimitRow::at_unfavourable_end(const science::Composition& composition) const {
  // A kilogram, with what no table gives counted as in every other mixture.
  const auto mixture = science::Mixture::of({{&composition, Kilogram(1)}});
  if (!mixture) return 0;  // a kilogram is always a weight
  double sum = of_everything_ + of_acid_left_ * (*mixture)[Substance::acetic_acid].low.in_unit();
  for (const Weights* weights : {&weights_, &phase_}) {
    for (std::size_t i = 0; i < science::substance_count; ++i) {
      const double weight = (*weights)[i];
      if (weight == 0) continue;
      const Range<Kilogram> share = (*mixture)[static_cast<Substance>(i)];
      // A row from below wants much of what counts for it and little of what counts against it.
      const bool take_low = (weight > 0) == low_;
      sum += weight * (take_low ? share.low : share.high).in_unit();
    }
  }
  return sum;
}

double LimitRow::charge(const language::Stuff& stuff) const {
  const science::Composition composition = composition_of(program_, stuff);
  science::AcidPart part;
  part.composition = &composition;
  const auto& ph = program_[stuff.ingredient].ph;
  if (ph) part.published_ph = ph_range(ph->value);
  const PH at((low_ ? limit_.range.low : limit_.range.high).to_double());
  const auto range =
      science::charge_at(part, at, {Share(boiling_.acid_kept.low), Share(boiling_.acid_kept.high)});
  return (low_ ? range.low : range.high).in_unit();
}

double LimitRow::of(const language::Stuff& stuff) const {
  if (limit_.property == Property::ph) return charge(stuff);
  if (limit_.property == Property::acidity) {
    // Every acid but acetic stays.
    const science::Composition composition = composition_of(program_, stuff);
    const Bounds all = science::acidity_as_acetic(composition);
    const Bounds acetic = composition.or_none(Substance::acetic_acid);
    const Rational fixed = low_ ? all.low - acetic.low : all.high - acetic.high;
    return at_unfavourable_end(composition) + fixed.to_double();
  }
  return at_unfavourable_end(composition_of(program_, stuff));
}

Boiling observed(const language::Contents& pan) {
  // So that what is expected comes about, and not just nearly.
  constexpr double guard = 1e-6;
  Boiling boiling;
  boiling.acid_kept = {pan.acid_kept().low.in_unit() * (1 - guard), pan.acid_kept().high.in_unit()};
  if (const auto ph = pan.ph()) {
    boiling.ph = {ph->range.low.in_unit() - guard, ph->range.high.in_unit() + guard};
  }
  const auto& left = pan.left();
  const double water = left[Substance::water].high.in_unit();
  if (water > 0) {
    for (const Substance each : dissolved) {
      boiling.per_water[index_of(each)] = left[each].low.in_unit() / water;
    }
  }
  return boiling;
}

}  // namespace maslin::blend
