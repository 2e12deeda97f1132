// SPDX-License-Identifier: Apache-2.0
#include "report/readings.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/keeping.hpp"

namespace maslin::report {
namespace {

std::vector<std::string> readings_of(const language::Program& program, const plan::Plan& plan) {
  const language::Framework& framework = program[plan.verified.draft().task.framework];
  std::vector<std::string> readings = {"date and cook"};
  if (is_heated(framework.method)) {
    const plan::Boils& boils = plan.afternoon.boils;
    readings.emplace_back("pan, empty");
    if (boils.scales_carry_start) readings.emplace_back("pan and all that went in");
    const bool carried = !boils.stop || boils.stop->scales_carry_it;
    if (plan.verified.finished() && carried) readings.emplace_back("pan and what is left");
    readings.emplace_back("jars filled, lids not sealed");
  } else {
    readings.insert(readings.end(), {"jars filled", "warmth of the place, each week"});
  }
  readings.insert(readings.end(), {"pH of a blended sample", "meter at pH 4 and pH 7"});
  if (framework.routes.empty()) return readings;
  for (const language::RouteClaim& claim : framework.routes) {
    for (const language::ToRead& reading : program[claim.route].readings) {
      std::string text = reading_text(reading);
      const bool there = std::find(readings.begin(), readings.end(), text) != readings.end();
      if (reading.figure != "pH" && !there) readings.push_back(std::move(text));
    }
  }
  readings.emplace_back("released by");
  return readings;
}

}  // namespace

Section readings_section(const language::Program& program, const plan::Plan& plan) {
  constexpr long most_columns = 4;
  const plan::Boils& boils = plan.afternoon.boils;
  const long count = boils.too_many ? 1 : boils.count;
  const bool columns = count > 1 && count <= most_columns;
  Section section{"Readings to write down", {}, {}, {}, Topic::readings};
  auto& heads = section.table.heads;
  heads = {"reading"};
  for (long boil = 1; columns && boil <= count; ++boil)
    heads.push_back(fmt::format("boil {}", boil));
  if (!columns) heads.emplace_back(count == 1 ? "measured" : "boil ___");
  for (const std::string& reading : readings_of(program, plan)) {
    section.table.rows.emplace_back(heads.size(), blank);
    section.table.rows.back().front() = reading;
  }
  if (count > most_columns) {
    section.points.push_back(fmt::format("for each of the {} boils: copy this column", count));
  }
  return section;
}

}  // namespace maslin::report
