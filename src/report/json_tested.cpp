// SPDX-License-Identifier: Apache-2.0
#include "report/json_tested.hpp"

#include <nlohmann/json.hpp>

#include "diagnostic/json.hpp"
#include "diagnostic/render.hpp"
#include "report/json.hpp"

namespace maslin::report {
namespace {

using Json = nlohmann::ordered_json;

Json process_json(const language::Program& program, const plan::Tested& tested) {
  const language::Route& route = program[tested.claim->route];
  Json json = {{"route", printable(route.name)}, {"product", printable(tested.claim->product)}};
  Json times = Json::array();
  for (const plan::ProcessTime& each : tested.times) {
    Json one = {{"jars_up_to_ml", number_json(each.row->largest_jar.in_base())},
                {"minutes", number_json(each.time.in_base() / Rational(60))}};
    if (!each.row->source.empty()) one["source"] = printable(each.row->source);
    times.push_back(std::move(one));
  }
  json["times"] = std::move(times);
  return json;
}

}  // namespace

Json tested_json(const Sources& sources, const language::Program& program,
                 language::FrameworkId framework, const plan::Tested& tested) {
  Json json = {{"as_tested", tested.holds()}};
  const std::string& source = program[framework].status_source;
  if (program[framework].status == language::Status::tested && !source.empty()) {
    json["source"] = printable(source);
  }
  Json lapses = Json::array();
  for (const auto* list : {&tested.of_the_mix, &tested.of_the_kitchen}) {
    for (const language::Lapse& lapse : *list) {
      lapses.push_back(
          {{"because", printable(lapse.because)}, {"place", place_json(sources, lapse.span)}});
    }
  }
  json["lapses"] = std::move(lapses);
  if (tested.claim != nullptr) json["process"] = process_json(program, tested);
  Json left_out = Json::array();
  for (const language::JarStock& jar : tested.left_out) {
    left_out.push_back(number_json(jar.holds.in_base()));
  }
  if (!left_out.empty()) json["jars_left_out_ml"] = std::move(left_out);
  return json;
}

}  // namespace maslin::report
