// SPDX-License-Identifier: Apache-2.0
#include "plan/jars.hpp"

#include <algorithm>

namespace maslin::plan {
namespace {

const Rational quarter_of_pi(Rational::Wide{355}, Rational::Wide{452});

long whole(const Rational& value) { return static_cast<long>(value.floor_to(1).to_double()); }

long taste_of(long millilitres) { return whole(tasted * Rational(millilitres)); }

long capacity(const std::vector<JarSize>& sizes) {
  long sum = 0;
  for (const JarSize& size : sizes) sum += size.fill * size.count;
  return sum;
}

// For each size, which sums some number of jars of it and of all smaller ones make exactly.
class Sums {
 public:
  Sums(long most, const std::vector<JarSize>& sizes) : sizes_(sizes) {
    reached_.assign(sizes.size() + 1, std::vector<bool>(static_cast<std::size_t>(most) + 1));
    reached_[sizes.size()][0] = true;
    for (std::size_t i = sizes.size(); i-- > 0;) extend(i);
  }

  bool reaches(std::size_t from, Range<long> sums) const {
    for (long sum = std::max(0L, sums.low); sum <= sums.high; ++sum) {
      if (reached_[from][static_cast<std::size_t>(sum)]) return true;
    }
    return false;
  }

 private:
  // The fewest jars of this size with which each sum is made; a sum is there as long as they last.
  void extend(std::size_t i) {
    const auto& before = reached_[i + 1];
    auto& now = reached_[i];
    std::vector<long> used(before.size());
    const auto fill = static_cast<std::size_t>(sizes_[i].fill);
    for (std::size_t sum = 0; sum < before.size(); ++sum) {
      if (before[sum]) {
        now[sum] = true;
      } else if (sum >= fill && now[sum - fill] && used[sum - fill] < sizes_[i].count) {
        now[sum] = true;
        used[sum] = used[sum - fill] + 1;
      }
    }
  }

  const std::vector<JarSize>& sizes_;
  std::vector<std::vector<bool>> reached_;
};

// Every jar full, as many of the largest as can be; nothing where no choice does it.
std::optional<Filling> fill_exactly(Range<long> millilitres, const std::vector<JarSize>& sizes) {
  if (millilitres.high > most_millilitres) return std::nullopt;
  const Sums sums(millilitres.high, sizes);
  if (!sums.reaches(0, millilitres)) return std::nullopt;
  Filling filling;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const auto rest = [&](long jars) {
      return Range<long>{millilitres.low - jars * sizes[i].fill,
                         millilitres.high - jars * sizes[i].fill};
    };
    long jars = std::min(sizes[i].count, millilitres.high / sizes[i].fill);
    while (!sums.reaches(i + 1, rest(jars))) --jars;
    filling.full.push_back(jars);
    millilitres = rest(jars);
  }
  return filling;
}

// The largest first, and what is left into the smallest that holds it.
Filling fill_with_a_rest(long millilitres, const std::vector<JarSize>& sizes) {
  Filling filling;
  for (const JarSize& size : sizes) {
    filling.full.push_back(std::min(size.count, millilitres / size.fill));
    millilitres -= filling.full.back() * size.fill;
  }
  if (millilitres == 0) return filling;
  for (std::size_t i = sizes.size(); i-- > 0;) {
    if (filling.full[i] == sizes[i].count || sizes[i].fill < millilitres) continue;
    filling.part_size = i;
    filling.part_ml = millilitres;
    return filling;
  }
  filling.left_ml = millilitres;
  return filling;
}

Filling without_a_taste(Filling filling, long taste) {
  if (filling.part_ml <= taste) {
    filling.part_size.reset();
    filling.part_ml = 0;
  }
  if (filling.left_ml <= taste) filling.left_ml = 0;
  return filling;
}

// Jars that would take so much more, the smallest that are left first.
std::vector<long> jars_for_more(long millilitres, const std::vector<JarSize>& left) {
  std::vector<long> jars(left.size());
  bool one_more = true;  // a jar may crack, a lid may not seat
  for (std::size_t i = left.size(); i-- > 0;) {
    const long wanted = (millilitres + left[i].fill - 1) / left[i].fill + (one_more ? 1 : 0);
    jars[i] = std::min(left[i].count, wanted);
    if (jars[i] == wanted) return jars;
    if (jars[i] > 0) one_more = false;
    millilitres = std::max(0L, millilitres - jars[i] * left[i].fill);
    if (millilitres == 0) return jars;
  }
  return jars;
}

}  // namespace

long filled_to(Volume brimful, Length headspace) {
  const Rational width = neck_inside.in_base();
  const Rational above = quarter_of_pi * width * width * headspace.in_base() / Rational(1000);
  return std::max(1L, whole(brimful.in_base() - above));
}

std::vector<JarSize> jar_sizes(const std::vector<language::JarStock>& stock, Length headspace) {
  std::vector<JarSize> sizes;
  for (const language::JarStock& each : stock) {
    const auto same = std::find_if(sizes.begin(), sizes.end(),
                                   [&](const JarSize& size) { return size.holds == each.holds; });
    if (same != sizes.end()) {
      same->count += each.count;
    } else {
      sizes.push_back({each.holds, filled_to(each.holds, headspace), each.count});
    }
  }
  std::sort(sizes.begin(), sizes.end(),
            [](const JarSize& a, const JarSize& b) { return b.holds < a.holds; });
  return sizes;
}

Filling fill_jars(long millilitres, const std::vector<JarSize>& sizes, long taste) {
  if (millilitres < capacity(sizes)) {
    if (auto exact = fill_exactly({millilitres - taste, millilitres}, sizes)) return *exact;
  }
  return without_a_taste(fill_with_a_rest(millilitres, sizes), taste);
}

JarPlan plan_jars(const std::vector<language::JarStock>& stock, const Headspace& headspace,
                  const Range<Volume>& expected, long boils) {
  JarPlan plan;
  plan.headspace = headspace.height;
  plan.headspace_assumed = headspace.assumed;
  plan.sizes = jar_sizes(stock, plan.headspace);
  plan.expected_ml = {whole(expected.low.in_base()), whole(expected.high.in_base())};
  plan.used.assign(plan.sizes.size(), 0);
  const long middle_ml = (plan.expected_ml.low + plan.expected_ml.high) / 2;
  std::vector<JarSize> left = plan.sizes;
  for (long boil = 1; boil <= boils; ++boil) {
    Filling filling = fill_jars(middle_ml, left, taste_of(middle_ml));
    for (std::size_t i = 0; i < left.size(); ++i) {
      const long jars = filling.full[i] + (filling.part_size == i ? 1 : 0);
      left[i].count -= jars;
      plan.used[i] += jars;
    }
    plan.left_ml += filling.left_ml;
    if (!plan.boils.empty() && plan.boils.back().filling == filling) {
      plan.boils.back().last = boil;
    } else {
      plan.boils.push_back({boil, boil, std::move(filling)});
    }
  }
  const long part =
      plan.boils.back().filling.part_size
          ? left[*plan.boils.back().filling.part_size].fill - plan.boils.back().filling.part_ml
          : 0;
  plan.to_spare = jars_for_more(std::max(0L, plan.expected_ml.high - middle_ml - part), left);
  return plan;
}

}  // namespace maslin::plan
