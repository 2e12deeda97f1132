// SPDX-License-Identifier: Apache-2.0
// What the statements of a conflict ask of the batch, in weights.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "plan/misfit.hpp"
#include "plan/reach.hpp"

namespace maslin::plan {

class Meaning {
 public:
  Meaning(const blend::Grounding& grounding, const Task& task, const Misfit& misfit)
      : given_(grounding), task_(task), misfit_(misfit), blend_(misfit.solved.blend) {}

  // "4 kg of prepared produce"; "any batch" where no size was asked for.
  std::string size_of_batch() const;
  // "924 g ready for the pan", "250 g in the store".
  std::string at_hand(blend::Statement supply) const;
  // What several lots of produce come to where that is less than the batch; else nothing.
  std::string together(const std::vector<blend::Statement>& conflict) const;
  // Any statement but the aim: what it asks for, and how near the rest of the conflict comes to it.
  // For a substitution at its cap: the cap, the most still allowed, and what is too much.
  std::string of(blend::Statement statement, const std::vector<blend::Statement>& conflict) const;

 private:
  using Conflict = std::vector<blend::Statement>;

  bool speaks_of_weights() const;
  std::optional<Reached> reach_without(blend::Statement statement, const Conflict& conflict,
                                       const Part& part, blend::Direction direction) const;
  std::vector<blend::Term> weights() const;

  std::string of_share(blend::Statement statement, const Conflict& conflict) const;
  std::string of_addition(const language::Addition& addition) const;
  std::string of_substitution(blend::Statement statement, const Conflict& conflict) const;
  std::string of_limit(blend::Statement statement, const Conflict& conflict) const;
  std::string of_cap(const language::Limit& limit, blend::Statement statement,
                     const Conflict& conflict) const;
  std::string reached_limit(const language::Limit& limit, blend::Statement statement,
                            const Conflict& conflict) const;
  Part part_of_limit(const language::Limit& limit, bool low) const;

  const blend::Grounding& given_;
  const Task& task_;
  const Misfit& misfit_;
  const blend::Blend& blend_;
};

}  // namespace maslin::plan
