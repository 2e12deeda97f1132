// SPDX-License-Identifier: Apache-2.0
// Random blends, each stage beside glpsol: what our one warm programme with fixed columns finds
// must be what glpsol finds from scratch with the earlier optima as rows.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <random>
#include <string>

#include "blend/solver.hpp"
#include "tests/blend/glpsol.hpp"
#include "tests/blend/lp_text.hpp"

namespace maslin::blend {
namespace {

// One random blend: classes of lots, some of which may be bought, shares of a batch, a preferred
// share each, a sum of credits with a limit. Numbers of two decimals, so that ties are common.
class RandomBlend {
 public:
  explicit RandomBlend(std::mt19937& random) : random_(random) {
    const int classes = whole(1, 4);
    const double size = whole(5, 60);
    batch_ = program_.add_column({"", size, chance(0.5) ? size : 2 * size, background});
    for (int index = 0; index < classes; ++index) add_class(classes);
    std::vector<Term> basis = sums_;
    basis.push_back({batch_, -1});
    program_.add_row({"", 0, 0, basis, background});
    add_credit();
    add_objectives();
  }

  LinearProgram take() { return std::move(program_); }

 private:
  int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
  double hundredths(int low, int high) { return whole(low, high) / 100.0; }
  bool chance(double share) { return std::bernoulli_distribution(share)(random_); }

  ColumnIndex amount(double upper) { return program_.add_column({"", 0, upper, next_++}); }

  void add_lot(std::vector<Term>& members) {
    const ColumnIndex own = amount(hundredths(0, 2500));
    members.push_back({own, hundredths(60, 100)});
    credit_.push_back({own, hundredths(0, 60)});
    own_.push_back({own, hundredths(0, 100)});
    if (!chance(0.3)) return;
    const ColumnIndex bought = amount(chance(0.2) ? infinity : hundredths(100, 3000));
    members.push_back({bought, 1});
    credit_.push_back({bought, hundredths(0, 60)});
    bought_.push_back({bought, chance(0.5) ? 1 : hundredths(50, 400)});
  }

  void add_class(int classes) {
    std::vector<Term> members;
    const int lots = whole(1, 3);
    for (int index = 0; index < lots; ++index) add_lot(members);
    const ColumnIndex sum = program_.add_column({});
    members.push_back({sum, -1});
    program_.add_row({"", 0, 0, members, background});
    sums_.push_back({sum, 1});
    const double fair = 1.0 / classes;
    const double low = fair * hundredths(10, 90);
    const double high = std::min(1.0, fair * hundredths(100, 300));
    program_.add_row({"", 0, infinity, {{sum, 1}, {batch_, -low}}, next_++});
    program_.add_row({"", -infinity, 0, {{sum, 1}, {batch_, -high}}, next_++});
    if (!chance(0.7)) return;
    const ColumnIndex more = program_.add_column({});
    const ColumnIndex less = program_.add_column({});
    program_.add_row({"", 0, 0, {{sum, 1}, {batch_, -fair}, {more, -1}, {less, 1}}, background});
    deviation_.push_back({more, 1});
    deviation_.push_back({less, 1});
  }

  void add_credit() {
    if (chance(0.3)) return;
    std::vector<Term> terms = credit_;
    terms.push_back({batch_, -hundredths(10, 60)});
    program_.add_row({"", chance(0.5) ? -infinity : -5.0, 0, terms, next_++});
  }

  void add_objectives() {
    program_.objectives = {{"", Direction::minimise, bought_},
                           {"", Direction::minimise, deviation_},
                           {"", Direction::minimise, own_},
                           {"", Direction::minimise, credit_},
                           {"", Direction::maximise, {{batch_, 1}}}};
    std::shuffle(program_.objectives.begin(), program_.objectives.end(), random_);
    program_.objectives.resize(static_cast<std::size_t>(whole(1, 4)));
  }

  std::mt19937& random_;
  LinearProgram program_;
  ColumnIndex batch_ = 0;
  Statement next_ = 0;
  std::vector<Term> sums_, own_, bought_, deviation_, credit_;
};

LinearProgram random_blend(std::mt19937& random) {
  LinearProgram program = RandomBlend(random).take();
  while (program.columns.size() < 5 || program.columns.size() > 30) {
    program = RandomBlend(random).take();
  }
  return program;
}

// Keeps an optimum that glpsol found. It allows itself some 1e-7 about every row, so the row needs
// no air of its own: what we would add, a later objective can pay back a thousandfold.
void keep_optimum(LinearProgram& program, const Objective& objective, double optimum) {
  Row row;
  row.terms = objective.terms;
  (objective.direction == Direction::minimise ? row.upper : row.lower) = optimum;
  program.add_row(std::move(row));
}

testing::WrittenSolution ask_glpsol(const testing::TemporaryFolder& temporary,
                                    const LinearProgram& program, const Objective& objective) {
  const std::string question = temporary.file("blend.lp");
  const std::string answer = temporary.file("blend.sol");
  std::ofstream(question) << testing::lp_text(program, objective);
  testing::run_glpsol({"--lp", question, "--nopresol", "--write", answer});
  return testing::read_written_solution(answer);
}

int rounds() {
  const char* full = std::getenv("MASLIN_FULL");
  return full != nullptr && std::string(full) == "1" ? 5000 : 300;
}

TEST(RandomBlends, EveryStageAgreesWithGlpsol) {
  const testing::TemporaryFolder temporary;
  std::mt19937 random(31415);
  int solved = 0;
  int refused = 0;
  for (int round = 0; round < rounds(); ++round) {
    SCOPED_TRACE(fmt::format("blend {}", round));
    const LinearProgram program = random_blend(random);
    const Solution solution = solve(program);
    ASSERT_TRUE(solution.status == Status::optimal || solution.status == Status::infeasible);
    LinearProgram staged = program;
    for (std::size_t stage = 0; stage < program.objectives.size(); ++stage) {
      const Objective& objective = program.objectives[stage];
      const testing::WrittenSolution theirs = ask_glpsol(temporary, staged, objective);
      ASSERT_EQ(solution.status == Status::optimal, theirs.optimal) << "stage " << stage;
      if (!theirs.optimal) break;
      EXPECT_NEAR(solution.objective_values[stage], theirs.objective,
                  1e-6 * std::max(1.0, std::abs(theirs.objective)))
          << "stage " << stage;
      keep_optimum(staged, objective, theirs.objective);
    }
    ++(solution.status == Status::optimal ? solved : refused);
  }
  // Both kinds must be common enough to mean something.
  EXPECT_GT(solved, rounds() / 3);
  EXPECT_GT(refused, rounds() / 20);
}

}  // namespace
}  // namespace maslin::blend
