// SPDX-License-Identifier: Apache-2.0
#include "blend/boiling.hpp"

#include <algorithm>
#include <cmath>

#include "language/acid_parts.hpp"
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

}  // namespace

LimitRow::LimitRow(const language::Program& program, const language::Boilings& boilings,
                   const language::Limit& limit, bool low, const Boiling& boiling)
    : program_(program), limit_(limit), low_(low), boiling_(boiling), boilings_(boilings) {
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
  of_acid_left_ = 1;
  of_boiled_off_ = bound;
  if (limit_.whole == Whole::volatile_matter) {
    // All that boils away was water, acid or alcohol before.
    for (const Substance each : {Substance::water, Substance::acetic_acid, Substance::alcohol}) {
      weights_[index_of(each)] -= bound;
    }
    // Alcohol may all be gone, and more water left instead, or still be there.
    if (boiling_.is_boiled_down && low_) weights_[index_of(Substance::alcohol)] -= bound;
    return;
  }
  of_everything_ = -bound;
}

void LimitRow::weigh_stability(double bound) {
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
  put(Substance::acetic_acid, 0);
  of_acid_left_ = hundredths * 15.75 * whole;
  put(Substance::salt, 3.08);
  for (const Substance each : fixed_acids) put(each, 0);
  for (const Substance each : hexoses) put(each, 1);
  for (const Substance each : {Substance::sucrose, Substance::maltose, Substance::lactose}) {
    put(each, 0.5);
  }
  put(Substance::sugars, low_ ? 0.5 : 1);
  if (boiling_.is_boiled_down && low_) {
    // What boils off is acid and alcohol too, and leaves so much more water.
    of_acid_apart_ = -bound;
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
  const bool boils = boiling_.is_boiled_down;
  double& of_acid = weights_[index_of(Substance::acetic_acid)];
  of_acid_left_ = of_acid - (boils ? of_water : 0);
  of_acid = boils ? of_water : 0;
  if (boils) weights_[index_of(Substance::alcohol)] = of_water;
}

KeptAcid LimitRow::kept_of(const language::Slot& slot) const {
  const bool counts = boiling_.is_boiled_down || limit_.property == Property::ph;
  if (!counts || boiling_.acid_kept.empty()) return {};
  KeptAcid result{{0, 0}, 0};
  for (const language::Passing& each : boilings_.of(slot)) {
    const KeptAcid& kept = boiling_.acid_kept[each.from];
    const double fraction = each.fraction.to_double();
    result.share.low += fraction * kept.share.low;
    result.share.high += fraction * kept.share.high;
    result.apart += fraction * kept.apart;
  }
  return {{std::min(result.share.low, 1.0), std::min(result.share.high, 1.0)}, result.apart};
}

double LimitRow::at_unfavourable_end(const science::Composition& composition,
                                     const KeptAcid& kept) const {
  // A kilogram, with what no table gives counted as in every other mixture.
  const auto mixture = science::Mixture::of({{&composition, Kilogram(1)}});
  if (!mixture) return 0;  // a kilogram is always a weight
  double sum = of_everything_;
  const auto add = [&](Substance substance, double weight) {
    if (weight == 0) return;
    const Range<Kilogram> share = (*mixture)[substance];
    // A row from below wants much of what counts for it and little of what counts against it.
    const bool take_low = (weight > 0) == low_;
    sum += weight * (take_low ? share.low : share.high).in_unit();
  };
  for (const Weights* weights : {&weights_, &phase_}) {
    for (std::size_t i = 0; i < science::substance_count; ++i) {
      add(static_cast<Substance>(i), (*weights)[i]);
    }
  }
  // Of how much there was, what is left may be of the least and what went of the most.
  const bool least = (of_acid_left_ > 0) == low_;
  add(Substance::acetic_acid, of_acid_left_ * (least ? kept.share.low : kept.share.high));
  add(Substance::acetic_acid, of_acid_apart_ * kept.apart);
  return sum;
}

double LimitRow::charge(const language::Stuff& stuff, const KeptAcid& kept) const {
  const science::Composition composition = composition_of(program_, stuff);
  science::AcidPart part = acid_part_of(program_, stuff);
  part.composition = &composition;
  part.acetic_acid_kept = {Share(kept.share.low), Share(kept.share.high)};
  const PH at((low_ ? limit_.range.low : limit_.range.high).to_double());
  const auto range = science::charge_at(part, at);
  return (low_ ? range.low : range.high).in_unit();
}

double LimitRow::of(const language::Stuff& stuff, const language::Slot& slot) const {
  const KeptAcid kept = kept_of(slot);
  if (limit_.property == Property::ph) return charge(stuff, kept);
  const science::Composition composition = composition_of(program_, stuff);
  if (limit_.property == Property::acidity) {
    // Every acid but acetic stays.
    const Bounds all = science::acidity_as_acetic(composition);
    const Bounds acetic = composition.or_none(Substance::acetic_acid);
    const Rational fixed = low_ ? all.low - acetic.low : all.high - acetic.high;
    return at_unfavourable_end(composition, kept) + fixed.to_double();
  }
  return at_unfavourable_end(composition, kept);
}

Boiling observed(const language::Framework& framework, const language::Contents& pan) {
  // So that what is expected comes about, and not just nearly.
  constexpr double guard = 1e-6;
  Boiling boiling;
  boiling.is_boiled_down = says_how_far(framework);
  boiling.volatiles_kept = pan.volatiles_kept().in_unit();
  for (const Range<Share>& each : pan.acid_kept()) {
    const Range<double> share{each.low.in_unit() * (1 - guard), each.high.in_unit()};
    boiling.acid_kept.push_back({share, share.high - share.low});
  }
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
