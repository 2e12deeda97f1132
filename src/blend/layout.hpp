// SPDX-License-Identifier: Apache-2.0
// Which columns stand for what, while a programme is being made.
#pragma once

#include <algorithm>
#include <numeric>
#include <optional>
#include <vector>

#include "blend/ground.hpp"
#include "language/amounts.hpp"

namespace maslin::blend {

inline constexpr double grams_in_kilogram = 1000;

struct Layout {
  std::vector<std::vector<ColumnIndex>> produce;  // by share
  std::vector<std::vector<ColumnIndex>> added;    // by addition
  std::vector<std::vector<ColumnIndex>> donated;  // by substitution
  std::vector<std::optional<ColumnIndex>> credits;
  // In the order of their names, so that the order of statements does not matter.
  std::vector<std::size_t> share_order;
  std::vector<std::size_t> addition_order;
  std::vector<std::size_t> substitution_order;
  std::vector<std::size_t> limit_order;
};

template <class List, class NameOf>
std::vector<std::size_t> by_name(const List& list, NameOf name_of) {
  std::vector<std::size_t> order(list.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return name_of(list[a]) < name_of(list[b]);
  });
  return order;
}

inline language::Stuff stuff_of(const Supply& supply) {
  return {supply.ingredient, supply.acidity};
}

// What a weight is taken for.
language::Slot slot_of(const ColumnInfo& column);

bool is_weight(const Blend& blend, ColumnIndex column);
std::vector<Term> ones(const std::vector<ColumnIndex>& columns);

// What an addition amounts to, in kilograms, litres or thousands of pieces, credits included.
std::vector<Term> amount_of(const Grounding& given, const Blend& blend, const Layout& layout,
                            std::size_t addition);

// A property (or membership) of a column at one end. A limit that no table supports counts as unmet
// from below and as full from above.
double share_at(const Grounding& given, const Blend& blend, const language::Limit& limit,
                ColumnIndex column, bool low);

// Whether a column counts in the whole of a limit beside the produce: water, in a brine.
bool joins_whole(const Grounding& given, const Blend& blend, const language::Limit& limit,
                 ColumnIndex column);

// The objectives of a plan in their order, with the columns and rows they need.
void add_objectives(const Grounding& given, const Goal& goal, const Layout& layout, Blend& blend);

}  // namespace maslin::blend
