// SPDX-License-Identifier: Apache-2.0
// Proofs that are kept while what they stand on has not changed: who types in a basket, or in one
// framework of several, waits for no proof but that one.
#pragma once

#include <map>
#include <optional>
#include <string>

#include "driver/session.hpp"
#include "prove/mend.hpp"
#include "prove/proof.hpp"

namespace maslin {

struct KeptProof {
  prove::Proof proof;
  std::vector<prove::Mend> mends;  // where a mix breaks its limits, or it was not shown
  // The first of its tastes for which that is not shown too; none where they all hold, or where
  // the framework itself does not.
  struct OfTaste {
    std::size_t variant = 0;
    prove::Proof proof;
  };
  std::optional<OfTaste> taste;
};

class Proofs {
 public:
  // Of a framework of the user's, after the session has compiled. Stands until `forget_others`.
  const KeptProof& of(const Session& session, language::FrameworkId id);
  // Drops what was not asked for since it was last called: frameworks that have changed or gone.
  void forget_others();
  // How many were made, and not found kept.
  std::size_t made() const { return made_; }

 private:
  struct Entry {
    KeptProof kept;
    bool asked_for = false;
  };
  std::map<std::string, Entry> entries_;
  std::size_t made_ = 0;
};

// The text that a proof stands on: the framework, those it refines, and every other declaration but
// baskets and kitchens, without blanks and comments. The library is the same in every run.
std::string text_behind(const Session& session, language::FrameworkId id);

}  // namespace maslin
