// SPDX-License-Identifier: Apache-2.0
// While somebody types, a proof is made again only when something it stands on has changed.
#include "driver/proofs.hpp"

#include <gtest/gtest.h>

#include "support/golden_files.hpp"

namespace maslin::test {
namespace {

const std::string chutney = R"(framework village chutney {
  produce { apple 60 .. 80 %; onion 20 .. 40 % }
  per kilogram { cider vinegar 400 .. 600 ml; sugar 300 g }
  limits { pH <= 4.4; soluble solids 36 .. 46 % }
}
)";
const std::string relish = R"(framework village relish {
  produce { carrot 60 .. 80 %; onion 20 .. 40 % }
  per kilogram { cider vinegar 600 .. 900 ml; sugar 300 g }
  limits { pH <= 4.5 }
}
)";
const std::string sharper = R"(framework sharper chutney refines village chutney {
  limits { pH <= 4.3 }
}
)";
const std::string basket = "basket b { apple 2 kg prepared; onion 1 kg prepared }\n";

// One keystroke after another: each text is compiled anew, as an editor would.
class Editing : public testing::Test {
 protected:
  std::size_t made_for(const std::string& text) {
    MemoryFiles files({{"/kitchen/week.maslin", text}});
    Session session(files);
    session.load("/kitchen/week.maslin");
    session.compile();
    const std::size_t before = proofs_.made();
    const language::Program& program = session.program();
    for (std::size_t i = program.library_frameworks; i < program.frameworks.size(); ++i) {
      const language::FrameworkId id(i);
      const KeptProof& kept = proofs_.of(session, id);
      // Whatever is kept says what would be found.
      const prove::Proof again = prove::prove(program, program[id]);
      EXPECT_EQ(kept.proof.verdict, again.verdict);
      EXPECT_EQ(kept.proof.limits, again.limits);
      EXPECT_EQ(kept.proof.worst.size(), again.worst.size());
    }
    proofs_.forget_others();
    return proofs_.made() - before;
  }

  Proofs proofs_;
};

TEST_F(Editing, ABasketBlanksAndCommentsCostNothing) {
  EXPECT_EQ(made_for(chutney + relish + basket), 2U);
  EXPECT_EQ(made_for(chutney + relish + "basket b { apple 3 kg prepared; onion 1 kg prepared }\n"),
            0U);
  EXPECT_EQ(made_for("# of this autumn\n\n" + chutney + "\n\n" + relish), 0U);
  EXPECT_EQ(made_for(chutney + relish + "kitchen k { scales to 5 g }\n"), 0U);
}

TEST_F(Editing, OneFrameworkOfSeveral) {
  EXPECT_EQ(made_for(chutney + relish), 2U);
  std::string other = relish;
  other.replace(other.find("4.5"), 3, "4.4");
  EXPECT_EQ(made_for(chutney + other), 1U);
  // What has gone is forgotten.
  EXPECT_EQ(made_for(chutney + relish), 1U);
}

TEST_F(Editing, AParentTakesItsChildrenAlong) {
  EXPECT_EQ(made_for(chutney + relish + sharper), 3U);
  std::string other = chutney;
  other.replace(other.find("300 g"), 5, "310 g");
  EXPECT_EQ(made_for(other + relish + sharper), 2U);
}

TEST_F(Editing, AnIngredientOfOnesOwnTakesAllAlong) {
  const std::string apple = "ingredient hall apple is sharp fruit { pH 3.3 .. 3.4 }\n";
  EXPECT_EQ(made_for(chutney + relish), 2U);
  EXPECT_EQ(made_for(apple + chutney + relish), 2U);
}

}  // namespace
}  // namespace maslin::test
