// SPDX-License-Identifier: Apache-2.0
// A plan that was changed is no plan: the verifier refuses every draft that was moved beyond its
// tolerances. MASLIN_FULL=1 makes the campaign long.
#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <string>
#include <vector>

#include "language/amounts.hpp"
#include "property/random_case.hpp"
#include "support/planning.hpp"

namespace maslin::test {
namespace {

using plan::Draft;
using plan::Taken;

class Mutation : public testing::Test {
 protected:
  // Each draft made from a plan by one change, with what was changed.
  void expect_refused(const Planned& planned, const Draft& draft, const std::string& what) {
    ++mutated_;
    EXPECT_FALSE(plan::verify(planned.program(), draft).ok()) << what;
  }

  void weights(const Planned& planned);
  void produce(const Planned& planned);
  void additions(const Planned& planned);
  void identities(const Planned& planned);
  void credits(const Planned& planned);
  void finish_and_aim(const Planned& planned);

  std::mt19937 random_{25112026};
  int mutated_ = 0;
};

std::vector<std::vector<Taken> Draft::*> lists() {
  return {&Draft::produce, &Draft::additions, &Draft::substitutes};
}

const Rational half(Rational::Wide{1}, Rational::Wide{2});

Rational step_of(const Planned& planned) {
  return plan::tools_of(planned.program(), planned.task().kitchen).scale_step;
}

// ---- Amounts that no tool gives, and amounts that are not what was measured ---------------------

void Mutation::weights(const Planned& planned) {
  for (const auto list : lists()) {
    for (std::size_t at = 0; at < (planned.draft().*list).size(); ++at) {
      const auto with = [&](auto change) {
        Draft draft = planned.draft();
        change((draft.*list)[at]);
        return draft;
      };
      expect_refused(planned, with([](Taken& each) { each.weight += half; }), "weight alone");
      expect_refused(planned, with([](Taken& each) { each.amount += half; }), "amount alone");
      expect_refused(planned, with([](Taken& each) {
                       each.weight = 0;
                       each.amount = 0;
                     }),
                     "nothing of it");
      expect_refused(planned, with([](Taken& each) {
                       each.weight = -each.weight;
                       each.amount = -each.amount;
                     }),
                     "less than nothing");
      expect_refused(planned, with([](Taken& each) { each.weight = Rational::undefined(); }),
                     "no number");
      const Rational third = step_of(planned) / 3;
      if (list == &Draft::produce) {
        expect_refused(planned, with([&](Taken& each) {
                         each.weight += third;
                         each.amount += third;
                       }),
                       "a third of a step");
      }
    }
  }
}

// ---- Shares and availability --------------------------------------------------------------------

// The least whole number of steps more of one thing that takes its share past the range.
void Mutation::produce(const Planned& planned) {
  const Draft& draft = planned.draft();
  const language::Framework& framework = planned.program()[draft.task.framework];
  const Rational step = step_of(planned);
  const Rational total = planned.plan().verified.prepared_total().in_base();
  for (std::size_t at = 0; at < draft.produce.size(); ++at) {
    const Taken& taken = draft.produce[at];
    const Bounds& range = framework.shares[taken.slot].range;
    Rational share;
    long count = 0;
    for (const Taken& each : draft.produce) {
      if (each.slot != taken.slot) continue;
      share += each.weight;
      ++count;
    }
    const Rational slack = step * Rational(count);
    Draft changed = draft;
    if (range.high < Rational(1)) {
      const Rational more =
          ((range.high * total - share + slack) / (Rational(1) - range.high)).ceil_to(step) + step;
      changed.produce[at].weight += more;
      changed.produce[at].amount += more;
      expect_refused(planned, changed, "more than its share");
    }
    // Without it altogether the share may be too small.
    const Rational left = share - taken.weight;
    if (left < range.low * (total - taken.weight) - slack) {
      changed = draft;
      changed.produce.erase(changed.produce.begin() + static_cast<std::ptrdiff_t>(at));
      expect_refused(planned, changed, "less than its share");
    }
  }
  Draft doubled = draft;
  for (Taken& each : doubled.produce) each.weight = each.amount = each.weight * Rational(1000);
  expect_refused(planned, doubled, "a thousand times the produce");
}

// ---- Additions ----------------------------------------------------------------------------------

void Mutation::additions(const Planned& planned) {
  const Draft& draft = planned.draft();
  const language::Program& program = planned.program();
  const language::Framework& framework = program[draft.task.framework];
  const Rational total = planned.plan().verified.prepared_total().in_base();
  for (std::size_t at = 0; at < draft.additions.size(); ++at) {
    const Taken& taken = draft.additions[at];
    const language::Addition& addition = framework.additions[taken.slot];
    const Rational per_gram = amount_per_gram(program, addition, {taken.ingredient, taken.acidity});
    const Rational reached = planned.plan().verified.additions()[taken.slot] * total / 1000;
    const Rational most = addition.range.high * total / 1000;
    // Beyond any tolerance: as many of the coarsest steps as there are bottles of it, and more.
    const Rational unit = taken.weight / taken.amount;
    const Rational steps = larger(step_of(planned), 20) * Rational(8);
    const Rational more = ((most - reached) / per_gram + steps) / unit;
    const Rational whole = larger(step_of(planned), 1);
    Draft changed = draft;
    Taken& each = changed.additions[at];
    each.amount += (more / whole).ceil_to(1) * whole;
    each.weight = each.amount * unit;
    expect_refused(planned, changed, "more than is asked for: " + addition.target.name);
  }
}

// ---- What it is, and where it comes from --------------------------------------------------------

bool has_line(const Planned& planned, language::IngredientId ingredient, language::Origin origin) {
  const language::Program& program = planned.program();
  const auto any = [&](const std::vector<language::Line>& lines, language::Origin here) {
    return std::any_of(lines.begin(), lines.end(), [&](const language::Line& line) {
      return line.ingredient == ingredient && ((line.weight && origin == here) ||
                                               (line.to_buy && origin == language::Origin::to_buy));
    });
  };
  return any(program[planned.task().basket].lines, language::Origin::basket) ||
         any(program[planned.task().kitchen].store, language::Origin::store);
}

void Mutation::identities(const Planned& planned) {
  using language::Origin;
  const std::size_t others = planned.program().ingredients.size();
  for (const auto list : lists()) {
    for (std::size_t at = 0; at < (planned.draft().*list).size(); ++at) {
      const Taken& taken = (planned.draft().*list)[at];
      const auto with = [&](auto change) {
        Draft draft = planned.draft();
        change((draft.*list)[at]);
        return draft;
      };
      const language::IngredientId other((taken.ingredient.index + 7) % others);
      if (!has_line(planned, other, taken.origin)) {
        expect_refused(planned, with([&](Taken& each) { each.ingredient = other; }),
                       "another thing");
      }
      for (const Origin origin : {Origin::basket, Origin::store, Origin::to_buy, Origin::to_have}) {
        if (origin == taken.origin || has_line(planned, taken.ingredient, origin)) continue;
        expect_refused(planned, with([&](Taken& each) { each.origin = origin; }), "from elsewhere");
      }
      expect_refused(planned, with([](Taken& each) { each.slot = 1000; }), "no such slot");
      expect_refused(planned, with([](Taken& each) {
                       each.acidity = Rational(Rational::Wide{99}, Rational::Wide{1000});
                     }),
                     "another strength");
      if (taken.acidity) {
        expect_refused(planned, with([](Taken& each) { each.acidity.reset(); }), "no strength");
      }
    }
  }
}

// ---- Credits, the finish, the aim ---------------------------------------------------------------

void Mutation::credits(const Planned& planned) {
  const Draft& draft = planned.draft();
  const language::Framework& framework = planned.program()[draft.task.framework];
  const Rational little(Rational::Wide{1}, Rational::Wide{1000});
  for (std::size_t i = 0; i < draft.credits.size(); ++i) {
    const language::Substitution& substitution = framework.substitutions[i];
    const bool plain = framework.additions[substitution.addition].range.is_exact();
    Draft changed = draft;
    changed.credits[i] = Rational(-1);
    expect_refused(planned, changed, "less than no credit");
    changed.credits[i] = Rational::undefined();
    expect_refused(planned, changed, "no number credited");
    changed.credits[i] = draft.credits[i] + Rational(1000000);
    expect_refused(planned, changed, "more credited than is brought");
    if (substitution.donor.name == substitution.replaced.name) {
      changed.credits[i] = little;
      expect_refused(planned, changed, "another strength credited");
    } else if (plain && substitution.extent == language::Extent::full) {
      changed.credits[i] = draft.credits[i] + little;
      expect_refused(planned, changed, "a little more credited");
      changed.credits[i] = draft.credits[i] - little;
      expect_refused(planned, changed, "a little less credited");
    }
  }
  Draft changed = draft;
  changed.credits.emplace_back(0);
  expect_refused(planned, changed, "a credit for nothing");
}

void Mutation::finish_and_aim(const Planned& planned) {
  Draft changed = planned.draft();
  const auto& window = planned.plan().verified.window();
  if (window) {
    changed.finished = window->most.in_base() + half;
    expect_refused(planned, changed, "stopped too early");
    changed.finished = window->least.in_base() - half;
    expect_refused(planned, changed, "stopped too late");
    changed.finished.reset();
    expect_refused(planned, changed, "never stopped");
  } else {
    changed.finished = planned.plan().verified.ingoing().in_base();
    expect_refused(planned, changed, "stopped where no limit asks for it");
  }
  changed = planned.draft();
  changed.task.aim = prepared_aim(1);
  expect_refused(planned, changed, "another aim");
  changed = planned.draft();
  changed.task.basket = language::BasketId(1000);
  expect_refused(planned, changed, "no such basket");
}

TEST_F(Mutation, IsRefused) {
  int plans = 0;
  for (int i = 0; i < rounds(250, 10000); ++i) {
    const RandomCase the_case = random_case(random_);
    const Planned planned(text_of(the_case));
    if (!planned.fits()) continue;
    SCOPED_TRACE(text_of(the_case));
    ++plans;
    ASSERT_TRUE(plan::verify(planned.program(), planned.draft()).ok());
    weights(planned);
    produce(planned);
    additions(planned);
    identities(planned);
    credits(planned);
    finish_and_aim(planned);
    if (HasFailure()) break;
  }
  EXPECT_GT(plans, rounds(120, 5000));
  EXPECT_GT(mutated_, 20 * plans);
}

}  // namespace
}  // namespace maslin::test
