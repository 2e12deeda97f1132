// SPDX-License-Identifier: Apache-2.0
// What `holds` says: no basket that is admitted is refused because of a limit, and every plan is
// inside the limits. MASLIN_FULL=1 takes 50,000 baskets.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "property/random_case.hpp"
#include "prove/admissible.hpp"
#include "prove/confirm.hpp"
#include "prove/proof.hpp"
#include "prove/random_framework.hpp"
#include "report/proof.hpp"

namespace maslin::test {
namespace {

constexpr std::size_t most_choices = 400;  // as the proof looks through

struct Count {
  int baskets = 0;
  int planned = 0;
  int too_fine = 0;
  double worst_excess = 0;

  void print(const std::string& what) const {
    fmt::print("  {}: {} baskets, {} planned, {} too fine for scales to 1 g\n", what, baskets,
               planned, too_fine);
  }
};

// One more basket for a framework that holds.
void try_basket(std::mt19937& random, World& world, language::FrameworkId id,
                const prove::Case& given, const prove::Choice& choice, Count& count) {
  const auto mix = random_mix(random, given, choice);
  if (!mix) return;
  const language::Framework& framework = world.program()[id];
  ASSERT_TRUE(keeps_to_shares(framework, given, *mix));
  ++count.baskets;
  const std::string basket = [&] {
    std::vector<prove::Ingredient> list;
    for (std::size_t m = 0; m < mix->parts.size(); ++m) {
      if (mix->parts[m] > 0) list.push_back({given.members[m].ingredient, 0, mix->parts[m]});
    }
    std::string text = report::mix_text(world.program(), list) + "; with";
    for (const language::Stuff& each : choice.additions) {
      text += " " + world.program()[each.ingredient].name;
      if (each.acidity) text += fmt::format(" of {}", each.acidity->to_decimal(4));
    }
    return text;
  }();
  EXPECT_FALSE(prove::is_refused(given, choice, *mix)) << framework.name << ": " << basket;
  const int kilograms = 5 + static_cast<int>(random() % 16);
  const plan::Task task = world.put(id, given, choice, *mix, kilograms);
  Diagnostics diagnostics;
  const plan::Made made = plan::make_plan(world.program(), task, diagnostics);
  if (made.plan) {
    ++count.planned;
    EXPECT_EQ(broken_limits(world.program(), made.plan->verified.draft()), "")
        << framework.name << ": " << basket;
    return;
  }
  for (const Diagnostic& each : diagnostics.all()) {
    if (each.code == Code::too_fine) {
      ++count.too_fine;
      return;
    }
  }
  std::string said;
  for (const Diagnostic& each : diagnostics.all()) said += each.message + "\n";
  ADD_FAILURE() << framework.name << ", " << kilograms << " kg: " << basket << "\n" << said;
}

void try_baskets(std::mt19937& random, World& world, language::FrameworkId id, int baskets,
                 Count& count) {
  const prove::Case given = prove::case_of(world.program(), world.program()[id]);
  const auto choices = prove::choices_of(given, most_choices);
  ASSERT_TRUE(choices && !choices->empty());
  for (int i = 0; i < baskets && !testing::Test::HasFatalFailure(); ++i) {
    try_basket(random, world, id, given, (*choices)[random() % choices->size()], count);
  }
}

// Where every limit meets in a point there is no room for whole grams: of random frameworks one
// basket in a hundred may be too fine, of the library's none is.
void expect_most_planned(const Count& count) { EXPECT_GE(count.planned, 0.99 * count.baskets); }

TEST(Holds, NoBasketIsRefusedByTheLibrarysFrameworks) {
  std::mt19937 random{1783};
  World world;
  const std::size_t frameworks = world.program().frameworks.size();
  Count all;
  for (std::size_t i = 0; i < frameworks; ++i) {
    const language::FrameworkId id(i);
    if (prove::prove(world.program(), world.program()[id]).verdict != prove::Verdict::holds)
      continue;
    Count count;
    try_baskets(random, world, id, rounds(20, 26000 / static_cast<int>(frameworks)), count);
    count.print(world.program()[id].name);
    all.baskets += count.baskets;
    all.planned += count.planned;
  }
  EXPECT_GE(all.baskets, rounds(200, 24800));
  EXPECT_EQ(all.planned, all.baskets);
}

TEST(Holds, NoBasketIsRefusedByRandomFrameworks) {
  std::mt19937 random{1810};
  Count count;
  int frameworks = 0;
  int drawn = 0;
  const int each = rounds(5, 50);
  while (count.baskets < rounds(150, 25000) && drawn < 20000) {
    ++drawn;
    const std::string text = random_framework(random, {1.5});
    World world(text);
    if (!world.is_good()) continue;
    const auto& framework = world.program()[world.last()];
    if (prove::prove(world.program(), framework).verdict != prove::Verdict::holds) continue;
    ++frameworks;
    try_baskets(random, world, world.last(), each, count);
    if (HasFailure()) {
      ADD_FAILURE() << text;
      break;
    }
  }
  count.print(fmt::format("{} random frameworks that hold, of {} drawn", frameworks, drawn));
  EXPECT_GE(count.baskets, rounds(150, 25000));
  expect_most_planned(count);
}

}  // namespace
}  // namespace maslin::test
