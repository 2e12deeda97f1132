// SPDX-License-Identifier: Apache-2.0
#include <array>

#include "language/program.hpp"

namespace maslin::language {
namespace {

struct PropertyName {
  Property property;
  std::string_view name;
};
constexpr std::array<PropertyName, 11> named_properties = {{
    {Property::ph, "pH"},
    {Property::acidity, "acidity"},
    {Property::acetic_acid, "acetic acid"},
    {Property::sugars, "sugars"},
    {Property::soluble_solids, "soluble solids"},
    {Property::total_solids, "total solids"},
    {Property::water, "water"},
    {Property::salt, "salt"},
    {Property::water_activity, "water activity"},
    {Property::weight, "weight"},
    {Property::stability_index, "stability index"},
}};

}  // namespace

std::string_view name_of(Property property) {
  for (const PropertyName& each : named_properties) {
    if (each.property == property) return each.name;
  }
  return {};
}

std::vector<std::string_view> property_names() {
  std::vector<std::string_view> names;
  names.reserve(named_properties.size());
  for (const PropertyName& each : named_properties) names.push_back(each.name);
  return names;
}

bool has_own_scale(Property property) {
  return property == Property::ph || property == Property::water_activity ||
         property == Property::stability_index;
}

std::optional<Property> property_named(std::string_view name) {
  for (const PropertyName& each : named_properties) {
    if (each.name == name) return each.property;
  }
  return std::nullopt;
}

}  // namespace maslin::language
