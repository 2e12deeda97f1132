// SPDX-License-Identifier: Apache-2.0
// Each thing taken by itself: its slot, its ingredient, its strength, and the tool it is measured
// with.
#include "language/amounts.hpp"
#include "language/membership.hpp"
#include "plan/verify_parts.hpp"

namespace maslin::plan {
namespace {

using language::Framework;
using language::Ingredient;

class TakenCheck {
 public:
  TakenCheck(const Case& given, const Entry& entry, Breaches& breaches)
      : given_(given), entry_(entry), taken_(*entry.taken), breaches_(breaches) {}

  // Whether slot and ingredient exist at all.
  bool exists() {
    if (taken_.slot >= slots()) {
      say(Breach::Kind::malformed, "there is no such slot");
      return false;
    }
    if (taken_.ingredient.index >= given_.program.ingredients.size()) {
      say(Breach::Kind::malformed, "there is no such ingredient");
      return false;
    }
    return true;
  }

  void run() {
    if (!is_taken_by_slot()) say(Breach::Kind::malformed, "the slot does not take this");
    if (!taken_.weight.is_positive()) say(Breach::Kind::malformed, "the weight is not above zero");
    if (!has_allowed_strength()) {
      say(Breach::Kind::malformed, "its strength is unknown, or not what the framework allows");
    }
    if (!is_measurable()) say(Breach::Kind::tool, "the tool cannot give this amount");
  }

 private:
  void say(Breach::Kind kind, const std::string& what) {
    std::string text = taken_.ingredient.index < given_.program.ingredients.size()
                           ? given_.program[taken_.ingredient].name
                           : "something";
    text += ", " + taken_.weight.to_decimal(3) + " g for slot " + std::to_string(taken_.slot);
    breaches_.push_back({kind, entry_.index, text + ": " + what});
  }

  std::size_t slots() const {
    const Framework& framework = given_.framework;
    switch (entry_.list) {
      case SlotKind::produce:
        return framework.shares.size();
      case SlotKind::addition:
        return framework.additions.size();
      case SlotKind::substitute:
        return framework.substitutions.size();
    }
    return 0;
  }

  bool is_taken_by_slot() const {
    const Framework& framework = given_.framework;
    if (refusal_of(given_.program, framework, taken_.ingredient) != nullptr) return false;
    const auto takes_it = [&](const language::Target& target) {
      return takes(given_.program, target, taken_.ingredient);
    };
    switch (entry_.list) {
      case SlotKind::produce:
        return takes_it(framework.shares[taken_.slot].target);
      case SlotKind::addition:
        return takes_it(framework.additions[taken_.slot].target);
      case SlotKind::substitute:
        return is_substitute();
    }
    return false;
  }

  // What is in the pan anyway has a slot of its own. Beside it, it would escape the range of that
  // slot and the total of the produce.
  bool is_substitute() const {
    const language::Substitution& substitution = given_.framework.substitutions[taken_.slot];
    return is_exchange(substitution) && is_donor(given_, substitution, taken_.ingredient) &&
           !is_in_the_pan_anyway(given_.program, given_.framework, substitution, taken_.ingredient);
  }

  bool has_allowed_strength() const {
    if (!taken_.acidity) return !needs_strength(given_.program[taken_.ingredient]);
    if (entry_.list != SlotKind::addition) return true;
    return takes_strength(given_.framework, taken_.slot, *taken_.acidity);
  }

  bool is_measurable() const {
    const Ingredient& ingredient = given_.program[taken_.ingredient];
    const auto is_multiple_of = [&](const Rational& step) {
      return step.is_positive() && (taken_.amount / step).is_integer();
    };
    switch (taken_.tool) {
      case Tool::scales:
        return taken_.weight == taken_.amount && is_multiple_of(given_.tools.scale_step);
      case Tool::spoons:
        return given_.tools.spoon_step && ingredient.density &&
               taken_.weight == taken_.amount * middle(ingredient.density->value) &&
               is_multiple_of(*given_.tools.spoon_step);
      case Tool::count:
        return ingredient.piece &&
               taken_.weight == taken_.amount * middle(ingredient.piece->value) &&
               taken_.amount.is_integer();
    }
    return false;
  }

  const Case& given_;
  const Entry& entry_;
  const Taken& taken_;
  Breaches& breaches_;
};

}  // namespace

bool check_taken(const Case& given, Breaches& breaches) {
  bool all_exist = true;
  for (const Entry& entry : given.pan) {
    if (!TakenCheck(given, entry, breaches).exists()) all_exist = false;
  }
  if (!all_exist) return false;
  for (const Entry& entry : given.pan) TakenCheck(given, entry, breaches).run();
  return true;
}

}  // namespace maslin::plan
