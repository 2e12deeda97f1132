// SPDX-License-Identifier: Apache-2.0
// Random frameworks and baskets of the library's own produce, as text: a mix is drawn first, and
// the ranges are laid around it, so that most of them have a plan.
#pragma once

#include <random>
#include <string>
#include <vector>

namespace maslin::test {

// A line of a basket or store whose weights grow with the basket.
struct RandomLine {
  std::string name;
  double grams = 0;     // 0: only to buy
  double at_most = 0;   // g that may be bought; 0: none, or as much as is wanted
  std::string basis;    // "gross", "prepared" or nothing
  std::string clauses;  // with a comma before each
};

struct RandomCase {
  std::vector<std::string> shares;
  std::vector<std::string> additions;
  std::vector<std::string> substitutions;
  std::vector<std::string> limits;
  std::vector<RandomLine> lines;
  std::vector<RandomLine> store;
  std::string scales;  // statements of the kitchen
  double batch = 0;    // g of prepared produce that the basket was drawn for
  double step = 1;     // g: of the scales
};

// What is drawn: where scales are coarse beside the batch, or ranges narrow, a plan may exist that
// nobody can weigh.
struct RandomKind {
  double smallest = 300;  // g of prepared produce
  double largest = 400000;
  bool plain_ratios = true;   // shares that are one figure
  bool coarse_scales = true;  // steps up to 20 g
};

RandomCase random_case(std::mt19937& random, const RandomKind& kind = {});

// How the same is written another way.
struct Writing {
  double times = 1;  // every weight of basket and store
  bool reversed = false;
  std::string framework = "random";
  std::string basket = "random";
};
std::string framework_text(const RandomCase& the_case, const Writing& writing = {});
std::string basket_text(const RandomCase& the_case, const Writing& writing = {});
std::string kitchen_text(const RandomCase& the_case, const Writing& writing = {});
std::string text_of(const RandomCase& the_case, const Writing& writing = {});

// How many rounds of a campaign: `many` where MASLIN_FULL is set.
int rounds(int few, int many);

}  // namespace maslin::test
