// SPDX-License-Identifier: Apache-2.0
// A framework and a basket as plain figures, written two ways: as text of the language, and as GNU
// MathProg. The figures are invented inputs, the same for both; the MathProg is reckoned from them
// here and shares no code with the planner.
#pragma once

#include <optional>
#include <random>
#include <string>
#include <vector>

namespace maslin::test {

// One thing at hand, or to buy; of each kind its own ingredient.
struct ModelLot {
  std::string name;
  std::string of_class;
  int own = 0;      // g as brought in
  int trim = 0;     // per cent of that
  int at_most = 0;  // g that may be bought, ready for the pan
  int price = 0;    // tenths, per kg; 0: none is named
  bool bought = false;
  bool use_first = false;
  bool low_acid = false;
  bool in_store = false;
  int sugars = 0;        // tenths of a per cent
  int soluble = 0;       // the same
  int total_solids = 0;  // the same
  int citric = 0;        // the same
  int acidity = 0;       // tenths of a per cent, g in 100 ml, as acetic acid; 0: no vinegar
  int density = 1000;    // mg per ml
};

struct ModelShare {
  std::string of_class;
  int low = 0, high = 100;    // per cent
  std::optional<int> prefer;  // the same
};

struct ModelAddition {
  std::string of_class;  // or the name of the one thing
  std::string unit;      // "g" or "ml"
  int low = 0, high = 0;
  std::optional<int> prefer;
};

struct ModelCredit {
  std::string donor;  // a class
  std::size_t addition = 0;
  bool by_acidity = false;  // else by sugars
  bool full = false;
  int cap = 100;  // per cent
};

struct TextModel {
  std::vector<ModelLot> lots;
  std::vector<ModelShare> shares;
  std::vector<ModelAddition> additions;
  std::vector<ModelCredit> credits;
  bool strengths = false;                      // `vinegar for vinegar by acetic acid`
  std::optional<int> low_acid;                 // per cent of prepared produce, at most
  std::optional<int> acetic;                   // g per kilogram of prepared produce, at least
  std::optional<int> solids_low, solids_high;  // per cent of finished product
  std::optional<int> aim;                      // g of prepared produce; none: as much as there is
};

TextModel random_model(std::mt19937& random);

std::string language_text(const TextModel& model);

// The stages in their order, as far as the model has them: what each is called by the planner.
std::vector<std::string> stages_of(const TextModel& model);

// The programme for one stage, those before it held at what they reached. `at_cap` says for each
// `full` credit which of its two cases is meant.
std::string mathprog_text(const TextModel& model, const std::vector<bool>& at_cap,
                          const std::vector<double>& reached);

std::size_t full_credits(const TextModel& model);

}  // namespace maslin::test
