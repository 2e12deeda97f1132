// SPDX-License-Identifier: Apache-2.0
#include "language/contents.hpp"

#include <algorithm>

#include "language/acid_parts.hpp"
#include "language/boilings.hpp"
#include "science/boiling_stages.hpp"
#include "science/evaporation.hpp"
#include "science/keeping.hpp"
#include "science/water_activity.hpp"

namespace maslin::language {
namespace {

template <class Kind>
science::Computed<Range<double>> in_units(const science::Computed<Range<Real<Kind>>>& range) {
  if (!range) return Failure{range.error()};
  return Range<double>{range->low.in_unit(), range->high.in_unit()};
}

science::Computed<Range<double>> in_units(const Range<Share>& range) {
  return Range<double>{range.low.in_unit(), range.high.in_unit()};
}

}  // namespace

namespace {

using science::Mixture;
using science::Substance;

// What boils off in a breath is within the last digit of the weights.
constexpr double a_breath = 1e-9;

struct Weighed {
  std::vector<const science::Composition*> compositions;
  std::vector<Kilogram> masses;
  std::vector<std::vector<Passing>> passing;
};

std::optional<Mixture> mixture_of(const std::vector<science::Part>& parts) {
  const bool any = std::any_of(parts.begin(), parts.end(),
                               [](const auto& part) { return part.mass > Kilogram(0); });
  if (!any) return std::nullopt;
  const auto mixture = Mixture::of(parts);
  if (!mixture) return std::nullopt;
  return *mixture;
}

// What goes in before each boiling, and what goes in after all of them.
std::vector<science::BoilingStage> stages_of(const Boilings& boilings, const Weighed& weighed) {
  const std::size_t count = boilings.all().size();
  std::vector<std::vector<science::Part>> entering(count + 1);
  for (std::size_t i = 0; i < weighed.masses.size(); ++i) {
    for (const Passing& each : weighed.passing[i]) {
      entering[each.from].push_back(
          {weighed.compositions[i], each.fraction.to_double() * weighed.masses[i]});
    }
  }
  std::vector<science::BoilingStage> stages(count + 1);
  for (std::size_t i = 0; i <= count; ++i) {
    stages[i].entering = mixture_of(entering[i]);
    if (i == count) continue;
    const OnTheHob& boiling = boilings.all()[i];
    stages[i].loses = shares(boiling.loses);
    if (boiling.solids) stages[i].to_soluble_solids = Share(boiling.solids->to_double());
  }
  return stages;
}

Range<Share> kept_of(const std::vector<Passing>& passing,
                     const std::vector<Range<Share>>& by_stage) {
  Range<Share> result{Share(0), Share(0)};
  for (const Passing& each : passing) {
    const double fraction = each.fraction.to_double();
    result.low = result.low + fraction * by_stage[each.from].low;
    result.high = result.high + fraction * by_stage[each.from].high;
  }
  return {std::min(result.low, Share(1)), std::min(result.high, Share(1))};
}

}  // namespace

science::Computed<Contents> Contents::of(const Program& program, const Framework& framework,
                                         const std::vector<InPan>& parts,
                                         std::optional<Kilogram> finished) {
  const Boilings boilings(framework);
  std::vector<science::Composition> compositions;
  std::vector<science::AcidPart> acid_parts;
  Weighed weighed;
  for (const InPan& part : parts) {
    compositions.push_back(composition_of(program, part.stuff));
    acid_parts.push_back(acid_part_of(program, part.stuff));
    acid_parts.back().mass = part.mass;
    weighed.masses.push_back(part.mass);
    weighed.passing.push_back(boilings.of(part.slot));
  }
  std::vector<science::Part> whole;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    weighed.compositions.push_back(&compositions[i]);
    whole.push_back({&compositions[i], parts[i].mass});
  }
  const auto ingoing = Mixture::of(whole);
  if (!ingoing) return Failure{ingoing.error()};
  const Kilogram mass = ingoing->mass().low;
  std::optional<science::Settling> settling;
  const bool boiled_down = finished && mass - *finished > a_breath * mass;
  if (boilings.settling()) {
    settling = {*boilings.settling(), boiled_down ? *finished : ingoing->mass().high};
  }
  const auto kept = science::acid_kept_by_stage(stages_of(boilings, weighed), settling,
                                                science::acetic_acid_volatility);
  if (!kept) return Failure{kept.error()};
  Contents pan(*ingoing);
  pan.acid_kept_ = *kept;
  Range<Kilogram> acid;
  Range<Kilogram> acid_left;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    acid_parts[i].acetic_acid_kept = kept_of(weighed.passing[i], *kept);
    const Range<Share> of_it = shares(compositions[i].or_none(Substance::acetic_acid));
    const Range<Kilogram> each{of_it.low * parts[i].mass, of_it.high * parts[i].mass};
    acid = acid + each;
    acid_left = acid_left + Range<Kilogram>{acid_parts[i].acetic_acid_kept.low * each.low,
                                            acid_parts[i].acetic_acid_kept.high * each.high};
  }
  pan.compositions_ = std::move(compositions);
  pan.acid_parts_ = std::move(acid_parts);
  if (!boiled_down) return pan;
  const auto of_all = [](Kilogram left, Kilogram there) {
    return Share(there > Kilogram(0) ? left / there : 1.0);
  };
  const auto reduced = science::reduced_with(
      *ingoing, *finished, {of_all(acid_left.low, acid.low), of_all(acid_left.high, acid.high)});
  if (!reduced) return Failure{reduced.error()};
  pan.left_ = reduced->left;
  return pan;
}

Share Contents::volatiles_kept() const {
  const Kilogram before = science::volatiles(ingoing_).low;
  if (!(before > Kilogram(0))) return Share(1);
  const Kilogram lost = ingoing_.mass().high - left_.mass().low;
  return Share(std::max((before - lost) / before, 0.0));
}

science::Computed<science::MixturePh> Contents::ph() const {
  std::vector<science::AcidPart> parts = acid_parts_;
  for (std::size_t i = 0; i < parts.size(); ++i) parts[i].composition = &compositions_[i];
  // The water that goes takes hardly any charge with it; counted as there, the pH is the higher.
  return science::mixture_ph(parts);
}

science::Computed<Range<WaterActivity>> Contents::water_activity() const {
  return science::water_activity(left_);
}

science::Computed<Range<double>> Contents::value_of(const Limit& limit) const {
  if (!limit.property) return Failure{science::OutOfRange{"no figure", 0, 0, 0}};
  switch (*limit.property) {
    case Property::ph: {
      const auto found = ph();
      if (!found) return Failure{found.error()};
      return Range<double>{found->range.low.in_unit(), found->range.high.in_unit()};
    }
    case Property::water_activity:
      return in_units(water_activity());
    case Property::stability_index: {
      const auto found = ph();
      if (!found) return Failure{found.error()};
      return in_units(science::stability_index(left_, found->range));
    }
    case Property::acetic_acid:
      return in_units(limit.whole == Whole::volatile_matter ? science::acetic_of_volatiles(left_)
                                                            : science::acetic_of_everything(left_));
    case Property::acidity:
      return in_units(science::acidity_as_acetic(left_));
    default:
      return Failure{science::OutOfRange{"no figure", 0, 0, 0}};
  }
}

}  // namespace maslin::language
