// SPDX-License-Identifier: Apache-2.0
// The worst mix against the solver, with no cap, one and two.
#include "prove/worst_mix.hpp"

#include <gtest/gtest.h>

#include <numeric>
#include <random>

#include "blend/solver.hpp"
#include "property/random_case.hpp"

namespace maslin::prove {
namespace {

constexpr double close = 1e-7;

struct Drawn {
  std::vector<Member> members;
  std::vector<Range<double>> shares;
  std::vector<Cap> caps;
  std::vector<double> scores;
};

Drawn draw(std::mt19937& random, std::size_t caps) {
  const auto real = [&](double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random);
  };
  Drawn drawn;
  const std::size_t shares = 1 + random() % 5;
  for (std::size_t s = 0; s < shares; ++s) {
    const double low = real(0, 0.5 / static_cast<double>(shares));
    drawn.shares.push_back({low, low + real(0, 1)});
    // A share that nothing fills is possible where it may be empty.
    const std::size_t members = random() % 10 == 0 ? 0 : 1 + random() % 4;
    for (std::size_t m = 0; m < members; ++m) {
      drawn.members.push_back({s, language::IngredientId(drawn.members.size())});
      // Some score the same.
      drawn.scores.push_back(random() % 4 == 0 ? 0.5 : real(-1, 1));
    }
  }
  for (std::size_t c = 0; c < caps; ++c) {
    Cap cap;
    for (std::size_t m = 0; m < drawn.members.size(); ++m) cap.counts.push_back(random() % 2 == 0);
    cap.most = real(0, 0.8);
    drawn.caps.push_back(cap);
  }
  return drawn;
}

// Every share as a part of its own, beside the members; least and not most.
blend::Solution solved(const Drawn& drawn) {
  blend::LinearProgram program;
  blend::Objective least{"least", blend::Direction::minimise, {}};
  std::vector<blend::Term> whole;
  std::vector<std::vector<blend::Term>> parts;
  for (const Range<double>& share : drawn.shares) {
    const auto column = program.add_column({"", share.low, share.high, blend::background});
    whole.push_back({column, 1});
    parts.push_back({{column, -1}});
  }
  std::vector<blend::ColumnIndex> columns;
  for (std::size_t m = 0; m < drawn.members.size(); ++m) {
    columns.push_back(program.add_column({"", 0, blend::infinity, blend::background}));
    parts[drawn.members[m].share].push_back({columns.back(), 1});
    least.terms.push_back({columns.back(), -drawn.scores[m]});
  }
  program.add_row({"", 1, 1, whole, blend::background});
  for (const auto& terms : parts) program.add_row({"", 0, 0, terms, blend::background});
  for (const Cap& cap : drawn.caps) {
    std::vector<blend::Term> terms;
    for (std::size_t m = 0; m < columns.size(); ++m) {
      if (cap.counts[m]) terms.push_back({columns[m], 1});
    }
    program.add_row({"", -blend::infinity, cap.most, terms, blend::background});
  }
  program.objectives.push_back(least);
  return blend::solve(program);
}

void expect_admitted(const Drawn& drawn, const Mix& mix) {
  std::vector<double> of_share(drawn.shares.size(), 0.0);
  for (std::size_t m = 0; m < mix.parts.size(); ++m) {
    EXPECT_GE(mix.parts[m], -close);
    of_share[drawn.members[m].share] += mix.parts[m];
  }
  for (std::size_t s = 0; s < of_share.size(); ++s) {
    EXPECT_GE(of_share[s], drawn.shares[s].low - close);
    EXPECT_LE(of_share[s], drawn.shares[s].high + close);
  }
  EXPECT_NEAR(std::accumulate(of_share.begin(), of_share.end(), 0.0), 1, close);
  for (const Cap& cap : drawn.caps) {
    double sum = 0;
    for (std::size_t m = 0; m < mix.parts.size(); ++m) sum += cap.counts[m] ? mix.parts[m] : 0;
    EXPECT_LE(sum, cap.most + close);
  }
  const double value =
      std::inner_product(mix.parts.begin(), mix.parts.end(), drawn.scores.begin(), 0.0);
  EXPECT_NEAR(mix.value, value, close);
}

class WorstMix : public testing::TestWithParam<std::size_t> {};

TEST_P(WorstMix, IsWhatTheSolverFinds) {
  std::mt19937 random{static_cast<unsigned>(416 + GetParam())};
  const language::Program program;
  const language::Framework framework;
  int admitted = 0;
  int none = 0;
  for (int round = 0; round < test::rounds(400, 20000); ++round) {
    const Drawn drawn = draw(random, GetParam());
    const Case given{program, framework, drawn.members, drawn.shares};
    const auto mix = worst_mix(given, drawn.caps, drawn.scores);
    const blend::Solution expected = solved(drawn);
    ASSERT_EQ(mix.has_value(), expected.status == blend::Status::optimal) << "round " << round;
    ++(mix ? admitted : none);
    if (!mix) continue;
    EXPECT_NEAR(mix->value, -expected.objective_values.front(), close) << "round " << round;
    expect_admitted(drawn, *mix);
  }
  EXPECT_GT(admitted, 50);
  EXPECT_GT(none, 10);
}

INSTANTIATE_TEST_SUITE_P(Caps, WorstMix, testing::Values(0, 1, 2));

}  // namespace
}  // namespace maslin::prove
