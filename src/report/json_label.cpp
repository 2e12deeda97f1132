// SPDX-License-Identifier: Apache-2.0
#include "report/json_label.hpp"

#include <nlohmann/json.hpp>

#include "diagnostic/render.hpp"
#include "report/json.hpp"

namespace maslin::report {
namespace {

using Json = nlohmann::ordered_json;

Json ingredients_json(const label::Label& label) {
  Json json = Json::array();
  for (const label::Phrase& phrase : label.ingredients) {
    std::string text;
    std::vector<std::string> emphasised;
    for (const label::Words& words : phrase) {
      text += words.text;
      if (words.emphasised) emphasised.push_back(words.text);
    }
    json.push_back({{"text", printable(text)}, {"emphasised", texts_json(emphasised)}});
  }
  return json;
}

Json jars_json(const label::Lots& lots) {
  Json json = Json::array();
  for (const label::JarContents& jar : lots.jars) {
    Json each = {{"holds_ml", number_json(jar.holds.in_base())}, {"count", jar.count}};
    if (jar.net) each["net_g"] = number_json(jar.net->in_base());
    json.push_back(std::move(each));
  }
  return json;
}

Json lots_json(const label::Label& label) {
  Json json = Json::array();
  for (const label::Lots& lots : label.lots) {
    for (long boil = lots.first; boil <= lots.last; ++boil) {
      json.push_back(
          {{"mark", printable(label::lot_mark(label, boil))}, {"jars", jars_json(lots)}});
    }
  }
  return json;
}

Json nutrition_json(const label::Label& label) {
  Json json = Json::array();
  for (const label::NutritionRow& row : label.nutrition) {
    Json each = {{"what", row.what}};
    if (row.amount) each["per_100_g"] = *row.amount;
    json.push_back(std::move(each));
  }
  return json;
}

Json card_json(const label::Label& label) {
  Json json = Json::array();
  for (const label::CardRow& row : label.card) {
    json.push_back({{"allergen", printable(row.allergen)}, {"in", texts_json(row.in)}});
  }
  return json;
}

Json record_json(const label::Recorded& record) {
  return {{"batch", printable(record.batch)},
          {"boil", record.boil},
          {"from_plan", texts_json(record.from_plan)}};
}

Json label_json(const label::Label& label) {
  Json json = Json::object();
  if (label.record) json["record"] = record_json(*label.record);
  if (label.law != nullptr) json["law"] = label.law->name;
  if (label.law_as_of) json["law_as_of"] = text_of(*label.law_as_of);
  if (label.name) json["name"] = printable(*label.name);
  json["ingredients"] = ingredients_json(label);
  json["quantities"] = texts_json(label.quantities);
  json["lots"] = lots_json(label);
  json["nutrition"] = nutrition_json(label);
  json["allergen_card"] = card_json(label);
  json["allergens_not_stated"] = texts_json(label.not_stated);
  if (label.best_within) json["best_within_s"] = number_json(label.best_within->in_base());
  Json blanks = Json::array();
  for (const label::Blank& each : label.blanks) {
    blanks.push_back({{"what", printable(each.what)}, {"why", printable(each.why)}});
  }
  json["blanks"] = std::move(blanks);
  json["notes"] = texts_json(label.notes);
  return json;
}

}  // namespace

Json labels_json(const std::vector<label::Label>& labels) {
  Json json = Json::array();
  for (const label::Label& label : labels) json.push_back(label_json(label));
  return json;
}

}  // namespace maslin::report
