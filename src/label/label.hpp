// SPDX-License-Identifier: Apache-2.0
// What stands on a jar, from what was used, or from what a plan would use: plain values; each
// output prints the same. What nobody can know from that is left out here and becomes a marked
// blank in print. No pH stands on a label, and no month before every reading is in.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "diagnostic/diagnostic.hpp"
#include "label/ingredients.hpp"
#include "label/nutrition_table.hpp"
#include "language/law.hpp"
#include "language/program.hpp"
#include "plan/make.hpp"

namespace maslin::label {

// Jars of one size that one boil fills.
struct JarContents {
  Volume holds;  // brimful
  long count = 0;
  std::optional<Mass> net;  // at the least, whole g; nothing for a jar that is not full
};

// Boils whose jars are alike, each a lot of its own.
struct Lots {
  long first = 1;
  long last = 1;
  std::vector<JarContents> jars;  // none: the kitchen has none
};

// What is to be filled in by hand.
struct Blank {
  std::string what;
  std::string why;  // may be empty
};

// The boil of a batch that a label is made from.
struct Recorded {
  std::string batch;
  long boil = 1;
  std::vector<std::string> from_plan;  // "sugar 640 g": what it does not state
};

struct Label {
  const language::Law* law = nullptr;  // nothing: the kitchen names none
  std::optional<std::string> name;     // nothing: a reserved one, whose standard is not met
  std::optional<Date> law_as_of;       // nothing: the latest that is known
  std::string mark;                    // lot marks begin with it
  std::optional<Recorded> record;      // nothing: of a plan
  long boils = 1;
  std::vector<Phrase> ingredients;      // in the order of the list
  std::vector<std::string> quantities;  // "apple 54 %"
  std::vector<NutritionRow> nutrition;  // of 100 g
  std::vector<Lots> lots;
  std::vector<CardRow> card;
  std::optional<Duration> best_within;  // of being made; nothing before every reading is in
  std::vector<std::string> not_stated;  // ingredients whose allergens are not stated
  std::vector<Blank> blanks;
  std::vector<std::string> notes;  // for the maker, not for the jar
};

// What it holds against the law and finds wanting is reported; there is a label all the same.
Label make_label(const language::Program& program, const plan::Plan& plan,
                 Diagnostics& diagnostics);

// One for each boil of the batch. Without a plan (nothing, and the task without a basket) every
// boil must state all that went in. Nothing after an error.
std::vector<Label> make_labels(const language::Program& program, const language::Batch& batch,
                               const plan::Task& task, const plan::Plan* plan,
                               Diagnostics& diagnostics);

// "October, boil 2": what all jars of one boil bear.
std::string lot_mark(const Label& label, long boil);

}  // namespace maslin::label
