// SPDX-License-Identifier: Apache-2.0
// What tests/bench/run measures inside one process. Every answer is looked at before it is timed;
// repetitions of what is compared take turns, and medians are printed.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <fstream>
#include <functional>
#include <sstream>
#include <stdexcept>
#include <string>
#include <tao/pegtl.hpp>
#include <vector>

#include "blend/solver.hpp"
#include "driver/session.hpp"
#include "grammar/rules.hpp"
#include "plan/make.hpp"
#include "plan/solve.hpp"
#include "report/sheet.hpp"
#include "report/text.hpp"
#include "syntax/parse.hpp"
#include "tests/bench/proof_bench.hpp"
#include "tests/blend/lp_text.hpp"

namespace maslin::bench {
namespace {

std::string slurp(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  if (!in) throw std::runtime_error("cannot read " + path);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

void expect(bool good, const std::string& what) {
  if (!good) throw std::runtime_error("wrong answer: " + what);
}

// Of the processor, not of the clock on the wall: others may use the machine as well.
double milliseconds_of(const std::function<void()>& work) {
  const std::clock_t start = std::clock();
  work();
  constexpr double milliseconds = 1000;
  return static_cast<double>(std::clock() - start) * milliseconds / CLOCKS_PER_SEC;
}

double median(std::vector<double> times) {
  std::nth_element(times.begin(), times.begin() + static_cast<long>(times.size() / 2), times.end());
  return times[times.size() / 2];
}

// Medians of several things that take turns.
std::vector<double> in_turns(int rounds, const std::vector<std::function<void()>>& works) {
  std::vector<std::vector<double>> times(works.size());
  for (int round = 0; round < rounds; ++round) {
    for (std::size_t i = 0; i < works.size(); ++i) times[i].push_back(milliseconds_of(works[i]));
  }
  std::vector<double> result;
  for (auto& each : times) result.push_back(median(std::move(each)));
  return result;
}

// ---- From text to plan --------------------------------------------------------------------------

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

struct Compiled {
  explicit Compiled(const std::string& text) : session(files) {
    session.load_text("bench", text);
    session.compile();
    const language::Program& program = session.program();
    expect(!session.diagnostics().has_errors() && !program.baskets.empty(), "a text with errors");
    task.framework = language::FrameworkId(program.frameworks.size() - 1);
    task.basket = language::BasketId(program.baskets.size() - 1);
    task.kitchen = language::KitchenId(program.kitchens.size() - 1);
  }

  plan::Made make() {
    Diagnostics found;
    return plan::make_plan(session.program(), task, found);
  }

  NoFiles files;
  Session session;
  plan::Task task;
};

std::size_t sheet_from(const std::string& text) {
  Compiled compiled(text);
  const plan::Made made = compiled.make();
  expect(made.plan.has_value(), "no plan");
  return report::to_text(
             report::make_sheet(compiled.session.sources(), compiled.session.program(), *made.plan))
      .size();
}

// The texts of the village kitchen; `basket` may be another.
struct Kitchen {
  std::string framework = slurp("examples/chutney.maslin");
  std::string basket = slurp("examples/october.maslin");
  std::string kitchen = slurp("examples/village_hall.maslin");

  std::string text() const { return framework + basket + kitchen; }
  std::string with(const std::string& other) const { return framework + other + kitchen; }
};

std::string basket_of(int lots, int seed) {
  const std::vector<std::string> names = {"apple", "onion", "carrot", "pear", "butternut squash"};
  std::string text = "basket \"many\" {\n  sultana 400 g\n";
  for (int lot = 0; lot < lots; ++lot) {
    const int grams = 400 + (lot * 37 + seed * 53) % 500;
    text += fmt::format("  {} {} g gross, from \"plot {}\"\n",
                        names[static_cast<std::size_t>(lot) % names.size()], grams, lot);
  }
  return text + "}\n";
}

void print(const std::string& what, double value, const std::string& unit) {
  fmt::print("{}\t{:.4g}\t{}\n", what, value, unit);
}

void measure_many(const Kitchen& kitchen) {
  for (const int blends : {100, 1000}) {
    std::vector<std::string> texts;
    for (int i = 0; i < blends; ++i) texts.push_back(kitchen.with(basket_of(10, i)));
    const double time = milliseconds_of([&] {
      for (const std::string& text : texts) sheet_from(text);
    });
    print(fmt::format("{} blends in one process, each text to sheet", blends), time / blends,
          "ms a blend");
  }
}

void measure_lots(const Kitchen& kitchen) {
  for (const int lots : {10, 100, 1000, 10000}) {
    const std::string text = kitchen.with(basket_of(lots, 1));
    sheet_from(text);
    const int rounds = lots > 1000 ? 5 : 15;
    print(fmt::format("{} lots, text to sheet", lots),
          in_turns(rounds, {[&] { sheet_from(text); }})[0], "ms");
  }
}

// All that the rules keep while they match: how deep brackets are.
struct Depth {
  int depth = 0;
  template <class Input>
  void note_too_deep(const Input&) {}
};

void measure_reading(const Kitchen& kitchen) {
  constexpr std::size_t bytes = 4000000;
  std::string text;
  while (text.size() < bytes) text += kitchen.text();
  const auto match = [&] {
    tao::pegtl::memory_input<tao::pegtl::tracking_mode::lazy, tao::pegtl::eol::lf> in(
        text.data(), text.size(), "");
    Depth depth;
    expect(tao::pegtl::parse<grammar::file>(in, depth) && in.empty(), "the grammar does not match");
  };
  const auto tree = [&] {
    const syntax::SyntaxTree read = syntax::parse(FileId(0), text);
    expect(read.misfits.empty() && read.nodes.front().end == text.size(), "the tree is not whole");
  };
  const auto times = in_turns(9, {match, tree});
  const auto speed = [&](double time) { return static_cast<double>(text.size()) / time / 1000; };
  print("matching alone, no tree", speed(times[0]), "MB/s");
  print("text to tree", speed(times[1]), "MB/s");
  print("the tree takes", times[1] / times[0], "times the matching");
}

void measure_misfit(const Kitchen& kitchen) {
  Compiled good(kitchen.text());
  good.task.aim = {plan::AimKind::prepared, Rational(3000)};
  Compiled bad(kitchen.text());
  bad.task.aim = {plan::AimKind::prepared, Rational(5000)};
  expect(good.make().plan.has_value(), "no plan");
  const plan::Made misfit = bad.make();
  expect(!misfit.plan && !misfit.mends.empty(), "no mend");
  const auto times = in_turns(101, {[&] { good.make(); }, [&] { bad.make(); }});
  print("planning, the text read already", times[0], "ms");
  print("a misfit with its reasons and mends", times[1], "ms");
  print("the misfit takes", times[1] / times[0], "times the plan");
}

// ---- The matrix, for other solvers --------------------------------------------------------------

void write_matrix(const std::string& folder) {
  Compiled compiled(Kitchen().text());
  const language::Program& program = compiled.session.program();
  const plan::Task& task = compiled.task;
  const blend::Grounding grounding{program, program[task.framework], program[task.basket],
                                   &program[task.kitchen]};
  blend::LinearProgram matrix = blend::ground(grounding, {}).program;
  matrix.objectives.resize(1);
  const blend::Solution solution = blend::solve(matrix);
  expect(solution.status == blend::Status::optimal, "the matrix has no solution");
  const blend::Objective& objective = matrix.objectives.front();
  std::ofstream(folder + "/blend.lp") << blend::testing::lp_text(matrix, objective);
  std::vector<double> costs(matrix.columns.size(), 0);
  for (const blend::Term& term : objective.terms) costs[term.column] += term.coefficient;
  constexpr double unbounded = 1e60;
  const auto finite = [&](double bound) { return std::clamp(bound, -unbounded, unbounded); };
  const bool most = objective.direction == blend::Direction::maximise;
  std::string text =
      fmt::format("{} {} {}\n", matrix.columns.size(), matrix.rows.size(), most ? -1 : 1);
  for (std::size_t i = 0; i < costs.size(); ++i) {
    text += fmt::format("{:.17g} {:.17g} {:.17g}\n", finite(matrix.columns[i].lower),
                        finite(matrix.columns[i].upper), costs[i]);
  }
  for (const blend::Row& row : matrix.rows) {
    text +=
        fmt::format("{:.17g} {:.17g} {}", finite(row.lower), finite(row.upper), row.terms.size());
    for (const blend::Term& term : row.terms) {
      text += fmt::format(" {} {:.17g}", term.column, term.coefficient);
    }
    text += "\n";
  }
  std::ofstream(folder + "/blend.matrix") << text;
  fmt::print("{:.12g}\n", solution.objective_values.front());
}

void measure() {
  const Kitchen kitchen;
  sheet_from(kitchen.text());
  print("one blend in a warm process, text to sheet",
        in_turns(101, {[&] { sheet_from(kitchen.text()); }})[0], "ms");
  measure_many(kitchen);
  measure_lots(kitchen);
  measure_reading(kitchen);
  measure_misfit(kitchen);
  measure_proofs(in_turns, print);
}

int run(const std::vector<std::string>& words) {
  if (words.size() == 1 && words[0] == "measure") {
    measure();
    return 0;
  }
  if (words.size() == 2 && words[0] == "matrix") {
    write_matrix(words[1]);
    return 0;
  }
  fmt::print(stderr, "usage, from the root of the tree: maslin_bench measure | matrix FOLDER\n");
  return 2;
}

}  // namespace
}  // namespace maslin::bench

int main(int count, char** words) {
  try {
    return maslin::bench::run({words + 1, words + count});
  } catch (const std::exception& error) {
    fmt::print(stderr, "maslin_bench: {}\n", error.what());
    return 1;
  }
}
