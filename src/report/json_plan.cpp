// SPDX-License-Identifier: Apache-2.0
#include "report/json_plan.hpp"

#include <fmt/format.h>

#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "diagnostic/json.hpp"
#include "diagnostic/render.hpp"
#include "language/amounts.hpp"
#include "language/membership.hpp"
#include "report/cautions.hpp"
#include "report/draw.hpp"
#include "report/json.hpp"
#include "report/json_batch.hpp"
#include "report/json_method.hpp"
#include "report/purchase.hpp"

namespace maslin::report {
namespace {

using Json = nlohmann::ordered_json;
using language::Framework;
using language::IngredientId;
using language::Measured;
using plan::Taken;

std::string_view suffix_of(Measured measured) {
  switch (measured) {
    case Measured::by_weight:
      return "_g";
    case Measured::by_volume:
      return "_ml";
    case Measured::by_count:
      break;
  }
  return "_pieces";
}

std::string key(std::string_view name, std::string_view suffix) {
  return std::string(name) + std::string(suffix);
}

std::string_view basis_name(language::WeighedAs basis) {
  switch (basis) {
    case language::WeighedAs::gross:
      return "gross";
    case language::WeighedAs::drained:
      return "drained";
    case language::WeighedAs::prepared:
      break;
  }
  return "prepared";
}

class PlanWriter {
 public:
  PlanWriter(const Sources& sources, const language::Program& program, const plan::Plan& plan)
      : sources_(sources),
        program_(program),
        plan_(plan),
        verified_(plan.verified),
        draft_(plan.verified.draft()),
        framework_(program[draft_.task.framework]),
        kitchen_(draft_.task.kitchen.valid() ? &program[draft_.task.kitchen] : nullptr),
        tools_(plan::tools_of(program, draft_.task.kitchen)),
        drawer_(program, program[draft_.task.basket], kitchen_) {}

  Json run() {
    Json json = {{"task", task_json(sources_, program_, draft_.task)}, {"totals", totals()}};
    json["produce"] = produce();
    json["additions"] = additions();
    json["substitutes"] = substitutes();
    json["accounts"] = accounts();
    json["shares"] = shares();
    json["per_kilogram"] = per_kilogram();
    json["limits"] = limits();
    json["leftovers"] = leftovers();
    if (!plan_.use_up.empty()) json["use_up"] = printable(plan_.use_up);
    json["to_get"] = to_get();
    add_batch_json(program_, plan_, json);
    json["assumptions"] = assumptions();
    json["not_computed"] = not_computed();
    json["cautions"] = texts_json(cautions_for(program_, draft_));
    json["limiting"] = limiting();
    add_method_json(sources_, program_, plan_, json);
    return json;
  }

 private:
  std::string name(IngredientId id) const { return printable(program_[id].name); }
  Json place(Span span) const { return place_json(sources_, span); }
  std::string text(Span span) const { return text_at(sources_, span); }

  Json totals() const {
    Json json = {{"prepared_g", number_json(verified_.prepared_total().in_base())},
                 {"ingoing_g", number_json(verified_.ingoing().in_base())}};
    if (const auto finished = verified_.finished()) {
      json["finished_g"] = number_json(finished->in_base());
    }
    if (const auto window = verified_.window()) {
      json["window_g"] = {{"low", number_json(window->least.in_base().ceil_to(1))},
                          {"high", number_json(window->most.in_base().floor_to(1))}};
    }
    return json;
  }

  Json taken_json(const Taken& taken, const std::string& slot) const {
    Json json = {{"ingredient", name(taken.ingredient)},
                 {"slot", printable(slot)},
                 {"origin", origin_name(taken.origin)},
                 {"weight_g", number_json(taken.weight)}};
    if (taken.acidity) json["acidity_g_per_100_ml"] = acidity_json(*taken.acidity);
    return json;
  }

  // ---- What is weighed --------------------------------------------------------------------------

  Json produce() {
    Json json = Json::array();
    for (std::size_t i = 0; i < framework_.shares.size(); ++i) {
      for (const Taken& taken : draft_.produce) {
        if (taken.slot != i) continue;
        Json each = taken_json(taken, framework_.shares[i].target.name);
        each["use_first"] = taken.use_first;
        each["draws"] = draws(taken);
        json.push_back(std::move(each));
      }
    }
    return json;
  }

  Json draws(const Taken& taken) {
    Json json = Json::array();
    for (const Drawn& drawn : drawer_.draw(taken)) {
      const language::Line& line = *drawn.line;
      const bool gross = line.basis == language::WeighedAs::gross;
      Json each = {{"place", place(line.span)},
                   {"basis", basis_name(line.basis)},
                   {"prepared_g", number_json(drawn.prepared)}};
      if (gross) each["gross_g"] = number_json(drawn.gross.round_to(tools_.scale_step));
      if (!line.from.empty()) each["from"] = printable(line.from);
      if (gross && !line.trim && program_[line.ingredient].edible) trims_.insert(line.ingredient);
      if (!line.estimate.empty()) estimates_.insert(line.estimate);
      json.push_back(std::move(each));
    }
    return json;
  }

  // Rows of one slot follow one another, in the order of the framework.
  Json additions() {
    Json json = Json::array();
    for (std::size_t i = 0; i < framework_.additions.size(); ++i) {
      for (const Taken& taken : draft_.additions) {
        if (taken.slot == i) json.push_back(measured(taken, framework_.additions[i].target.name));
      }
    }
    return json;
  }

  Json substitutes() {
    Json json = Json::array();
    for (const Taken& taken : draft_.substitutes) {
      const auto& substitution = framework_.substitutions[taken.slot];
      Json each = measured(taken, substitution.donor.name);
      each["stands_for"] = printable(substitution.replaced.name);
      json.push_back(std::move(each));
    }
    return json;
  }

  Json measured(const Taken& taken, const std::string& slot) {
    const language::Ingredient& ingredient = program_[taken.ingredient];
    Json json = taken_json(taken, slot);
    switch (taken.tool) {
      case plan::Tool::scales:
        json["tool"] = "scales";
        json["amount_g"] = number_json(taken.amount);
        break;
      case plan::Tool::spoons:
        json["tool"] = "spoons";
        json["amount_ml"] = number_json(taken.amount);
        estimates_.insert(fmt::format("a millilitre of {} taken as {} g", ingredient.name,
                                      middle(ingredient.density->value).to_decimal(3)));
        break;
      case plan::Tool::count:
        json["tool"] = "count";
        json["amount_pieces"] = number_json(taken.amount);
        estimates_.insert(fmt::format("one {} taken as {} g", ingredient.name,
                                      middle(ingredient.piece->value).to_decimal(2)));
        break;
    }
    json["within_five_percent"] = taken.within_five_percent;
    return json;
  }

  // ---- What comes of it -------------------------------------------------------------------------

  Json accounts() const {
    Json json = Json::array();
    for (const plan::Account& account : verified_.accounts()) {
      const auto& substitution = framework_.substitutions[account.substitution];
      const auto suffix = suffix_of(framework_.additions[substitution.addition].measured);
      Json each = {{"of", printable(substitution.replaced.name)},
                   {"donor", printable(substitution.donor.name)},
                   {"by", language::name_of(substitution.by)}};
      each[key("wanted", suffix)] = number_json(account.wanted);
      each[key("brought", suffix)] = range_json(account.brought);
      each[key("brought_expected", suffix)] = number_json(account.brought_expected);
      each[key("counted", suffix)] = number_json(account.counted);
      each[key("to_add", suffix)] = number_json(account.to_add);
      if (substitution.cap) each["most_share"] = number_json(*substitution.cap);
      each["place"] = place(substitution.span);
      json.push_back(std::move(each));
    }
    return json;
  }

  Json shares() const {
    Json json = Json::array();
    for (std::size_t i = 0; i < framework_.shares.size(); ++i) {
      const language::ProduceShare& share = framework_.shares[i];
      Json each = {{"slot", printable(share.target.name)},
                   {"share", number_json(verified_.shares()[i])},
                   {"allowed_share", range_json(share.range)}};
      if (share.prefer) each["preferred_share"] = number_json(*share.prefer);
      if (share.cut) each["cut"] = printable(share.cut->text);
      each["place"] = place(share.span);
      json.push_back(std::move(each));
    }
    return json;
  }

  Json per_kilogram() const {
    Json json = Json::array();
    for (std::size_t i = 0; i < framework_.additions.size(); ++i) {
      const language::Addition& addition = framework_.additions[i];
      const auto suffix = suffix_of(addition.measured);
      Json each = {{"slot", printable(addition.target.name)}};
      each[key("reached", suffix)] = number_json(verified_.additions()[i]);
      each[key("allowed", suffix)] = range_json(addition.range);
      if (addition.prefer) each[key("preferred", suffix)] = number_json(*addition.prefer);
      if (addition.strength) each["acidity_g_per_100_ml"] = acidity_json(*addition.strength);
      each["place"] = place(addition.span);
      json.push_back(std::move(each));
    }
    return json;
  }

  Json limits() const {
    Json json = Json::array();
    for (const plan::LimitValue& value : verified_.limits()) {
      const language::Limit& limit = framework_.limits[value.limit];
      const std::string of =
          limit.property ? std::string(language::name_of(*limit.property)) : limit.share_of.name;
      Json allowed = Json::object();
      Json margin = Json::object();
      if (limit.has_low) {
        allowed["low"] = number_json(limit.range.low);
        margin["low"] = number_json(value.margin.low);
      }
      if (limit.has_high) {
        allowed["high"] = number_json(limit.range.high);
        margin["high"] = number_json(value.margin.high);
      }
      json.push_back(
          {{"limit", printable(of)},
           {"of", language::is_of_finished(limit)                     ? "finished product"
                  : limit.whole == language::Whole::produce_and_water ? "vegetables and water"
                                                                      : "prepared produce"},
           {"share", range_json(value.value)},
           {"allowed_share", std::move(allowed)},
           {"margin_share", std::move(margin)},
           {"place", place(limit.span)}});
    }
    return json;
  }

  Json leftovers() const {
    Json json = Json::array();
    for (const plan::Leftover& left : verified_.leftovers()) {
      json.push_back({{"ingredient", name(left.ingredient)},
                      {"prepared_g", number_json(left.left.in_base())}});
    }
    return json;
  }

  Json to_get() const {
    Json json = Json::array();
    for (const Purchase& purchase : purchases_of(program_, plan_)) {
      json.push_back(bought_json(purchase));
    }
    return json;
  }

  Json bought_json(const Purchase& purchase) const {
    const auto origin = purchase.listed ? language::Origin::to_buy : language::Origin::to_have;
    Json json = {{"ingredient", name(purchase.ingredient)},
                 {"origin", origin_name(origin)},
                 {"basis", purchase.gross ? "gross" : "prepared"},
                 {"weight_g", number_json(purchase.weight)}};
    if (purchase.acidity) json["acidity_g_per_100_ml"] = acidity_json(*purchase.acidity);
    if (purchase.pack) json["pack_g"] = number_json(*purchase.pack);
    if (purchase.packs) json["packs"] = number_json(*purchase.packs);
    if (purchase.cost) json["cost"] = number_json(*purchase.cost);
    return json;
  }

  // ---- What was assumed, and what was not done --------------------------------------------------

  Json assumptions() const {
    Json json = Json::array();
    for (const IngredientId id : trims_) {
      const language::Figure& edible = *program_[id].edible;
      json.push_back({{"kind", "edible share"},
                      {"ingredient", name(id)},
                      {"share", number_json(middle(edible.value))},
                      {"published_share", range_json(edible.value)},
                      {"sources", edible.origin.empty() ? texts_json(program_[id].sources)
                                                        : texts_json({edible.origin})}});
    }
    for (const std::string& estimate : estimates_) {
      json.push_back({{"kind", "estimate"}, {"text", printable(estimate)}});
    }
    if (tools_.assumed) {
      json.push_back({{"kind", "scales"}, {"step_g", number_json(tools_.scale_step)}});
    }
    std::map<std::string, IngredientId> used;
    for (const auto* list : {&draft_.produce, &draft_.additions, &draft_.substitutes}) {
      for (const Taken& taken : *list) used.emplace(name(taken.ingredient), taken.ingredient);
    }
    for (const auto& [ingredient, id] : used) {
      json.push_back({{"kind", "composition"},
                      {"ingredient", ingredient},
                      {"sources", texts_json(program_[id].sources)}});
    }
    return json;
  }

  Json not_computed() const {
    Json json = Json::array();
    for (const language::Limit& limit : framework_.limits) {
      if (is_computed(limit)) continue;
      json.push_back(
          {{"what", printable("the limit " + text(limit.span))}, {"place", place(limit.span)}});
    }
    return json;
  }

  Json limiting() const {
    Json json = Json::array();
    for (const plan::Limiting& each : plan_.limiting) {
      Json one = {{"kind", statement_name(each.statement.kind)}};
      if (each.ingredient) one["ingredient"] = name(*each.ingredient);
      one["text"] = text(each.statement.span);
      one["place"] = place(each.statement.span);
      json.push_back(std::move(one));
    }
    return json;
  }

  const Sources& sources_;
  const language::Program& program_;
  const plan::Plan& plan_;
  const plan::VerifiedPlan& verified_;
  const plan::Draft& draft_;
  const Framework& framework_;
  const language::Kitchen* kitchen_;
  plan::Tools tools_;
  Drawer drawer_;
  std::set<IngredientId> trims_;
  std::set<std::string> estimates_;
};

}  // namespace

Json plan_json(const Sources& sources, const language::Program& program, const plan::Plan& plan) {
  return PlanWriter(sources, program, plan).run();
}

}  // namespace maslin::report
