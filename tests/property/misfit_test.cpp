// SPDX-License-Identifier: Apache-2.0
// Random baskets that do not fit: what mends them is followed from text, and each set of reasons is
// put to glpsol, whole and without each of its statements. MASLIN_FULL=1 makes the campaigns long.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <random>

#include "blend/solver.hpp"
#include "plan/misfit.hpp"
#include "property/random_misfit.hpp"
#include "support/mending.hpp"
#include "support/planning.hpp"
#include "tests/blend/glpsol.hpp"
#include "tests/blend/lp_text.hpp"

namespace maslin::test {
namespace {

const std::string file = "/kitchen/test.maslin";

Planned replanned(const RandomMisfit& misfit, const plan::Mend& mend) {
  plan::Aim aim = misfit.aim;
  if (mend.aim) aim = *mend.aim;
  return {{{file, edited(misfit.text, mend.edits)}}, file, aim};
}

TEST(RandomMisfits, EveryMendMakesThePlan) {
  std::mt19937 random(4112026);
  int misfits = 0;
  int without = 0;
  int followed = 0;
  while (misfits < rounds(200, 3000)) {
    const RandomMisfit misfit = random_misfit(random);
    const Planned planned(misfit.text, misfit.aim);
    if (planned.fits() || !planned.task().framework.valid()) continue;
    ++misfits;
    // A framework that clashes with itself has none, nor has a batch too fine for its scales.
    if (planned.mends().empty()) {
      ++without;
      const auto codes = planned.codes();
      EXPECT_TRUE(std::any_of(codes.begin(), codes.end(),
                              [](const std::string& code) {
                                return code == "does-not-fit" || code == "nothing-of-class" ||
                                       code == "too-fine";
                              }))
          << misfit.text << planned.messages();
    }
    for (const plan::Mend& mend : planned.mends()) {
      ++followed;
      const Planned again = replanned(misfit, mend);
      EXPECT_TRUE(again.fits()) << mend.text << "\n" << misfit.text << again.messages();
      const auto words = aim_in_words(mend.text);
      EXPECT_EQ(words.has_value(), mend.aim.has_value());
    }
  }
  EXPECT_GT(followed, misfits);
  EXPECT_LT(without, misfits / 2);
}

// ---- Reasons ------------------------------------------------------------------------------------

using blend::LinearProgram;
using blend::Statement;

LinearProgram only(const LinearProgram& program, const std::vector<Statement>& held) {
  LinearProgram kept = program;
  kept.rows.clear();
  for (const blend::Row& row : program.rows) {
    const bool wanted = row.statement == blend::background ||
                        std::find(held.begin(), held.end(), row.statement) != held.end();
    if (wanted) kept.rows.push_back(row);
  }
  return kept;
}

bool near_the_border(const LinearProgram& program) {
  constexpr double nothing = 1e-9;
  constexpr double border = 1e-5;
  const blend::Elastic elastic = blend::relax(program);
  return elastic.total > nothing && elastic.total < border;
}

class Judge {
 public:
  bool finds_amounts(const LinearProgram& program) const {
    const std::string question = folder_.file("conflict.lp");
    const std::string answer = folder_.file("conflict.sol");
    std::ofstream(question) << blend::testing::lp_text(program, {});
    blend::testing::run_glpsol({"--lp", question, "--nopresol", "--write", answer});
    return blend::testing::read_written_solution(answer).optimal;
  }

 private:
  blend::testing::TemporaryFolder folder_;
};

plan::Misfit misfit_of(const Planned& planned) {
  const language::Program& program = planned.program();
  const plan::Task& task = planned.task();
  const language::Kitchen* kitchen = task.kitchen.valid() ? &program[task.kitchen] : nullptr;
  const blend::Grounding grounding{program, program[task.framework], program[task.basket], kitchen};
  const plan::Attempt attempt = plan::attempt_plan(grounding, task);
  if (attempt.outcome != plan::Outcome::misfit && attempt.outcome != plan::Outcome::nothing) {
    return {};
  }
  return plan::find_misfit(grounding, task, attempt);
}

struct Tally {
  int conflicts = 0;
  int statements = 0;
  int at_the_border = 0;
};

void check_conflict(const Judge& judge, const LinearProgram& program,
                    const std::vector<Statement>& conflict, Tally& tally) {
  const LinearProgram whole = only(program, conflict);
  if (near_the_border(whole)) {
    ++tally.at_the_border;
    return;
  }
  ++tally.conflicts;
  EXPECT_FALSE(judge.finds_amounts(whole)) << "the reasons can all be met";
  for (const Statement left_out : conflict) {
    std::vector<Statement> rest = conflict;
    rest.erase(std::find(rest.begin(), rest.end(), left_out));
    const LinearProgram eased = only(program, rest);
    if (near_the_border(eased)) {
      ++tally.at_the_border;
      continue;
    }
    ++tally.statements;
    EXPECT_TRUE(judge.finds_amounts(eased)) << "without " << left_out << " it is a reason still";
  }
}

TEST(RandomMisfits, EverySetOfReasonsIsIrreducible) {
  std::mt19937 random(20262026);
  const Judge judge;
  Tally tally;
  int misfits = 0;
  while (misfits < rounds(200, 2000)) {
    const RandomMisfit random_one = random_misfit(random);
    const Planned planned(random_one.text, random_one.aim);
    if (planned.fits() || !planned.task().framework.valid()) continue;
    const plan::Misfit misfit = misfit_of(planned);
    if (misfit.conflicts.empty()) continue;
    ++misfits;
    SCOPED_TRACE(random_one.text);
    for (const auto& conflict : misfit.conflicts) {
      check_conflict(judge, misfit.solved.blend.program, conflict, tally);
    }
  }
  EXPECT_GE(tally.conflicts, misfits);
  EXPECT_GT(tally.statements, 2 * misfits);
  EXPECT_LT(tally.at_the_border, misfits / 20);
  RecordProperty("conflicts", tally.conflicts);
  RecordProperty("statements left out", tally.statements);
  RecordProperty("at the border", tally.at_the_border);
}

}  // namespace
}  // namespace maslin::test
