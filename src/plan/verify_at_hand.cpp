// SPDX-License-Identifier: Apache-2.0
// Whether all that is taken is at hand, may be bought, or need not be listed. What the lines leave
// is worked out here once more, on purpose: whoever made the draft did so too, and may have erred.
#include <algorithm>
#include <map>

#include "language/amounts.hpp"
#include "language/membership.hpp"
#include "plan/verify_parts.hpp"

namespace maslin::plan {
namespace {

using language::IngredientId;
using language::Line;
using language::Origin;
using language::Program;

// Lines that are one thing to a draft.
struct Kind {
  Origin origin{};
  std::optional<Rational> acidity;
  bool use_first = false;
  bool sulphited = false;

  friend bool operator==(const Kind&, const Kind&) = default;
};
struct Lot {
  Kind kind;
  PreparedMass available;
  PreparedMass used;
  std::size_t first_use = 0;
  bool unlimited = false;  // to buy, without an `at most`
};

// What a line leaves for the pan. The published edible share is an estimate, so its middle counts.
PreparedMass prepared_of(const Program& program, const Line& line) {
  const Rational left = *line.weight - line.spoiled - line.keep_back;
  if (line.basis != language::WeighedAs::gross) return PreparedMass(left);
  Rational share = 1;
  if (line.trim) {
    share = Rational(1) - *line.trim;
  } else if (const auto& edible = program[line.ingredient].edible) {
    share = middle(edible->value);
  }
  return prepared_from(GrossMass(left), share);
}

class AtHand {
 public:
  AtHand(const Case& given, Breaches& breaches) : given_(given), breaches_(breaches) {
    read(given.basket.lines, Origin::basket);
    if (given.kitchen != nullptr) read(given.kitchen->store, Origin::store);
  }

  void use_all() {
    for (const Entry& entry : given_.pan) use(entry);
    for (const auto& [ingredient, lots] : lots_) {
      for (const Lot& lot : lots) check(ingredient, lot);
    }
  }

  std::vector<Leftover> leftovers() {
    std::vector<Leftover> result;
    for (const auto& [ingredient, lots] : lots_) {
      PreparedMass left;
      for (const Lot& lot : lots) {
        if (lot.kind.origin == Origin::basket) left += lot.available - lot.used;
      }
      if (left.is_zero()) continue;
      if (!left.is_positive()) {
        const Program& program = given_.program;
        breaches_.push_back({Breach::Kind::available, lots.front().first_use,
                             program[ingredient].name + ": less than nothing is left of it"});
      }
      result.push_back({ingredient, left});
    }
    std::sort(result.begin(), result.end(), [&](const Leftover& a, const Leftover& b) {
      const std::string& a_name = given_.program[a.ingredient].name;
      const std::string& b_name = given_.program[b.ingredient].name;
      return a_name != b_name ? a_name < b_name : a.ingredient < b.ingredient;
    });
    return result;
  }

 private:
  void read(const std::vector<Line>& lines, Origin origin) {
    for (const Line& line : lines) {
      if (line.weight) lot_for(line, origin).available += prepared_of(given_.program, line);
      if (!line.to_buy) continue;
      Lot& lot = lot_for(line, Origin::to_buy);
      if (line.at_most) {
        // As in the shop: it is trimmed after.
        const auto& edible = given_.program[line.ingredient].edible;
        const Rational share = edible ? middle(edible->value) : Rational(1);
        lot.available += prepared_from(GrossMass(*line.at_most), share);
      } else {
        lot.unlimited = true;
      }
    }
  }

  Lot& lot_for(const Line& line, Origin origin) {
    const Kind kind{origin, line.acidity, line.use_first, line.sulphited};
    if (Lot* found = find(line.ingredient, kind)) return *found;
    std::vector<Lot>& lots = lots_[line.ingredient];
    Lot lot;
    lot.kind = kind;
    lots.push_back(lot);
    return lots.back();
  }

  Lot* find(IngredientId ingredient, const Kind& kind) {
    const auto lots = lots_.find(ingredient);
    if (lots == lots_.end()) return nullptr;
    for (Lot& lot : lots->second) {
      if (lot.kind == kind) return &lot;
    }
    return nullptr;
  }

  void use(const Entry& entry) {
    const Taken& taken = *entry.taken;
    if (taken.origin == Origin::to_have) {
      if (!need_not_be_listed(entry)) say(entry, "it cannot be taken as simply being there");
      return;
    }
    Lot* lot =
        find(taken.ingredient, {taken.origin, taken.acidity, taken.use_first, taken.sulphited});
    if (lot == nullptr) {
      say(entry, "no line is of this origin, strength, priority and sulphiting");
      return;
    }
    if (lot->used.is_zero()) lot->first_use = entry.index;
    lot->used += PreparedMass(taken.weight);
  }

  void check(IngredientId ingredient, const Lot& lot) {
    if (lot.used.is_zero() || (lot.unlimited && lot.used.is_defined())) return;
    if (lot.used <= lot.available) return;
    breaches_.push_back({Breach::Kind::available, lot.first_use,
                         given_.program[ingredient].name + ": " + lot.used.in_base().to_decimal(3) +
                             " g are taken of " + lot.available.in_base().to_decimal(3) + " g"});
  }

  // Salt, spice and the like: what the framework asks for by name, and no line has anything of it.
  bool need_not_be_listed(const Entry& entry) const {
    if (entry.list != SlotKind::addition) return false;
    const Taken& taken = *entry.taken;
    const language::Addition& addition = given_.framework.additions[taken.slot];
    const language::Target& target = addition.target;
    const IngredientId meant =
        target.of_class.valid() ? given_.program[target.of_class].usually : target.ingredient;
    if (taken.ingredient != meant || taken.use_first || taken.sulphited) return false;
    const bool sour = needs_strength(given_.program[taken.ingredient]);
    if (sour != taken.acidity.has_value()) return false;
    // A bottle yet to be fetched is of the strength the framework asks for.
    if (sour && !(*taken.acidity == stated_strength(addition))) return false;
    return std::none_of(lots_.begin(), lots_.end(), [&](const auto& each) {
      return takes(given_.program, target, each.first);
    });
  }

  void say(const Entry& entry, const std::string& what) {
    breaches_.push_back({Breach::Kind::available, entry.index,
                         given_.program[entry.taken->ingredient].name + ": " + what});
  }

  const Case& given_;
  Breaches& breaches_;
  std::map<IngredientId, std::vector<Lot>> lots_;
};

}  // namespace

std::vector<Leftover> check_at_hand(const Case& given, Breaches& breaches) {
  AtHand at_hand(given, breaches);
  at_hand.use_all();
  return at_hand.leftovers();
}

}  // namespace maslin::plan
