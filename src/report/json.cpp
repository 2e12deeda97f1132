// SPDX-License-Identifier: Apache-2.0
#include "report/json.hpp"

#include <charconv>
#include <cmath>
#include <nlohmann/json.hpp>

#include "diagnostic/json.hpp"
#include "diagnostic/render.hpp"

namespace maslin::report {
namespace {

using Json = nlohmann::ordered_json;
using language::Framework;

constexpr int places = 9;

std::string_view status_name(language::Status status) {
  switch (status) {
    case language::Status::own:
      return "own";
    case language::Status::traditional:
      return "traditional";
    case language::Status::tested:
      return "tested";
    case language::Status::not_stated:
      break;
  }
  return "not stated";
}

Json framework_json(const Sources& sources, const Framework& framework) {
  Json json = {{"name", printable(framework.name)}, {"title", printable(framework.title)}};
  if (framework.version.is_positive()) json["version"] = number_json(framework.version);
  // Ranges, swaps or another kitchen are not what was tested.
  const bool after_tested = framework.status == language::Status::tested;
  json["status"] = status_name(after_tested ? language::Status::own : framework.status);
  if (!framework.status_source.empty()) {
    json[after_tested ? "after" : "status_source"] = printable(framework.status_source);
  }
  json["place"] = place_json(sources, framework.span);
  return json;
}

template <class Named>
Json named_json(const Sources& sources, const Named& named) {
  return {{"name", printable(named.name)}, {"place", place_json(sources, named.span)}};
}

Json aim_json(const plan::Aim& aim) {
  switch (aim.kind) {
    case plan::AimKind::prepared:
      return {{"kind", "prepared"}, {"weight_g", number_json(aim.weight)}};
    case plan::AimKind::finished:
      return {{"kind", "finished"}, {"weight_g", number_json(aim.weight)}};
    case plan::AimKind::most:
      break;
  }
  return {{"kind", "most"}};
}

}  // namespace

Json number_json(const Rational& value) {
  double number = value.to_double();
  // Beyond nine places, or where they would not fit, the nearest binary fraction serves.
  const std::string text = value.to_decimal(places);
  if (text != "?") std::from_chars(text.data(), text.data() + text.size(), number);
  constexpr double largest_whole = 9e15;
  if (std::abs(number) < largest_whole && number == std::floor(number)) {
    return static_cast<std::int64_t>(number);
  }
  return number;
}

Json texts_json(const std::vector<std::string>& texts) {
  Json json = Json::array();
  for (const std::string& text : texts) json.push_back(printable(text));
  return json;
}

Json range_json(const Bounds& bounds) {
  return {{"low", number_json(bounds.low)}, {"high", number_json(bounds.high)}};
}

Json acidity_json(const Rational& grams_per_millilitre) {
  return number_json(grams_per_millilitre * 100);
}

std::string text_at(const Sources& sources, Span span) {
  std::string text;
  for (const char c : sources.text(span)) {
    const bool blank = c == ' ' || c == '\t' || c == '\r' || c == '\n';
    if (!blank) text += c;
    if (blank && !text.empty() && text.back() != ' ') text += ' ';
  }
  return printable(text);
}

std::string_view origin_name(language::Origin origin) {
  switch (origin) {
    case language::Origin::basket:
      return "basket";
    case language::Origin::store:
      return "store";
    case language::Origin::to_buy:
      return "to buy";
    case language::Origin::to_have:
      break;
  }
  return "to have";
}

std::string_view statement_name(blend::StatementKind kind) {
  switch (kind) {
    case blend::StatementKind::supply:
      return "supply";
    case blend::StatementKind::share:
      return "share";
    case blend::StatementKind::addition:
      return "addition";
    case blend::StatementKind::substitution:
      return "substitution";
    case blend::StatementKind::limit:
      return "limit";
    case blend::StatementKind::aim:
      break;
  }
  return "aim";
}

Json task_json(const Sources& sources, const language::Program& program, const plan::Task& task) {
  Json json = {{"framework", framework_json(sources, program[task.framework])},
               {"basket", named_json(sources, program[task.basket])}};
  if (task.kitchen.valid()) json["kitchen"] = named_json(sources, program[task.kitchen]);
  json["aim"] = aim_json(task.aim);
  return json;
}

}  // namespace maslin::report
