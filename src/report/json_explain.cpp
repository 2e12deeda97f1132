// SPDX-License-Identifier: Apache-2.0
#include "report/json_explain.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "diagnostic/json.hpp"
#include "diagnostic/render.hpp"
#include "language/membership.hpp"
#include "report/documentation.hpp"
#include "report/json.hpp"
#include "report/keeping.hpp"

namespace maslin::report {
namespace {

using Json = nlohmann::ordered_json;
using language::Figure;
using language::Ingredient;
using language::IngredientId;
using language::Program;

std::string_view raw_name(language::RawHazard raw) {
  switch (raw) {
    case language::RawHazard::unpleasant:
      return "unpleasant";
    case language::RawHazard::unsafe:
      return "unsafe";
    case language::RawHazard::none_known:
      break;
  }
  return "none known";
}

class Describer {
 public:
  Describer(const Sources& sources, const Program& program)
      : sources_(sources), program_(program) {}

  Json operator()(IngredientId id) const { return ingredient(id); }
  Json operator()(language::ClassId id) const { return of_class(id); }
  Json operator()(language::FrameworkId id) const { return framework(program_[id]); }
  Json operator()(language::RouteId id) const { return route(program_[id]); }
  Json operator()(const language::Standard* found) const { return standard(*found); }
  Json operator()(const Term* found) const { return term(*found); }
  Json operator()(language::UnitId id) const { return unit(program_[id]); }
  Json operator()(Code code) const {
    const bool error = severity_of(code) == Severity::error;
    return {{"severity", error ? "error" : "warning"}, {"summary", summary_of(code)}};
  }

 private:
  Json ingredient(IngredientId id) const {
    const Ingredient& found = program_[id];
    Json json = {{"name", printable(found.name)},
                 {"place", place_json(sources_, found.span)},
                 {"also", texts_json(found.also)},
                 {"classes", classes_of(id)}};
    add_figure(json, "ph", found.ph);
    add_figure(json, "edible_share", found.edible);
    add_figure(json, "density_g_per_ml", found.density);
    add_figure(json, "piece_g", found.piece);
    add_figure(json, "soluble_solids_share", found.soluble_solids);
    add_figure(json, "total_solids_share", found.total_solids);
    add_figure(json, "ash_alkalinity_mol_per_kg", found.ash_alkalinity);
    add_figure(json, "pungency_of_dry_matter_shu", found.pungency);
    json["composition_g_per_100_g"] = composition(found);
    json["raw"] = raw_name(found.raw);
    if (found.boil_first.is_positive()) {
      json["boil_first_s"] = number_json(found.boil_first.in_base());
    }
    if (!found.raw_reason.empty()) json["raw_reason"] = printable(found.raw_reason);
    if (found.allergens_stated) json["allergens"] = allergens(found);
    if (found.compound) json["made_of"] = texts_json(found.made_of);
    json["notes"] = texts_json(found.notes);
    json["sources"] = texts_json(found.sources);
    return json;
  }

  Json of_class(language::ClassId id) const {
    const language::Class& found = program_[id];
    std::vector<std::string> parents;
    for (const auto parent : found.parents) parents.push_back(program_[parent].name);
    std::vector<std::string> where;
    for (const auto& condition : found.conditions) {
      where.emplace_back(sources_.text(condition.span));
    }
    std::vector<std::string> members;
    for (std::size_t i = 0; i < program_.ingredients.size(); ++i) {
      if (is_member(program_, IngredientId(i), id)) members.push_back(program_.ingredients[i].name);
    }
    std::sort(members.begin(), members.end());
    Json json = {{"name", printable(found.name)},  {"place", place_json(sources_, found.span)},
                 {"also", texts_json(found.also)}, {"is", texts_json(parents)},
                 {"where", texts_json(where)},     {"members", texts_json(members)}};
    if (found.usually.valid()) json["usually"] = printable(program_[found.usually].name);
    return json;
  }

  Json framework(const language::Framework& found) const {
    std::vector<std::string> shares;
    for (const auto& share : found.shares) shares.push_back(text_at(sources_, share.span));
    std::vector<std::string> additions;
    for (const auto& addition : found.additions) {
      additions.push_back(text_at(sources_, addition.span));
    }
    std::vector<std::string> substitutions;
    for (const auto& each : found.substitutions) {
      substitutions.push_back(text_at(sources_, each.span));
    }
    std::vector<std::string> limits;
    for (const auto& limit : found.limits) limits.push_back(text_at(sources_, limit.span));
    return {{"name", printable(found.name)},
            {"title", printable(found.title)},
            {"place", place_json(sources_, found.span)},
            {"documentation", printable(documentation_text(sources_, found.span))},
            {"shares", texts_json(shares)},
            {"additions", texts_json(additions)},
            {"substitutions", texts_json(substitutions)},
            {"limits", texts_json(limits)},
            {"notes", texts_json(found.notes)},
            {"sources", texts_json(found.sources)}};
  }

  // Where its rules hold, and since when.
  void add_place(Json& json, const std::string& place, const std::optional<Date>& as_of) const {
    if (!place.empty()) json["rules_of"] = printable(place);
    if (as_of) json["as_of"] = text_of(*as_of);
  }

  Json limits(const std::vector<language::Limit>& limits) const {
    std::vector<std::string> texts;
    for (const language::Limit& limit : limits) texts.push_back(text_at(sources_, limit.span));
    return texts_json(texts);
  }

  static Json process(const language::Process& row) {
    Json json = {{"product", printable(row.product)},
                 {"jars_up_to_ml", number_json(row.largest_jar.in_base())},
                 {"bands", Json::array()}};
    for (const language::Process::Step& step : row.steps) {
      Json band = {{"minutes", number_json(step.time.in_base() / Rational(60))}};
      if (step.up_to) band["up_to_m"] = number_json(step.up_to->in_base() / Rational(1000));
      json["bands"].push_back(std::move(band));
    }
    if (!row.source.empty()) json["source"] = printable(row.source);
    return json;
  }

  Json recipe(const language::Recipe& found) const {
    Json json = {{"product", printable(found.product)},
                 {"produce", Json::array()},
                 {"per_kilogram", Json::array()}};
    for (const auto& share : found.shares) {
      json["produce"].push_back(text_at(sources_, share.span));
    }
    for (const auto& addition : found.additions) {
      json["per_kilogram"].push_back(text_at(sources_, addition.span));
    }
    if (found.headspace) json["headspace_mm"] = number_json(found.headspace->in_base());
    json["notes"] = texts_json(found.notes);
    json["sources"] = texts_json(found.sources);
    return json;
  }

  Json route(const language::Route& found) const {
    Json json = {{"name", printable(found.name)},
                 {"place", place_json(sources_, found.span)},
                 {"documentation", printable(documentation_text(sources_, found.span))}};
    add_place(json, found.place, found.as_of);
    json["floors"] = limits(found.floors);
    if (found.liquor) json["liquor_acidity_g_per_ml"] = number_json(found.liquor->acidity);
    if (found.headspace) {
      json["headspace_mm"] = {{"low", number_json(found.headspace->range.low.in_base())},
                              {"high", number_json(found.headspace->range.high.in_base())}};
    }
    std::vector<std::string> readings;
    for (const language::ToRead& each : found.readings) readings.push_back(reading_text(each));
    json["readings"] = texts_json(readings);
    json["refusals"] = Json::array();
    for (const language::Refusal& refusal : found.refusals) {
      std::vector<std::string> names;
      for (const language::Target& target : refusal.targets) names.push_back(target.name);
      json["refusals"].push_back(
          {{"names", texts_json(names)}, {"because", printable(refusal.because)}});
    }
    json["processes"] = Json::array();
    for (const language::Process& row : found.processes) json["processes"].push_back(process(row));
    json["recipes"] = Json::array();
    for (const language::Recipe& each : found.recipes) json["recipes"].push_back(recipe(each));
    json["notes"] = texts_json(found.notes);
    json["sources"] = texts_json(found.sources);
    return json;
  }

  Json standard(const language::Standard& found) const {
    Json json = {{"name", printable(found.name)},
                 {"place", place_json(sources_, found.span)},
                 {"documentation", printable(documentation_text(sources_, found.span))}};
    add_place(json, found.place, found.as_of);
    if (!found.reserved_name.empty()) json["reserves"] = printable(found.reserved_name);
    json["asks"] = limits(found.limits);
    json["notes"] = texts_json(found.notes);
    json["sources"] = texts_json(found.sources);
    return json;
  }

  static Json term(const Term& found) {
    Json parts = Json::array();
    for (const TermPart& part : found.parts) {
      parts.push_back({{"head", part.head}, {"text", part.text}});
    }
    return {{"name", found.name}, {"also", texts_json(found.also)}, {"parts", std::move(parts)}};
  }

  Json unit(const language::Unit& found) const {
    Json json = {{"name", printable(found.name)}, {"place", place_json(sources_, found.span)}};
    if (!found.could_be.empty()) {
      std::vector<std::string> could_be;
      for (const auto id : found.could_be) could_be.push_back(program_[id].name);
      json["could_be"] = texts_json(could_be);
      return json;
    }
    constexpr std::string_view bases[] = {"g", "ml", "s", "°C", "mm", "W"};
    std::string_view base = "1";
    for (std::size_t i = 0; i < std::size(bases); ++i) {
      if (found.dimension.powers[i] == 1) base = bases[i];
    }
    // Longer than nine places would hold: the US teaspoon has eleven.
    json["factor"] = found.factor.to_double();
    json["of"] = base;
    return json;
  }

  static void add_figure(Json& json, const char* name, const std::optional<Figure>& figure) {
    if (!figure) return;
    json[name] = range_json(figure->value);
    if (!figure->origin.empty()) json[name]["source"] = printable(figure->origin);
  }

  static Json allergens(const Ingredient& found) {
    std::vector<std::string> names;
    for (const std::string& each : found.allergens) {
      if (!each.empty()) names.push_back(each);
    }
    return texts_json(names);
  }

  static Json composition(const Ingredient& found) {
    Json json = Json::object();
    for (std::size_t i = 0; i < science::substance_count; ++i) {
      const auto substance = static_cast<science::Substance>(i);
      const auto& share = found.composition[substance];
      if (!share) continue;
      json[std::string(science::name_of(substance))] =
          range_json({share->low * 100, share->high * 100});
    }
    return json;
  }

  Json classes_of(IngredientId id) const {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < program_.classes.size(); ++i) {
      if (is_member(program_, id, language::ClassId(i))) names.push_back(program_.classes[i].name);
    }
    return texts_json(names);
  }

  const Sources& sources_;
  const Program& program_;
};

std::string lines_of(const std::string& text) {
  std::string result;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    result += printable(std::string_view(text).substr(at, end - at)) + '\n';
    at = end + 1;
  }
  return result;
}

}  // namespace

Json explain_json(const Sources& sources, const Program& program, const std::string& name,
                  const Explanation& explanation) {
  Json json = {{"name", printable(language::normal_name(name))},
               {"found", explanation.found},
               {"text", lines_of(explanation.text)},
               {"things", Json::array()}};
  const Describer describe(sources, program);
  for (const Explained& each : explanation.things) {
    const std::string kind(kind_of(each.meaning));
    Json values = std::visit(describe, each.meaning);
    json["things"].push_back({{"kind", kind}, {"text", lines_of(each.text)}, {kind, values}});
    if (!json.contains(kind)) json[kind] = std::move(values);
  }
  return json;
}

}  // namespace maslin::report
