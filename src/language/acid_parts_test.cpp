// SPDX-License-Identifier: Apache-2.0
// The alkalinity of ash as it reaches the science; the figures are those of
// data/ash_alkalinity.csv.
#include "language/acid_parts.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "driver/session.hpp"
#include "support/golden_files.hpp"

namespace maslin::language {
namespace {

class AcidParts : public ::testing::Test {
 protected:
  void read(const std::string& text) {
    session_.load_text("week.maslin", text);
    session_.compile();
    ASSERT_FALSE(session_.diagnostics().has_errors());
  }

  IngredientId id_of(const std::string& name) const {
    const auto& all = session_.program().ingredients;
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const Ingredient& each) { return each.name == name; });
    EXPECT_NE(found, all.end()) << name;
    return IngredientId(static_cast<std::size_t>(found - all.begin()));
  }

  science::AcidPart part_of(const std::string& name) const {
    return acid_part_of(session_.program(), {id_of(name), std::nullopt});
  }

  test::MemoryFiles files_{test::Texts{}};
  Session session_{files_};
};

TEST_F(AcidParts, HoldWhatTheTablesSay) {
  read("basket { onion 1 kg prepared }");
  const auto carrot = part_of("carrot");
  ASSERT_TRUE(carrot.ash_alkalinity);
  EXPECT_DOUBLE_EQ(carrot.ash_alkalinity->low.in_unit(), 0.102);
  EXPECT_DOUBLE_EQ(carrot.ash_alkalinity->high.in_unit(), 0.108);
  ASSERT_TRUE(carrot.published_ph);
  EXPECT_LT(carrot.published_ph->low, carrot.published_ph->high);
  EXPECT_FALSE(part_of("quince").ash_alkalinity);
}

TEST_F(AcidParts, TakeTheUnitAsItIsWritten) {
  read(
      "ingredient one sorb is pome fruit { ash alkalinity 8.2 .. 10 mmol per 100 g }\n"
      "ingredient another sorb is pome fruit { ash alkalinity 82 .. 100 mmol per kg }\n");
  const auto one = part_of("one sorb").ash_alkalinity;
  const auto another = part_of("another sorb").ash_alkalinity;
  ASSERT_TRUE(one && another);
  EXPECT_EQ(one->low, another->low);
  EXPECT_EQ(one->high, another->high);
  EXPECT_DOUBLE_EQ(one->high.in_unit(), 0.1);
}

// Its range holds what potassium tells and what was titrated, so it can only become wider.
TEST_F(AcidParts, WidenThePhOfAMixture) {
  read("basket { onion 1 kg prepared }");
  const auto& program = session_.program();
  const science::Composition cucumber = composition_of(program, {id_of("cucumber"), std::nullopt});
  const Stuff vinegar{id_of("cider vinegar"), Rational(Rational::Wide{5}, Rational::Wide{100})};
  const science::Composition sour = composition_of(program, vinegar);
  science::AcidPart acid = acid_part_of(program, vinegar);
  acid.composition = &sour;
  acid.mass = Kilogram(0.4);
  science::AcidPart produce = part_of("cucumber");
  produce.composition = &cucumber;
  produce.mass = Kilogram(1);
  const auto titrated = science::mixture_ph({acid, produce});
  produce.ash_alkalinity.reset();
  const auto by_potassium = science::mixture_ph({acid, produce});
  ASSERT_TRUE(titrated.ok() && by_potassium.ok());
  EXPECT_GT(titrated->range.high, by_potassium->range.high);
  EXPECT_LE(titrated->range.low, by_potassium->range.low);
}

}  // namespace
}  // namespace maslin::language
