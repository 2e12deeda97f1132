// SPDX-License-Identifier: Apache-2.0
// What is missing, and who is to blame: relax() and smallest_conflict().
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "blend/solver.hpp"
#include "tests/blend/small_programs.hpp"

namespace maslin::blend {
namespace {

using testing::column;
using testing::expect_near;
using testing::random_program;
using testing::row;
using testing::small_example;

// The programme without some statements, stated anew.
LinearProgram without(LinearProgram program, const std::vector<Statement>& dropped) {
  const auto is_dropped = [&](Statement statement) {
    return std::find(dropped.begin(), dropped.end(), statement) != dropped.end();
  };
  std::vector<Row> rows;
  for (const Row& each : program.rows) {
    if (!is_dropped(each.statement)) rows.push_back(each);
  }
  program.rows = rows;
  for (Column& each : program.columns) {
    if (!is_dropped(each.statement)) continue;
    each.lower = each.lower >= 0 ? 0 : -infinity;
    each.upper = infinity;
  }
  return program;
}

std::vector<Statement> statements_of(const LinearProgram& program) {
  std::vector<Statement> all;
  for (const Row& each : program.rows) all.push_back(each.statement);
  for (const Column& each : program.columns) all.push_back(each.statement);
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  all.erase(std::remove(all.begin(), all.end(), background), all.end());
  return all;
}

std::vector<Statement> all_but(std::vector<Statement> all, const std::vector<Statement>& kept) {
  const auto is_kept = [&](Statement statement) {
    return std::find(kept.begin(), kept.end(), statement) != kept.end();
  };
  all.erase(std::remove_if(all.begin(), all.end(), is_kept), all.end());
  return all;
}

TEST(Relax, MeasuresWhatIsMissing) {
  LinearProgram program;
  const ColumnIndex x = column(program, 0, 3);
  row(program, 20, {{x, 2}}, infinity, 1);
  const Elastic elastic = relax(program);
  ASSERT_EQ(elastic.status, Status::optimal);
  EXPECT_NEAR(elastic.total, 7, 1e-9);  // 14 of the row, divided by its coefficient
  expect_near(elastic.columns, {3});
  expect_near(elastic.row_violation, {-14});
  expect_near(elastic.column_violation, {0});
}

TEST(Relax, SaysWhichSideGivesWay) {
  LinearProgram program;
  const ColumnIndex x = column(program, 0, 3, 2);
  row(program, 8, {{x, 1}}, infinity);
  const Elastic elastic = relax(program);
  ASSERT_EQ(elastic.status, Status::optimal);
  expect_near(elastic.column_violation, {5});
  expect_near(elastic.row_violation, {0});
}

TEST(Relax, IsZeroWhereThereIsASolution) {
  const Elastic elastic = relax(small_example());
  ASSERT_EQ(elastic.status, Status::optimal);
  EXPECT_EQ(elastic.total, 0);
  expect_near(elastic.row_violation, {0, 0, 0});
}

TEST(Relax, KeepsTheBackground) {
  LinearProgram program;
  const ColumnIndex x = column(program, 0, 3);
  row(program, 8, {{x, 1}}, infinity);
  row(program, 9, {{x, 1}}, infinity, 1);
  EXPECT_EQ(relax(program).status, Status::infeasible);
}

TEST(Relax, LeavesAmountsAboveZero) {
  LinearProgram program;
  const ColumnIndex x = column(program, 5, 6, 1);
  row(program, -infinity, {{x, 1}}, -1, 2);
  const Elastic elastic = relax(program);
  ASSERT_EQ(elastic.status, Status::optimal);
  EXPECT_NEAR(elastic.total, 6, 1e-9);
  EXPECT_GE(elastic.columns[x], 0);
  const LinearProgram alone = without(program, {1});
  EXPECT_EQ(solve(alone).status, Status::infeasible);
  EXPECT_EQ(smallest_conflict(program, {}), std::vector<Statement>{2});
}

TEST(Relax, GivesWayWhereBoundsCross) {
  LinearProgram program;
  const ColumnIndex x = column(program);
  row(program, 6, {{x, 2}}, 4, 1);
  const Elastic elastic = relax(program);
  ASSERT_EQ(elastic.status, Status::optimal);
  EXPECT_NEAR(elastic.total, 1, 1e-9);
}

TEST(Conflict, NamesTheStatementsThatCollide) {
  LinearProgram program;
  const ColumnIndex x = column(program, 0, 3, 10);
  const ColumnIndex y = column(program, 0, 50, 11);
  row(program, 0, {{x, 1}, {y, -1}}, 0, 12);
  row(program, 5, {{y, 1}}, infinity, 13);
  row(program, 0, {{x, 1}, {y, 1}}, 100, 14);
  EXPECT_EQ(smallest_conflict(program, {}), (std::vector<Statement>{10, 12, 13}));
}

TEST(Conflict, AllRowsOfAStatementGoTogether) {
  LinearProgram program;
  const ColumnIndex x = column(program);
  row(program, 5, {{x, 1}}, infinity, 1);
  row(program, -infinity, {{x, 1}}, 3, 1);
  row(program, 4, {{x, 1}}, infinity, 2);
  EXPECT_EQ(smallest_conflict(program, {}), std::vector<Statement>{1});
}

TEST(Conflict, WhatIsTriedFirstStaysOutWhereOthersExplain) {
  LinearProgram program;
  const ColumnIndex x = column(program);
  row(program, 5, {{x, 1}}, infinity, 1);
  row(program, 6, {{x, 1}}, infinity, 2);
  row(program, -infinity, {{x, 1}}, 3, 3);
  row(program, -infinity, {{x, 1}}, 2, 4);
  EXPECT_EQ(smallest_conflict(program, {}), (std::vector<Statement>{2, 4}));
  EXPECT_EQ(smallest_conflict(program, {2}), (std::vector<Statement>{1, 4}));
  EXPECT_EQ(smallest_conflict(program, {4, 2}), (std::vector<Statement>{1, 3}));
  EXPECT_EQ(smallest_conflict(program, {4, 4, 99, background}), (std::vector<Statement>{2, 3}));
}

TEST(Conflict, IsEmptyWithoutOne) {
  LinearProgram program;
  const ColumnIndex x = column(program, 0, 3);
  row(program, 2, {{x, 1}}, infinity, 1);
  EXPECT_TRUE(smallest_conflict(program, {}).empty());
  row(program, 4, {{x, 1}}, infinity);  // the background alone has no solution
  EXPECT_TRUE(smallest_conflict(program, {}).empty());
  EXPECT_TRUE(smallest_conflict({}, {}).empty());
}

TEST(Conflict, CrossedBoundsAreAConflictOfOne) {
  LinearProgram program;
  column(program, 5, 3, 8);
  column(program, 0, 3, 9);
  EXPECT_EQ(smallest_conflict(program, {}), std::vector<Statement>{8});
}

// The plain filter: every statement tried by a fresh solve.
std::vector<Statement> plain_filter(const LinearProgram& program,
                                    const std::vector<Statement>& order) {
  std::vector<Statement> dropped;
  for (const Statement statement : order) {
    dropped.push_back(statement);
    if (solve(without(program, dropped)).status != Status::infeasible) dropped.pop_back();
  }
  return all_but(statements_of(program), dropped);
}

TEST(Conflict, IsIrreducibleOnRandomProgrammes) {
  std::mt19937 random(1867);
  int conflicts = 0;
  for (int round = 0; round < 300; ++round) {
    const LinearProgram program = random_program(random, 4 + round % 6, 4 + round % 11);
    const bool infeasible = solve(program).status == Status::infeasible;
    std::vector<Statement> order = statements_of(program);
    std::shuffle(order.begin(), order.end(), random);
    const std::vector<Statement> found = smallest_conflict(program, order);
    ASSERT_EQ(found.empty(), !infeasible) << "round " << round;
    if (!infeasible) continue;
    ++conflicts;
    const std::vector<Statement> others = all_but(statements_of(program), found);
    EXPECT_EQ(solve(without(program, others)).status, Status::infeasible) << "round " << round;
    for (const Statement statement : found) {
      std::vector<Statement> dropped = others;
      dropped.push_back(statement);
      EXPECT_EQ(solve(without(program, dropped)).status, Status::optimal)
          << "round " << round << " without " << statement;
    }
    EXPECT_EQ(found, plain_filter(program, order)) << "round " << round;
  }
  EXPECT_GT(conflicts, 100);
}

TEST(Conflict, AgreesWithRelax) {
  std::mt19937 random(1234);
  for (int round = 0; round < 200; ++round) {
    const LinearProgram program = random_program(random, 5, 8);
    const Elastic elastic = relax(program);
    ASSERT_EQ(elastic.status, Status::optimal);
    const Status status = solve(program).status;
    EXPECT_EQ(status == Status::infeasible, elastic.total > infeasible_above) << round;
  }
}

}  // namespace
}  // namespace maslin::blend
