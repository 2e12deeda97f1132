// SPDX-License-Identifier: Apache-2.0
#include "prove/boilings.hpp"

#include <algorithm>
#include <cmath>

#include "science/evaporation.hpp"

namespace maslin::prove {
namespace {

// What the tables and the vapour leave open.
struct Uncertain {
  // Tables may give water as a range: the least that there is of it over the most.
  double water = 1;
  // What boils off may be water or acid: the most acid there is over the least water.
  double acid = 0;
};

// The acid kept by a boiling of everything together that keeps this share of the water.
Range<double> acid_kept_of_all(double water_kept) {
  return {std::pow(water_kept, science::acetic_acid_volatility.high.in_unit()),
          std::pow(water_kept, science::acetic_acid_volatility.low.in_unit())};
}

// How far apart the least and the most acid that is kept can be in one pan, whatever stays of the
// water, where the one is a part of what is kept of all and the other a multiple.
double widest_keeping(const Range<double>& beside, const Uncertain& uncertain) {
  constexpr int steps = 50;
  double widest = 0;
  for (int i = 1; i <= steps; ++i) {
    const double stays = i / static_cast<double>(steps);
    const double least = std::max(1 - (1 - stays) / std::max(uncertain.water, 1e-3), 0.0);
    const double low = acid_kept_of_all(least).low * beside.low;
    const double most = std::min(stays + uncertain.acid * (1 - low), 1.0);
    widest = std::max(widest, std::min(acid_kept_of_all(most).high * beside.high, 1.0) - low);
  }
  constexpr double between_the_steps = 1.03;
  return std::min(widest * between_the_steps, 1.0);
}

// Something that goes into the pan, for a kilogram of produce.
struct Entering {
  Range<double> weight;
  Range<double> water;  // share of it
  bool produce = false;
  std::vector<language::Passing> passing;
  double certain = 1;  // the least water of one of them over its most
  double acid = 0;     // share of it, at the most

  // The share of it that is in the pan before a boiling ends.
  double there(std::size_t boiling) const {
    double sum = 0;
    for (const language::Passing& each : passing) {
      if (each.from <= boiling) sum += each.fraction.to_double();
    }
    return std::min(sum, 1.0);
  }
};

Range<double> water_of(const language::Program& program, const language::Stuff& stuff) {
  const science::Composition composition = composition_of(program, stuff);
  const auto& water = composition[science::Substance::water];
  // What no table gives may be anything.
  if (!water) return {0, 1};
  // Alcohol goes as water does, or sooner.
  const double alcohol = composition.or_none(science::Substance::alcohol).high.to_double();
  return {water->low.to_double(), water->high.to_double() + alcohol};
}

double certain(const Range<double>& water) { return water.high > 0 ? water.low / water.high : 1; }

std::vector<Entering> entering_of(const Case& given, const Choice& choice,
                                  const language::Boilings& boilings) {
  std::vector<Entering> result;
  for (std::size_t share = 0; share < given.shares.size(); ++share) {
    Entering each{
        given.shares[share], {1, 0}, true, boilings.of({language::SlotKind::produce, share})};
    for (const Member& member : given.members) {
      if (member.share != share) continue;
      const Range<double> water = water_of(given.program, {member.ingredient, std::nullopt});
      each.water = {std::min(each.water.low, water.low), std::max(each.water.high, water.high)};
      each.certain = std::min(each.certain, certain(water));
    }
    if (each.water.low <= each.water.high) result.push_back(std::move(each));
  }
  for (std::size_t i = 0; i < choice.additions.size(); ++i) {
    const language::Stuff& stuff = choice.additions[i];
    const Range<double> water = water_of(given.program, stuff);
    const Bounds acid =
        composition_of(given.program, stuff).or_none(science::Substance::acetic_acid);
    result.push_back({weight_of(given, i, stuff), water, false,
                      boilings.of({language::SlotKind::addition, i}), certain(water),
                      acid.high.to_double()});
  }
  return result;
}

class Bounding {
 public:
  Bounding(const Case& given, const Choice& choice, double water_kept)
      : boilings_(given.framework),
        entering_(entering_of(given, choice, boilings_)),
        water_kept_(water_kept) {
    double unspoilt = 1;  // the least share of the water there that earlier boilings left
    for (std::size_t i = 0; i < boilings_.all().size(); ++i) {
      in_the_pan_.push_back(least_in_the_pan(i, unspoilt));
      most_lost_.push_back(most_lost(i, unspoilt));
      unspoilt *= 1 - most_lost_.back();
    }
  }

  std::size_t count() const { return most_lost_.size(); }

  Uncertain uncertain() const {
    Uncertain result;
    double acid = 0;
    double water = 0;
    for (const Entering& each : entering_) {
      result.water = std::min(result.water, each.certain);
      acid += each.weight.high * each.acid;
      water += each.weight.low * each.water.low;
    }
    result.acid = water > 0 ? acid / water : 1;
    return result;
  }

  // Of the water that is there from one boiling on, as a multiple of what stays of all: the least,
  // and the most.
  Range<double> beside_all(std::size_t from) const {
    Range<double> result{1, 1};
    for (std::size_t i = 0; i < most_lost_.size(); ++i) {
      const double lost = most_lost_[i];
      if (i < from) {
        result.high /= std::max(1 - lost, 1e-3);
      } else if (!boilings_.settling()) {
        result.low *= 1 - lost;
      } else if (in_the_pan_[i] < 1) {
        result.low *= (1 - lost) / (1 - lost * in_the_pan_[i]);
      }
    }
    return result;
  }

 private:
  // The produce that can come in after a boiling at the most, and the rest of the kilogram.
  struct Produce {
    double early = 0;
    double late = 0;
  };
  Produce most_late(std::size_t boiling) const {
    double late_most = 0;
    double early_least = 0;
    for (const Entering& each : entering_) {
      if (!each.produce) continue;
      late_most += each.weight.high * (1 - each.there(boiling));
      early_least += each.weight.low * each.there(boiling);
    }
    const double late = std::min(late_most, std::max(1 - early_least, 0.0));
    return {std::max(1 - late, 0.0), late};
  }

  // W / T at the least.
  double least_in_the_pan(std::size_t boiling, double unspoilt) const {
    const Produce produce = most_late(boiling);
    double driest_early = 1;
    double wettest_late = 0;
    double there = 0;
    double later = 0;
    for (const Entering& each : entering_) {
      const double now = each.there(boiling);
      if (!each.produce) {
        there += each.weight.low * each.water.low * now;
        later += each.weight.high * each.water.high * (1 - now);
        continue;
      }
      if (now > 0) driest_early = std::min(driest_early, each.water.low);
      if (now < 1) wettest_late = std::max(wettest_late, each.water.high);
    }
    there += produce.early * driest_early;
    later += produce.late * wettest_late;
    there *= unspoilt;
    constexpr double a_drop = 1e-9;
    return later <= a_drop ? 1 : there / (there + later);
  }

  // Weight over water of what is in the pan, at the most: each thing at the end that makes it more.
  double most_weight_per_water(std::size_t boiling) const {
    constexpr int rounds = 20;
    double ratio = 1;
    for (int round = 0; round < rounds; ++round) {
      double weight = 0;
      double water = 0;
      for (const Entering& each : entering_) {
        const bool makes_more = 1 - ratio * each.water.low > 0;
        const double part = (makes_more ? each.weight.high : each.weight.low) * each.there(boiling);
        weight += part;
        water += part * each.water.low;
      }
      if (!(water > 0)) return infinite;
      if (weight / water <= ratio) break;
      ratio = weight / water;
    }
    return ratio;
  }

  // l at the most.
  double most_lost(std::size_t boiling, double unspoilt) const {
    const language::OnTheHob& each = boilings_.all()[boiling];
    const bool to_a_target = each.solids || boilings_.settling() == boiling;
    const double missing = boilings_.settling() ? 1 - water_kept_ : 1;
    const double of_all = std::min(missing / in_the_pan_[boiling], 1.0);
    if (to_a_target) return of_all;
    const double of_weight = each.loses.high.to_double();
    if (!(unspoilt > 0)) return of_all;
    return std::min(of_weight * most_weight_per_water(boiling) / unspoilt, of_all);
  }

  static constexpr double infinite = 1e9;

  language::Boilings boilings_;
  std::vector<Entering> entering_;
  double water_kept_;
  std::vector<double> in_the_pan_;  // W / T at the least
  std::vector<double> most_lost_;   // l at the most
};

}  // namespace

blend::Boiling bounded(const Case& given, const Choice& choice, const blend::Boiling& seen,
                       double water_kept) {
  const Bounding bounding(given, choice, water_kept);
  blend::Boiling boiling = seen;
  boiling.is_boiled_down = says_how_far(given.framework);
  boiling.acid_kept.resize(bounding.count() + 1);
  const Uncertain uncertain = bounding.uncertain();
  const double of_all = acid_kept_of_all(water_kept).low;
  for (std::size_t i = 0; i + 1 < boiling.acid_kept.size(); ++i) {
    const Range<double> beside = bounding.beside_all(i);
    // As for all that is there, for it is the same power of a product.
    const Range<double> acid{acid_kept_of_all(beside.low).low, acid_kept_of_all(beside.high).high};
    boiling.acid_kept[i] = {{std::min(of_all * acid.low, 1.0), 1}, widest_keeping(acid, uncertain)};
  }
  boiling.acid_kept.back() = blend::KeptAcid{};
  boiling.water_kept = water_kept;
  return boiling;
}

}  // namespace maslin::prove
