// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "science/acidity.hpp"
#include "science/bisection.hpp"
#include "science/weak_acids.hpp"

namespace maslin::science {
namespace {

constexpr double potassium_molar_mass = 39.098;  // g/mol, IUPAC
constexpr Range<double> charge_per_potassium{0.7, 1.4};
// Half a mole of potassium carbonate, which ash is mostly made of.
constexpr double ash_per_charge = 69.1;  // g
// Spinach, of 8.6 g of dry matter in 100 g (USDA SR28 NDB 11457): the most among common produce.
constexpr double most_ash_of_dry_matter = 0.20;
// From here on (as acetic acid) a thing is bought for its acid, which is then well measured.
constexpr double sour = 0.02;
// The upper end of sweetcorn, the highest of the produce in FDA's Approximate pH of Foods.
constexpr double least_acid_produce = 7.5;
constexpr double middle_of_unknown = 6.0;  // most vegetables lie near it

constexpr double grams_per_kilogram = 1000;

// Net strong charge of a kilogram, mol.
Range<double> charge_by_minerals(const AcidPart& part) {
  const Composition& composition = *part.composition;
  Range<double> charge;
  if (const auto& potassium = composition[Substance::potassium]) {
    const double moles = grams_per_kilogram / potassium_molar_mass;
    charge = {potassium->low.to_double() * moles * charge_per_potassium.low,
              potassium->high.to_double() * moles * charge_per_potassium.high};
  } else {
    const double dry = 1 - composition.or_none(Substance::water).low.to_double();
    const double left = std::max(1 - total(composition).low.to_double(), 0.0);
    const double ash = composition[Substance::ash] ? composition[Substance::ash]->high.to_double()
                                                   : std::min(left, dry * most_ash_of_dry_matter);
    charge = {0, ash * grams_per_kilogram / ash_per_charge};
  }
  if (part.ash_alkalinity) {
    charge.low = std::min(charge.low, part.ash_alkalinity->low.in_unit());
    charge.high = std::max(charge.high, part.ash_alkalinity->high.in_unit());
  }
  return charge;
}

// One reading of all figures of a part: what it brings into the balance.
struct Reading : Charged {
  unsigned ends = 0;  // which figures are at their high end, a bit each
};
enum : unsigned { high_ph = 1, high_charge = 2, high_acids = 4, high_water = 8, high_kept = 16 };
constexpr unsigned all_ends = 32;

// The figures of a part, for all of its weight.
struct Figures {
  Range<double> charge;
  Range<double> water;
  Range<double> ph;
  bool ph_known = false;
  bool bought_for_acid = false;
  std::array<Range<double>, weak_acid_count> moles{};  // by its table
  std::vector<WeakAcid> main_acids;                    // of which one may be the main one
};

Range<double> in_doubles(const Range<Share>& range) {
  return {range.low.in_unit(), range.high.in_unit()};
}

// The acids of a composition; those of unknown kind as `unknown`.
void put_acids(Figures& figures, const AcidPart& part, WeakAcid unknown) {
  const auto put = [&](Substance substance, const AcidConstants& acid) {
    const Range<double> share = in_doubles(shares(part.composition->or_none(substance)));
    const double moles = part.mass.in_unit() * grams_per_kilogram / acid.molar_mass;
    Range<double>& sum = figures.moles[index_of(acid.acid)];
    sum = {sum.low + share.low * moles, sum.high + share.high * moles};
  };
  for (std::size_t i = 0; i < weak_acid_count; ++i) {
    const AcidConstants& acid = constants_of(static_cast<WeakAcid>(i));
    put(acid.substance, acid);
  }
  put(Substance::organic_acids, constants_of(unknown));
}

// The largest of the acids its table names; both likely ones where it names none.
std::vector<WeakAcid> main_acids_of(const AcidPart& part) {
  if (part.main_acid) return {*part.main_acid};
  const AcidConstants* main = nullptr;
  double most = part.composition->or_none(Substance::organic_acids).high.to_double();
  for (std::size_t i = 0; i < weak_acid_count; ++i) {
    const AcidConstants& acid = constants_of(static_cast<WeakAcid>(i));
    const double high = part.composition->or_none(acid.substance).high.to_double();
    if (high > most) {
      main = &acid;
      most = high;
    }
  }
  if (main != nullptr) return {main->acid};
  return {WeakAcid::malic, WeakAcid::citric};
}

Range<Share> water_of(const Composition& composition) {
  if (composition[Substance::water]) return shares(*composition[Substance::water]);
  return {Share(0), Share(std::max(1 - total(composition).low.to_double(), 0.0))};
}

Figures figures_of(const AcidPart& part) {
  const double mass = part.mass.in_unit();
  Figures result;
  result.main_acids = main_acids_of(part);
  put_acids(result, part, result.main_acids.front());
  const Range<double> charge = charge_by_minerals(part);
  result.charge = {charge.low * mass, charge.high * mass};
  const Range<Share> water = water_of(*part.composition);
  result.water = {water.low.in_unit() * mass, water.high.in_unit() * mass};
  result.bought_for_acid = acidity_as_acetic(*part.composition).low.to_double() >= sour;
  result.ph_known = part.published_ph.has_value();
  if (result.ph_known) {
    result.ph = {part.published_ph->low.in_unit(), part.published_ph->high.in_unit()};
  }
  return result;
}

double acid_charge(const Reading& reading, const PerAcid& charges) {
  double sum = 0;
  for (std::size_t i = 0; i < weak_acid_count; ++i) sum += reading.moles[i] * charges[i];
  return sum;
}

// The charge that gives the acids of a reading this pH alone.
void calibrate_charge(Reading& reading, double ph) {
  reading.charge = acid_charge(reading, mean_charges(ph)) - reading.water * free_charge(ph);
}

// As much of one acid as gives the charge of a reading this pH alone.
void calibrate_acid(Reading& reading, double ph, WeakAcid acid) {
  const double needed = reading.charge + reading.water * free_charge(ph);
  const double each = mean_charge(constants_of(acid), ph);
  reading.moles = {};
  reading.moles[index_of(acid)] = std::max(needed / each, 0.0);
}

double end_of(const Range<double>& range, bool high) { return high ? range.high : range.low; }

// Produce, or what is bought for its acid, with each figure as given.
struct Chosen {
  double ph = 0;
  double charge = 0;
  double acids = 0;  // 0 is the low end of each acid in the table, 1 the high end
  double water = 0;
};

Reading reading_of(const Figures& figures, const Chosen& chosen, WeakAcid main_acid) {
  Reading reading;
  reading.charge = chosen.charge;
  reading.water = chosen.water;
  for (std::size_t i = 0; i < weak_acid_count; ++i) {
    const Range<double>& moles = figures.moles[i];
    reading.moles[i] = moles.low + chosen.acids * (moles.high - moles.low);
  }
  if (figures.bought_for_acid) {
    if (figures.ph_known) calibrate_charge(reading, chosen.ph);
    return reading;
  }
  if (figures.ph_known) {
    calibrate_acid(reading, chosen.ph, main_acid);
    return reading;
  }
  // Of unknown pH: nearly neutral, or with the acids of its table on top of that.
  const PerAcid of_table = reading.moles;
  calibrate_acid(reading, least_acid_produce, main_acid);
  if (chosen.acids > 0) {
    for (std::size_t i = 0; i < weak_acid_count; ++i) {
      reading.moles[i] = std::max(reading.moles[i], of_table[i]);
    }
  }
  return reading;
}

void keep_acetic(Reading& reading, double kept) {
  reading.moles[index_of(WeakAcid::acetic)] *= kept;
}

struct PartReadings {
  std::vector<Reading> ends;
  Reading middle;
  bool ph_known = false;
};

double middle_of(const Range<double>& range) { return (range.low + range.high) / 2; }

PartReadings readings_of(const AcidPart& part) {
  const Range<Share>& kept = part.acetic_acid_kept;
  const Figures figures = figures_of(part);
  PartReadings result;
  result.ph_known = figures.ph_known;
  for (const WeakAcid acid : figures.main_acids) {
    for (unsigned ends = 0; ends < all_ends; ++ends) {
      Reading reading = reading_of(
          figures,
          {end_of(figures.ph, (ends & high_ph) != 0),
           end_of(figures.charge, (ends & high_charge) != 0), (ends & high_acids) != 0 ? 1.0 : 0.0,
           end_of(figures.water, (ends & high_water) != 0)},
          acid);
      keep_acetic(reading, (ends & high_kept) != 0 ? kept.high.in_unit() : kept.low.in_unit());
      reading.ends = ends;
      result.ends.push_back(reading);
    }
  }
  Figures expected = figures;
  if (!figures.ph_known && !figures.bought_for_acid) {
    expected.ph_known = true;
    expected.ph = {middle_of_unknown, middle_of_unknown};
  }
  result.middle = reading_of(
      expected, {middle_of(expected.ph), middle_of(figures.charge), 0.5, middle_of(figures.water)},
      figures.main_acids.front());
  keep_acetic(result.middle, (kept.low.in_unit() + kept.high.in_unit()) / 2);
  return result;
}

// The reading with the most left over in the balance at this pH, or with the least.
template <class Better>
const Reading& best_at(const PartReadings& part, double ph, const Better& better) {
  const PerAcid charges = mean_charges(ph);
  const double free = free_charge(ph);
  return *std::max_element(part.ends.begin(), part.ends.end(),
                           [&](const Reading& a, const Reading& b) {
                             return better(balance(a, free, charges), balance(b, free, charges));
                           });
}

enum class Wanted : std::uint8_t { lowest, expected, highest };

double part_balance(const PartReadings& part, Wanted wanted, double free, const PerAcid& charges) {
  if (wanted == Wanted::expected) return balance(part.middle, free, charges);
  double best = balance(part.ends.front(), free, charges);
  for (const Reading& each : part.ends) {
    const double value = balance(each, free, charges);
    best = wanted == Wanted::highest ? std::max(best, value) : std::min(best, value);
  }
  return best;
}

std::optional<double> root(const std::vector<PartReadings>& parts, Wanted wanted, double boiled) {
  return crossing(least_ph, most_ph, [&](double ph) {
    const PerAcid charges = mean_charges(ph);
    const double free = free_charge(ph);
    double sum = -boiled * free;
    for (const PartReadings& part : parts) sum += part_balance(part, wanted, free, charges);
    return sum;
  });
}

// How far a part moves the balance when one of its figures is turned to the other end.
double moved_by(const PartReadings& part, const Reading& from, unsigned turned, double free,
                const PerAcid& charges) {
  double least = balance(from, free, charges);
  for (const Reading& each : part.ends) {
    if ((each.ends ^ from.ends) == turned) least = std::min(least, balance(each, free, charges));
  }
  return balance(from, free, charges) - least;
}

void name_driver(MixturePh& result, const std::vector<PartReadings>& parts) {
  const double ph = result.range.high.in_unit();
  const PerAcid charges = mean_charges(ph);
  const double free = free_charge(ph);
  double widest = -1;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const double width = part_balance(parts[i], Wanted::highest, free, charges) -
                         part_balance(parts[i], Wanted::lowest, free, charges);
    if (width > widest) {
      widest = width;
      result.driver = i;
    }
  }
  const PartReadings& part = parts[result.driver];
  if (!part.ph_known) {
    result.assumption = PhAssumption::unknown_ph;
    return;
  }
  const Reading& worst = best_at(part, ph, std::less<>());
  const double by_ph = moved_by(part, worst, high_ph, free, charges);
  const double by_charge = moved_by(part, worst, high_charge, free, charges);
  const double by_acid = std::max(moved_by(part, worst, high_acids, free, charges),
                                  moved_by(part, worst, high_kept, free, charges));
  result.assumption = PhAssumption::published_ph;
  if (by_charge > by_ph) result.assumption = PhAssumption::minerals;
  if (by_acid > std::max(by_ph, by_charge)) result.assumption = PhAssumption::acid_content;
}

std::optional<OutOfRange> bad_part(const AcidPart& part) {
  if (const auto error = outside("weight, kg", part.mass.in_unit(), 0, 100'000)) return error;
  for (const Share kept : {part.acetic_acid_kept.low, part.acetic_acid_kept.high}) {
    if (const auto error = outside("acetic acid kept", kept.in_unit(), 0, 1)) return error;
  }
  if (!part.published_ph) return std::nullopt;
  const Range<PH>& ph = *part.published_ph;
  if (const auto error = outside("published pH", ph.low.in_unit(), 1, 9)) return error;
  return outside("published pH", ph.high.in_unit(), ph.low.in_unit(), 9);
}

}  // namespace

Computed<GivenAcid> given_acid(const AcidPart& part) {
  if (const auto error = bad_part(part)) return Failure{*error};
  AcidPart kilogram = part;
  kilogram.mass = Kilogram(1);
  const WeakAcid acid = main_acids_of(part).front();
  kilogram.main_acid = acid;
  kilogram.acetic_acid_kept = Range<Share>::exactly(Share(1));
  const PartReadings readings = readings_of(kilogram);
  const auto by_moles = [&](const Reading& a, const Reading& b) {
    return a.moles[index_of(acid)] < b.moles[index_of(acid)];
  };
  const auto [least, most] =
      std::minmax_element(readings.ends.begin(), readings.ends.end(), by_moles);
  const auto share = [&](const Reading& reading) {
    return Share(reading.moles[index_of(acid)] * constants_of(acid).molar_mass /
                 grams_per_kilogram);
  };
  return GivenAcid{acid, {share(*least), share(*most)}};
}

Computed<MixturePh> mixture_ph(const std::vector<AcidPart>& parts, Kilogram water_boiled_away) {
  std::vector<PartReadings> readings;
  double water = -water_boiled_away.in_unit();
  for (const AcidPart& part : parts) {
    if (const auto error = bad_part(part)) return Failure{*error};
    readings.push_back(readings_of(part));
    water += water_of(*part.composition).low.in_unit() * part.mass.in_unit();
  }
  if (!(water > 0)) return Failure{OutOfRange{"water left, kg", water, 1e-6, 100'000}};
  const auto at = [&](Wanted wanted) {
    return root(readings, wanted, water_boiled_away.in_unit());
  };
  const auto low = at(Wanted::lowest);
  const auto expected = at(Wanted::expected);
  const auto high = at(Wanted::highest);
  if (!low || !expected || !high) {
    return Failure{OutOfRange{"pH", std::nan(""), least_ph, most_ph}};
  }
  MixturePh result;
  result.range = {PH(*low), PH(*high)};
  result.expected = PH(*expected);
  name_driver(result, readings);
  return result;
}

Range<MolePerKilogram> charge_at(const AcidPart& part, PH at) {
  AcidPart kilogram = part;
  kilogram.mass = Kilogram(1);
  const PartReadings readings = readings_of(kilogram);
  const PerAcid charges = mean_charges(at.in_unit());
  const double free = free_charge(at.in_unit());
  return {MolePerKilogram(part_balance(readings, Wanted::lowest, free, charges)),
          MolePerKilogram(part_balance(readings, Wanted::highest, free, charges))};
}

}  // namespace maslin::science
