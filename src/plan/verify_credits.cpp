// SPDX-License-Identifier: Apache-2.0
// What is credited instead of being weighed out, and the sums that additions and credits share.
#include <algorithm>

#include "language/amounts.hpp"
#include "language/membership.hpp"
#include "plan/verify_parts.hpp"

namespace maslin::plan {
namespace {

using language::Addition;
using language::Extent;
using language::Measured;
using language::Property;
using language::Stuff;
using language::Substitution;

const Rational kilogram(1000);  // g

// A step of the tool in the measure of the addition.
Rational step_of(const Case& given, const Addition& addition, const Taken& taken) {
  const language::Ingredient& ingredient = given.program[taken.ingredient];
  Rational grams = given.tools.scale_step;
  if (taken.tool == Tool::spoons) {
    if (!given.tools.spoon_step || !ingredient.density) return Rational::undefined();
    grams = *given.tools.spoon_step * middle(ingredient.density->value);
  } else if (taken.tool == Tool::count) {
    if (!ingredient.piece) return Rational::undefined();
    grams = middle(ingredient.piece->value);
  }
  return grams * amount_per_gram(given.program, addition, {taken.ingredient, taken.acidity});
}

// The coarser one of the tools that might have been used. None where that cannot be known, so that
// the range has to hold exactly.
Rational usual_step(const Case& given, const Addition& addition) {
  switch (addition.measured) {
    case Measured::by_weight:
      return given.tools.scale_step;
    case Measured::by_count:
      return 1;
    case Measured::by_volume:
      break;
  }
  Rational step = given.tools.spoon_step.value_or(Rational(0));
  const language::Target& target = addition.target;
  const language::IngredientId usual =
      target.of_class.valid() ? given.program[target.of_class].usually : target.ingredient;
  if (!usual.valid()) return step;
  const Rational on_scales =
      given.tools.scale_step * amount_per_gram(given.program, addition, {usual, std::nullopt});
  return on_scales.is_defined() ? most_of(step, on_scales) : step;
}

// What a gram of a donor is worth, over its published range and as expected. Where no table has the
// figure, or the measure fits no such exchange, it is worth nothing.
struct Worth {
  Bounds range;
  Rational expected;
};
Worth worth_of(const Case& given, const Substitution& substitution, const Stuff& stuff) {
  const auto share = share_of(given.program, substitution.by, stuff);
  if (!share) return {};
  if (!share->low.is_defined() || !share->high.is_defined()) {
    return {*share, Rational::undefined()};
  }
  const Rational expected = credit_per_gram(given.program, substitution, given.framework, stuff);
  if (!expected.is_defined()) return {};
  if (substitution.by != Property::acidity && substitution.by != Property::acetic_acid) {
    return {*share, expected};
  }
  const Rational strength = stated_strength(given.framework.additions[substitution.addition]);
  return {{share->low / strength, share->high / strength}, expected};
}

// The donors in the pan. What the substitution replaces is no donor of it; what stands in for one
// thing does not stand in for another.
bool counts_for(const Case& given, std::size_t index, const Entry& entry) {
  const Substitution& substitution = given.framework.substitutions[index];
  if (entry.list == SlotKind::addition && entry.taken->slot == substitution.addition) return false;
  if (entry.list == SlotKind::substitute && entry.taken->slot != index) return false;
  return is_donor(given, substitution, entry.taken->ingredient);
}

Account account_of(const Case& given, std::size_t index) {
  const Substitution& substitution = given.framework.substitutions[index];
  const Addition& addition = given.framework.additions[substitution.addition];
  Account account;
  account.substitution = index;
  account.to_add = amount_taken(given, substitution.addition);
  account.counted = given.draft.credits[index];
  // A plain ratio says itself what is wanted; of a range, what was chosen in all.
  account.wanted = addition.range.is_exact()
                       ? wanted_at(given, addition.range.low)
                       : account.to_add + amount_credited(given, substitution.addition);
  for (const Entry& entry : given.pan) {
    if (!counts_for(given, index, entry)) continue;
    const Taken& taken = *entry.taken;
    const Worth worth = worth_of(given, substitution, {taken.ingredient, taken.acidity});
    account.brought.low += taken.weight * worth.range.low;
    account.brought.high += taken.weight * worth.range.high;
    account.brought_expected += taken.weight * worth.expected;
  }
  return account;
}

bool is_as_stated(const Case& given, const Account& account) {
  const Substitution& substitution = given.framework.substitutions[account.substitution];
  const Addition& addition = given.framework.additions[substitution.addition];
  const Rational& credit = account.counted;
  if (!account.brought.low.is_defined() || !account.brought.high.is_defined()) return false;
  const Rational capped = substitution.cap.value_or(Rational(1)) * account.wanted;
  // Never more than is in the pan, whatever the tools can give.
  if (!(credit >= Rational(0) && credit <= account.brought_expected)) return false;
  if (substitution.extent == Extent::optional) return credit <= capped;
  const Rational due = least_of(account.brought_expected, capped);
  if (addition.range.is_exact()) return credit == due;
  return absolute(credit - due) <= steps_of(given, substitution.addition).largest;
}

}  // namespace

Rational least_of(const Rational& a, const Rational& b) {
  if (!a.is_defined() || !b.is_defined()) return Rational::undefined();
  return smaller(a, b);
}

Rational most_of(const Rational& a, const Rational& b) {
  if (!a.is_defined() || !b.is_defined()) return Rational::undefined();
  return larger(a, b);
}

Rational wanted_at(const Case& given, const Rational& per_kilogram) {
  return per_kilogram * given.total.in_base() / kilogram;
}

Rational amount_taken(const Case& given, std::size_t addition) {
  Rational sum;
  for (const Taken& taken : given.draft.additions) {
    if (taken.slot != addition) continue;
    sum += taken.weight * amount_per_gram(given.program, given.framework.additions[addition],
                                          {taken.ingredient, taken.acidity});
  }
  return sum;
}

Rational amount_credited(const Case& given, std::size_t addition) {
  Rational sum;
  for (std::size_t i = 0; i < given.framework.substitutions.size(); ++i) {
    if (given.framework.substitutions[i].addition == addition) sum += given.draft.credits[i];
  }
  return sum;
}

Steps steps_of(const Case& given, std::size_t addition) {
  const Addition& slot = given.framework.additions[addition];
  Steps steps;
  bool any = false;
  for (const Taken& taken : given.draft.additions) {
    if (taken.slot != addition) continue;
    any = true;
    const Rational step = step_of(given, slot, taken);
    steps.largest = most_of(steps.largest, step);
    steps.sum += step;
  }
  if (any) return steps;
  const Rational step = usual_step(given, slot);
  return {step, step};
}

bool is_exchange(const Substitution& substitution) {
  return substitution.donor.name != substitution.replaced.name;
}

bool is_donor(const Case& given, const Substitution& substitution,
              language::IngredientId ingredient) {
  if (!takes(given.program, substitution.donor, ingredient)) return false;
  const auto& only = substitution.only;
  return only.empty() || std::any_of(only.begin(), only.end(), [&](const language::Target& each) {
           return takes(given.program, each, ingredient);
         });
}

std::vector<Account> check_credits(const Case& given, Breaches& breaches) {
  std::vector<Account> accounts;
  for (std::size_t i = 0; i < given.framework.substitutions.size(); ++i) {
    const Substitution& substitution = given.framework.substitutions[i];
    const auto say = [&](const std::string& what) {
      breaches.push_back({Breach::Kind::credit, i,
                          substitution.donor.name + " for " + substitution.replaced.name + ": " +
                              given.draft.credits[i].to_decimal(3) + what});
    };
    if (!is_exchange(substitution)) {
      if (!given.draft.credits[i].is_zero()) say(" is credited for another strength");
      continue;
    }
    accounts.push_back(account_of(given, i));
    const Account& account = accounts.back();
    if (is_as_stated(given, account)) continue;
    say(" is credited, of " + account.brought_expected.to_decimal(3) + " brought and " +
        account.wanted.to_decimal(3) + " wanted");
  }
  return accounts;
}

}  // namespace maslin::plan
