// SPDX-License-Identifier: Apache-2.0
#include "report/keeping_figures.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "language/contents.hpp"
#include "language/membership.hpp"
#include "plan/timeline.hpp"
#include "science/keeping.hpp"

namespace maslin::report {
namespace {

using language::Property;

constexpr double grams_in_kilogram = 1000;

std::optional<language::Contents> contents_of(const language::Program& program,
                                              const plan::VerifiedPlan& plan) {
  std::vector<language::InPan> parts;
  for (const plan::TakenId& id : plan::all_taken(plan.draft())) {
    const plan::Taken& taken = plan::taken_of(plan.draft(), id);
    parts.push_back({{taken.ingredient, taken.acidity},
                     Kilogram(taken.weight.to_double() / grams_in_kilogram),
                     {id.list, taken.slot}});
  }
  std::optional<Kilogram> finished;
  if (plan.finished()) finished = Kilogram(plan.finished()->to_double() / grams_in_kilogram);
  auto contents =
      language::Contents::of(program, program[plan.draft().task.framework], parts, finished);
  if (!contents) return std::nullopt;
  return std::move(contents.value());
}

// Wider where the pH of some of the produce is in no table.
PhDifference claimed_uncertainty(const language::Program& program, const plan::Draft& draft) {
  const auto taken = plan::all_taken(draft);
  const bool all_known = std::all_of(taken.begin(), taken.end(), [&](const plan::TakenId& id) {
    const language::IngredientId ingredient = plan::taken_of(draft, id).ingredient;
    return program[ingredient].ph.has_value() ||
           !language::is_of_class(program, ingredient, "produce");
  });
  return all_known ? science::claimed_uncertainty : science::claimed_uncertainty_with_unknown;
}

std::string_view assumption_text(science::PhAssumption assumption) {
  switch (assumption) {
    case science::PhAssumption::published_ph:
      return "its published pH";
    case science::PhAssumption::unknown_ph:
      return "its pH, which no table has";
    case science::PhAssumption::minerals:
      return "its minerals";
    case science::PhAssumption::acid_content:
      break;
  }
  return "how much acid it holds";
}

language::Limit limit_on(Property property, language::Whole whole = language::Whole::none) {
  language::Limit limit;
  limit.property = property;
  limit.whole = whole;
  return limit;
}

// Both are of what acetic acid preserves, and say nothing where there is none.
void add_lines_of_acetic_acid(const language::Contents& contents, KeepingFigures& result) {
  constexpr double percent = 100;
  const auto acid =
      contents.value_of(limit_on(Property::acetic_acid, language::Whole::volatile_matter));
  if (!acid || acid->high <= 0) return;
  if (const auto index = contents.value_of(limit_on(Property::stability_index))) {
    result.figures.push_back({"stability index", *index, science::index_line.in_unit(), "CIMSCEE",
                              "acid, salt, sugar alone", true, 1});
  } else {
    result.not_worked_out.emplace_back("stability index");
  }
  result.figures.push_back({"acetic acid in what boils away",
                            {acid->low * percent, acid->high * percent},
                            science::acetic_in_volatiles_line.in_unit() * percent,
                            "Adams and Moss",
                            "acid alone",
                            true,
                            2,
                            " %"});
}

}  // namespace

KeepingFigures keeping_figures(const language::Program& program, const plan::VerifiedPlan& plan) {
  KeepingFigures result;
  const auto contents = contents_of(program, plan);
  if (!contents) {
    result.not_worked_out = {"pH", "water activity"};
    return result;
  }
  if (const auto ph = contents->ph()) {
    const bool ferments = language::ferments(program[plan.draft().task.framework].method);
    result.figures.push_back(
        {ferments ? "pH before it ferments, not measured" : "pH, not measured",
         {ph->range.low.in_unit(), ph->range.high.in_unit()},
         science::low_acid_line(science::Jurisdiction::united_kingdom).in_unit(),
         "British guidance",
         ""});
    const auto taken = plan::all_taken(plan.draft());
    const auto& driver = plan::taken_of(plan.draft(), taken[ph->driver]).ingredient;
    result.ph = {ph->expected.in_unit(), claimed_uncertainty(program, plan.draft()).in_unit(),
                 program[driver].name, assumption_text(ph->assumption)};
  } else {
    result.not_worked_out.emplace_back("pH");
  }
  if (const auto activity = contents->water_activity()) {
    constexpr double line = 0.85;
    result.figures.push_back({"water activity",
                              {activity->low.in_unit(), activity->high.in_unit()},
                              line,
                              "21 CFR 114",
                              "wetter needs acid",
                              false,
                              3});
  } else {
    result.not_worked_out.emplace_back("water activity");
  }
  add_lines_of_acetic_acid(*contents, result);
  return result;
}

std::string value_text(const KeepingFigure& figure) {
  const std::string low = fmt::format("{:.{}f}", figure.value.low, figure.places);
  const std::string high = fmt::format("{:.{}f}", figure.value.high, figure.places);
  return (low == high ? low : low + " .. " + high) + std::string(figure.unit);
}

std::string line_text(const KeepingFigure& figure) {
  const double apart = figure.unfavourable_end() - figure.line;
  std::string text = fmt::format("at {:g}{} ({}", figure.line, figure.unit, figure.source);
  if (!figure.meaning.empty()) text += fmt::format("; {}", figure.meaning);
  return text + fmt::format("): {:.{}f} {}", std::abs(apart), figure.places,
                            apart > 0 ? "above" : "below");
}

}  // namespace maslin::report
