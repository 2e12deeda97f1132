// SPDX-License-Identifier: Apache-2.0
// What is counted on for every mix is never more than what a mix comes to.
#include "prove/boilings.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "property/random_case.hpp"
#include "prove/admissible.hpp"
#include "prove/random_framework.hpp"

namespace maslin::test {
namespace {

using language::SlotKind;

// The pan of a mix with additions anywhere in their ranges.
std::vector<language::InPan> pan_of(std::mt19937& random, const prove::Case& given,
                                    const prove::Choice& choice, const prove::Mix& mix) {
  std::vector<language::InPan> pan;
  for (std::size_t m = 0; m < mix.parts.size(); ++m) {
    if (!(mix.parts[m] > 1e-9)) continue;
    pan.push_back({{given.members[m].ingredient, std::nullopt},
                   Kilogram(mix.parts[m]),
                   {SlotKind::produce, given.members[m].share}});
  }
  for (std::size_t i = 0; i < choice.additions.size(); ++i) {
    const Range<double> range = prove::weight_of(given, i, choice.additions[i]);
    const double weight = std::uniform_real_distribution<double>(range.low, range.high)(random);
    if (weight > 0) pan.push_back({choice.additions[i], Kilogram(weight), {SlotKind::addition, i}});
  }
  return pan;
}

double sum_of(const std::vector<language::InPan>& pan) {
  double sum = 0;
  for (const auto& each : pan) sum += each.mass.in_unit();
  return sum;
}

double least_water(const language::Program& program, const std::vector<language::InPan>& pan) {
  double sum = 0;
  for (const auto& each : pan) {
    sum += each.mass.in_unit() *
           composition_of(program, each.stuff).or_none(science::Substance::water).low.to_double();
  }
  return sum;
}

void try_mixes(std::mt19937& random, const World& world, language::FrameworkId id, int mixes,
               int& tried) {
  const language::Framework& framework = world.program()[id];
  const prove::Case given = prove::case_of(world.program(), framework);
  const auto choices = prove::choices_of(given, 400);
  if (!choices || choices->empty()) return;
  for (int i = 0; i < mixes; ++i) {
    const prove::Choice& choice = (*choices)[random() % choices->size()];
    const auto mix = random_mix(random, given, choice);
    if (!mix) continue;
    const double water_kept = std::uniform_real_distribution<double>(0.2, 1)(random);
    const auto counted_on = prove::expected_boiling(given, choice, water_kept);
    const auto pan = pan_of(random, given, choice, *mix);
    std::optional<Kilogram> finished;
    if (says_how_far(framework)) {
      // At least that share of the water stays.
      const double boiled = std::uniform_real_distribution<double>(0, 1 - water_kept)(random);
      finished = Kilogram(sum_of(pan) - boiled * least_water(world.program(), pan));
    }
    const auto contents = language::Contents::of(world.program(), framework, pan, finished);
    // A method that boils down before most of the water is there cannot come to every weight.
    if (!contents) continue;
    ASSERT_EQ(contents->acid_kept().size(), counted_on.acid_kept.size());
    ++tried;
    for (std::size_t k = 0; k < counted_on.acid_kept.size(); ++k) {
      const blend::KeptAcid& bound = counted_on.acid_kept[k];
      const Range<Share>& kept = contents->acid_kept()[k];
      constexpr double guard = 1e-6;
      EXPECT_LE(bound.share.low, kept.low.in_unit() + guard) << framework.name << ", boiling " << k;
      // Only of what is boiled down does it count.
      if (!says_how_far(framework)) continue;
      EXPECT_GE(bound.apart, (kept.high - kept.low).in_unit() - guard)
          << framework.name << ", boiling " << k;
    }
  }
}

TEST(Boilings, NoMixKeepsLessOfItsAcidThanIsCountedOn) {
  std::mt19937 random{77};
  int tried = 0;
  World library;
  for (std::size_t i = 0; i < library.program().frameworks.size(); ++i) {
    try_mixes(random, library, language::FrameworkId(i), rounds(10, 500), tried);
  }
  for (int i = 0; i < rounds(150, 4000); ++i) {
    const std::string text = random_framework(random, {1.5});
    World world(text);
    if (!world.is_good()) continue;
    try_mixes(random, world, world.last(), 10, tried);
    if (HasFailure()) {
      ADD_FAILURE() << text;
      break;
    }
  }
  fmt::print("  {} mixes\n", tried);
  EXPECT_GE(tried, rounds(500, 5000));
}

}  // namespace
}  // namespace maslin::test
