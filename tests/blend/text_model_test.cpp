// SPDX-License-Identifier: Apache-2.0
// What the language says of a blend, from text to optimum, against MathProg written from the same
// figures: shares, availability and trim, what is bought and its price, additions as ranges and by
// volume, bottles of several strengths, credits full and optional at and below their caps, the cap
// on low-acid produce, acetic acid, soluble solids with what boils off, preferences. Every stage
// has to agree. Outside check: GNU MathProg (glpsol). The figures are invented.
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include "blend/glpsol.hpp"
#include "blend/text_model.hpp"
#include "plan/solve.hpp"
#include "property/random_case.hpp"
#include "support/planning.hpp"

namespace maslin::test {
namespace {

constexpr double close = 1e-6;
// A stage that is held gives way by a ten-millionth in glpsol; where two things are bought at
// nearly one price, that can show in what comes after.
constexpr double near = 1e-5;

bool same(double a, double b, double within = close) {
  return std::abs(a - b) <= within * (1 + std::abs(b));
}

class TextModels : public testing::Test {
 protected:
  // What MathProg makes of one stage; nothing when nothing fits.
  std::optional<double> stage(const TextModel& model, const std::vector<bool>& at_cap,
                              const std::vector<double>& reached) const {
    const std::string file = folder_.file("stage.mod");
    const std::string out = folder_.file("stage.out");
    std::ofstream(file) << mathprog_text(model, at_cap, reached);
    blend::testing::run_glpsol({"--math", file, "--nopresol", "--write", out});
    const auto written = blend::testing::read_written_solution(out);
    return written.optimal ? std::optional(written.objective) : std::nullopt;
  }

  // All stages with one choice of caps.
  std::vector<double> stages(const TextModel& model, const std::vector<bool>& at_cap) const {
    std::vector<double> reached;
    const std::size_t count = stages_of(model).size();
    while (reached.size() < count) {
      const auto next = stage(model, at_cap, reached);
      if (!next) return {};
      reached.push_back(*next);
    }
    return reached;
  }

  // The best over all choices.
  std::vector<double> best(const TextModel& model) const {
    std::vector<double> result;
    const auto names = stages_of(model);
    const std::size_t full = full_credits(model);
    for (std::size_t choice = 0; choice < (std::size_t{1} << full); ++choice) {
      std::vector<bool> at_cap;
      for (std::size_t i = 0; i < full; ++i) at_cap.push_back(((choice >> i) & 1) != 0);
      const auto candidate = stages(model, at_cap);
      if (!candidate.empty() && (result.empty() || better(names, candidate, result))) {
        result = candidate;
      }
    }
    return result;
  }

  static bool better(const std::vector<std::string>& names, const std::vector<double>& a,
                     const std::vector<double>& b) {
    for (std::size_t i = 0; i < names.size(); ++i) {
      if (same(a[i], b[i])) continue;
      const bool most = names[i] == "most of the basket" || names[i] == "use first";
      return most == (a[i] > b[i]);
    }
    return false;
  }

 private:
  blend::testing::TemporaryFolder folder_;
};

double value_of(const plan::Solved& ours, const std::string& name) {
  for (std::size_t i = 0; i < ours.blend.program.objectives.size(); ++i) {
    if (ours.blend.program.objectives[i].name == name) return ours.solution.objective_values[i];
  }
  ADD_FAILURE() << "no objective is called " << name;
  return 0;
}

TEST_F(TextModels, EveryStageAgreesWithMathProg) {
  std::mt19937 random(19081);
  int fitted = 0;
  int without = 0;
  int less_close = 0;
  for (int i = 0; i < rounds(60, 2000); ++i) {
    const TextModel model = random_model(random);
    const std::string text = language_text(model);
    SCOPED_TRACE(text);
    const Planned planned(text, model.aim ? prepared_aim(*model.aim) : plan::Aim{});
    // A limit that no vinegar of this model can reach is refused before there is a programme.
    if (planned.codes() == std::vector<std::string>{"limit-out-of-reach"}) continue;
    ASSERT_TRUE(planned.task().framework.valid()) << planned.messages();
    const plan::Solved ours = planned.optimum();
    const std::vector<double> theirs = best(model);
    ASSERT_EQ(ours.solution.status == blend::Status::optimal, !theirs.empty());
    if (theirs.empty()) {
      ++without;
      continue;
    }
    ++fitted;
    const auto names = stages_of(model);
    bool all_close = true;
    for (std::size_t at = 0; at < names.size(); ++at) {
      const double value = value_of(ours, names[at]);
      EXPECT_TRUE(same(value, theirs[at], at == 0 ? close : near))
          << names[at] << ": ours " << value << ", theirs " << theirs[at];
      all_close = all_close && same(value, theirs[at]);
    }
    if (!all_close) ++less_close;
    if (HasFailure()) break;
  }
  EXPECT_LE(less_close, fitted / 100);
  EXPECT_GE(fitted, rounds(30, 1000));
  EXPECT_GE(without, 1);
}

}  // namespace
}  // namespace maslin::test
