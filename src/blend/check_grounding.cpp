// SPDX-License-Identifier: Apache-2.0
// What must be at hand and is not, told before any programme is solved.
#include <fmt/format.h>

#include <algorithm>

#include "blend/ground.hpp"
#include "language/amounts.hpp"
#include "language/membership.hpp"

namespace maslin::blend {
namespace {

using language::Addition;
using language::Framework;
using language::ProduceShare;
using language::Program;
using language::Target;

std::string percent(const Rational& share) { return (share * 100).to_decimal(1) + " %"; }

class Checker {
 public:
  Checker(const Grounding& grounding, Diagnostics& diagnostics)
      : given_(grounding),
        program_(grounding.program),
        framework_(grounding.framework),
        diagnostics_(diagnostics),
        supplies_(supplies(program_, grounding.basket, grounding.kitchen)) {}

  bool run() {
    for (const ProduceShare& share : framework_.shares) check_share(share);
    for (std::size_t i = 0; i < framework_.additions.size(); ++i) check_addition(i);
    warn_about_strangers();
    return good_;
  }

 private:
  Diagnostic& fail(Code code, Span span, std::string message, std::string label = {}) {
    good_ = false;
    return diagnostics_.report(code, span, std::move(message), std::move(label));
  }

  bool any_of(const Target& target) const {
    return std::any_of(supplies_.begin(), supplies_.end(), [&](const Supply& supply) {
      return takes(program_, target, supply.ingredient) &&
             refusal_of(program_, framework_, supply.ingredient) == nullptr;
    });
  }

  std::string examples(const Target& target) const {
    std::vector<std::string> names;
    for (const language::IngredientId id : commonest_members(program_, target)) {
      names.push_back(program_[id].name);
    }
    names.resize(std::min<std::size_t>(names.size(), 3));
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) {
      text += (i == 0 ? "" : i + 1 == names.size() ? " or " : ", ") + names[i];
    }
    return text;
  }

  void check_share(const ProduceShare& share) {
    if (!share.range.low.is_positive() || any_of(share.target)) return;
    // At the share, so that two that nothing fills are two reports.
    fail(Code::nothing_of_class, share.range_span,
         fmt::format("the basket has no {}, and at least {} of the produce must be",
                     share.target.name, percent(share.range.low)),
         "the least that is asked for")
        .with_because(given_.basket.span, "nothing here fits")
        .with_mend(
            share.target.of_class.valid()
                ? fmt::format("add {}, for example {}", share.target.name, examples(share.target))
                : fmt::format("add {0}, or buy it: `{0} to buy`", share.target.name));
  }

  void check_addition(std::size_t index) {
    const Addition& addition = framework_.additions[index];
    const Target& target = addition.target;
    if (!any_of(target)) {
      check_assumed(addition);
      return;
    }
    for (const Supply& supply : supplies_) {
      if (takes(program_, target, supply.ingredient)) check_supply(index, supply);
    }
  }

  void check_assumed(const Addition& addition) {
    const Target& target = addition.target;
    language::IngredientId ingredient = target.ingredient;
    if (target.of_class.valid()) ingredient = program_[target.of_class].usually;
    if (ingredient.valid()) {
      check_measure(addition, {ingredient, std::nullopt}, addition.span);
      return;
    }
    if (!addition.range.low.is_positive()) return;
    const std::string example = examples(target);
    fail(Code::nothing_of_class, addition.span,
         fmt::format("there is no {} in the basket or the store, and the framework adds some",
                     target.name),
         "asked for here")
        .with_because(given_.basket.span, "nothing here fits")
        .with_mend(fmt::format("say which: {}, on a line of its own, for example `{} to buy`",
                               example, example.substr(0, example.find_first_of(','))));
  }

  void check_supply(std::size_t index, const Supply& supply) {
    const Addition& addition = framework_.additions[index];
    const Span span = line_span(supply);
    check_measure(addition, {supply.ingredient, supply.acidity}, span);
    if (!supply.acidity || takes_strength(framework_, index, *supply.acidity)) return;
    if (allows_other_strength(framework_, index)) {
      too_far_from(addition, supply, span);
      return;
    }
    fail(Code::strength_differs, span,
         fmt::format("this {} is of {}, and the framework means {}",
                     program_[supply.ingredient].name, percent(*supply.acidity),
                     percent(stated_strength(addition))))
        .with_because(addition.span, "stated here")
        .with_why("the same amount of it brings another amount of acid")
        .with_mend(fmt::format("let the framework allow it: `{0} for {0} by acetic acid`, under "
                               "`substitute`; the amount then follows the acid",
                               addition.target.name));
  }

  static std::string thinning(const Rational& strong, const Rational& wanted) {
    return fmt::format(
        "thin it first, acid into water: one part of it to {} parts of water make "
        "{}; then write that down",
        (strong / wanted - Rational(1)).to_decimal(1), percent(wanted));
  }

  // No other vinegar on sale is so weak or so strong: a slip, or essence that is not thinned.
  void too_far_from(const Addition& addition, const Supply& supply, Span span) {
    const Bounds others = other_strengths(addition);
    const bool weak = *supply.acidity < others.low;
    fail(Code::strength_differs, span,
         fmt::format("this {} is of {}: another strength may stand for {} from {} to {}",
                     program_[supply.ingredient].name, percent(*supply.acidity),
                     percent(stated_strength(addition)), percent(others.low), percent(others.high)))
        .with_because(addition.span, "stated here")
        .with_why(weak ? "so much of it would have to boil away that the acid goes as well"
                       : "undiluted it burns, and a slip in weighing it changes everything")
        .with_mend(weak ? "take a stronger one"
                        : thinning(*supply.acidity, stated_strength(addition)));
  }

  void check_measure(const Addition& addition, const language::Stuff& stuff, Span span) {
    const language::Ingredient& ingredient = program_[stuff.ingredient];
    if (amount_per_gram(program_, addition, stuff).is_defined()) return;
    const bool count = addition.measured == language::Measured::by_count;
    fail(count ? Code::missing_piece : Code::volume_without_density, span,
         count ? fmt::format("what one {} weighs is not known", ingredient.name)
               : fmt::format("what a millilitre of {} weighs is not known", ingredient.name))
        .with_because(addition.span, count ? "counted here" : "measured by volume here")
        .with_mend("state it by weight in the framework");
  }

  Span line_span(const Supply& supply) const {
    const LineReference reference = supply.lines.front();
    const auto& lines = reference.in_store ? given_.kitchen->store : given_.basket.lines;
    return lines[reference.index].span;
  }

  // What the cook brought and the framework has no place for is said, never silently left.
  void warn_about_strangers() {
    for (const language::Line& line : given_.basket.lines) {
      // What was only to be bought is not lying about.
      if (!line.weight) continue;
      if (const auto* refusal = refusal_of(program_, framework_, line.ingredient)) {
        diagnostics_
            .report(Code::fits_no_share, line.span,
                    fmt::format("a route that is claimed does not take {}, so it stays in the "
                                "basket",
                                line.name))
            .with_why(why_refused(program_, *refusal, line.ingredient))
            .with_because(refusal->span, "the route");
        continue;
      }
      if (fits_somewhere(line.ingredient)) continue;
      diagnostics_
          .report(Code::fits_no_share, line.span,
                  fmt::format("{} fits nowhere in this framework, so it stays in the basket",
                              line.name))
          .with_because(framework_.span, "the framework");
    }
  }

  bool fits_somewhere(language::IngredientId ingredient) const {
    const auto takes_it = [&](const Target& target) { return takes(program_, target, ingredient); };
    return std::any_of(framework_.shares.begin(), framework_.shares.end(),
                       [&](const ProduceShare& share) { return takes_it(share.target); }) ||
           std::any_of(framework_.additions.begin(), framework_.additions.end(),
                       [&](const Addition& addition) { return takes_it(addition.target); }) ||
           std::any_of(framework_.substitutions.begin(), framework_.substitutions.end(),
                       [&](const auto& each) { return takes_it(each.donor); });
  }

  const Grounding& given_;
  const Program& program_;
  const Framework& framework_;
  Diagnostics& diagnostics_;
  std::vector<Supply> supplies_;
  bool good_ = true;
};

}  // namespace

bool check_grounding(const Grounding& grounding, Diagnostics& diagnostics) {
  return Checker(grounding, diagnostics).run();
}

}  // namespace maslin::blend
