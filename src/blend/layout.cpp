// SPDX-License-Identifier: Apache-2.0
#include "blend/layout.hpp"

#include "language/membership.hpp"

namespace maslin::blend {

language::Slot slot_of(const ColumnInfo& column) {
  using language::SlotKind;
  switch (column.role) {
    case Role::produce:
      return {SlotKind::produce, column.slot};
    case Role::substitute:
      return {SlotKind::substitute, column.slot};
    default:
      return {SlotKind::addition, column.slot};
  }
}

bool is_weight(const Blend& blend, ColumnIndex column) {
  const Role role = blend.columns[column].role;
  return role == Role::produce || role == Role::addition || role == Role::substitute;
}

std::vector<Term> ones(const std::vector<ColumnIndex>& columns) {
  std::vector<Term> terms;
  terms.reserve(columns.size());
  for (const ColumnIndex column : columns) terms.push_back({column, 1});
  return terms;
}

std::vector<Term> amount_of(const Grounding& given, const Blend& blend, const Layout& layout,
                            std::size_t index) {
  const language::Addition& addition = given.framework.additions[index];
  std::vector<Term> terms;
  for (const ColumnIndex column : layout.added[index]) {
    const Supply& supply = blend.supplies[blend.columns[column].supply];
    terms.push_back(
        {column, amount_per_gram(given.program, addition, stuff_of(supply)).to_double()});
  }
  for (std::size_t i = 0; i < given.framework.substitutions.size(); ++i) {
    if (given.framework.substitutions[i].addition == index && layout.credits[i]) {
      terms.push_back({*layout.credits[i], 1});
    }
  }
  return terms;
}

double share_at(const Grounding& given, const Blend& blend, const language::Limit& limit,
                ColumnIndex column, bool low) {
  const Supply& supply = blend.supplies[blend.columns[column].supply];
  if (!limit.property) return takes(given.program, limit.share_of, supply.ingredient) ? 1 : 0;
  const auto share = share_of(given.program, *limit.property, stuff_of(supply));
  if (!share) return low ? 0 : 1;
  return (low ? share->low : share->high).to_double();
}

bool joins_whole(const Grounding& given, const Blend& blend, const language::Limit& limit,
                 ColumnIndex column) {
  const ColumnInfo& info = blend.columns[column];
  return info.role != Role::produce &&
         language::joins_whole(given.program, limit, blend.supplies[info.supply].ingredient);
}

}  // namespace maslin::blend
