// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <array>

#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

struct KindOfUnit {
  std::string_view name;
  Dimension dimension;
};
const std::array<KindOfUnit, 8> kinds_of_unit = {{{"mass", dimensions::mass},
                                                  {"volume", dimensions::volume},
                                                  {"time", dimensions::time},
                                                  {"temperature", dimensions::temperature},
                                                  {"length", dimensions::length},
                                                  {"power", dimensions::power},
                                                  {"substance", dimensions::substance},
                                                  {"ratio", dimensions::number}}};

void add_unit_name(Context& context, const std::string& name, UnitId id, Span span) {
  if (context.names.units.add(name, id, span)) return;
  report_duplicate(context, Code::duplicate, "the unit", name, span,
                   context.names.units.find(name)->span);
}

void resolve_unit(Context& context, View declaration, UnitId id) {
  if (const View value = declaration.child(Kind::unit_value)) {
    const auto measure = read_quantity(context, value.child(Kind::quantity));
    if (!measure) return;
    if (!measure->value.is_positive()) {
      context.report(Code::bad_number, value.span(), "a unit must be larger than nothing");
      return;
    }
    context.program.units[id.index].dimension = measure->dimension;
    context.program.units[id.index].factor = measure->value;
  } else if (const View kind = declaration.child(Kind::unit_kind)) {
    const std::string name = normal_name(kind.child(Kind::name));
    for (const KindOfUnit& each : kinds_of_unit) {
      if (each.name != name) continue;
      context.program.units[id.index].dimension = each.dimension;
      context.program.units[id.index].factor = 1;
      return;
    }
    context.report(Code::unknown_name, kind.span(), fmt::format("`{}` is no kind of unit", name))
        .with_mend("one of mass, volume, time, temperature, length, power, substance, ratio");
  } else if (const View choice = declaration.child(Kind::unit_choice)) {
    for (const View child : choice) {
      if (!child.is(Kind::unit)) continue;
      if (const auto candidate = read_unit(context, child)) {
        context.program.units[id.index].could_be.push_back(*candidate);
      }
    }
  }
}

}  // namespace

void declare_units(Context& context, View file) {
  for (const View item : file) {
    if (!item.is(Kind::unit_declaration)) continue;
    const UnitId id(context.program.units.size());
    Unit unit;
    const View name = item.child(Kind::unit);
    unit.name = normal_name(name.text());
    unit.span = name.span();
    unit.factor = 1;
    context.program.units.push_back(unit);
    add_unit_name(context, unit.name, id, unit.span);
    if (const View also = item.child(Kind::also)) {
      for (const View each : also) {
        if (each.is(Kind::name)) add_unit_name(context, normal_name(each), id, each.span());
      }
    }
  }
}

// In the order of the text: a unit is made of units declared before it.
void resolve_units(Context& context, View file) {
  for (const View item : file) {
    if (!item.is(Kind::unit_declaration)) continue;
    const auto* entry = context.names.units.find(normal_name(item.child(Kind::unit).text()));
    if (entry == nullptr || entry->span != item.child(Kind::unit).span()) continue;
    resolve_unit(context, item, entry->value);
  }
}

void declare_lets(Context& context, View file) {
  for (const View item : file) {
    if (!item.is(Kind::let)) continue;
    const View name = item.child(Kind::name);
    const std::string key = normal_name(name);
    const auto [place, added] = context.lets.try_emplace(key, NamedValue{item, {}});
    if (!added) {
      report_duplicate(context, Code::duplicate, "the value", key, name.span(),
                       place->second.declaration.child(Kind::name).span());
    }
  }
}

}  // namespace maslin::language
