// SPDX-License-Identifier: Apache-2.0
#include "report/cautions.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "language/membership.hpp"

namespace maslin::report {
namespace {

using language::IngredientId;
using language::Program;

std::set<IngredientId> used(const plan::Draft& draft) {
  std::set<IngredientId> result;
  for (const auto* list : {&draft.produce, &draft.additions, &draft.substitutes}) {
    for (const plan::Taken& taken : *list) result.insert(taken.ingredient);
  }
  return result;
}

bool any_of_class(const Program& program, const std::set<IngredientId>& ids,
                  std::string_view class_name) {
  for (std::size_t i = 0; i < program.classes.size(); ++i) {
    if (program.classes[i].name != class_name) continue;
    return std::any_of(ids.begin(), ids.end(), [&](IngredientId id) {
      return is_member(program, id, language::ClassId(i));
    });
  }
  return false;
}

// 15 g of acetic acid in 100 ml and more burns skin and eyes (common practice, no source).
bool strong_acid(const plan::Draft& draft) {
  const Rational strong(Rational::Wide{15}, Rational::Wide{100});
  return std::any_of(draft.additions.begin(), draft.additions.end(), [&](const plan::Taken& taken) {
    return taken.acidity && *taken.acidity >= strong;
  });
}

}  // namespace

std::vector<std::string> cautions_for(const Program& program, const plan::Draft& draft) {
  std::vector<std::string> result;
  const auto ids = used(draft);
  for (const IngredientId id : ids) {
    const language::Ingredient& ingredient = program[id];
    if (ingredient.raw != language::RawHazard::unsafe) continue;
    std::string text = fmt::format("{} can make ill when raw", ingredient.name);
    if (ingredient.boil_first.is_positive()) {
      text += fmt::format(": boil it at least {} min",
                          (ingredient.boil_first.in_base() / Rational(60)).to_decimal(0));
    }
    if (!ingredient.raw_reason.empty()) text += fmt::format(" ({})", ingredient.raw_reason);
    result.push_back(text);
  }
  if (any_of_class(program, ids, "squash")) {
    result.push_back(
        "Taste a raw sliver of each squash, marrow or cucumber; if it is bitter, discard the whole "
        "fruit.");
    result.push_back("Some authorities oppose keeping squash and pumpkin on a shelf in any form.");
  }
  if (strong_acid(draft)) {
    result.push_back("Strong acid burns skin and eyes: pour it into water, never water into it.");
  }
  result.push_back(
      "Boiling sugar and vinegar scald: a deep pan, long sleeves, nobody small beside the stove; "
      "hot jars on a cold surface crack.");
  result.push_back(
      "Clostridium botulinum can grow without air above pH 4.6 (4.5 in British guidance) and gives "
      "no sign; this sheet does not show that the batch is below that. Measure the pH of a blended "
      "sample after 24 h.");
  result.push_back(
      "Bulging lid, spurting, mould or an odd smell: discard it unopened, do not taste.");
  result.push_back(
      "For keeping on a shelf follow a tested method of your food-safety authority; ask it before "
      "you sell or give away.");
  return result;
}

}  // namespace maslin::report
