// SPDX-License-Identifier: Apache-2.0
// Judges a draft by the framework, the basket and the kitchen alone, in exact arithmetic. It knows
// neither the linear programme nor the solver, so a mistake of theirs cannot pass.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "language/program.hpp"
#include "plan/draft.hpp"
#include "quantity/exact.hpp"

namespace maslin::plan {

// A statement that a draft breaks.
struct Breach {
  enum class Kind : std::uint8_t {
    malformed,  // a slot that is not there, an ingredient the slot does not take, less than nothing
    share,      // a share of the produce outside its range
    addition,   // an addition (credits counted) outside its range
    available,  // more taken than there is, or more bought than may be
    credit,     // a credit that is not what the substitution says
    limit,      // a limit of the framework
    aim,        // not what was asked for
    finished,   // more leaves the pan than went in, or nothing does
    tool,       // an amount that the scales, spoons or counting cannot give
  };
  Kind kind{};
  std::size_t index = 0;  // of the share, addition, substitution, limit or taken line
  std::string text;       // for us, in English: internal
};

// The sugar (or other) account of one substitution, in g or ml of what is replaced.
struct Account {
  std::size_t substitution = 0;
  Rational wanted;  // what the framework asks for in all
  Bounds brought;   // by the donors, over their published range
  Rational brought_expected;
  Rational counted;  // the credit
  Rational to_add;   // what is weighed out of the thing itself
};

struct LimitValue {
  std::size_t limit = 0;
  Bounds value;   // over the ranges of all figures, at the amounts of the plan
  Bounds margin;  // distance of the unfavourable end to the lower and upper bound (0 where none)
};

// What is left of a line of the basket, ready for the pan, kept-back produce aside.
struct Leftover {
  language::IngredientId ingredient;
  PreparedMass left;
};

// How far to boil down, so that the solids stay inside their limits whatever the figures.
struct FinishWindow {
  FinishedMass least;
  FinishedMass most;
};

class VerifiedPlan {
 public:
  const Draft& draft() const { return draft_; }
  PreparedMass prepared_total() const { return total_; }
  IngoingMass ingoing() const { return ingoing_; }
  std::optional<FinishedMass> finished() const { return finished_; }
  std::optional<FinishWindow> window() const { return window_; }
  const std::vector<Rational>& shares() const { return shares_; }  // reached, 0 to 1, by share
  // Reached per kilogram, by addition, in g, ml or pieces, credits counted.
  const std::vector<Rational>& additions() const { return additions_; }
  const std::vector<Account>& accounts() const { return accounts_; }
  const std::vector<LimitValue>& limits() const { return limits_; }
  // By ingredient in order of name; what is in the basket and fits no slot is here whole.
  const std::vector<Leftover>& leftovers() const { return leftovers_; }

 private:
  VerifiedPlan() = default;
  friend class Verifier;

  Draft draft_;
  PreparedMass total_;
  IngoingMass ingoing_;
  std::optional<FinishedMass> finished_;
  std::optional<FinishWindow> window_;
  std::vector<Rational> shares_;
  std::vector<Rational> additions_;
  std::vector<Account> accounts_;
  std::vector<LimitValue> limits_;
  std::vector<Leftover> leftovers_;
};

// Ranges hold exactly; a range of no width (a plain ratio), or one narrower than a step of the
// tool, within one step for each amount in it. Undefined arithmetic is a breach, never a pass.
Result<VerifiedPlan, std::vector<Breach>> verify(const language::Program& program,
                                                 const Draft& draft);

}  // namespace maslin::plan
