// SPDX-License-Identifier: Apache-2.0
#include "language/contents.hpp"

#include <algorithm>

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

science::Computed<Contents> Contents::of(const Program& program, const std::vector<InPan>& parts,
                                         std::optional<Kilogram> finished) {
  std::vector<science::Composition> compositions;
  std::vector<science::AcidPart> acid_parts;
  for (const InPan& part : parts) {
    compositions.push_back(composition_of(program, part.stuff));
    science::AcidPart each;
    each.mass = part.mass;
    const auto& ph = program[part.stuff.ingredient].ph;
    if (ph) each.published_ph = ph_range(ph->value);
    acid_parts.push_back(each);
  }
  std::vector<science::Part> weighed;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    weighed.push_back({&compositions[i], parts[i].mass});
  }
  const auto ingoing = science::Mixture::of(weighed);
  if (!ingoing) return Failure{ingoing.error()};
  Contents pan(*ingoing);
  pan.compositions_ = std::move(compositions);
  pan.acid_parts_ = std::move(acid_parts);
  // What boils off in a breath is within the last digit of the weights.
  constexpr double a_breath = 1e-9;
  const Kilogram mass = ingoing->mass().low;
  if (!finished || mass - *finished <= a_breath * mass) return pan;
  const auto reduced =
      science::reduce_to_weight(*ingoing, *finished, science::acetic_acid_volatility);
  if (!reduced) return Failure{reduced.error()};
  pan.left_ = reduced->left;
  pan.acid_kept_ = reduced->acid_kept;
  pan.boiled_away_ = mass - *finished;
  return pan;
}

science::Computed<science::MixturePh> Contents::ph() const {
  std::vector<science::AcidPart> parts = acid_parts_;
  for (std::size_t i = 0; i < parts.size(); ++i) parts[i].composition = &compositions_[i];
  // The water that goes takes hardly any charge with it; counted as there, the pH is the higher.
  return science::mixture_ph(parts, {Kilogram(0), acid_kept_});
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
