// SPDX-License-Identifier: Apache-2.0
#include "report/json_blend.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "diagnostic/json.hpp"
#include "diagnostic/render.hpp"
#include "report/json.hpp"

namespace maslin::report {
namespace {

using Json = nlohmann::ordered_json;
using blend::Blend;
using blend::Role;

std::string_view role_name(Role role) {
  switch (role) {
    case Role::produce:
      return "produce";
    case Role::addition:
      return "addition";
    case Role::substitute:
      return "substitute";
    case Role::credit:
      return "credit";
    case Role::evaporated:
      return "evaporated";
    case Role::total:
      return "total";
    case Role::deviation:
      break;
  }
  return "deviation";
}

class BlendWriter {
 public:
  BlendWriter(const Sources& sources, const blend::Grounding& grounding,
              const blend::Setting& setting, const Blend& blend)
      : sources_(sources), given_(grounding), setting_(setting), blend_(blend) {}

  Json run(const plan::Task& task) const {
    Json json = {{"task", task_json(sources_, given_.program, task)},
                 {"margin_kg", setting_.margin},
                 {"credits_at_cap", at_cap()}};
    json["supplies"] = Json::array();
    for (const blend::Supply& supply : blend_.supplies) {
      json["supplies"].push_back(supply_json(supply));
    }
    json["statements"] = Json::array();
    for (const blend::StatementInfo& info : blend_.statements) {
      json["statements"].push_back({{"kind", statement_name(info.kind)},
                                    {"text", text_at(sources_, info.span)},
                                    {"place", place_json(sources_, info.span)}});
    }
    json["columns"] = columns();
    json["rows"] = rows();
    json["objectives"] = Json::array();
    for (const blend::Objective& objective : blend_.program.objectives) {
      const bool most = objective.direction == blend::Direction::maximise;
      json["objectives"].push_back({{"name", printable(objective.name)},
                                    {"direction", most ? "most" : "least"},
                                    {"terms", terms_json(objective.terms)}});
    }
    return json;
  }

 private:
  // For each `full` substitution, whether this programme has its credit at the cap.
  Json at_cap() const {
    Json json = Json::array();
    for (std::size_t i = 0; i < blend_.full_substitutions; ++i) {
      json.push_back(i < setting_.at_cap.size() && setting_.at_cap[i]);
    }
    return json;
  }

  Json supply_json(const blend::Supply& supply) const {
    Json json = {{"ingredient", printable(given_.program[supply.ingredient].name)},
                 {"origin", origin_name(supply.origin)}};
    if (supply.available) json["available_g"] = number_json(*supply.available);
    if (supply.acidity) json["acidity_g_per_100_ml"] = acidity_json(*supply.acidity);
    json["use_first"] = supply.use_first;
    json["sulphited"] = supply.sulphited;
    if (supply.price) json["price_per_kg"] = number_json(*supply.price * 1000);
    json["lines"] = Json::array();
    for (const blend::LineReference reference : supply.lines) {
      const auto& lines = reference.in_store ? given_.kitchen->store : given_.basket.lines;
      json["lines"].push_back(place_json(sources_, lines[reference.index].span));
    }
    return json;
  }

  std::string slot_of(const blend::ColumnInfo& info) const {
    const language::Framework& framework = given_.framework;
    switch (info.role) {
      case Role::produce:
        return framework.shares[info.slot].target.name;
      case Role::addition:
        return framework.additions[info.slot].target.name;
      case Role::substitute:
      case Role::credit:
        return framework.substitutions[info.slot].donor.name + " for " +
               framework.substitutions[info.slot].replaced.name;
      default:
        return {};
    }
  }

  static void add_bounds(Json& json, double lower, double upper) {
    if (std::isfinite(lower)) json["lower"] = lower;
    if (std::isfinite(upper)) json["upper"] = upper;
  }

  Json columns() const {
    Json json = Json::array();
    for (std::size_t i = 0; i < blend_.columns.size(); ++i) {
      const blend::ColumnInfo& info = blend_.columns[i];
      const blend::Column& column = blend_.program.columns[i];
      Json each = {{"name", printable(column.name)}, {"role", role_name(info.role)}};
      const std::string slot = slot_of(info);
      if (!slot.empty()) each["slot"] = printable(slot);
      const bool supplied = info.role == Role::produce || info.role == Role::addition ||
                            info.role == Role::substitute;
      if (supplied) each["supply"] = info.supply;
      add_bounds(each, column.lower, column.upper);
      json.push_back(std::move(each));
    }
    return json;
  }

  Json rows() const {
    Json json = Json::array();
    for (const blend::Row& row : blend_.program.rows) {
      Json each = {{"name", printable(row.name)}};
      add_bounds(each, row.lower, row.upper);
      each["terms"] = terms_json(row.terms);
      if (row.statement != blend::background) each["statement"] = row.statement;
      json.push_back(std::move(each));
    }
    return json;
  }

  static Json terms_json(const std::vector<blend::Term>& terms) {
    Json json = Json::array();
    for (const blend::Term& term : terms) {
      // There is a negative nought in binary, and none in writing.
      json.push_back({{"column", term.column}, {"coefficient", term.coefficient + 0.0}});
    }
    return json;
  }

  const Sources& sources_;
  const blend::Grounding& given_;
  const blend::Setting& setting_;
  const Blend& blend_;
};

}  // namespace

Json blend_json(const Sources& sources, const plan::Task& task, const blend::Grounding& grounding,
                const blend::Setting& setting, const Blend& blend) {
  return BlendWriter(sources, grounding, setting, blend).run(task);
}

}  // namespace maslin::report
