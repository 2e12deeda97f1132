// SPDX-License-Identifier: Apache-2.0
#include "report/json_check.hpp"

#include <nlohmann/json.hpp>

#include "diagnostic/json.hpp"
#include "diagnostic/render.hpp"

namespace maslin::report {
namespace {

using Json = nlohmann::ordered_json;

template <class List>
Json declared(const Sources& sources, const List& list, std::size_t first) {
  Json json = Json::array();
  for (std::size_t i = first; i < list.size(); ++i) {
    json.push_back(
        {{"name", printable(list[i].name)}, {"place", place_json(sources, list[i].span)}});
  }
  return json;
}

Json mix_json(const language::Program& program, const std::vector<prove::Ingredient>& mix) {
  Json json = Json::array();
  for (const prove::Ingredient& each : mix) {
    json.push_back({{"ingredient", printable(program[each.ingredient].name)}, {"part", each.part}});
  }
  return json;
}

Json proof_json(const Sources& sources, const language::Program& program, const Proved& each) {
  const language::Framework& framework = program[each.framework];
  Json limits = Json::array();
  for (const std::size_t limit : each.proof.limits) {
    const Span span = framework.limits[limit].span;
    limits.push_back({{"text", printable(std::string(sources.text(span)))},
                      {"place", place_json(sources, span)}});
  }
  Json additions = Json::array();
  for (const language::Stuff& stuff : each.proof.additions) {
    Json addition = {{"ingredient", printable(program[stuff.ingredient].name)}};
    if (stuff.acidity) addition["acidity"] = stuff.acidity->to_double();
    additions.push_back(std::move(addition));
  }
  Json json = {{"framework", printable(framework.name)},
               {"verdict", word_of(each.proof.verdict)},
               {"mix", mix_json(program, each.proof.worst)},
               {"additions", std::move(additions)},
               {"limits", std::move(limits)}};
  if (!each.proof.reason.empty()) json["reason"] = each.proof.reason;
  if (!each.taste.empty()) json["not_for_taste"] = printable(each.taste);
  return json;
}

}  // namespace

Json check_json(const Sources& sources, const language::Program& program,
                const std::vector<Proved>& proved) {
  Json proofs = Json::array();
  for (const Proved& each : proved) proofs.push_back(proof_json(sources, program, each));
  return {
      {"frameworks", declared(sources, program.frameworks, program.library_frameworks)},
      {"baskets", declared(sources, program.baskets, 0)},
      {"kitchens", declared(sources, program.kitchens, 0)},
      {"checked", {"names", "quantities", "types", "shares", "classes", "substitutions", "limits"}},
      {"not_checked", {"whether a basket fits", "how exactly it is made", "readings"}},
      {"proofs", std::move(proofs)}};
}

}  // namespace maslin::report
