// SPDX-License-Identifier: Apache-2.0
// Without caps it is a fractional knapsack: every share at its least, the rest to the shares that
// score most. One cap is priced: at the right price the best mix without the cap just meets it
// (two mixes, one on each side, divided between). More caps than one go to the solver.
#include "prove/worst_mix.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "blend/solver.hpp"

namespace maslin::prove {
namespace {

constexpr double close = 1e-12;

struct Best {
  double score = -blend::infinity;
  std::size_t member = 0;
  bool found = false;
};

class Knapsack {
 public:
  Knapsack(const Case& given, const Cap* cap, const std::vector<double>& scores)
      : given_(given), cap_(cap), scores_(scores) {}

  // The best mix when a kilogram under the cap costs `price`.
  std::optional<Mix> at_price(double price) const {
    const auto& shares = given_.shares;
    std::vector<Best> best(shares.size());
    for (std::size_t m = 0; m < given_.members.size(); ++m) {
      const double score = scores_[m] - (counts(m) ? price : 0);
      Best& of_share = best[given_.members[m].share];
      if (!of_share.found || score > of_share.score) of_share = {score, m, true};
    }
    Mix mix;
    mix.parts.assign(given_.members.size(), 0.0);
    double rest = 1;
    std::vector<std::size_t> order;
    for (std::size_t s = 0; s < shares.size(); ++s) {
      const double low = shares[s].low;
      if (!best[s].found) {
        if (low > 0) return std::nullopt;
        continue;
      }
      mix.parts[best[s].member] = low;
      rest -= low;
      order.push_back(s);
    }
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return best[a].score > best[b].score; });
    for (const std::size_t s : order) {
      const double more = std::min(rest, shares[s].high - shares[s].low);
      if (more <= 0) continue;
      mix.parts[best[s].member] += more;
      rest -= more;
    }
    if (std::abs(rest) > 1e-9) return std::nullopt;
    mix.value = std::inner_product(mix.parts.begin(), mix.parts.end(), scores_.begin(), 0.0);
    return mix;
  }

  double under_cap(const Mix& mix) const {
    double sum = 0;
    for (std::size_t m = 0; m < mix.parts.size(); ++m) {
      if (counts(m)) sum += mix.parts[m];
    }
    return sum;
  }
  double most() const { return cap_->most; }

 private:
  bool counts(std::size_t member) const { return cap_ != nullptr && cap_->counts[member]; }

  const Case& given_;
  const Cap* cap_;
  const std::vector<double>& scores_;
};

Mix between(const Mix& a, const Mix& b, double part_of_a) {
  Mix result = a;
  for (std::size_t m = 0; m < a.parts.size(); ++m) {
    result.parts[m] = part_of_a * a.parts[m] + (1 - part_of_a) * b.parts[m];
  }
  result.value = part_of_a * a.value + (1 - part_of_a) * b.value;
  return result;
}

std::optional<Mix> under_one_cap(const Knapsack& knapsack, const std::vector<double>& scores) {
  auto over = knapsack.at_price(0);
  if (!over || knapsack.under_cap(*over) <= knapsack.most() + close) return over;
  const auto [low, high] = std::minmax_element(scores.begin(), scores.end());
  double cheap = 0;
  double dear = 2 * (*high - *low) + 1;
  auto under = knapsack.at_price(dear);
  if (!under || knapsack.under_cap(*under) > knapsack.most() + close) return std::nullopt;
  constexpr int halvings = 60;
  for (int i = 0; i < halvings; ++i) {
    const double price = (cheap + dear) / 2;
    auto mix = knapsack.at_price(price);
    if (knapsack.under_cap(*mix) > knapsack.most()) {
      cheap = price;
      over = std::move(mix);
    } else {
      dear = price;
      under = std::move(mix);
    }
  }
  const double above = knapsack.under_cap(*over) - knapsack.most();
  const double below = knapsack.most() - knapsack.under_cap(*under);
  if (above + below <= close) return under;
  return between(*over, *under, below / (above + below));
}

std::optional<Mix> under_caps(const Case& given, const std::vector<Cap>& caps,
                              const std::vector<double>& scores) {
  blend::LinearProgram program;
  const auto& shares = given.shares;
  std::vector<std::vector<blend::Term>> of_share(shares.size());
  std::vector<blend::Term> all;
  blend::Objective worst{"worst", blend::Direction::maximise, {}};
  for (std::size_t m = 0; m < given.members.size(); ++m) {
    const auto column = program.add_column({"", 0, 1, blend::background});
    of_share[given.members[m].share].push_back({column, 1});
    all.push_back({column, 1});
    worst.terms.push_back({column, scores[m]});
  }
  program.add_row({"", 1, 1, all, blend::background});
  for (std::size_t s = 0; s < shares.size(); ++s) {
    program.add_row({"", shares[s].low, shares[s].high, of_share[s], blend::background});
  }
  for (const Cap& cap : caps) {
    std::vector<blend::Term> terms;
    for (std::size_t m = 0; m < given.members.size(); ++m) {
      if (cap.counts[m]) terms.push_back({static_cast<blend::ColumnIndex>(m), 1});
    }
    program.add_row({"", -blend::infinity, cap.most, terms, blend::background});
  }
  program.objectives.push_back(worst);
  const blend::Solution solution = blend::solve(program);
  if (solution.status != blend::Status::optimal) return std::nullopt;
  Mix mix{solution.columns, 0};
  mix.value = std::inner_product(mix.parts.begin(), mix.parts.end(), scores.begin(), 0.0);
  return mix;
}

}  // namespace

std::optional<Mix> worst_mix(const Case& given, const std::vector<Cap>& caps,
                             const std::vector<double>& scores) {
  if (caps.size() > 1) return under_caps(given, caps, scores);
  const Knapsack knapsack(given, caps.empty() ? nullptr : &caps.front(), scores);
  return caps.empty() ? knapsack.at_price(0) : under_one_cap(knapsack, scores);
}

}  // namespace maslin::prove
