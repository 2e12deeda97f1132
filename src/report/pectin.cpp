// SPDX-License-Identifier: Apache-2.0
#include "report/pectin.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "language/membership.hpp"
#include "plan/weights.hpp"

namespace maslin::report {
namespace {

struct Group {
  std::string_view name;
  std::string_view class_name;
};
constexpr std::array<Group, 3> groups_of_pectin = {{{"rich", "pectin-rich fruit"},
                                                    {"middling", "pectin-middling fruit"},
                                                    {"poor", "pectin-poor fruit"}}};

}  // namespace

std::vector<PectinGroup> pectin_groups(const language::Program& program, const plan::Draft& draft) {
  std::vector<PectinGroup> result;
  Rational in_groups;
  for (const Group& group : groups_of_pectin) {
    PectinGroup found{group.name, {}, {}};
    for (const plan::Taken& taken : draft.produce) {
      if (!language::is_of_class(program, taken.ingredient, group.class_name)) continue;
      found.share += taken.weight;
      const std::string& name = program[taken.ingredient].name;
      if (std::find(found.fruit.begin(), found.fruit.end(), name) == found.fruit.end()) {
        found.fruit.push_back(name);
      }
    }
    if (!found.share.is_positive()) continue;
    in_groups += found.share;
    result.push_back(std::move(found));
  }
  for (PectinGroup& group : result) group.share = group.share / in_groups;
  return result;
}

std::string pectin_text(const std::vector<PectinGroup>& groups) {
  std::string text = "Pectin, by groups of ripe fruit: ";
  for (const PectinGroup& group : groups) {
    text += fmt::format("{}{} in {} ({})", &group == &groups.front() ? "" : "; ", group.name,
                        fmt::join(group.fruit, ", "), plan::percent_text(group.share));
  }
  const Rational half(Rational::Wide{1}, Rational::Wide{2});
  const PectinGroup& poorest = groups.back();
  if (poorest.name == "poor" && poorest.share > half) {
    text += ". More than half is of the group that wants pectin, sour fruit or lemon beside it";
  }
  return text + ". Over-ripe fruit has less.";
}

}  // namespace maslin::report
