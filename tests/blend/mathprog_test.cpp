// SPDX-License-Identifier: Apache-2.0
// The blend of tests/blend/blend.mod, built by hand as columns, rows and objectives, beside the
// answers recorded for it and beside glpsol itself.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>

#include "blend/solver.hpp"
#include "tests/blend/glpsol.hpp"
#include "tests/blend/mathprog_data.hpp"

namespace maslin::blend {
namespace {

using testing::MathprogData;

const std::string folder = MASLIN_SOURCE_DIR "/tests/blend/";

std::string data_file(const std::string& instance) {
  std::string path = folder + "blend.";
  return path.append(instance).append(".dat");
}

MathprogData data_of(const std::string& instance) {
  return MathprogData::read(data_file(instance));
}

// The model's rows under its own names. Balances and definitions are background; what somebody
// states (stock, shares, sugar, vinegar, boiling, acid, the size of the batch) can be a reason.
class Blend {
 public:
  explicit Blend(const MathprogData& data) : data_(data) {
    batch_ = named_column("B", at("bmin"), at("bmax"), statement("B"));
    sugar_ = named_column("S");
    vinegar_ = named_column("V");
    finished_ = named_column("Fin");
    water_ = named_column("W");
    for (const std::string& name : data.set("C")) add_class(name);
    add_basis();
    add_demands();
    add_objectives();
  }

  const LinearProgram& program() const { return program_; }
  const std::string& name(Statement statement) const { return statements_.at(statement); }

  // Every row but these becomes background.
  LinearProgram elastic_only(const std::string& wanted) const {
    LinearProgram program = program_;
    for (Column& column : program.columns) column.statement = background;
    for (Row& row : program.rows) {
      if (row.name != wanted) row.statement = background;
    }
    return program;
  }

  RowIndex row(const std::string& wanted) const {
    const auto found = std::find_if(program_.rows.begin(), program_.rows.end(),
                                    [&](const Row& row) { return row.name == wanted; });
    if (found == program_.rows.end()) throw std::runtime_error("no row " + wanted);
    return static_cast<RowIndex>(found - program_.rows.begin());
  }

  // What the model prints, under the words it prints them with.
  std::map<std::string, double> printed(const Solution& solution) const {
    std::map<std::string, double> values;
    for (std::size_t index = 0; index < program_.columns.size(); ++index) {
      values[program_.columns[index].name] = solution.columns[index];
    }
    for (const Term& term : own_) values["own"] += solution.columns[term.column];
    values["bought"] = solution.objective_values[0];
    values["deviation"] = solution.objective_values[1];
    values["objective"] = data_.number("wt") * solution.objective_values[0] +
                          data_.number("wd") * solution.objective_values[1] +
                          data_.number("wa") * solution.objective_values[2] +
                          data_.number("wv") * solution.objective_values[3];
    return values;
  }

 private:
  double at(const std::string& parameter) const { return data_.number(parameter, "blend"); }

  Statement statement(const std::string& name) {
    statements_.push_back(name);
    return static_cast<Statement>(statements_.size() - 1);
  }

  ColumnIndex named_column(const std::string& name, double lower = 0, double upper = infinity,
                           Statement owner = background) {
    return program_.add_column({name, lower, upper, owner});
  }

  void balance(const std::string& name, std::vector<Term> terms) {
    program_.add_row({name, 0, 0, std::move(terms), background});
  }

  void state(const std::string& name, double lower, std::vector<Term> terms, double upper) {
    program_.add_row({name, lower, upper, std::move(terms), statement(name)});
  }

  void add_lot(const std::string& lot, std::vector<Term>& members) {
    const ColumnIndex own = named_column("use " + lot);
    state("have[" + lot + "]", -infinity, {{own, 1}},
          data_.number("own", lot) * data_.number("yld", lot));
    own_.push_back({own, data_.number("age", lot)});
    std::vector<ColumnIndex> columns{own};
    if (data_.number("buy", lot) > 0) {
      const ColumnIndex bought = named_column("buy " + lot);
      state("buymax[" + lot + "]", -infinity, {{bought, 1}}, data_.number("buy", lot));
      bought_.push_back({bought, 1});
      columns.push_back(bought);
    }
    for (const ColumnIndex column : columns) {
      members.push_back({column, 1});
      soluble_.push_back({column, data_.number("ss", lot)});
      total_.push_back({column, data_.number("ts", lot)});
      credit_.push_back({column, data_.number("cr", lot)});
    }
  }

  void add_class(const std::string& name) {
    std::vector<Term> members;
    for (const std::string& lot : data_.set("I")) {
      if (data_.word("cls", lot) == name) add_lot(lot, members);
    }
    const ColumnIndex sum = named_column("class " + name);
    const ColumnIndex more = named_column("more " + name);
    const ColumnIndex less = named_column("less " + name);
    classes_.push_back({sum, 1});
    deviation_.push_back({more, 1});
    deviation_.push_back({less, 1});
    members.push_back({sum, -1});
    balance("class[" + name + "]", members);
    state("smin[" + name + "]", 0, {{sum, 1}, {batch_, -data_.number("lo", name)}}, infinity);
    state("smax[" + name + "]", -infinity, {{sum, 1}, {batch_, -data_.number("hi", name)}}, 0);
    balance("dev[" + name + "]",
            {{sum, 1}, {batch_, -data_.number("pref", name)}, {more, -1}, {less, 1}});
  }

  void add_basis() {
    std::vector<Term> basis = classes_;
    basis.push_back({batch_, -1});
    balance("basis", basis);
    std::vector<Term> solids = soluble_;
    solids.insert(solids.end(), {{sugar_, 1}, {batch_, at("salt")}, {finished_, -at("tss")}});
    balance("solids", solids);
    balance("water",
            {{batch_, 1 + at("salt")}, {sugar_, 1}, {vinegar_, 1}, {finished_, -1}, {water_, -1}});
  }

  void add_demands() {
    std::vector<Term> sugar = credit_;
    sugar.insert(sugar.end(), {{sugar_, 1}, {batch_, -at("sug")}});
    state("sugar", 0, sugar, 0);
    state("vinlo", 0, {{vinegar_, 1}, {batch_, -at("vlo")}}, infinity);
    state("vinhi", -infinity, {{vinegar_, 1}, {batch_, -at("vhi")}}, 0);
    state("boil", -infinity, {{water_, 1}, {batch_, -at("evmax")}}, 0);
    // acet keep V >= minac (Fin - solids - S - salt B)
    const double minac = at("minac");
    std::vector<Term> acid{{vinegar_, at("acet") * at("keep")},
                           {finished_, -minac},
                           {sugar_, minac},
                           {batch_, minac * at("salt")}};
    for (const Term& term : total_) acid.push_back({term.column, minac * term.coefficient});
    state("acid", 0, acid, infinity);
  }

  // The weights of the model, 100 against 1 against 0.05 and less, mean this order.
  void add_objectives() {
    program_.objectives.push_back({"bought", Direction::minimise, bought_});
    program_.objectives.push_back({"deviation", Direction::minimise, deviation_});
    program_.objectives.push_back({"use first", Direction::minimise, own_});
    program_.objectives.push_back({"vinegar", Direction::minimise, {{vinegar_, 1}}});
  }

  const MathprogData& data_;
  LinearProgram program_;
  std::vector<std::string> statements_;
  std::vector<Term> own_, bought_, deviation_, classes_, soluble_, total_, credit_;
  ColumnIndex batch_, sugar_, vinegar_, finished_, water_;
};

// Lines of words with a number last; a line that ends in a word (a status) is left out.
std::map<std::string, double> numbers_in(const std::string& text) {
  std::map<std::string, double> values;
  std::istringstream lines(text);
  std::string line;
  while (std::getline(lines, line)) {
    const std::size_t space = line.rfind(' ');
    if (line.empty() || line[0] == '#' || space == std::string::npos) continue;
    std::istringstream last(line.substr(space + 1));
    double value = 0;
    if (last >> value) values[line.substr(0, space)] = value;
  }
  return values;
}

void expect_values(const std::map<std::string, double>& found,
                   const std::map<std::string, double>& wanted) {
  for (const auto& [name, value] : wanted) {
    ASSERT_EQ(found.count(name), 1U) << name;
    EXPECT_NEAR(found.at(name), value, 1e-6 * std::max(1.0, std::abs(value))) << name;
  }
}

std::vector<std::string> conflict_names(const Blend& blend) {
  std::vector<std::string> names;
  for (const Statement statement : smallest_conflict(blend.program(), {})) {
    names.push_back(blend.name(statement));
  }
  std::sort(names.begin(), names.end());
  return names;
}

TEST(Mathprog, ComfortableBlendHasTheRecordedValues) {
  const MathprogData data = data_of("comfortable");
  const Blend blend(data);
  const Solution solution = solve(blend.program());
  // GNU MathProg model with answers of GNU MathProg (glpsol) and MiniZinc, recorded in tests/blend
  const std::string recorded = testing::read_file(folder + "blend.comfortable.expected");
  ASSERT_EQ(recorded.compare(0, 15, "status optimal\n"), 0);
  ASSERT_EQ(solution.status, Status::optimal);
  const std::map<std::string, double> wanted = numbers_in(recorded);
  EXPECT_EQ(wanted.size(), 30U);
  expect_values(blend.printed(solution), wanted);
}

// The weighted sum as one objective leads to the same place, so the order above is its meaning.
TEST(Mathprog, WeightsMeanTheOrder) {
  const MathprogData data = data_of("comfortable");
  const Blend blend(data);
  LinearProgram weighted = blend.program();
  std::vector<Term> sum;
  const std::vector<std::string> weights{"wt", "wd", "wa", "wv"};
  for (std::size_t index = 0; index < weights.size(); ++index) {
    for (Term term : weighted.objectives[index].terms) {
      term.coefficient *= data.number(weights[index]);
      sum.push_back(term);
    }
  }
  weighted.objectives.assign(1, {"obj", Direction::minimise, sum});
  const Solution ordered = solve(blend.program());
  const Solution summed = solve(weighted);
  ASSERT_EQ(summed.status, Status::optimal);
  // GNU MathProg model with answers of GNU MathProg (glpsol) and MiniZinc, recorded in tests/blend
  EXPECT_NEAR(summed.objective_values[0], 94.403361137, 1e-6 * 94.4);
  for (std::size_t index = 0; index < ordered.columns.size(); ++index) {
    EXPECT_NEAR(ordered.columns[index], summed.columns[index], 1e-6)
        << weighted.columns[index].name;
  }
}

TEST(Mathprog, OnionShortageIsRefusedWithTheRecordedAmount) {
  const MathprogData data = data_of("infeasible-onion");
  const Blend blend(data);
  // GNU MathProg model with answers of GNU MathProg (glpsol) and MiniZinc, recorded in tests/blend
  const std::string recorded = testing::read_file(folder + "blend.infeasible-onion.expected");
  ASSERT_EQ(recorded.compare(0, 18, "status infeasible\n"), 0);
  ASSERT_NE(recorded.find("short by 1.825 kg"), std::string::npos);
  EXPECT_EQ(solve(blend.program()).status, Status::infeasible);
  const Elastic elastic = relax(blend.elastic_only("smin[onion]"));
  ASSERT_EQ(elastic.status, Status::optimal);
  EXPECT_NEAR(elastic.row_violation[blend.row("smin[onion]")], -1.825, 1e-9);
  EXPECT_NEAR(elastic.total, 1.825, 1e-9);
  EXPECT_GT(relax(blend.program()).total, infeasible_above);
  EXPECT_EQ(conflict_names(blend),
            (std::vector<std::string>{"B", "have[onion_brown]", "have[onion_red]", "smin[onion]"}));
}

TEST(Mathprog, SugarExcessIsRefusedWithTheRecordedAmount) {
  const MathprogData data = data_of("infeasible-sugar");
  const Blend blend(data);
  // GNU MathProg model with answers of GNU MathProg (glpsol) and MiniZinc, recorded in tests/blend
  const std::string recorded = testing::read_file(folder + "blend.infeasible-sugar.expected");
  ASSERT_EQ(recorded.compare(0, 18, "status infeasible\n"), 0);
  ASSERT_NE(recorded.find("over by at least 0.372 kg"), std::string::npos);
  EXPECT_EQ(solve(blend.program()).status, Status::infeasible);
  const Elastic elastic = relax(blend.elastic_only("sugar"));
  ASSERT_EQ(elastic.status, Status::optimal);
  EXPECT_NEAR(elastic.row_violation[blend.row("sugar")], 0.372, 1e-9);
  EXPECT_NEAR(elastic.total, 0.372, 1e-9);
  EXPECT_GT(relax(blend.program()).total, infeasible_above);
  EXPECT_EQ(conflict_names(blend), (std::vector<std::string>{"B", "smin[dried]", "sugar"}));
}

TEST(Mathprog, AgreesWithGlpsolOnEveryInstance) {
  const testing::TemporaryFolder temporary;
  for (const std::string instance : {"comfortable", "infeasible-onion", "infeasible-sugar"}) {
    SCOPED_TRACE(instance);
    const std::string given = data_file(instance);
    const std::string output = temporary.file(instance + ".out");
    const std::string display = temporary.file(instance + ".display");
    // Without presolving it says `infeasible` rather than `undefined`; the exit status is 0 anyhow.
    ASSERT_NO_THROW(testing::run_glpsol({"--math", folder + "blend.mod", "--data", given,
                                         "--nopresol", "--output", output, "--display", display}));
    const std::string status = testing::status_of_output(output);
    const MathprogData data = data_of(instance);
    const Blend blend(data);
    const Solution solution = solve(blend.program());
    // GNU MathProg model with answers of GNU MathProg (glpsol) and MiniZinc, recorded in
    // tests/blend
    if (status == "OPTIMAL") {
      ASSERT_EQ(solution.status, Status::optimal);
      const std::map<std::string, double> wanted = numbers_in(testing::read_file(display));
      EXPECT_EQ(wanted.size(), 30U);
      expect_values(blend.printed(solution), wanted);
    } else {
      EXPECT_EQ(status.compare(0, 10, "INFEASIBLE"), 0) << status;
      EXPECT_EQ(solution.status, Status::infeasible);
    }
  }
}

}  // namespace
}  // namespace maslin::blend
