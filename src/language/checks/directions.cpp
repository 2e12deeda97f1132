// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "language/amounts.hpp"
#include "language/checks/checks.hpp"
#include "language/membership.hpp"

namespace maslin::language::checks {
namespace {

std::optional<ClassId> class_named(const Program& program, std::string_view name) {
  for (std::size_t i = 0; i < program.classes.size(); ++i) {
    if (program.classes[i].name == name) return ClassId(i);
  }
  return std::nullopt;
}

// The standard library's own class: what may be counted on as acid.
bool may_acidify(const Program& program, IngredientId id) {
  const auto acid = class_named(program, "acid");
  return acid && is_member(program, id, *acid) && is_acid_donor(program, {id, std::nullopt});
}

std::vector<IngredientId> donors(const Program& program, const Substitution& substitution) {
  std::vector<IngredientId> result;
  for (const IngredientId id : members(program, substitution.donor)) {
    const auto& only = substitution.only;
    if (only.empty() || std::any_of(only.begin(), only.end(), [&](const Target& target) {
          return takes(program, target, id);
        })) {
      result.push_back(id);
    }
  }
  return result;
}

std::string only_acids(const Program& program, const std::vector<IngredientId>& list) {
  std::string names;
  for (const IngredientId id : list) {
    if (may_acidify(program, id)) names += (names.empty() ? "" : ", ") + program[id].name;
  }
  return names.empty() ? "leave it as a flavour on top, beside all of the acid"
                       : fmt::format("allow only what can: `only {}`", names);
}

void check_acid(const Program& program, const Addition& addition, const Substitution& substitution,
                Diagnostics& diagnostics) {
  const auto list = donors(program, substitution);
  const auto weak = std::find_if(list.begin(), list.end(),
                                 [&](IngredientId id) { return !may_acidify(program, id); });
  if (weak != list.end()) {
    diagnostics
        .report(Code::forbidden_direction, substitution.span,
                fmt::format("{} cannot be counted on as acid, and would stand for {}",
                            program[*weak].name, addition.target.name))
        .with_because(addition.span, "the acid it would replace")
        .with_why(
            "what keeps the batch is the acid; something of unknown or no strength takes it away")
        .with_mend(only_acids(program, list));
    return;
  }
  const bool by_acid =
      substitution.by == Property::acidity || substitution.by == Property::acetic_acid;
  if (by_acid) return;
  diagnostics
      .report(Code::forbidden_direction, substitution.span,
              fmt::format("an acid is exchanged by its acid, not by {}", name_of(substitution.by)))
      .with_why("the same weight or volume of a weaker acid would leave less of it")
      .with_mend("write `by acidity` or `by acetic acid`");
}

bool caps_low_acid(const Framework& framework) {
  return std::any_of(framework.limits.begin(), framework.limits.end(), [](const Limit& limit) {
    return !limit.property && limit.has_high && limit.share_of.name == "low acid";
  });
}

void check_low_acid(const Program& program, const Framework& framework,
                    const Substitution& substitution, Diagnostics& diagnostics) {
  const auto low_acid = class_named(program, "low acid");
  if (!low_acid || caps_low_acid(framework)) return;
  for (const IngredientId id : donors(program, substitution)) {
    if (!is_member(program, id, *low_acid)) continue;
    diagnostics
        .report(
            Code::forbidden_direction, substitution.span,
            fmt::format("{} is low-acid produce, and nothing caps how much of that there may be",
                        program[id].name))
        .with_why("every kilogram of low-acid produce uses up acid and thins it")
        .with_mend("add a limit: `low acid <= 45 % of prepared produce`");
    return;
  }
}

}  // namespace

bool acidifies(const Program& program, const Addition& addition) {
  const auto list = members(program, addition.target);
  return !list.empty() && std::all_of(list.begin(), list.end(),
                                      [&](IngredientId id) { return may_acidify(program, id); });
}

void directions(const Program& program, const Framework& framework, Diagnostics& diagnostics) {
  for (const Substitution& substitution : framework.substitutions) {
    const Addition& addition = framework.additions[substitution.addition];
    if (acidifies(program, addition)) {
      check_acid(program, addition, substitution, diagnostics);
    } else {
      check_low_acid(program, framework, substitution, diagnostics);
    }
  }
}

}  // namespace maslin::language::checks
