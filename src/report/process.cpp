// SPDX-License-Identifier: Apache-2.0
#include "report/process.hpp"

#include <fmt/format.h>

namespace maslin::report {
namespace {

std::string metres(const Length& height) {
  return (height.in_base() / Rational(1000)).to_decimal(1) + " m";
}

std::string minutes(const Duration& time) {
  return (time.in_base() / Rational(60)).to_decimal(1) + " min";
}

std::string jar_text(const language::Process& row) {
  return row.largest_jar.in_base().to_decimal(0) + " ml";
}

std::string sources_of(const language::Route& route, const language::Process& row) {
  if (!row.source.empty()) return row.source;
  std::string text;
  for (const std::string& source : route.sources) text += (text.empty() ? "" : "; ") + source;
  return text;
}

void as_tested(const language::Route& route, const plan::Tested& tested, const Length& altitude,
               Section& section) {
  section.paragraphs.push_back(fmt::format(
      "Filled jars in boiling water, as {} was tested: while amounts, jars and altitude are those "
      "on this sheet, and no longer. The amounts were held against those of the table, where a cup "
      "of produce is turned into "
      "grams; how it is cooked was not: look it up.",
      tested.claim->product));
  section.table.heads = {"jars up to", "at " + metres(altitude), "by the table"};
  for (const plan::ProcessTime& each : tested.times) {
    section.table.rows.push_back({jar_text(*each.row), minutes(each.time), bands_text(*each.row)});
  }
  section.points.emplace_back("never shorter, never for a larger jar, whatever the batch weighs");
  std::string last;
  for (const plan::ProcessTime& each : tested.times) {
    std::string source = sources_of(route, *each.row);
    if (source.empty() || source == last) continue;
    section.points.push_back("after " + source);
    last = std::move(source);
  }
}

void lapsed(const language::Program& program, const plan::Tested& tested, Section& section) {
  section.paragraphs.emplace_back(
      tested.claim != nullptr
          ? "No minutes in boiling water follow from a tested table, for this is not what was "
            "tested. Keep it cold."
          : "This is not what was tested, and what the source allows does not go with it.");
  for (const auto* list : {&tested.of_the_mix, &tested.of_the_kitchen}) {
    for (const language::Lapse& lapse : *list) section.points.push_back(lapse.because);
  }
  if (tested.claim == nullptr) return;
  for (const language::Process* row :
       rows_for(program[tested.claim->route], tested.claim->product)) {
    section.points.push_back(
        fmt::format("of the tested recipe for {}, not of this mix: {}, in jars up to {}",
                    tested.claim->product, bands_text(*row), jar_text(*row)));
  }
}

}  // namespace

std::string bands_text(const language::Process& row) {
  std::string text;
  for (const language::Process::Step& step : row.steps) {
    text += (text.empty() ? "" : ", ") + minutes(step.time) +
            (step.up_to ? " up to " + metres(*step.up_to) : " above");
  }
  return text;
}

std::optional<Section> process_section(const language::Program& program, const plan::Plan& plan) {
  const auto& tested = plan.afternoon.tested;
  if (!tested) return std::nullopt;
  const bool holds = tested->holds();
  if (holds && tested->claim == nullptr) return std::nullopt;
  Section section{
      tested->claim != nullptr ? "Heat process" : "Not as tested", {}, {}, {}, Topic::process};
  if (holds) {
    as_tested(program[tested->claim->route], *tested,
              *program[plan.verified.draft().task.kitchen].altitude, section);
  } else {
    lapsed(program, *tested, section);
  }
  return section;
}

}  // namespace maslin::report
