// SPDX-License-Identifier: Apache-2.0
// From a text to a plan, for tests.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "driver/session.hpp"
#include "plan/make.hpp"
#include "plan/solve.hpp"
#include "support/golden_files.hpp"

namespace maslin::test {

// The last framework, basket and kitchen of a text, planned.
class Planned {
 public:
  explicit Planned(const std::string& text, plan::Aim aim = {});
  // The texts of several files, of which the first named is read, and what it uses.
  Planned(const Texts& texts, const std::string& root, plan::Aim aim = {});

  bool fits() const { return made_.plan.has_value(); }
  const plan::Plan& plan() const { return *made_.plan; }
  const plan::Draft& draft() const { return plan().verified.draft(); }
  const std::vector<plan::Mend>& mends() const { return made_.mends; }
  const language::Program& program() const { return session_->program(); }
  const Session& session() const { return *session_; }
  // The names of all that was reported, in the order of the text.
  std::vector<std::string> codes() const;
  std::string messages() const;

  // The linear programme as the plan began with it: no margin, no rounding.
  plan::Solved optimum() const;
  const plan::Task& task() const { return task_; }
  // The sheet as it is printed.
  std::string sheet() const;
  // g taken of an ingredient, wherever it goes.
  double weight(const std::string& ingredient) const;
  double total() const { return plan().verified.prepared_total().to_double(); }

 private:
  MemoryFiles files_;
  std::unique_ptr<Session> session_;
  plan::Task task_;
  plan::Made made_;
};

plan::Aim prepared_aim(long grams);
plan::Aim finished_aim(long grams);

// What a command prints; the test fails, naming the program, when it is not installed.
std::string output_of(const std::string& program, const std::string& arguments);

}  // namespace maslin::test
