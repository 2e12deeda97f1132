// SPDX-License-Identifier: Apache-2.0
// The double description method: one column after another is made to cancel, by adding pairs of
// rays of which one stands above and one below. A pair counts only when it is next to each other:
// no third ray has its support within theirs (Fukuda and Prodon, Double Description Method
// Revisited, 1996).
#include "prove/rays.hpp"

#include <algorithm>
#include <bitset>
#include <cmath>

namespace maslin::prove {
namespace {

constexpr std::size_t most_rows = 64;
using Support = std::bitset<most_rows>;

// Coefficients are of the order of one: what is smaller is what arithmetic left.
constexpr double nothing = 1e-9;

struct Growing {
  std::vector<double> weights;  // by row
  std::vector<double> left;     // by column: what is still to cancel
  Support support;
};

void scale(Growing& ray) {
  const double most = *std::max_element(ray.weights.begin(), ray.weights.end());
  for (double& weight : ray.weights) {
    weight /= most;
    if (weight < nothing) weight = 0;
  }
  for (double& value : ray.left) value /= most;
  ray.support.reset();
  for (std::size_t i = 0; i < ray.weights.size(); ++i) ray.support[i] = ray.weights[i] > 0;
}

Growing sum_of(const Growing& above, const Growing& below, std::size_t column) {
  const double a = -below.left[column];
  const double b = above.left[column];
  Growing result = above;
  for (std::size_t i = 0; i < result.weights.size(); ++i) {
    result.weights[i] = a * above.weights[i] + b * below.weights[i];
  }
  for (std::size_t i = 0; i < result.left.size(); ++i) {
    result.left[i] = a * above.left[i] + b * below.left[i];
  }
  result.left[column] = 0;
  scale(result);
  return result;
}

bool are_next(const std::vector<Growing>& rays, std::size_t a, std::size_t b) {
  const Support both = rays[a].support | rays[b].support;
  for (std::size_t i = 0; i < rays.size(); ++i) {
    if (i != a && i != b && (rays[i].support & ~both).none()) return false;
  }
  return true;
}

bool cancel(std::vector<Growing>& rays, std::size_t column, std::size_t most, Effort& effort) {
  std::vector<Growing> next;
  for (const Growing& ray : rays) {
    if (std::abs(ray.left[column]) <= nothing) next.push_back(ray);
  }
  for (std::size_t a = 0; a < rays.size(); ++a) {
    if (rays[a].left[column] <= nothing) continue;
    for (std::size_t b = 0; b < rays.size(); ++b) {
      if (rays[b].left[column] >= -nothing) continue;
      if (!effort.spend(rays.size())) return false;
      if (!are_next(rays, a, b)) continue;
      next.push_back(sum_of(rays[a], rays[b], column));
      if (next.size() > most) return false;
    }
  }
  rays = std::move(next);
  return true;
}

}  // namespace

std::optional<std::vector<Ray>> elementary_rays(const std::vector<std::vector<double>>& rows,
                                                std::size_t most, Effort& effort) {
  if (rows.size() > most_rows) return std::nullopt;
  std::vector<Growing> growing;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    Growing ray;
    ray.weights.assign(rows.size(), 0.0);
    ray.weights[i] = 1;
    ray.left = rows[i];
    ray.support[i] = true;
    growing.push_back(std::move(ray));
  }
  const std::size_t columns = rows.empty() ? 0 : rows.front().size();
  for (std::size_t column = 0; column < columns; ++column) {
    if (!cancel(growing, column, most, effort)) return std::nullopt;
  }
  std::vector<Ray> rays;
  for (const Growing& ray : growing) {
    Ray result;
    for (std::size_t i = 0; i < ray.weights.size(); ++i) {
      if (ray.weights[i] > 0) result.parts.push_back({i, ray.weights[i]});
    }
    rays.push_back(std::move(result));
  }
  return rays;
}

}  // namespace maslin::prove
