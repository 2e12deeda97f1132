// SPDX-License-Identifier: Apache-2.0
#include "language/equipment.hpp"

#include <algorithm>
#include <iterator>

namespace maslin::language {
namespace {

struct Material {
  std::string_view name;
  bool reacts;
};
constexpr Material materials[] = {
    {"stainless", false},     {"stainless steel", false}, {"enamel", false},
    {"enamelled", false},     {"glass", false},           {"ceramic", false},
    {"non-stick", false},     {"lined copper", false},    {"lined brass", false},
    {"tinned copper", false}, {"anodised", false},        {"aluminium", true},
    {"aluminum", true},       {"copper", true},           {"brass", true},
    {"unlined brass", true},  {"unlined copper", true},   {"iron", true},
    {"cast iron", true},      {"carbon steel", true},     {"galvanised", true}};

struct NamedHob {
  std::string_view name;
  HobKind kind;
};
constexpr NamedHob hobs[] = {
    {"electric", HobKind::electric}, {"induction", HobKind::induction}, {"gas", HobKind::gas}};

template <class List>
std::vector<std::string_view> names_in(const List& list) {
  std::vector<std::string_view> names;
  std::transform(std::begin(list), std::end(list), std::back_inserter(names),
                 [](const auto& each) { return each.name; });
  return names;
}

}  // namespace

std::optional<bool> reacts_with_acid(std::string_view material) {
  for (const Material& each : materials) {
    if (each.name == material) return each.reacts;
  }
  return std::nullopt;
}

std::vector<std::string_view> pan_materials() { return names_in(materials); }

std::optional<HobKind> hob_named(std::string_view name) {
  for (const NamedHob& each : hobs) {
    if (each.name == name) return each.kind;
  }
  return std::nullopt;
}

std::vector<std::string_view> hob_names() { return names_in(hobs); }

std::string_view name_of(HobKind kind) {
  for (const NamedHob& each : hobs) {
    if (each.kind == kind) return each.name;
  }
  return "kind not stated";
}

}  // namespace maslin::language
