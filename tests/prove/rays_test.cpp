// SPDX-License-Identifier: Apache-2.0
// The elementary rays against what their definition says, set by set, and against the solver
// (Farkas). The figures drawn are whole, so that nothing is nearly so.
#include "prove/rays.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <random>

#include "blend/solver.hpp"
#include "property/random_case.hpp"

namespace maslin::prove {
namespace {

std::optional<std::vector<Ray>> rays_of(const std::vector<std::vector<double>>& rows,
                                        std::size_t most) {
  Effort enough(1'000'000'000);
  return elementary_rays(rows, most, enough);
}

using Matrix = std::vector<std::vector<double>>;
using Support = unsigned;                                // a bit a row
using Weights = std::map<Support, std::vector<double>>;  // of the rays, the most of each is 1
constexpr double close = 1e-7;

Matrix random_matrix(std::mt19937& random, std::size_t rows, std::size_t columns) {
  std::uniform_int_distribution<int> whole(-3, 3);
  Matrix matrix(rows, std::vector<double>(columns));
  for (auto& row : matrix) {
    for (double& each : row) each = whole(random);
  }
  return matrix;
}

// The one way, up to its size, to add the rows of a set up to nothing; nothing where there is none
// or more than one. Gauss–Jordan over the columns' equations.
std::optional<std::vector<double>> only_sum(const Matrix& rows,
                                            const std::vector<std::size_t>& of) {
  const std::size_t columns = rows.front().size();
  Matrix equations(columns, std::vector<double>(of.size()));
  for (std::size_t c = 0; c < columns; ++c) {
    for (std::size_t i = 0; i < of.size(); ++i) equations[c][i] = rows[of[i]][c];
  }
  std::vector<std::size_t> pivots;
  std::optional<std::size_t> free;
  for (std::size_t i = 0; i < of.size(); ++i) {
    std::size_t best = pivots.size();
    for (std::size_t e = pivots.size(); e < columns; ++e) {
      if (std::abs(equations[e][i]) > std::abs(equations[best][i])) best = e;
    }
    if (best >= columns || std::abs(equations[best][i]) < close) {
      if (free) return std::nullopt;
      free = i;
      continue;
    }
    const std::size_t pivot = pivots.size();
    std::swap(equations[pivot], equations[best]);
    for (std::size_t e = 0; e < columns; ++e) {
      if (e == pivot) continue;
      const double factor = equations[e][i] / equations[pivot][i];
      for (std::size_t k = 0; k < of.size(); ++k) equations[e][k] -= factor * equations[pivot][k];
    }
    pivots.push_back(i);
  }
  if (!free) return std::nullopt;
  std::vector<double> weights(of.size(), 0.0);
  weights[*free] = 1;
  for (std::size_t e = 0; e < pivots.size(); ++e) {
    weights[pivots[e]] = -equations[e][*free] / equations[e][pivots[e]];
  }
  return weights;
}

// Sets of rows that have one sum of nothing, each with a weight above 0: by definition the
// supports of the elementary rays.
Weights by_definition(const Matrix& rows) {
  Weights result;
  for (Support set = 1; set < (Support{1} << rows.size()); ++set) {
    std::vector<std::size_t> of;
    for (std::size_t i = 0; i < rows.size(); ++i) {
      if ((set >> i) & 1U) of.push_back(i);
    }
    auto weights = only_sum(rows, of);
    if (!weights) continue;
    const double most = *std::max_element(weights->begin(), weights->end());
    if (!(most > 0)) continue;
    std::vector<double> by_row(rows.size(), 0.0);
    for (std::size_t i = 0; i < of.size(); ++i) by_row[of[i]] = (*weights)[i] / most;
    const bool all = std::all_of(of.begin(), of.end(), [&](auto i) { return by_row[i] > close; });
    if (all) result[set] = by_row;
  }
  return result;
}

Weights by_support(const std::vector<Ray>& rays, std::size_t rows) {
  Weights result;
  for (const Ray& ray : rays) {
    Support set = 0;
    std::vector<double> weights(rows, 0.0);
    double most = 0;
    for (const Ray::Part& part : ray.parts) {
      EXPECT_GT(part.weight, 0);
      set |= Support{1} << part.row;
      weights[part.row] = part.weight;
      most = std::max(most, part.weight);
    }
    for (double& each : weights) each /= most;
    EXPECT_TRUE(result.emplace(set, weights).second) << "one support twice";
  }
  return result;
}

TEST(Rays, AreThoseOfTheDefinition) {
  std::mt19937 random{20261125};
  std::size_t seen = 0;
  for (int round = 0; round < test::rounds(400, 20000); ++round) {
    const std::size_t rows = 1 + random() % 8;
    const std::size_t columns = 1 + random() % 4;
    const Matrix matrix = random_matrix(random, rows, columns);
    const auto rays = rays_of(matrix, 10000);
    ASSERT_TRUE(rays.has_value());
    const Weights found = by_support(*rays, rows);
    const Weights expected = by_definition(matrix);
    ASSERT_EQ(found.size(), expected.size());
    for (const auto& [set, weights] : expected) {
      const auto same = found.find(set);
      ASSERT_NE(same, found.end());
      for (std::size_t i = 0; i < rows; ++i) EXPECT_NEAR(same->second[i], weights[i], close);
    }
    seen += found.size();
  }
  EXPECT_GT(seen, 1000U);
}

// rows · x + constants >= 0 has a solution exactly when no ray says that the constants add up to
// less than nothing.
TEST(Rays, ShowExactlyTheSystemsWithoutASolution) {
  std::mt19937 random{1902};
  int without = 0;
  int with = 0;
  for (int round = 0; round < test::rounds(400, 20000); ++round) {
    const std::size_t rows = 2 + random() % 9;
    const std::size_t columns = 1 + random() % 4;
    const Matrix matrix = random_matrix(random, rows, columns);
    std::uniform_int_distribution<int> whole(-2, 5);
    blend::LinearProgram program;
    for (std::size_t c = 0; c < columns; ++c) {
      program.add_column({"", -blend::infinity, blend::infinity, blend::background});
    }
    std::vector<double> constants;
    for (const auto& row : matrix) {
      constants.push_back(whole(random));
      std::vector<blend::Term> terms;
      for (std::size_t c = 0; c < columns; ++c) {
        if (row[c] != 0) terms.push_back({static_cast<blend::ColumnIndex>(c), row[c]});
      }
      program.add_row({"", -constants.back(), blend::infinity, terms,
                       static_cast<blend::Statement>(constants.size())});
    }
    const blend::Elastic elastic = blend::relax(program);
    ASSERT_EQ(elastic.status, blend::Status::optimal);
    const bool solved = elastic.total < close;
    const auto rays = rays_of(matrix, 10000);
    ASSERT_TRUE(rays.has_value());
    const bool shown = std::any_of(rays->begin(), rays->end(), [&](const Ray& ray) {
      double sum = 0;
      for (const Ray::Part& part : ray.parts) sum += part.weight * constants[part.row];
      return sum < -close;
    });
    EXPECT_EQ(shown, !solved) << "round " << round;
    ++(solved ? with : without);
  }
  EXPECT_GT(without, 50);
  EXPECT_GT(with, 50);
}

TEST(Rays, GiveUpRatherThanTryWithoutEnd) {
  std::mt19937 random{7};
  EXPECT_FALSE(rays_of(random_matrix(random, 30, 6), 20).has_value());
  EXPECT_FALSE(rays_of(random_matrix(random, 65, 1), 1000000).has_value());
  EXPECT_TRUE(rays_of({}, 10)->empty());
  // What would take more than there is to spend ends, and has spent it.
  Effort little(100);
  EXPECT_FALSE(elementary_rays(random_matrix(random, 30, 6), 1000000, little).has_value());
  EXPECT_TRUE(little.is_used_up());
}

}  // namespace
}  // namespace maslin::prove
