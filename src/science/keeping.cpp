// SPDX-License-Identifier: Apache-2.0
#include "science/keeping.hpp"

#include <cmath>

namespace maslin::science {
namespace {

constexpr double acetic_pk = 4.76;

std::optional<OutOfRange> not_shares(const AqueousShares& shares) {
  for (const Share each : {shares.acetic, shares.salt, shares.hexose, shares.disaccharide}) {
    if (const auto error = outside("share of the aqueous phase", each.in_unit(), 0, 1)) {
      return error;
    }
  }
  return std::nullopt;
}

Share share_of(Kilogram part, Kilogram rest) {
  const Kilogram whole = part + rest;
  return whole > Kilogram(0) ? Share(part / whole) : Share(0);
}

using Index = Computed<PreservingIndex> (*)(const AqueousShares&, PH);

// Rises with each share and falls as pH rises.
Computed<Range<PreservingIndex>> over(const Mixture& mixture, const Range<PH>& ph, Index index) {
  const Range<AqueousShares> shares = aqueous_shares(mixture);
  const auto low = index(shares.low, ph.high);
  if (!low) return Failure{low.error()};
  const auto high = index(shares.high, ph.low);
  if (!high) return Failure{high.error()};
  return Range<PreservingIndex>{*low, *high};
}

}  // namespace

Computed<Share> dissociated_acetic(PH ph) {
  if (const auto error = outside("pH", ph.in_unit(), 0, 14)) return Failure{*error};
  return Share(1 / (1 + std::pow(10, acetic_pk - ph.in_unit())));
}

Computed<PreservingIndex> stability_index(const AqueousShares& shares, PH ph) {
  if (const auto error = not_shares(shares)) return Failure{*error};
  const auto dissociated = dissociated_acetic(ph);
  if (!dissociated) return Failure{dissociated.error()};
  return PreservingIndex(15.75 * (1 - dissociated->in_unit()) * in_percent(shares.acetic) +
                         3.08 * in_percent(shares.salt) + in_percent(shares.hexose) +
                         0.5 * in_percent(shares.disaccharide));
}

Computed<PreservingIndex> pathogen_index(const AqueousShares& shares, PH ph) {
  const auto stability = stability_index(shares, ph);
  if (!stability) return stability;
  return *stability + PreservingIndex(40 * (4.0 - ph.in_unit()));
}

Range<AqueousShares> aqueous_shares(const Mixture& mixture) {
  const Range<Kilogram> whole = aqueous_phase(mixture);
  // Each at its least beside the rest at its most, and the other way round; unknown sugars go where
  // they are worth less, then where they are worth more.
  const auto least = [&](const Range<Kilogram>& part) {
    return share_of(part.low, whole.high - part.high);
  };
  const auto most = [&](const Range<Kilogram>& part) {
    return share_of(part.high, whole.low - part.low);
  };
  const Range<Kilogram> unknown = mixture[Substance::sugars];
  const Range<Kilogram> acetic = mixture[Substance::acetic_acid];
  const Range<Kilogram> salt = mixture[Substance::salt];
  const Range<Kilogram> hexose = hexoses(mixture);
  const Range<Kilogram> disaccharide = disaccharides(mixture);
  return {{least(acetic), least(salt), least(hexose), least(disaccharide + unknown)},
          {most(acetic), most(salt), most(hexose + unknown), most(disaccharide)}};
}

Computed<Range<PreservingIndex>> stability_index(const Mixture& mixture, const Range<PH>& ph) {
  return over(mixture, ph, stability_index);
}

Computed<Range<PreservingIndex>> pathogen_index(const Mixture& mixture, const Range<PH>& ph) {
  return over(mixture, ph, pathogen_index);
}

Computed<Share> acid_in_volatiles(Share acidity, Share total_solids) {
  if (const auto error = outside("acidity", acidity.in_unit(), 0, 1)) return Failure{*error};
  if (const auto error = outside("total solids", total_solids.in_unit(), 0, 0.999)) {
    return Failure{*error};
  }
  return Share(acidity.in_unit() / (1 - total_solids.in_unit()));
}

bool reaches_acetic_line(Share acetic_in_volatiles) {
  constexpr double rounding = 1e-12;
  return acetic_in_volatiles.in_unit() >= acetic_in_volatiles_line.in_unit() - rounding;
}

Computed<Share> sweet_pickle_acetic(Share sugar) {
  if (const auto error = outside("sugar", sugar.in_unit(), 0, 0.8)) return Failure{*error};
  return percent((80 - in_percent(sugar)) / 20);
}

Computed<FoodClass> class_of_food(const FoodFacts& facts) {
  if (const auto error = outside("pH", facts.finished_ph.in_unit(), 0, 14)) return Failure{*error};
  if (const auto error = outside("water activity", facts.water_activity.in_unit(), 0, 1)) {
    return Failure{*error};
  }
  constexpr PH line{4.6};
  constexpr PH tomato_line{4.7};
  const bool acid = facts.finished_ph <= line || (facts.tomato && facts.finished_ph < tomato_line);
  if (acid) return facts.of_low_acid_food ? FoodClass::acidified : FoodClass::acid;
  constexpr WaterActivity dry{0.85};
  return facts.water_activity > dry ? FoodClass::low_acid : FoodClass::too_dry;
}

PH low_acid_line(Jurisdiction where) {
  return where == Jurisdiction::united_kingdom ? PH(4.5) : PH(4.6);
}

}  // namespace maslin::science
