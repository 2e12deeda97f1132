// SPDX-License-Identifier: Apache-2.0
#include "tests/bench/proof_bench.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <stdexcept>

#include "blend/ground.hpp"
#include "blend/solver.hpp"
#include "driver/session.hpp"
#include "language/amounts.hpp"
#include "plan/make.hpp"
#include "prove/case.hpp"
#include "prove/proof.hpp"

namespace maslin::bench {
namespace {

class NoFiles final : public Files {
 public:
  Result<std::string, ReadError> read(const std::string&, std::size_t) override {
    return Failure{ReadError{ReadError::Kind::missing, {}}};
  }
  std::optional<ReadError> write_new(const std::string&, const std::string&) override {
    return ReadError{ReadError::Kind::exists, {}};
  }
  std::string canonical(const std::string& path) override { return path; }
};

void expect(bool good, const std::string& what) {
  if (!good) throw std::runtime_error("wrong answer: " + what);
}

language::Line line_of(language::IngredientId ingredient, long grams) {
  language::Line line;
  line.ingredient = ingredient;
  line.weight = Rational(grams);
  line.basis = language::WeighedAs::prepared;
  return line;
}

// Ten kilograms of everything that may fill a share, and plenty of what is added.
struct Plenty {
  explicit Plenty(const prove::Case& given) {
    for (const prove::Member& member : given.members) {
      basket.lines.push_back(line_of(member.ingredient, 10000));
    }
    const auto choices = prove::choices_of(given, 400);
    expect(choices && !choices->empty(), "nothing to add");
    for (const language::Stuff& stuff : choices->front().additions) {
      kitchen.store.push_back(line_of(stuff.ingredient, 1000000));
      kitchen.store.back().acidity = stuff.acidity;
    }
  }
  language::Basket basket;
  language::Kitchen kitchen;
};

void measure_library(const InTurns& in_turns, const Print& print) {
  NoFiles files;
  Session session(files);
  session.compile();
  const language::Program& program = session.program();
  std::vector<double> ratios;
  for (const language::Framework& framework : program.frameworks) {
    const prove::Case given = prove::case_of(program, framework);
    const Plenty plenty(given);
    const blend::Grounding grounding{program, framework, plenty.basket, &plenty.kitchen};
    blend::Setting setting;
    setting.goal = {blend::GoalKind::prepared, 10};
    blend::LinearProgram matrix = blend::ground(grounding, setting).program;
    matrix.objectives.resize(1);
    expect(blend::solve(matrix).status == blend::Status::optimal, framework.name);
    expect(prove::prove(program, framework).verdict == prove::Verdict::holds, framework.name);
    const auto times =
        in_turns(11, {[&] { prove::prove(program, framework); }, [&] { blend::solve(matrix); }});
    print(fmt::format("proof of {}", framework.name), times[0], "ms");
    print(fmt::format("  beside one solve of {} columns", matrix.columns.size()),
          times[0] / times[1], "times");
    ratios.push_back(times[0] / times[1]);
  }
  std::sort(ratios.begin(), ratios.end());
  print("the middle one of the proofs takes", ratios[ratios.size() / 2], "times one solve");
}

// A chutney with limits of every kind, and with the linear ones alone.
void measure_limits(const InTurns& in_turns, const Print& print) {
  NoFiles files;
  Session session(files);
  session.load_text("bench", R"(framework all {
  produce { apple 40 .. 80 %; onion 10 .. 40 %; carrot 0 .. 30 % }
  per kilogram { vinegar 500 .. 900 ml; sugar 200 .. 350 g; salt 10 .. 20 g }
  limits { pH <= 4.2; acetic acid >= 9 g per kilogram of finished product; soluble solids 25 .. 46 %
           water activity <= 0.97; stability index >= 25; acetic acid >= 1.2 % of volatile matter }
}
basket { apple 6 kg prepared; onion 3 kg prepared; carrot 2 kg prepared }
kitchen "here" { scales to 1 g
  store { malt vinegar 20 kg, 5 % acidity; sugar 20 kg; salt 2 kg } }
)");
  session.compile();
  expect(!session.diagnostics().has_errors(), "a text with errors");
  language::Program& program = session.program();
  plan::Task all;
  all.framework = language::FrameworkId(program.frameworks.size() - 1);
  all.basket = language::BasketId(0);
  all.kitchen = language::KitchenId(0);
  all.aim = {plan::AimKind::prepared, Rational(5000)};
  plan::Task linear = all;
  program.frameworks.push_back(program[all.framework]);
  linear.framework = language::FrameworkId(program.frameworks.size() - 1);
  auto& limits = program.frameworks.back().limits;
  limits.erase(std::remove_if(limits.begin(), limits.end(),
                              [](const auto& limit) { return !is_linear(limit); }),
               limits.end());
  const auto make = [&](const plan::Task& task) {
    Diagnostics found;
    return plan::make_plan(program, task, found).plan.has_value();
  };
  expect(make(all) && make(linear), "no plan");
  const auto times = in_turns(101, {[&] { make(all); }, [&] { make(linear); }});
  print("planning with limits of every kind", times[0], "ms");
  print("planning with the linear ones alone", times[1], "ms");
  print("all limits take", times[0] / times[1], "times the linear ones");
}

}  // namespace

void measure_proofs(const InTurns& in_turns, const Print& print) {
  measure_library(in_turns, print);
  measure_limits(in_turns, print);
}

}  // namespace maslin::bench
