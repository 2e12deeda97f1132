// SPDX-License-Identifier: Apache-2.0
// What `breaks` says: the mix that is named, written as a basket, is refused; and each mend that is
// offered makes the framework hold. MASLIN_FULL=1 takes 200 frameworks.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>

#include "property/random_case.hpp"
#include "prove/admissible.hpp"
#include "prove/confirm.hpp"
#include "prove/mend.hpp"
#include "prove/proof.hpp"
#include "prove/random_framework.hpp"
#include "support/planning.hpp"

namespace maslin::test {
namespace {

constexpr long batch = 10000;  // g

// To milligrams, and not less than its part: a gram missing of a share would be another reason.
std::string basket_text(const language::Program& program, const prove::Proof& proof) {
  std::string text = "basket \"worst\" {\n";
  for (const prove::Ingredient& each : proof.worst) {
    const double grams = std::ceil(each.part * batch * 1000) / 1000;
    text += fmt::format("  \"{}\" {:.3f} g prepared\n", program[each.ingredient].name, grams);
  }
  return text + "}\n";
}

std::string kitchen_text(const language::Program& program, const prove::Proof& proof) {
  std::string text = "kitchen \"plenty\" {\n  scales to 1 g\n  store {\n";
  for (const language::Stuff& each : proof.additions) {
    text += fmt::format("    \"{}\" 1000 kg prepared", program[each.ingredient].name);
    if (each.acidity) text += fmt::format(", {} % acidity", (*each.acidity * 100).to_decimal(4));
    text += "\n";
  }
  return text + "  }\n}\n";
}

// The framework as the mend says.
language::Framework mended(language::Framework framework, const prove::Mend& mend) {
  switch (mend.kind) {
    case prove::Mend::Kind::raise_addition:
      framework.additions[mend.index].range.high = mend.bound;
      break;
    case prove::Mend::Kind::lower_share:
      framework.shares[mend.index].range.high = mend.bound;
      break;
    case prove::Mend::Kind::loosen_limit: {
      Bounds& range = framework.limits[mend.index].range;
      (mend.of_low_end ? range.low : range.high) = mend.bound;
      break;
    }
  }
  return framework;
}

// The worst mix by the members of a case; nothing where the case does not have one of them.
std::optional<prove::Mix> mix_in(const prove::Case& given, const prove::Proof& proof) {
  prove::Mix mix;
  mix.parts.assign(given.members.size(), 0.0);
  for (const prove::Ingredient& each : proof.worst) {
    bool found = false;
    for (std::size_t m = 0; m < given.members.size(); ++m) {
      if (given.members[m].share != each.share || given.members[m].ingredient != each.ingredient)
        continue;
      mix.parts[m] = each.part;
      found = true;
    }
    if (!found) return std::nullopt;
  }
  return mix;
}

void expect_mends_serve(const World& world, const prove::Proof& proof, int& mends,
                        const std::string& text) {
  const language::Program& program = world.program();
  const language::Framework& framework = program[world.last()];
  for (const prove::Mend& mend : prove::find_mends(program, framework, proof)) {
    ++mends;
    const language::Framework better = mended(framework, mend);
    EXPECT_EQ(prove::prove(program, better).verdict, prove::Verdict::holds)
        << text << "mend " << static_cast<int>(mend.kind) << " of " << mend.index << " to "
        << mend.bound.to_decimal(4);
    if (mend.kind == prove::Mend::Kind::lower_share) continue;  // it admits the mix no more
    const prove::Case given = prove::case_of(program, better);
    const auto mix = mix_in(given, proof);
    ASSERT_TRUE(mix.has_value());
    EXPECT_FALSE(prove::is_refused(given, {proof.additions}, *mix))
        << text << basket_text(program, proof) << kitchen_text(program, proof) << "mend "
        << static_cast<int>(mend.kind) << " of " << mend.index << " to "
        << mend.bound.to_decimal(4);
  }
}

// Of the order of cooking, which a method at random heeds as little as a beginner.
bool is_advice(const std::string& code) {
  return code == "acid-before-soft" || code == "sugar-before-soft";
}

TEST(Refuted, TheMixIsRefusedAndEachMendServes) {
  std::mt19937 random{1847};
  int refuted = 0;
  int drawn = 0;
  int not_shown = 0;
  int mends = 0;
  while (refuted < rounds(20, 200) && drawn < 5000) {
    ++drawn;
    const std::string text = random_framework(random);
    const World world(text);
    if (!world.is_good()) continue;
    const auto& framework = world.program()[world.last()];
    const prove::Proof proof = prove::prove(world.program(), framework);
    if (proof.verdict == prove::Verdict::not_shown) ++not_shown;
    if (proof.verdict != prove::Verdict::breaks) continue;
    ++refuted;
    EXPECT_FALSE(proof.limits.empty()) << text;
    const std::string whole =
        text + basket_text(world.program(), proof) + kitchen_text(world.program(), proof);
    const Planned planned(whole, prepared_aim(batch));
    EXPECT_FALSE(planned.fits()) << whole;
    const auto codes = planned.codes();
    // Refused because of what it is, and not of how it is written or weighed.
    EXPECT_FALSE(codes.empty()) << whole;
    for (const std::string& code : codes) {
      if (is_advice(code)) continue;
      EXPECT_TRUE(code == "does-not-fit" || code == "too-little" || code == "boil-misses-limit" ||
                  code == "boils-dry")
          << code << ": " << planned.messages() << whole;
    }
    expect_mends_serve(world, proof, mends, text);
  }
  fmt::print("  {} refuted and {} not shown of {} drawn, {} mends\n", refuted, not_shown, drawn,
             mends);
  EXPECT_EQ(refuted, rounds(20, 200));
  EXPECT_GE(mends, rounds(3, 30));
}

}  // namespace
}  // namespace maslin::test
