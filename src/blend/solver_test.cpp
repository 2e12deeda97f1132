// SPDX-License-Identifier: Apache-2.0
#include "blend/solver.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <bit>
#include <cstdint>
#include <limits>
#include <numeric>
#include <random>

#include "blend/linear_program.hpp"
#include "tests/blend/small_programs.hpp"

namespace maslin::blend {
namespace {

using testing::column;
using testing::expect_near;
using testing::maximise;
using testing::minimise;
using testing::random_program;
using testing::row;
using testing::small_example;

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();

void add_random_objectives(std::mt19937& random, LinearProgram& program, int count) {
  std::uniform_int_distribution<int> coefficient(0, 3);
  for (int index = 0; index < count; ++index) {
    std::vector<Term> terms;
    for (ColumnIndex each = 0; each < program.columns.size(); ++each) {
      terms.push_back({each, double(coefficient(random))});
    }
    minimise(program, terms);
  }
}

TEST(Solver, FindsTheCornerValuesAndPrices) {
  const Solution solution = solve(small_example());
  ASSERT_EQ(solution.status, Status::optimal);
  expect_near(solution.columns, {2, 6});
  expect_near(solution.rows, {2, 12, 18});
  expect_near(solution.objective_values, {36});
  expect_near(solution.first_row_prices, {0, 1.5, 1});
  expect_near(solution.first_column_prices, {0, 0});
}

TEST(Solver, PricesOfAMinimumAreWhatItWouldSpare) {
  LinearProgram program;
  const ColumnIndex own = column(program, 0, 7);
  const ColumnIndex bought = column(program);
  row(program, 20, {{own, 2}, {bought, 2}}, infinity);
  minimise(program, {{bought, 4}});
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::optimal);
  expect_near(solution.columns, {7, 3});
  expect_near(solution.objective_values, {12});
  expect_near(solution.first_row_prices, {-2});       // one more demanded costs 2
  expect_near(solution.first_column_prices, {4, 0});  // one more on hand spares 4
}

TEST(Solver, PricesAreThoseOfTheFirstObjective) {
  LinearProgram program;
  const ColumnIndex x = column(program, 0, 5);
  const ColumnIndex y = column(program, 0, 5);
  maximise(program, {{x, 2}});
  maximise(program, {{y, 3}});
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::optimal);
  expect_near(solution.first_column_prices, {2, 0});
}

TEST(Solver, LaterObjectivesChooseAmongTiesOnly) {
  LinearProgram program;
  const ColumnIndex x = column(program);
  const ColumnIndex y = column(program);
  const ColumnIndex z = column(program);
  row(program, 10, {{x, 1}, {y, 1}, {z, 1}}, infinity);
  row(program, -infinity, {{y, 1}}, 6);
  minimise(program, {{x, 1}, {y, 1}, {z, 1}});
  minimise(program, {{x, 1}});
  maximise(program, {{y, 1}});
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::optimal);
  expect_near(solution.columns, {0, 6, 4});
  expect_near(solution.objective_values, {10, 0, 6});
}

TEST(Solver, OrderOfObjectivesDecides) {
  LinearProgram program;
  const ColumnIndex x = column(program, 0, 8);
  const ColumnIndex y = column(program, 0, 8);
  row(program, -infinity, {{x, 1}, {y, 1}}, 10);
  maximise(program, {{x, 1}});
  maximise(program, {{y, 1}});
  expect_near(solve(program).columns, {8, 2});
  std::swap(program.objectives[0], program.objectives[1]);
  expect_near(solve(program).columns, {2, 8});
}

TEST(Solver, AnOpposedLaterObjectiveIsPowerless) {
  LinearProgram program = small_example();
  minimise(program, {{0, 3}, {1, 5}});
  minimise(program, {{1, 1}});
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::optimal);
  expect_near(solution.columns, {2, 6});
  expect_near(solution.objective_values, {36, 36, 6});
}

// The same lexicographic optimum by another road: each optimum kept by a row of its own.
TEST(Solver, AgreesWithOptimaKeptByRows) {
  std::mt19937 random(20240611);
  int compared = 0;
  for (int round = 0; round < 200; ++round) {
    LinearProgram program = random_program(random, 6, 5);
    add_random_objectives(random, program, 4);
    const Solution together = solve(program);
    LinearProgram staged = program;
    for (std::size_t index = 0; index < program.objectives.size(); ++index) {
      staged.objectives = {program.objectives[index]};
      const Solution alone = solve(staged);
      ASSERT_EQ(alone.status, together.status) << "round " << round;
      if (alone.status != Status::optimal) break;
      EXPECT_NEAR(alone.objective_values[0], together.objective_values[index], 1e-6)
          << "round " << round << ", objective " << index;
      row(staged, -infinity, staged.objectives[0].terms, alone.objective_values[0] + 1e-9);
      ++compared;
    }
  }
  EXPECT_GT(compared, 100);
}

TEST(Solver, DegenerateCornersAreSolved) {
  LinearProgram program;
  const ColumnIndex x = column(program);
  const ColumnIndex y = column(program);
  const ColumnIndex fixed = column(program, 3, 3);
  // Five rows through (2, 2), two of them the same.
  for (const double slope : {1.0, 1.0, 2.0, 0.5, 3.0}) {
    row(program, -infinity, {{x, slope}, {y, 1}}, 2 * slope + 2);
  }
  row(program, 3, {{fixed, 1}}, 3);
  maximise(program, {{x, 1}, {y, 1}});
  minimise(program, {{x, 1}});
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::optimal);
  // Along x + y = 4 the flatter rows leave only (2, 2).
  expect_near(solution.columns, {2, 2, 3});
}

TEST(Solver, UnboundedIsSaidOfAnyObjective) {
  LinearProgram program;
  const ColumnIndex x = column(program, 0, 4);
  const ColumnIndex y = column(program);
  row(program, 1, {{x, 1}, {y, 1}}, infinity);
  maximise(program, {{y, 1}});
  EXPECT_EQ(solve(program).status, Status::unbounded);
  program.objectives.clear();
  maximise(program, {{x, 1}});
  maximise(program, {{y, 1}});
  const Solution solution = solve(program);
  EXPECT_EQ(solution.status, Status::unbounded);
  EXPECT_TRUE(solution.columns.empty());
}

TEST(Solver, InfeasibleGoesBeforeUnbounded) {
  LinearProgram program;
  const ColumnIndex x = column(program, 0, 4);
  const ColumnIndex y = column(program);
  row(program, 5, {{x, 1}}, infinity);
  maximise(program, {{y, 1}});
  const Solution solution = solve(program);
  EXPECT_EQ(solution.status, Status::infeasible);
  EXPECT_TRUE(solution.columns.empty());
}

TEST(Solver, CrossedBoundsAreInfeasible) {
  LinearProgram program;
  column(program, 2, 1);
  EXPECT_EQ(solve(program).status, Status::infeasible);
  program.columns[0] = {"", 0, 5, background};
  row(program, 4, {{0, 1}}, 3);
  EXPECT_EQ(solve(program).status, Status::infeasible);
  program.rows[0].statement = 7;
  EXPECT_EQ(solve(program).status, Status::infeasible);
}

TEST(Solver, BoundsThatDifferByRoundingMeet) {
  LinearProgram program;
  column(program, 0.1 + 0.2, 0.3);
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::optimal);
  EXPECT_NEAR(solution.columns[0], 0.3, 1e-15);
}

TEST(Solver, WhatIsMissingDecidesOnInfeasible) {
  for (const bool by_row : {true, false}) {
    for (const double gap : {1e-10, 1e-8, 5e-7, 2e-6, 1e-3}) {
      LinearProgram program;
      const ColumnIndex x = column(program, 0, 10, by_row ? background : 3);
      row(program, 10 + gap, {{x, 1}}, infinity, by_row ? 3 : background);
      minimise(program, {{x, 1}});
      const Solution solution = solve(program);
      if (gap > infeasible_above) {
        EXPECT_EQ(solution.status, Status::infeasible) << gap;
      } else {
        ASSERT_EQ(solution.status, Status::optimal) << gap;
        EXPECT_NEAR(solution.columns[x], 10, 1e-6) << gap;
      }
    }
  }
}

TEST(Solver, StatementsThatCrossByLittleStillHold) {
  LinearProgram program;
  const ColumnIndex x = column(program);
  row(program, 4 + 5e-7, {{x, 1}}, 4, 1);
  maximise(program, {{x, 1}});
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::optimal);
  EXPECT_NEAR(solution.columns[x], 4, 1e-6);
}

TEST(Solver, WithoutObjectiveAnyPointWillDo) {
  LinearProgram program;
  const ColumnIndex x = column(program);
  row(program, 5, {{x, 2}}, 8);
  const Solution solution = solve(program);
  ASSERT_EQ(solution.status, Status::optimal);
  EXPECT_GE(solution.rows[0], 5);
  EXPECT_LE(solution.rows[0], 8);
  EXPECT_TRUE(solution.objective_values.empty());
  expect_near(solution.first_row_prices, {0});
}

TEST(Solver, EmptyProgrammesAreSolved) {
  EXPECT_EQ(solve({}).status, Status::optimal);

  LinearProgram no_rows;
  column(no_rows, 1, 4);
  column(no_rows, -2, 3);
  maximise(no_rows, {{0, 1}});
  minimise(no_rows, {{1, 1}});
  const Solution solution = solve(no_rows);
  ASSERT_EQ(solution.status, Status::optimal);
  expect_near(solution.columns, {4, -2});
  expect_near(solution.first_column_prices, {1, 0});
  no_rows.columns[0].upper = infinity;
  EXPECT_EQ(solve(no_rows).status, Status::unbounded);

  LinearProgram no_columns;
  row(no_columns, 0, {}, 3);
  EXPECT_EQ(solve(no_columns).status, Status::optimal);
  row(no_columns, 1, {}, 3, 5);
  EXPECT_EQ(solve(no_columns).status, Status::infeasible);

  LinearProgram empty_row;
  column(empty_row);
  row(empty_row, 1, {{0, 0}}, 3, 5);
  minimise(empty_row, {});
  EXPECT_EQ(solve(empty_row).status, Status::infeasible);
  empty_row.rows[0].lower = 0;
  EXPECT_EQ(solve(empty_row).status, Status::optimal);
}

TEST(Solver, ATermNamedTwiceInAnObjectiveAddsUp) {
  LinearProgram program = small_example();
  program.objectives[0].terms = {{0, 1}, {1, 5}, {0, 2}};
  expect_near(solve(program).objective_values, {36});
}

TEST(Solver, FreeColumnsMayBeNegative) {
  LinearProgram program;
  const ColumnIndex x = column(program, -infinity, infinity);
  row(program, -4, {{x, 1}}, infinity);
  minimise(program, {{x, 1}});
  expect_near(solve(program).columns, {-4});
}

// Each change makes the small example malformed.
void expect_stopped(const char* what, void (*change)(LinearProgram&)) {
  LinearProgram program = small_example();
  change(program);
  EXPECT_FALSE(well_formed(program)) << what;
  EXPECT_EQ(solve(program).status, Status::stopped) << what;
  EXPECT_EQ(relax(program).status, Status::stopped) << what;
  EXPECT_TRUE(smallest_conflict(program, {}).empty()) << what;
}

TEST(Solver, MalformedProgrammesStop) {
  using Program = LinearProgram;
  expect_stopped("column lower", [](Program& p) { p.columns[0].lower = not_a_number; });
  expect_stopped("column upper", [](Program& p) { p.columns[0].upper = not_a_number; });
  expect_stopped("column above all", [](Program& p) { p.columns[0].lower = infinity; });
  expect_stopped("column below all", [](Program& p) { p.columns[0].upper = -infinity; });
  expect_stopped("row lower", [](Program& p) { p.rows[1].lower = not_a_number; });
  expect_stopped("row upper", [](Program& p) { p.rows[1].upper = not_a_number; });
  expect_stopped("row above all", [](Program& p) { p.rows[1].lower = infinity; });
  expect_stopped("coefficient", [](Program& p) { p.rows[2].terms[0].coefficient = not_a_number; });
  expect_stopped("endless coefficient",
                 [](Program& p) { p.rows[2].terms[0].coefficient = -infinity; });
  expect_stopped("index", [](Program& p) { p.rows[2].terms[0].column = 2; });
  expect_stopped("column twice", [](Program& p) { p.rows[2].terms[0].column = 1; });
  expect_stopped("cost", [](Program& p) { p.objectives[0].terms[0].coefficient = not_a_number; });
  expect_stopped("endless cost",
                 [](Program& p) { p.objectives[0].terms[0].coefficient = infinity; });
  expect_stopped("cost of nothing", [](Program& p) { p.objectives[0].terms[0].column = 9; });
}

bool same_bits(const std::vector<double>& one, const std::vector<double>& other) {
  return one.size() == other.size() &&
         std::equal(one.begin(), one.end(), other.begin(), [](double first, double second) {
           return std::bit_cast<std::uint64_t>(first) == std::bit_cast<std::uint64_t>(second);
         });
}

TEST(Solver, GivesTheSameBitsAgain) {
  std::mt19937 random(77);
  for (int round = 0; round < 50; ++round) {
    LinearProgram program = random_program(random, 12, 6);
    add_random_objectives(random, program, 3);
    const Solution first = solve(program);
    const Solution second = solve(program);
    EXPECT_EQ(first.status, second.status);
    EXPECT_TRUE(same_bits(first.columns, second.columns));
    EXPECT_TRUE(same_bits(first.rows, second.rows));
    EXPECT_TRUE(same_bits(first.objective_values, second.objective_values));
    EXPECT_TRUE(same_bits(first.first_row_prices, second.first_row_prices));
    EXPECT_EQ(smallest_conflict(program, {}), smallest_conflict(program, {}));
  }
}

LinearProgram reordered(const LinearProgram& program, const std::vector<ColumnIndex>& place) {
  LinearProgram result = program;
  for (std::size_t index = 0; index < place.size(); ++index) {
    result.columns[place[index]] = program.columns[index];
  }
  for (Row& each : result.rows) {
    for (Term& term : each.terms) term.column = place[term.column];
    std::reverse(each.terms.begin(), each.terms.end());
  }
  for (Objective& each : result.objectives) {
    for (Term& term : each.terms) term.column = place[term.column];
  }
  return result;
}

TEST(Solver, OrderOfColumnsDoesNotMatter) {
  std::mt19937 random(4711);
  std::uniform_real_distribution<double> cost(0.5, 2);
  int compared = 0;
  for (int round = 0; round < 200; ++round) {
    LinearProgram program = random_program(random, 8, 3);
    // Whole-number objectives leave ties; the last one, of unlike costs, leaves one point only.
    add_random_objectives(random, program, 3);
    std::vector<Term> unlike;
    for (ColumnIndex each = 0; each < 8; ++each) unlike.push_back({each, cost(random)});
    minimise(program, unlike);
    std::vector<ColumnIndex> place(program.columns.size());
    std::iota(place.begin(), place.end(), 0U);
    std::shuffle(place.begin(), place.end(), random);
    const Solution straight = solve(program);
    const Solution shuffled = solve(reordered(program, place));
    ASSERT_EQ(straight.status, shuffled.status);
    if (straight.status != Status::optimal) continue;
    ++compared;
    for (std::size_t index = 0; index < place.size(); ++index) {
      EXPECT_NEAR(straight.columns[index], shuffled.columns[place[index]], 1e-8) << round;
    }
  }
  EXPECT_GT(compared, 50);
}

}  // namespace
}  // namespace maslin::blend
