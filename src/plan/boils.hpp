// SPDX-License-Identifier: Apache-2.0
// The pan: in how many boils, what goes into each, and when to stop.
#pragma once

#include <optional>
#include <vector>

#include "plan/course.hpp"
#include "plan/volumes.hpp"

namespace maslin::plan {

// How full a wide pan may be at the start, of what it holds to the brim: it spits, it has to be
// stirred, and syrup rises. Common practice, no source.
inline const Rational fill_of_a_pan(Rational::Wide{2}, Rational::Wide{3});
inline const Rational fill_with_syrup(Rational::Wide{1}, Rational::Wide{2});
// From this share of soluble solids on what is boiled is a syrup that rises, and sets: jams.
inline const Rational syrup_solids(Rational::Wide{60}, Rational::Wide{100});
bool is_boiled_to_a_set(const language::Method& method);
// More boils than this are no plan any more.
inline constexpr long most_boils = 500;

// An amount over equal boils, in what it is measured out with: the first few may get a step more.
struct Dealt {
  long first_boils = 0;  // how many get `first`
  Rational first;        // g, ml or pieces
  Rational others;       // in each of the other boils
};

// Divides an amount over boils so that each part is a whole number of steps of the tool, no two
// differ by more than one step, and all of them add up to it. `boils` from 1.
Dealt deal(const Rational& amount, const Rational& step, long boils);

// Divides an amount into these shares (which add up to 1), each a whole number of steps, as near as
// steps come to them, and adding up to it. What is no whole number of steps is in the last share.
std::vector<Rational> divide(const Rational& amount, const Rational& step,
                             const std::vector<Rational>& shares);

// What goes in at one step of each boil.
struct BoilItem {
  TakenId taken;
  std::size_t stage = 0;
  std::size_t step = 0;
  bool aside = false;
  Dealt dealt;              // measured out
  Rational grams_per_unit;  // g in one g, ml or piece
};

// The pan on the scales when it is time to stop.
struct StopWeight {
  FinishedMass contents;        // to stop at
  Range<FinishedMass> window;   // within which the limits hold; of no width where no limit says
  std::optional<Mass> pan;      // what the pan weighs, where the kitchen says it
  bool scales_carry_it = true;  // pan and all
};

struct Depths {
  Range<Length> start;
  Range<Length> stop;
};

struct Boils {
  long count = 1;
  bool pan_known = false;
  bool too_many = false;        // more than most_boils: count is that many, and nothing is divided
  Rational fill;                // share of the pan that may be full
  Range<Volume> ingoing;        // of each boil, raw
  Range<IngoingMass> weigh;     // what goes into a boil, from the least to the most
  std::vector<BoilItem> items;  // in the order of the method, else of the plan
  bool scales_carry_start = true;  // the fullest boil, pan and all
  std::optional<StopWeight> stop;
  std::optional<Depths> depths;
  std::vector<TakenId> uneven;  // what cannot be divided over the boils within a tenth
};

Boils make_boils(const language::Program& program, const VerifiedPlan& plan,
                 const Timeline& timeline, const Course& course);

}  // namespace maslin::plan
