// SPDX-License-Identifier: Apache-2.0
#include "prove/case.hpp"

#include <algorithm>
#include <cmath>

#include "language/contents.hpp"
#include "language/membership.hpp"
#include "prove/boilings.hpp"

namespace maslin::prove {
namespace {

using language::Addition;
using language::Extent;
using language::Limit;
using language::Property;
using language::Slot;
using language::SlotKind;
using language::Stuff;
using language::Substitution;
using language::Whole;

constexpr double grams_in_kilogram = 1000;
// No mix is counted on whose pH is higher, whatever its limits say (21 CFR 114.3).
const Rational never_above(Rational::Wide{46}, Rational::Wide{10});

bool caps_produce(const Limit& limit) {
  return !limit.property && limit.whole == Whole::prepared_produce && limit.has_high;
}

// Kilograms of a thing for one unit of the measure of its addition (kg, l or thousands).
double kilograms_per_unit(const Case& given, std::size_t addition, const Stuff& stuff) {
  const Rational amount =
      amount_per_gram(given.program, given.framework.additions[addition], stuff);
  return 1 / amount.to_double();
}

// What is put in of it, in its own measure for a kilogram of produce.
Range<double> range_of(const Addition& addition) {
  return {addition.range.low.to_double() / grams_in_kilogram,
          addition.range.high.to_double() / grams_in_kilogram};
}

// What of an addition another one brings, credited in full.
const Substitution* full_credit(const Case& given, std::size_t addition) {
  for (const Substitution& each : given.framework.substitutions) {
    if (each.addition == addition && each.extent == Extent::full) return &each;
  }
  return nullptr;
}

// Which additions the planner chooses, in their order; then how far to boil down.
class Answers {
 public:
  explicit Answers(const Case& given) {
    for (const Addition& addition : given.framework.additions) {
      places_.push_back(addition.range.is_exact() ? none : count_++);
    }
    if (says_how_far(given.framework)) boiled_off_ = count_++;
  }
  std::size_t count() const { return count_; }
  std::optional<std::size_t> of(std::size_t addition) const {
    if (places_[addition] == none) return std::nullopt;
    return places_[addition];
  }
  std::optional<std::size_t> boiled_off() const { return boiled_off_; }

 private:
  static constexpr std::size_t none = static_cast<std::size_t>(-1);
  std::vector<std::size_t> places_;
  std::optional<std::size_t> boiled_off_;
  std::size_t count_ = 0;
};

// What a gram of a thing counts for in a limit, at the end unfavourable to it.
class Counting {
 public:
  Counting(const Case& given, const language::Boilings& boilings, const Limit& limit, bool low,
           const blend::Boiling& boiling)
      : given_(given), limit_(limit), low_(low) {
    bound_ = (low ? limit.range.low : limit.range.high).to_double();
    if (!is_linear(limit)) curved_.emplace(given.program, boilings, limit, low, boiling);
  }

  double of(const Stuff& stuff, const Slot& slot) const {
    const double sign = low_ ? 1 : -1;
    if (curved_) return sign * curved_->of(stuff, slot);
    double share = 0;
    if (!limit_.property) {
      share = takes(given_.program, limit_.share_of, stuff.ingredient) ? 1 : 0;
    } else {
      const auto known = share_of(given_.program, *limit_.property, stuff);
      share = known ? (low_ ? known->low : known->high).to_double() : (low_ ? 0 : 1);
    }
    const bool counts =
        is_of_finished(limit_) ||
        (slot.kind != SlotKind::produce && joins_whole(given_.program, limit_, stuff.ingredient));
    return sign * (share - (counts ? bound_ : 0));
  }
  double of_boiled_off() const {
    const double sign = low_ ? 1 : -1;
    if (curved_) return sign * curved_->of_boiled_off();
    return is_of_finished(limit_) ? sign * bound_ : 0;
  }
  double constant() const {
    if (curved_ || is_of_finished(limit_)) return 0;
    return (low_ ? -1 : 1) * bound_;
  }

 private:
  const Case& given_;
  const Limit& limit_;
  bool low_;
  double bound_ = 0;
  std::optional<blend::LimitRow> curved_;
};

class RowMaker {
 public:
  RowMaker(const Case& given, const Choice& choice, const blend::Boiling& boiling)
      : given_(given),
        choice_(choice),
        boiling_(boiling),
        boilings_(given.framework),
        answers_(given) {}

  std::vector<Row> run() {
    const auto& limits = given_.framework.limits;
    for (std::size_t i = 0; i < limits.size(); ++i) {
      if (!is_proved(limits[i])) continue;
      if (limits[i].has_low) add_limit(i, true);
      if (limits[i].has_high) add_limit(i, false);
      if (limits[i].property == Property::stability_index && limits[i].has_low) keep_sour(i);
    }
    const auto& additions = given_.framework.additions;
    for (std::size_t i = 0; i < additions.size(); ++i) {
      if (const auto place = answers_.of(i)) add_range(*place, range_of(additions[i]));
    }
    if (answers_.boiled_off()) add_boiling();
    return std::move(rows_);
  }

 private:
  std::vector<double> nothing() const { return std::vector<double>(answers_.count(), 0.0); }

  void add_range(std::size_t place, const Range<double>& range) {
    Row low;
    low.of_answer = nothing();
    low.of_answer[place] = 1;
    low.constant = -range.low;
    Row high;
    high.of_answer = nothing();
    high.of_answer[place] = -1;
    high.constant = range.high;
    rows_.push_back(std::move(low));
    rows_.push_back(std::move(high));
  }

  template <class Of>
  void add_weighed(Row row, const Of& of, double of_boiled_off) {
    for (const Member& member : given_.members) {
      row.of_member.push_back(
          of(Stuff{member.ingredient, std::nullopt}, Slot{SlotKind::produce, member.share}));
    }
    row.of_answer = nothing();
    if (answers_.boiled_off()) row.of_answer[*answers_.boiled_off()] = of_boiled_off;
    add_additions(std::move(row), of, 0);
  }

  // One addition after another. What is credited in full lies between two lines: where a row wants
  // little of it, both must hold; where it wants much, the lower one is what is sure.
  template <class Of>
  void add_additions(Row row, const Of& of, std::size_t from) {
    const auto& additions = given_.framework.additions;
    for (std::size_t i = from; i < additions.size(); ++i) {
      const Stuff& stuff = choice_.additions[i];
      const double each =
          of(stuff, Slot{SlotKind::addition, i}) * kilograms_per_unit(given_, i, stuff);
      if (const auto place = answers_.of(i)) {
        row.of_answer[*place] += each;
        continue;
      }
      const double amount = range_of(additions[i]).low;
      const Substitution* credit = full_credit(given_, i);
      if (credit == nullptr) {
        row.constant += each * amount;
        continue;
      }
      const double cap = credit->cap ? credit->cap->to_double() : 1;
      if (each < 0) {
        Row capped = row;
        capped.constant += each * amount * (1 - cap);
        add_additions(std::move(capped), of, i + 1);
      }
      row.constant += each * amount;
      add_brought(row, *credit, each);
    }
    rows_.push_back(std::move(row));
  }

  // What donors among the additions bring instead; donors among the produce as well.
  void add_brought(Row& row, const Substitution& credit, double each) const {
    const auto& additions = given_.framework.additions;
    for (std::size_t k = 0; k < additions.size(); ++k) {
      const Stuff& donor = choice_.additions[k];
      if (k == credit.addition || !donates(credit, donor.ingredient)) continue;
      const double worth =
          credit_per_gram(given_.program, credit, given_.framework, donor).to_double();
      if (!std::isfinite(worth)) continue;
      const double brought = worth * kilograms_per_unit(given_, k, donor);
      if (const auto place = answers_.of(k)) {
        row.of_answer[*place] -= each * brought;
      } else {
        row.constant -= each * brought * range_of(additions[k]).low;
      }
    }
    for (std::size_t m = 0; m < given_.members.size(); ++m) {
      const Stuff stuff{given_.members[m].ingredient, std::nullopt};
      if (!donates(credit, stuff.ingredient)) continue;
      const double worth =
          credit_per_gram(given_.program, credit, given_.framework, stuff).to_double();
      if (std::isfinite(worth)) row.of_member[m] -= each * worth;
    }
  }

  bool donates(const Substitution& credit, language::IngredientId ingredient) const {
    if (!takes(given_.program, credit.donor, ingredient)) return false;
    return credit.only.empty() ||
           std::any_of(credit.only.begin(), credit.only.end(), [&](const auto& target) {
             return takes(given_.program, target, ingredient);
           });
  }

  // The share of the acid that counts was taken at this pH, so the mix must not be above it.
  void keep_sour(std::size_t index) {
    Limit sour;
    sour.property = Property::ph;
    sour.has_high = true;
    sour.range = Bounds::exactly(never_above);
    add_row(index, sour, false);
  }

  void add_limit(std::size_t index, bool low) {
    add_row(index, given_.framework.limits[index], low);
  }

  void add_row(std::size_t index, const Limit& limit, bool low) {
    const Counting counting(given_, boilings_, limit, low, boiling_);
    Row row;
    row.limit = index;
    row.is_limit = true;
    row.constant = counting.constant();
    add_weighed(
        std::move(row),
        [&](const Stuff& stuff, const Slot& slot) { return counting.of(stuff, slot); },
        counting.of_boiled_off());
  }

  void add_boiling() {
    Row least;
    least.of_answer = nothing();
    least.of_answer[*answers_.boiled_off()] = 1;
    rows_.push_back(std::move(least));
    // What cannot boil away stays, and as much of the water as was expected to.
    add_weighed(
        Row{},
        [&](const Stuff& stuff, const Slot& /*slot*/) {
          const auto solids = share_of(given_.program, Property::total_solids, stuff);
          return 1 - (solids ? solids->low.to_double() : 0);
        },
        -1);
    add_weighed(
        Row{},
        [&](const Stuff& stuff, const Slot& /*slot*/) {
          const auto composition = composition_of(given_.program, stuff);
          return composition.or_none(science::Substance::water).low.to_double() *
                 (1 - boiling_.water_kept);
        },
        -1);
    // What goes in later cannot boil away before.
    add_weighed(
        Row{},
        [&](const Stuff& stuff, const Slot& slot) {
          const auto composition = composition_of(given_.program, stuff);
          return composition.or_none(science::Substance::water).low.to_double() *
                 boilings_.settled_share(slot).to_double();
        },
        -1);
  }

  const Case& given_;
  const Choice& choice_;
  const blend::Boiling& boiling_;
  const language::Boilings boilings_;
  Answers answers_;
  std::vector<Row> rows_;
};

std::vector<Stuff> stuffs_of(const Case& given, std::size_t index) {
  const Addition& addition = given.framework.additions[index];
  std::vector<Stuff> result;
  for (const language::IngredientId id : members(given.program, addition.target)) {
    if (refusal_of(given.program, given.framework, id) != nullptr) continue;
    if (!needs_strength(given.program[id])) {
      const Stuff stuff{id, std::nullopt};
      if (amount_per_gram(given.program, addition, stuff).is_positive()) result.push_back(stuff);
      continue;
    }
    const Rational stated = stated_strength(addition);
    std::vector<Rational> strengths = {stated};
    if (allows_other_strength(given.framework, index)) {
      const Bounds others = other_strengths(addition);
      strengths = {others.low, others.high};
    }
    for (const Rational& strength : strengths) {
      const Stuff stuff{id, strength};
      if (amount_per_gram(given.program, addition, stuff).is_positive()) result.push_back(stuff);
    }
  }
  return result;
}

double least_towards(const Case& given, const Choice& choice, const Limit& limit) {
  double sum = 0;
  for (std::size_t i = 0; i < choice.additions.size(); ++i) {
    const Stuff& stuff = choice.additions[i];
    if (!takes(given.program, limit.share_of, stuff.ingredient)) continue;
    sum += range_of(given.framework.additions[i]).low * kilograms_per_unit(given, i, stuff);
  }
  return sum;
}

}  // namespace

Case case_of(const language::Program& program, const language::Framework& framework) {
  Case given{program, framework, {}, {}};
  for (std::size_t share = 0; share < framework.shares.size(); ++share) {
    const Bounds& range = framework.shares[share].range;
    given.shares.push_back({range.low.to_double(), range.high.to_double()});
    for (const language::IngredientId id : members(program, framework.shares[share].target)) {
      if (refusal_of(program, framework, id) == nullptr) given.members.push_back({share, id});
    }
  }
  return given;
}

std::vector<Cap> caps_of(const Case& given, const Choice& choice) {
  std::vector<Cap> caps;
  for (const Limit& limit : given.framework.limits) {
    if (!caps_produce(limit)) continue;
    Cap cap;
    for (const Member& member : given.members) {
      cap.counts.push_back(takes(given.program, limit.share_of, member.ingredient));
    }
    cap.most = limit.range.high.to_double() - least_towards(given, choice, limit);
    caps.push_back(std::move(cap));
  }
  return caps;
}

bool is_proved(const Limit& limit) { return is_computed(limit) && !caps_produce(limit); }

std::size_t answers_of(const Case& given) { return Answers(given).count(); }

Range<double> weight_of(const Case& given, std::size_t addition, const Stuff& stuff) {
  const Range<double> range = range_of(given.framework.additions[addition]);
  const double each = kilograms_per_unit(given, addition, stuff);
  return {range.low * each, range.high * each};
}

std::optional<std::vector<Choice>> choices_of(const Case& given, std::size_t most) {
  std::vector<Choice> result = {Choice{}};
  for (std::size_t i = 0; i < given.framework.additions.size(); ++i) {
    std::vector<Choice> longer;
    for (const Choice& choice : result) {
      for (const Stuff& stuff : stuffs_of(given, i)) {
        longer.push_back(choice);
        longer.back().additions.push_back(stuff);
        if (longer.size() > most) return std::nullopt;
      }
    }
    result = std::move(longer);
  }
  return result;
}

std::vector<Row> rows_of(const Case& given, const Choice& choice, const blend::Boiling& boiling) {
  return RowMaker(given, choice, boiling).run();
}

blend::Boiling expected_boiling(const Case& given, const Choice& choice, double water_kept) {
  std::vector<language::InPan> parts;
  double ingoing = 0;
  double water = 0;
  const auto put = [&](const Stuff& stuff, const Slot& slot, double kilograms) {
    if (!(kilograms > 0)) return;
    parts.push_back({stuff, Kilogram(kilograms), slot});
    ingoing += kilograms;
    water +=
        kilograms *
        composition_of(given.program, stuff).or_none(science::Substance::water).low.to_double();
  };
  for (std::size_t share = 0; share < given.shares.size(); ++share) {
    const auto first = std::find_if(given.members.begin(), given.members.end(),
                                    [&](const Member& each) { return each.share == share; });
    if (first == given.members.end()) continue;
    const Range<double>& range = given.shares[share];
    put({first->ingredient, std::nullopt}, {SlotKind::produce, share},
        (range.low + range.high) / 2);
  }
  for (std::size_t i = 0; i < choice.additions.size(); ++i) {
    const Range<double> weight = weight_of(given, i, choice.additions[i]);
    put(choice.additions[i], {SlotKind::addition, i}, (weight.low + weight.high) / 2);
  }
  std::optional<Kilogram> finished;
  if (says_how_far(given.framework)) finished = Kilogram(ingoing - (1 - water_kept) * water);
  blend::Boiling boiling;
  const auto pan = language::Contents::of(given.program, given.framework, parts, finished);
  if (pan) boiling = blend::observed(given.framework, *pan);
  boiling = bounded(given, choice, boiling, water_kept);
  // The dissociated share of the acid goes by the pH that is allowed, not by the one of this mix.
  boiling.ph.high = never_above.to_double();
  for (const Limit& limit : given.framework.limits) {
    if (limit.property == Property::ph && limit.has_high) {
      boiling.ph.high = std::min(boiling.ph.high, limit.range.high.to_double());
    }
  }
  return boiling;
}

}  // namespace maslin::prove
