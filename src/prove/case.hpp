// SPDX-License-Identifier: Apache-2.0
// A framework as a game: somebody picks any mix it admits, and the planner answers with what it may
// choose. Everything is for one kilogram of prepared produce.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "blend/boiling.hpp"
#include "language/amounts.hpp"

namespace maslin::prove {

// Something that may fill a share.
struct Member {
  std::size_t share = 0;
  language::IngredientId ingredient;
};

// One thing taken for every addition: a mix may meet any of them.
struct Choice {
  std::vector<language::Stuff> additions;  // by addition
};

// At least nothing, for a mix that keeps to the limit: constant + members · mix + answer · choices.
struct Row {
  std::size_t limit = 0;          // of the framework
  bool is_limit = false;          // else a bound on what the planner chooses
  std::vector<double> of_member;  // by member; empty: none counts
  std::vector<double> of_answer;  // by what the planner chooses
  double constant = 0;
};

struct Case {
  const language::Program& program;
  const language::Framework& framework;
  std::vector<Member> members;
  // Of each share, of the produce: the framework's own, or a part of it that is looked at by
  // itself.
  std::vector<Range<double>> shares;
};

// Who may fill what.
Case case_of(const language::Program& program, const language::Framework& framework);

// What may be taken for each addition, strengths that the framework allows included; every way to
// take one of each. More than `most` ways: nothing.
std::optional<std::vector<Choice>> choices_of(const Case& given, std::size_t most);

// A cap on the produce: it decides which mixes are admitted.
struct Cap {
  std::vector<bool> counts;  // by member
  double most = 1;
};
// What is added counts towards a cap wherever it belongs to it, at the least there may be of it.
std::vector<Cap> caps_of(const Case& given, const Choice& choice);

// The rows of one choice when boiling leaves what is expected. Figures stand at the end that is
// unfavourable to each row.
std::vector<Row> rows_of(const Case& given, const Choice& choice, const blend::Boiling& boiling);

// Whether a limit is proved for every mix: it can be computed, and does not decide what is
// admitted.
bool is_proved(const language::Limit& limit);

// How many amounts the planner chooses: additions that are ranges, and how far to boil down.
std::size_t answers_of(const Case& given);

// Kilograms of an addition for a kilogram of produce, by its range.
Range<double> weight_of(const Case& given, std::size_t addition, const language::Stuff& stuff);

// A plain answer to an even mix, for what is to be expected of boiling.
blend::Boiling expected_boiling(const Case& given, const Choice& choice, double water_kept);

}  // namespace maslin::prove
