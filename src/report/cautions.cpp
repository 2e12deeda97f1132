// SPDX-License-Identifier: Apache-2.0
#include "report/cautions.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "language/membership.hpp"
#include "plan/boils.hpp"
#include "science/pungency.hpp"

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
  return std::any_of(ids.begin(), ids.end(),
                     [&](IngredientId id) { return is_of_class(program, id, class_name); });
}

// 15 g of acetic acid in 100 ml and more burns skin and eyes (common practice, no source).
bool strong_acid(const plan::Draft& draft) {
  const Rational strong(Rational::Wide{15}, Rational::Wide{100});
  return std::any_of(draft.additions.begin(), draft.additions.end(), [&](const plan::Taken& taken) {
    return taken.acidity && *taken.acidity >= strong;
  });
}

class Cautions {
 public:
  Cautions(const Program& program, const plan::Draft& draft)
      : program_(program), framework_(program[draft.task.framework]), ids_(used(draft)) {
    for (const IngredientId id : ids_) raw_hazard(program[id]);
    of_produce();
    if (strong_acid(draft)) {
      add("Strong acid burns skin and eyes: pour it into water, never water into it.");
    }
    of_the_stove();
    of_what_is_made();
  }

  std::vector<std::string> take() { return std::move(cautions_); }

 private:
  void add(std::string text) { cautions_.push_back(std::move(text)); }

  void raw_hazard(const language::Ingredient& ingredient) {
    if (ingredient.raw != language::RawHazard::unsafe) return;
    std::string text = fmt::format("eaten raw, {} can make you ill", ingredient.name);
    if (ingredient.boil_first.is_positive()) {
      text += fmt::format(": boil it at least {} min",
                          (ingredient.boil_first.in_base() / Rational(60)).to_decimal(0));
    }
    if (!ingredient.raw_reason.empty()) text += fmt::format(" ({})", ingredient.raw_reason);
    add(std::move(text));
  }

  void of_produce() {
    if (any_of_class(program_, ids_, "gourd family")) {
      add("Taste a raw sliver of each squash, marrow or cucumber; if it is bitter, discard the "
          "whole fruit.");
    }
    if (any_of_class(program_, ids_, "squash")) {
      add("Some authorities oppose keeping squash and pumpkin on a shelf in any form.");
    }
    if (any_of_class(program_, ids_, "oil")) {
      add("What lies in oil has neither air nor acid: garlic, herbs and vegetables under oil have "
          "given botulism. For days in the cold, never on a shelf.");
    }
    const bool tomato = std::any_of(ids_.begin(), ids_.end(), [&](IngredientId id) {
      const std::string& name = program_[id].name;
      return name == "tomato" || name == "green tomato";
    });
    if (tomato) {
      add("No tomatoes from vines that frost or disease has killed: they are less sour.");
    }
    const auto sweet = science::pungency_of(science::Pod::sweet).high.in_unit();
    const bool hot = std::any_of(ids_.begin(), ids_.end(), [&](IngredientId id) {
      const auto& pungency = program_[id].pungency;
      return pungency && pungency->value.high.to_double() > sweet;
    });
    if (hot) add("Chilli burns skin and eyes: gloves, and nobody's face over the hot pan.");
    const bool honey = std::any_of(ids_.begin(), ids_.end(), [&](IngredientId id) {
      return program_[id].name.find("honey") != std::string::npos;
    });
    if (honey) add("Honey is not for children under a year, cooked in or not (infant botulism).");
  }

  void of_the_stove() {
    const language::Method& method = framework_.method;
    const bool jam = plan::is_boiled_to_a_set(method);
    if (is_heated(method)) {
      add(std::string(jam ? "Boiling jam sticks and burns worse than water"
                          : "Boiling sugar and vinegar scald") +
          ": a deep pan, long sleeves, nobody small beside the stove; hot jars on a cold surface "
          "crack.");
    }
    if (ferments(method)) {
      add("What ferments makes gas: no tight lid, or the jar bursts. All of it under the brine; "
          "where it is soft, slimy or mouldy below the surface, discard it.");
    }
  }

  void of_what_is_made() {
    add("Clostridium botulinum can grow without air above pH 4.6 (4.5 in British guidance) and "
        "gives no sign; this sheet does not show that the batch is below that. Measure the pH of a "
        "blended sample " +
        std::string(ferments(framework_.method) ? "once it is sour." : "after 24 h."));
    add("Bulging lid, spurting, mould or an odd smell: discard it unopened, do not taste.");
    add("For keeping on a shelf follow a tested method of your food-safety authority; ask it "
        "before you sell or give away.");
  }

  const Program& program_;
  const language::Framework& framework_;
  std::set<IngredientId> ids_;
  std::vector<std::string> cautions_;
};

}  // namespace

std::vector<std::string> cautions_for(const Program& program, const plan::Draft& draft) {
  return Cautions(program, draft).take();
}

}  // namespace maslin::report
