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

}  // namespace

Json check_json(const Sources& sources, const language::Program& program) {
  return {{"frameworks", declared(sources, program.frameworks, program.library_frameworks)},
          {"baskets", declared(sources, program.baskets, 0)},
          {"kitchens", declared(sources, program.kitchens, 0)},
          {"checked", {"names", "quantities", "types", "shares", "classes", "substitutions"}},
          {"not_checked",
           {"whether a basket fits", "methods", "keeping routes", "pH", "water activity"}}};
}

}  // namespace maslin::report
