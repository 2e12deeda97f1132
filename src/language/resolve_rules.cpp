// SPDX-License-Identifier: Apache-2.0
// Keeping routes and standards: rules that stand beside every framework.
#include <fmt/format.h>

#include <algorithm>

#include "language/readable.hpp"
#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

// `liquor acidity >= 5 %`: a floor of what is poured over a pack, not of the mix in the pan.
bool is_of_liquor(View limit) {
  return normal_name(limit.child(Kind::figure).text()) == "liquor acidity";
}

// `headspace 6 .. 13 mm`: how far below the rim the jars of a route are filled.
bool is_of_headspace(View limit) {
  return normal_name(limit.child(Kind::figure).text()) == "headspace";
}

class RuleReader {
 public:
  RuleReader(Context& context, View declaration) : context_(context), declaration_(declaration) {}

  std::string place() const {
    const View in = declaration_.child(Kind::in_place);
    return in ? text_of(text_child(in)) : std::string();
  }
  std::optional<Date> as_of() const {
    std::optional<Date> date;
    (void)read_as_of(context_, declaration_, date);
    return date;
  }
  std::vector<Limit> limits(LimitOf of) const {
    std::vector<Limit> result;
    for_each(Kind::limit, [&](View statement) {
      if (is_of_liquor(statement) || is_of_headspace(statement)) return;
      if (auto limit = read_limit(context_, statement, of)) result.push_back(std::move(*limit));
    });
    return result;
  }

  std::vector<std::string> texts(Kind kind) const {
    std::vector<std::string> result;
    for_each(kind, [&](View statement) { read_texts_into(statement, result); });
    return result;
  }

  template <class Do>
  void for_each(Kind kind, Do act) const {
    for (const View statement : declaration_.child(Kind::rule_block)) {
      if (statement.is(kind)) act(statement);
    }
  }

  // A statement that only the other of the two has.
  void refuse(Kind kind, std::string_view message, std::string_view mend) const {
    for_each(kind, [&](View statement) {
      context_.report(Code::unknown_statement, statement.span(), std::string(message))
          .with_mend(std::string(mend));
    });
  }

 private:
  Context& context_;
  View declaration_;
};

bool read_bound(Context& context, View statement, const Readable& what, ToRead& result) {
  Measure first;
  if (const View comparison = statement.child(Kind::comparison)) {
    const auto measure = read_measure(context, statement.child(Kind::measure));
    if (!measure) return false;
    const std::string_view sign = comparison.text();
    result.has_high = sign.starts_with("<") || sign == "≤";
    result.has_low = !result.has_high;
    result.range = Bounds::exactly(measure->value);
    first = *measure;
  } else if (const View written = statement.child(Kind::range)) {
    const auto range = read_range(context, written);
    if (!range) return false;
    result.range = range->bounds;
    result.has_low = range->has_low;
    result.has_high = range->has_high;
    first = range->first;
  }
  if (!result.has_low && !result.has_high) return true;
  return expect_dimension(context, first, what.dimension, "this reading",
                          what.dimension.is_number() ? "pH <= 4.0" : "85 °C");
}

std::optional<ToRead> read_reading(Context& context, View statement) {
  const Readable* what = read_readable(context, statement.child(Kind::figure), true);
  if (what == nullptr) return std::nullopt;
  ToRead result;
  result.figure = what->name;
  result.dimension = what->dimension;
  result.span = statement.span();
  if (!read_bound(context, statement, *what, result)) return std::nullopt;
  return result;
}

Refusal read_refusal(Context& context, View statement) {
  Refusal result;
  result.targets = resolve_targets(context, statement, Wanted::anything);
  if (const View because = statement.child(Kind::because)) {
    result.because = text_of(text_child(because));
  }
  result.span = statement.span();
  return result;
}

std::optional<LiquorFloor> read_liquor_floor(Context& context, View statement) {
  const View comparison = statement.child(Kind::comparison);
  const View measure = statement.child(Kind::measure);
  const bool at_least = comparison && (comparison.text() == ">=" || comparison.text() == "≥");
  if (!at_least) {
    context
        .report(Code::comparison_sign, statement.span(),
                "a floor of the liquor says how sour it is at the least")
        .with_mend("write `liquor acidity >= 5 %`");
    return std::nullopt;
  }
  const auto least = read_measure(context, measure);
  if (!least || !is_share(context, *least, "5 %")) return std::nullopt;
  return LiquorFloor{least->value, statement.span()};
}

std::optional<HeadspaceFloor> read_headspace(Context& context, View statement) {
  const View written = statement.child(Kind::range);
  const auto range = written ? read_range(context, written) : std::nullopt;
  if (written && !range) return std::nullopt;
  constexpr std::string_view example = "headspace 6 .. 13 mm";
  if (!range || !range->has_low || !range->has_high) {
    context
        .report(Code::comparison_sign, statement.span(),
                "how far below the rim jars are filled is a range")
        .with_mend(fmt::format("write `{}`", example));
    return std::nullopt;
  }
  if (!expect_dimension(context, range->first, dimensions::length, "a headspace", example)) {
    return std::nullopt;
  }
  return HeadspaceFloor{{Length(range->bounds.low), Length(range->bounds.high)}, statement.span()};
}

void report_unknown_route(Context& context, View name) {
  const std::string key = normal_name(name);
  const auto known = context.names.routes.all();
  auto& found = context.report(Code::unknown_name, name.span(),
                               fmt::format("no keeping route is named `{}`", key));
  const auto near = nearest(key, known, 2);
  if (near.empty()) {
    std::vector<std::string> all(known.begin(), known.end());
    std::sort(all.begin(), all.end());
    found.with_mend("the routes are " + one_of(all));
    return;
  }
  found.with_mend(fmt::format("did you mean {}?", one_of(near)));
  for (const std::string& each : near) {
    found.with_fix({Fix::Kind::suggested, fmt::format("write `{}`", each), {{name.span(), each}}});
  }
}

}  // namespace

bool read_as_of(Context& context, View statement, std::optional<Date>& result) {
  const View as_of = statement.child(Kind::as_of);
  if (!as_of) return true;
  View written = as_of.child(Kind::date);
  if (!written) written = number_child(as_of);
  result = date_from(written.text());
  if (result) return true;
  context
      .report(Code::bad_date, written.span(),
              fmt::format("`{}` is no year or day of the calendar", written.text()))
      .with_mend("write the year, `as of 2018`, or the day, `as of 2026-06-14`");
  return false;
}

void read_texts_into(View statement, std::vector<std::string>& texts) {
  for (const View child : statement) {
    if (child.is(Kind::string) || child.is(Kind::curly_string)) texts.push_back(text_of(child));
  }
}

void declare_routes(Context& context, View file) {
  for (const View item : file) {
    if (!item.is(Kind::route)) continue;
    const View name = item.child(Kind::name);
    Route route;
    route.name = normal_name(name);
    route.span = name.span();
    const RouteId id(context.program.routes.size());
    if (!context.names.routes.add(route.name, id, route.span)) {
      report_duplicate(context, Code::duplicate, "the route", route.name, route.span,
                       context.names.routes.find(route.name)->span);
    }
    context.program.routes.push_back(std::move(route));
  }
}

void resolve_route(Context& context, View declaration, Route& result) {
  const RuleReader reader(context, declaration);
  result.place = reader.place();
  result.as_of = reader.as_of();
  result.floors = reader.limits(LimitOf::route);
  result.notes = reader.texts(Kind::note);
  result.sources = reader.texts(Kind::source);
  reader.for_each(Kind::to_read, [&](View statement) {
    if (auto reading = read_reading(context, statement)) {
      result.readings.push_back(std::move(*reading));
    }
  });
  reader.for_each(Kind::refusal, [&](View statement) {
    result.refusals.push_back(read_refusal(context, statement));
  });
  reader.for_each(Kind::process, [&](View statement) {
    if (auto process = read_process(context, statement)) {
      add_process(context, std::move(*process), result);
    }
  });
  reader.for_each(Kind::limit, [&](View statement) {
    if (is_of_liquor(statement)) result.liquor = read_liquor_floor(context, statement);
    if (is_of_headspace(statement)) result.headspace = read_headspace(context, statement);
  });
  reader.for_each(Kind::recipe, [&](View statement) {
    if (auto recipe = read_recipe(context, statement)) {
      add_recipe(context, std::move(*recipe), result);
    }
  });
  reader.refuse(Kind::reserved_name, "a route reserves no name", "write it in a `standard`");
}

Standard resolve_standard(Context& context, View declaration) {
  const RuleReader reader(context, declaration);
  Standard result;
  const View name = declaration.child(Kind::name);
  result.name = normal_name(name);
  result.span = name.span();
  result.place = reader.place();
  result.as_of = reader.as_of();
  result.limits = reader.limits(LimitOf::standard);
  result.notes = reader.texts(Kind::note);
  result.sources = reader.texts(Kind::source);
  reader.for_each(Kind::reserved_name, [&](View statement) {
    result.reserved_name = normal_name(statement.child(Kind::name));
  });
  constexpr std::string_view of_routes = "a standard says what a name may stand for, no more";
  for (const Kind kind : {Kind::to_read, Kind::refusal, Kind::process, Kind::recipe}) {
    reader.refuse(kind, of_routes, "write it in a `route`");
  }
  reader.for_each(Kind::limit, [&](View statement) {
    if (!is_of_liquor(statement) && !is_of_headspace(statement)) return;
    context.report(Code::unknown_statement, statement.span(), std::string(of_routes))
        .with_mend("write it in a `route`");
  });
  for (const Standard& other : context.program.standards) {
    const bool same_day = other.as_of == result.as_of;
    if (other.name != result.name || other.place != result.place || !same_day) continue;
    report_duplicate(context, Code::duplicate, "the standard", result.name, result.span,
                     other.span);
  }
  return result;
}

bool read_route_claim(Context& context, View claim, Framework& result) {
  const View name = claim.child(Kind::name);
  const auto* route = context.names.routes.find(normal_name(name));
  if (route == nullptr) {
    report_unknown_route(context, name);
    return false;
  }
  for (const RouteClaim& other : result.routes) {
    if (other.route != route->value) continue;
    report_duplicate(context, Code::duplicate, "the route", normal_name(name), claim.span(),
                     other.span, "leave one out");
    return false;
  }
  RouteClaim read{route->value, {}, {}, claim.span()};
  if (const View process = claim.child(Kind::claimed_process)) {
    const View product = process.child(Kind::tested_product).child(Kind::name);
    read.product = normal_name(product);
    read.product_span = product.span();
  }
  result.routes.push_back(std::move(read));
  return true;
}

void take_on_floors(Program& program, std::size_t first_framework) {
  for (std::size_t i = first_framework; i < program.frameworks.size(); ++i) {
    Framework& framework = program.frameworks[i];
    for (const RouteClaim& claim : framework.routes) {
      const bool inherited =
          std::any_of(framework.limits.begin(), framework.limits.end(),
                      [&](const Limit& limit) { return limit.route == claim.route; });
      if (inherited) continue;
      for (Limit floor : program[claim.route].floors) {
        floor.route = claim.route;
        floor.claim = claim.span;
        framework.limits.push_back(std::move(floor));
      }
    }
  }
}

}  // namespace maslin::language
