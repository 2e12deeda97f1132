// SPDX-License-Identifier: Apache-2.0
// The part of the recorded blend (blend.mod, the comfortable instance) that the language can say,
// as text, against a MathProg model that this test writes from the same figures: shares,
// availability by trim, what may be bought, the sugar credit, vinegar as a range, salt, soluble
// solids with what boils off, and what is preferred. Outside check: GNU MathProg (glpsol).
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <fstream>
#include <string>
#include <vector>

#include "blend/glpsol.hpp"
#include "plan/solve.hpp"
#include "support/planning.hpp"

namespace maslin::test {
namespace {

struct Lot {
  std::string name;
  std::string of_class;
  double own;     // kg as brought in
  int prepared;   // per cent of that
  double bought;  // kg that may be bought
  double solids;  // soluble solids, share
  double sugars;  // credited, share
};

// The lots of blend.comfortable.dat.
const std::vector<Lot> lots = {
    {"kuri squash", "one squash", 22.4, 72, 0, 0.075, 0},
    {"long squash", "one squash", 17.9, 80, 0, 0.086, 0},
    {"first apples", "one apple", 14.6, 82, 4, 0.108, 0},
    {"second apples", "one apple", 12.3, 65, 0, 0.121, 0},
    {"first onions", "one onion", 7.8, 88, 3, 0.084, 0},
    {"second onions", "one onion", 3.1, 87, 0, 0.091, 0},
    {"long carrot", "one carrot", 9.5, 83, 0, 0.083, 0},
    {"boxed dates", "one dried", 0, 100, 6, 0.655, 0.631},
    {"sultanas in bulk", "one dried", 1.2, 100, 5, 0.692, 0.668},
    {"garden root", "one ginger", 0.4, 80, 2, 0.028, 0},
};

struct ShareOf {
  std::string name;
  double low, high, prefer;
};
const std::vector<ShareOf> shares = {
    {"one squash", 0.25, 0.5, 0.36}, {"one apple", 0.15, 0.35, 0.25},
    {"one onion", 0.12, 0.25, 0.16}, {"one carrot", 0.0, 0.15, 0.1},
    {"one dried", 0.05, 0.15, 0.11}, {"one ginger", 0.01, 0.04, 0.02}};

constexpr double sugar = 0.35;
constexpr double vinegar_low = 0.25;
constexpr double vinegar_high = 0.45;
constexpr double salt = 0.015;
// Around the 45 % of the recorded blend: nothing weighed meets a single value.
constexpr double solids_low = 0.44;
constexpr double solids_high = 0.46;

// Some names hold a word of the language's own.
std::string quoted(const std::string& name) { return '"' + name + '"'; }

std::string text_of_blend() {
  std::string text;
  for (const ShareOf& share : shares) text += "class " + share.name + "\n";
  for (const Lot& lot : lots) {
    text += fmt::format(
        "ingredient {} is {} {{\n  composition sucrose {} g\n"
        "  soluble solids {} %\n  source \"blend.comfortable.dat\"\n}}\n",
        quoted(lot.name), lot.of_class, lot.sugars * 100, lot.solids * 100);
  }
  text +=
      "ingredient plain sugar { composition sucrose 100 g\nsoluble solids 100 %\n"
      "source \"blend.mod\" }\n"
      "ingredient plain salt { composition water 0 g\nsoluble solids 100 %\n"
      "source \"blend.mod\" }\n"
      "ingredient sour water { composition water 100 g\nsoluble solids 0 %\n"
      "source \"blend.mod\" }\n";
  text += "framework blend {\n  produce {\n";
  for (const ShareOf& share : shares) {
    text += fmt::format("    {} {} .. {} % prefer {} %\n", share.name, share.low * 100,
                        share.high * 100, share.prefer * 100);
  }
  text += fmt::format(
      "  }}\n  per kilogram {{\n    plain sugar {} g\n    sour water {} .. {} g\n"
      "    plain salt {} g\n  }}\n",
      sugar * 1000, vinegar_low * 1000, vinegar_high * 1000, salt * 1000);
  text += "  substitute { one dried for plain sugar by sugars full }\n";
  text += fmt::format(
      "  limits {{ soluble solids {} .. {} %\n"
      "low acid <= 100 % of prepared produce }}\n}}\nbasket {{\n",
      solids_low * 100, solids_high * 100);
  for (const Lot& lot : lots) {
    if (lot.own > 0) {
      text += fmt::format("  {} {} kg gross, trim {} %\n", quoted(lot.name), lot.own,
                          100 - lot.prepared);
    }
    if (lot.bought > 0) {
      text += fmt::format("  {} to buy, at most {} kg\n", quoted(lot.name), lot.bought);
    }
  }
  return text + "}\n";
}

// The same in MathProg, with 40 kg of prepared produce and the objectives in our order, the ones
// before held at their optimum.
std::string model(const std::string& goal, const std::string& held) {
  std::string text = "var S >= 0; var V >= 0; var C >= 0; var W >= 0; var B = 40;\n";
  std::string total;
  std::string bought = "0";
  std::string credit = "0";
  std::string solid = "S + T";
  std::string deviation;
  text += fmt::format("var T = {} * 40;\n", salt);
  text.replace(text.find("var B = 40"), 10, "var B >= 40, <= 40");
  text.replace(text.find(fmt::format("var T = {} * 40", salt)),
               fmt::format("var T = {} * 40", salt).size(),
               fmt::format("var T >= {0}, <= {0}", salt * 40));
  for (std::size_t i = 0; i < lots.size(); ++i) {
    const Lot& lot = lots[i];
    text += fmt::format("var x{} >= 0, <= {}; var b{} >= 0, <= {};\n", i,
                        lot.own * lot.prepared / 100, i, lot.bought);
    total += fmt::format("{}x{} + b{}", i == 0 ? "" : " + ", i, i);
    bought += fmt::format(" + b{}", i);
    credit += fmt::format(" + {} * (x{} + b{})", lot.sugars, i, i);
    solid += fmt::format(" + {} * (x{} + b{})", lot.solids, i, i);
  }
  std::string rows = "s.t. whole: " + total + " = B;\n";
  for (std::size_t k = 0; k < shares.size(); ++k) {
    std::string sum = "0";
    for (std::size_t i = 0; i < lots.size(); ++i) {
      if (lots[i].of_class == shares[k].name) sum += fmt::format(" + x{} + b{}", i, i);
    }
    text += fmt::format("var p{0} >= 0; var m{0} >= 0;\n", k);
    rows += fmt::format(
        "s.t. lo{0}: {1} >= {2} * B;\ns.t. hi{0}: {1} <= {3} * B;\n"
        "s.t. dev{0}: {1} - {4} * B = p{0} - m{0};\n",
        k, sum, shares[k].low, shares[k].high, shares[k].prefer);
    deviation += fmt::format("{}p{} + m{}", k == 0 ? "" : " + ", k, k);
  }
  rows += fmt::format("s.t. sweet: S + C = {} * B;\ns.t. credit: C = {};\n", sugar, credit);
  rows += fmt::format("s.t. sour1: V >= {} * B;\ns.t. sour2: V <= {} * B;\n", vinegar_low,
                      vinegar_high);
  rows += fmt::format(
      "s.t. solid1: {0} >= {1} * (B + S + V + T - W);\n"
      "s.t. solid2: {0} <= {2} * (B + S + V + T - W);\n",
      solid, solids_low, solids_high);
  const auto objective = [&](const std::string& name) {
    if (name == "bought") return bought;
    if (name == "deviation") return deviation;
    return std::string("S + V + T");
  };
  std::string kept;
  if (!held.empty()) kept = held;
  std::string result = text + "minimize goal: " + objective(goal) + ";\n" + rows;
  const std::size_t bought_mark = kept.find("bought=");
  if (bought_mark != std::string::npos) {
    result += "s.t. kept1: " + bought + " = " +
              kept.substr(bought_mark + 7, kept.find(';') - bought_mark - 7) + ";\n";
  }
  const std::size_t deviation_mark = kept.find("deviation=");
  if (deviation_mark != std::string::npos) {
    result += "s.t. kept2: " + deviation + " = " + kept.substr(deviation_mark + 10) + ";\n";
  }
  return result + "solve;\nend;\n";
}

double solved(const std::string& text) {
  const blend::testing::TemporaryFolder folder;
  std::ofstream(folder.file("blend.mod")) << text;
  blend::testing::run_glpsol({"--math", folder.file("blend.mod"), "--write", folder.file("out")});
  const auto answer = blend::testing::read_written_solution(folder.file("out"));
  EXPECT_TRUE(answer.optimal);
  return answer.objective;
}

double stage(const plan::Solved& ours, const std::string& name) {
  for (std::size_t i = 0; i < ours.blend.program.objectives.size(); ++i) {
    if (ours.blend.program.objectives[i].name == name) return ours.solution.objective_values[i];
  }
  ADD_FAILURE() << "no objective is called " << name;
  return 0;
}

TEST(TextBlend, StagesAgreeWithMathProg) {
  const Planned planned(text_of_blend(), prepared_aim(40000));
  ASSERT_FALSE(planned.session().diagnostics().has_errors()) << planned.messages();
  const language::Program& program = planned.program();
  const blend::Grounding grounding{program, program.frameworks.back(), program.baskets.back(),
                                   nullptr};
  blend::Setting setting;
  setting.goal = {blend::GoalKind::prepared, 40};
  const plan::Solved ours = plan::solve_best(grounding, setting);
  ASSERT_EQ(ours.solution.status, blend::Status::optimal);
  constexpr double close = 1e-6;
  const double bought = solved(model("bought", ""));
  EXPECT_NEAR(stage(ours, "bought"), bought, close * (1 + bought));
  const double deviation = solved(model("deviation", fmt::format("bought={:.12f};", bought)));
  EXPECT_NEAR(stage(ours, "nearest to what is preferred"), deviation, close * (1 + deviation));
  const double added =
      solved(model("added", fmt::format("bought={:.12f};deviation={:.12f}", bought, deviation)));
  EXPECT_NEAR(stage(ours, "least added"), added, close * (1 + added));
  // The recorded answers of the whole blend, which these parts share with it.
  EXPECT_NEAR(bought, 0.88, 1e-6);
  EXPECT_NEAR(deviation, 5.6, 1e-6);
}

TEST(TextBlend, IsPlannedAndVerified) {
  const Planned planned(text_of_blend(), prepared_aim(40000));
  ASSERT_TRUE(planned.fits()) << planned.messages();
  EXPECT_NEAR(planned.total(), 40000, 20);
}

}  // namespace
}  // namespace maslin::test
