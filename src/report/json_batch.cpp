// SPDX-License-Identifier: Apache-2.0
#include "report/json_batch.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "diagnostic/render.hpp"
#include "report/cost.hpp"
#include "report/json.hpp"
#include "report/keeping.hpp"
#include "report/keeping_figures.hpp"
#include "report/pectin.hpp"
#include "report/pungency.hpp"

namespace maslin::report {
namespace {

using Json = nlohmann::ordered_json;

Json cost_json(const Cost& cost) {
  Json json = {{"contents", number_json(cost.contents)}, {"in_all", number_json(cost.in_all())}};
  if (cost.jars) json["jars"] = number_json(*cost.jars);
  Json by_jar = Json::array();
  for (const JarCost& each : cost.by_jar) {
    Json one = {{"holds_ml", number_json(each.holds.in_base())},
                {"count", each.count},
                {"contents", number_json(each.contents)}};
    if (each.jar) one["jar"] = number_json(*each.jar);
    by_jar.push_back(std::move(one));
  }
  json["by_jar"] = std::move(by_jar);
  json["unpriced"] = texts_json(cost.unpriced);
  return json;
}

// To four decimals: what more a floating-point number has means nothing.
double rounded(double value) {
  constexpr double scale = 1e4;
  return std::round(value * scale) / scale;
}

Json figure_json(const KeepingFigure& figure) {
  Json json = {{"figure", figure.what},
               {"low", rounded(figure.value.low)},
               {"high", rounded(figure.value.high)},
               {"line", figure.line},
               {"line_is", figure.line_is_the_least ? "the least" : "the most"},
               {"unfavourable_end", rounded(figure.unfavourable_end())},
               {"source", figure.source}};
  if (!figure.unit.empty()) json["unit"] = "%";
  return json;
}

Json route_json(const language::Route& route) {
  std::vector<std::string> readings;
  for (const language::ToRead& each : route.readings) readings.push_back(reading_text(each));
  return {{"route", printable(route.name)},
          {"to_read", texts_json(readings)},
          {"sources", texts_json(route.sources)}};
}

Json keeping_json(const language::Program& program, const plan::VerifiedPlan& plan) {
  const KeepingFigures worked_out = keeping_figures(program, plan);
  Json routes = Json::array();
  for (const language::RouteClaim& claim : program[plan.draft().task.framework].routes) {
    routes.push_back(route_json(program[claim.route]));
  }
  Json figures = Json::array();
  for (const KeepingFigure& each : worked_out.figures) figures.push_back(figure_json(each));
  Json json = {{"routes", std::move(routes)}, {"measured", false}, {"figures", std::move(figures)}};
  if (const auto& ph = worked_out.ph) {
    json["ph"] = {{"expected", rounded(ph->value)},
                  {"off_by", ph->off_by},
                  {"widest_through", printable(ph->widest_through)},
                  {"assumption", ph->assumption}};
  }
  return json;
}

Json pectin_json(const std::vector<PectinGroup>& groups) {
  Json json = Json::array();
  for (const PectinGroup& group : groups) {
    json.push_back({{"group", group.name},
                    {"share", number_json(group.share)},
                    {"fruit", texts_json(group.fruit)}});
  }
  return json;
}

}  // namespace

void add_batch_json(const language::Program& program, const plan::Plan& plan, Json& json) {
  const plan::Draft& draft = plan.verified.draft();
  if (const auto cost = cost_of(program, plan)) json["cost"] = cost_json(*cost);
  if (const auto found = pungency_of(program, plan)) {
    json["pungency"] = {{"scoville_heat_units",
                         {{"low", rounded(found->finished.low.in_unit())},
                          {"high", rounded(found->finished.high.in_unit())}}},
                        {"by", texts_json(found->pods)}};
  }
  if (plan::is_boiled_to_a_set(program[draft.task.framework].method)) {
    json["pectin"] = pectin_json(pectin_groups(program, draft));
  }
  json["keeping"] = keeping_json(program, plan.verified);
}

}  // namespace maslin::report
