// SPDX-License-Identifier: Apache-2.0
#include "report/meanings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace maslin::report {
namespace {

using language::Names;
using language::Program;

// In the order of the alternatives of `Meaning`.
constexpr std::array<std::string_view, std::variant_size_v<Meaning>> kind_names = {
    "ingredient", "class", "framework", "route", "standard", "term", "unit", "diagnostic"};

std::vector<Meaning> of_any_kind(const Program& program, const Names& names,
                                 const std::string& name) {
  std::vector<Meaning> found;
  if (const auto* thing = names.things.find(name)) {
    if (thing->value.ingredient.valid()) {
      found.emplace_back(thing->value.ingredient);
    } else {
      found.emplace_back(thing->value.of_class);
    }
  }
  if (const auto* framework = names.frameworks.find(name)) found.emplace_back(framework->value);
  if (const auto* route = names.routes.find(name)) found.emplace_back(route->value);
  // One name may have a standard in each of several places.
  for (const language::Standard& each : program.standards) {
    const bool meant = each.name == name || fmt::format("{} in {}", each.name, each.place) == name;
    if (meant) found.emplace_back(&each);
  }
  if (const Term* term = term_named(name)) found.emplace_back(term);
  if (const auto* unit = names.units.find(name)) found.emplace_back(unit->value);
  if (const auto code = code_named(name)) found.emplace_back(*code);
  return found;
}

}  // namespace

std::string_view kind_of(const Meaning& meaning) { return kind_names[meaning.index()]; }

std::vector<Meaning> meanings_of(const Program& program, const Names& names,
                                 const std::string& name) {
  std::vector<Meaning> found = of_any_kind(program, names, name);
  const std::size_t gap = name.find(' ');
  if (!found.empty() || gap == std::string::npos) return found;
  const std::string_view kind = std::string_view(name).substr(0, gap);
  for (const Meaning& each : of_any_kind(program, names, name.substr(gap + 1))) {
    if (kind_of(each) == kind) found.push_back(each);
  }
  return found;
}

std::vector<std::string> names_near(const Program& program, const Names& names,
                                    const std::string& name) {
  std::vector<std::string_view> known = names.things.all();
  for (const std::string_view each : names.frameworks.all()) known.push_back(each);
  for (const std::string_view each : names.routes.all()) known.push_back(each);
  for (const language::Standard& each : program.standards) known.emplace_back(each.name);
  for (const Term& each : all_terms()) {
    known.emplace_back(each.name);
    for (const std::string& also : each.also) known.emplace_back(also);
  }
  for (const Code code : all_codes()) known.push_back(name_of(code));
  std::sort(known.begin(), known.end());
  known.erase(std::unique(known.begin(), known.end()), known.end());
  constexpr std::size_t most = 4;
  return language::nearest(name, known, most);
}

}  // namespace maslin::report
