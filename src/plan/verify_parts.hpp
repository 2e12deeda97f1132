// SPDX-License-Identifier: Apache-2.0
// What the parts of the verifier share: the case before them, and sums over it. Private to
// verify*.cpp.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "language/program.hpp"
#include "plan/verify.hpp"

namespace maslin::plan {

using language::SlotKind;
using Breaches = std::vector<Breach>;

// One thing in the pan, and the list of the draft it stands in.
struct Entry {
  SlotKind list{};
  std::size_t index = 0;  // among all that is taken: produce, then additions, then substitutes
  const Taken* taken = nullptr;
};

struct Case {
  const language::Program& program;
  const Draft& draft;
  const language::Framework& framework;
  const language::Basket& basket;
  const language::Kitchen* kitchen = nullptr;  // none: no kitchen was given
  Tools tools;
  std::vector<Entry> pan;
  PreparedMass total;  // of the produce
  IngoingMass ingoing;
};

// ---- Sums (verify_credits.cpp) ------------------------------------------------------------------

// Undefined when either is: `smaller` and `larger` would pass the other one on.
Rational least_of(const Rational& a, const Rational& b);
Rational most_of(const Rational& a, const Rational& b);

// What a ratio per kilogram of prepared produce comes to, in g, ml or pieces.
Rational wanted_at(const Case& given, const Rational& per_kilogram);
// How much of an addition is weighed out, and how much of it is credited, in its own measure.
Rational amount_taken(const Case& given, std::size_t addition);
Rational amount_credited(const Case& given, std::size_t addition);

// The steps of the tools an addition is taken with, in its own measure. Where nothing of it is
// taken (all is credited), the step it would have been taken with.
struct Steps {
  Rational largest;
  Rational sum;
};
Steps steps_of(const Case& given, std::size_t addition);

// Whether a substitution is of another thing, not of another strength of the same.
bool is_exchange(const language::Substitution& substitution);
// Whether a substitution lets this ingredient stand in: by its donor, and by what `only` says.
bool is_donor(const Case& given, const language::Substitution& substitution,
              language::IngredientId ingredient);

// ---- Parts --------------------------------------------------------------------------------------

// Whether each thing taken is what its slot takes, and can be measured out (verify_taken.cpp).
// False when slots or ingredients do not exist, so that nothing else can be judged.
bool check_taken(const Case& given, Breaches& breaches);

// Whether it is all at hand; and what is left of the basket (verify_at_hand.cpp).
std::vector<Leftover> check_at_hand(const Case& given, Breaches& breaches);

// Whether the credits are what the substitutions say (verify_credits.cpp).
std::vector<Account> check_credits(const Case& given, Breaches& breaches);

// Whether the limits hold, and how far to boil down (verify_limits.cpp).
std::vector<LimitValue> check_limits(const Case& given, Breaches& breaches);
std::optional<FinishWindow> check_finished(const Case& given, Breaches& breaches);

}  // namespace maslin::plan
