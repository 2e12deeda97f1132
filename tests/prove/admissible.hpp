// SPDX-License-Identifier: Apache-2.0
// Random baskets that a framework admits, with plenty of all that is added, put to the planner; and
// its plans judged by the limits without the verifier.
#pragma once

#include <memory>
#include <optional>
#include <random>
#include <string>

#include "driver/session.hpp"
#include "plan/make.hpp"
#include "prove/case.hpp"
#include "prove/worst_mix.hpp"
#include "support/golden_files.hpp"

namespace maslin::test {

// A program to which baskets can be put.
class World {
 public:
  explicit World(const std::string& text = {});
  bool is_good() const { return !session_->diagnostics().has_errors(); }
  const language::Program& program() const { return session_->program(); }
  const Sources& sources() const { return session_->sources(); }
  // The last framework of the text.
  language::FrameworkId last() const {
    return language::FrameworkId(program().frameworks.size() - 1);
  }

  // The mix as a basket of so many kilograms, each line a whole number of grams and not less than
  // its part; of each addition what was chosen. Both take the place of those before.
  plan::Task put(language::FrameworkId framework, const prove::Case& given,
                 const prove::Choice& choice, const prove::Mix& mix, int kilograms);

 private:
  MemoryFiles files_;
  std::unique_ptr<Session> session_;
};

// A corner of what is admitted, or something between several of them. Nothing where no mix is
// admitted with what is added.
std::optional<prove::Mix> random_mix(std::mt19937& random, const prove::Case& given,
                                     const prove::Choice& choice);

// The shares as the framework says, reckoned from the mix.
bool keeps_to_shares(const language::Framework& framework, const prove::Case& given,
                     const prove::Mix& mix);

// The limits that a plan breaks, in words; empty when it is inside all of them. From the weights
// of the draft alone, as `language::Contents` and exact sums have it.
std::string broken_limits(const language::Program& program, const plan::Draft& draft);

}  // namespace maslin::test
