// SPDX-License-Identifier: Apache-2.0
// Classes and ingredients.
#include <fmt/format.h>

#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

void report_shadow(Context& context, const std::string& name, Span span, Span library,
                   const char* why) {
  context
      .report(
          Code::shadows_library, span,
          fmt::format("from here on `{}` is this, not what the library knows by the name", name))
      .with_because(library, "the library's")
      .with_why(why)
      .with_mend("give it another name if both are wanted");
}

// A user's ingredient may take a name of the library's.
void add_thing(Context& context, const std::string& name, Thing thing, Span span) {
  if (context.names.things.add(name, thing, span)) return;
  const auto known = *context.names.things.find(name);
  if (thing.ingredient.valid() && known.value.ingredient.valid() &&
      context.is_library(known.span)) {
    context.names.things.replace(name, thing, span);
    // Another name of what was replaced already.
    if (known.value.ingredient != thing.ingredient) {
      report_shadow(context, name, span, known.span,
                    "this name alone changes; the library's ingredient keeps its others");
    }
    return;
  }
  const Span first = known.span;
  report_duplicate(context, Code::duplicate, "the name", name, span, first);
}

// The ingredient a declaration makes. In the place of the library's own of that name, so that its
// other names and the library's frameworks mean the user's from then on.
IngredientId new_ingredient(Context& context, const std::string& name, Span span) {
  Ingredient ingredient;
  ingredient.name = name;
  ingredient.span = span;
  IngredientId id(context.program.ingredients.size());
  const auto* known = context.names.things.find(name);
  const bool replaces = !context.in_library && known != nullptr &&
                        known->value.ingredient.valid() && context.is_library(known->span) &&
                        context.program[known->value.ingredient].name == name;
  if (replaces) {
    id = known->value.ingredient;
    report_shadow(context, name, span, known->span,
                  "its figures count wherever the name stands, in frameworks of the library too");
    ingredient.also = std::move(context.program.ingredients[id.index].also);
    context.program.ingredients[id.index] = std::move(ingredient);
  } else {
    context.program.ingredients.push_back(std::move(ingredient));
  }
  context.declared.push_back(id);
  return id;
}

std::vector<ClassId> parent_ids(Context& context, View declaration) {
  std::vector<ClassId> ids;
  if (const View parents = declaration.child(Kind::parents)) {
    for (const Target& target : resolve_targets(context, parents, Wanted::of_class)) {
      ids.push_back(target.of_class);
    }
  }
  return ids;
}

std::string origin_of(View statement) {
  const View origin = statement.child(Kind::origin);
  return origin ? text_of(text_child(origin)) : std::string();
}

std::optional<Condition> read_condition(Context& context, View view) {
  Condition condition;
  condition.span = view.span();
  std::string figure = normal_name(view.child(Kind::figure).text());
  if (figure.starts_with("highest ")) condition.end = End::highest;
  if (figure.starts_with("lowest ")) condition.end = End::lowest;
  if (condition.end != End::either) figure = figure.substr(figure.find(' ') + 1);
  const auto property = property_named(figure);
  if (!property) {
    context
        .report(Code::unknown_property, view.child(Kind::figure).span(),
                fmt::format("`{}` is no figure that an ingredient has", figure))
        .with_mend("one of pH, acidity, acetic acid, sugars, soluble solids, total solids, water");
    return std::nullopt;
  }
  condition.property = *property;
  const std::string_view sign = view.child(Kind::comparison).text();
  const bool less = sign.starts_with("<") || sign == "≤";
  condition.comparison = less ? Comparison::at_most : Comparison::at_least;
  const auto value = read_measure(context, view.child(Kind::measure));
  if (!value || !expect_dimension(context, *value, dimensions::number, "this figure", "4.5")) {
    return std::nullopt;
  }
  condition.value = value->value;
  // `>` keeps the line itself outside; it stands on the other side of the same line.
  if (sign == ">" || sign == "<") condition.strict = true;
  return condition;
}

// Figures of an ingredient are per 100 g or as a percentage.
struct FigureForm {
  std::string_view what;
  Dimension dimension;
  std::string_view example;
};

std::optional<Figure> read_figure(Context& context, View range, const FigureForm& form,
                                  const std::string& origin) {
  const auto value = read_range(context, range);
  if (!value || !expect_dimension(context, value->first, form.dimension, form.what, form.example)) {
    return std::nullopt;
  }
  if (!value->has_low || !value->has_high) {
    context.report(Code::open_figure, range.span(), "a figure needs both ends")
        .with_mend("write `3.1 .. 3.4`, or one number");
    return std::nullopt;
  }
  return Figure{value->bounds, range.span(), origin};
}

bool within(Context& context, const Figure& figure, const Rational& most, std::string_view what) {
  if (figure.value.high <= most) return true;
  const std::string limit = most == Rational(1) ? "100 %" : most.to_decimal(2);
  auto& found = context.report(Code::figure_out_of_range, figure.span,
                               fmt::format("{} cannot be more than {}", what, limit));
  if (most != Rational(1)) {
    found.with_mend("look the figure up again");
    return false;
  }
  const Span after{figure.span.file, figure.span.end, figure.span.end};
  if (context.sources.text(figure.span).find('%') == std::string_view::npos) {
    found.with_mend("put a % behind it, if that was meant");
    found.with_fix({Fix::Kind::suggested, "put a % behind it", {{after, " %"}}});
  } else {
    found.with_mend("look the figure up again");
  }
  return false;
}

void read_composition(Context& context, View statement, Ingredient& result) {
  result.composition_span = statement.span();
  result.composition_origin = origin_of(statement);
  for (const View component : statement) {
    if (!component.is(Kind::component)) continue;
    const View name = component.child(Kind::name);
    const auto substance = science::substance_named(normal_name(name));
    if (!substance) {
      context
          .report(Code::unknown_property, name.span(),
                  fmt::format("`{}` is no substance that a composition lists", normal_name(name)))
          .with_mend("`maslin explain composition` lists them");
      continue;
    }
    const auto figure = read_figure(context, component.child(Kind::range),
                                    {"a part of the composition", dimensions::mass, "1.9 g"}, {});
    if (!figure) continue;
    if (result.composition[*substance]) {
      context.report(Code::duplicate, name.span(),
                     fmt::format("`{}` is there twice", normal_name(name)));
      continue;
    }
    if (!within(context, *figure, 100, "a part of 100 g")) continue;
    // Written in grams per 100 g edible; kept as a share.
    const Rational hundred(100);
    result.composition[*substance] =
        Bounds{figure->value.low / hundred, figure->value.high / hundred};
  }
}

void set_once(Context& context, std::optional<Figure>& slot, std::optional<Figure> figure,
              View place) {
  if (!figure) return;
  if (slot) {
    report_duplicate(context, Code::duplicate, "the figure",
                     normal_name(place.child(Kind::property).text()), place.span(), slot->span);
    return;
  }
  slot = std::move(figure);
}

void read_property(Context& context, View value, const std::string& origin, Ingredient& result) {
  const std::string name = normal_name(value.child(Kind::property).text());
  const View range = value.child(Kind::range);
  const auto share = [&](std::string_view what, std::optional<Figure>& slot) {
    auto figure = read_figure(context, range, {what, dimensions::number, "61 %"}, origin);
    if (figure && !within(context, *figure, 1, what)) return;
    set_once(context, slot, std::move(figure), value);
  };
  if (name == "pH") {
    auto figure = read_figure(context, range, {"a pH", dimensions::number, "3.1 .. 3.4"}, origin);
    if (figure && !within(context, *figure, 14, "a pH")) return;
    set_once(context, result.ph, std::move(figure), value);
  } else if (name == "edible") {
    share("an edible share", result.edible);
  } else if (name == "soluble solids") {
    share("a share of soluble solids", result.soluble_solids);
  } else if (name == "total solids") {
    share("a share of total solids", result.total_solids);
  } else if (name == "acidity") {
    // Of a vinegar: g per 100 ml.
    auto figure = read_figure(context, range, {"an acidity", dimensions::number, "5 %"}, origin);
    set_once(context, result.acidity, std::move(figure), value);
  } else if (name == "density") {
    auto figure =
        read_figure(context, range,
                    {"a density", dimensions::mass / dimensions::volume, "1.04 g per ml"}, origin);
    set_once(context, result.density, std::move(figure), value);
  } else if (name == "ash alkalinity") {
    auto figure = read_figure(context, range,
                              {"an alkalinity of the ash", dimensions::substance / dimensions::mass,
                               "8.2 mmol per 100 g"},
                              origin);
    set_once(context, result.ash_alkalinity, std::move(figure), value);
  } else if (name == "pungency") {
    auto figure = read_figure(
        context, range,
        {"Scoville heat units of the dry pod", dimensions::number, "30000 .. 50000"}, origin);
    const Rational pure_capsaicin(16000000);
    if (figure && !within(context, *figure, pure_capsaicin, "Scoville heat units")) return;
    set_once(context, result.pungency, std::move(figure), value);
  } else if (name == "piece" || name == "weight") {
    auto figure =
        read_figure(context, range, {"the weight of a piece", dimensions::mass, "110 g"}, origin);
    set_once(context, result.piece, std::move(figure), value);
  } else {
    context
        .report(Code::unknown_property, value.span(),
                fmt::format("`{}` is not a figure that is kept of an ingredient", name))
        .with_mend("put it in the composition");
  }
}

void read_raw(Context& context, View statement, Ingredient& result) {
  result.raw = statement.has_keyword("unsafe") ? RawHazard::unsafe : RawHazard::unpleasant;
  if (const View boil = statement.child(Kind::boil_first)) {
    const auto time = read_plain(context, boil.child(Kind::quantity), dimensions::time,
                                 "how long to boil", "10 min");
    if (time) result.boil_first = Duration(*time);
  }
  if (const View because = statement.child(Kind::because)) {
    result.raw_reason = text_of(text_child(because));
  }
}

void read_allergens(View statement, Ingredient& result) {
  if (statement.has(Kind::not_stated)) return;
  result.allergens_stated = true;
  for (const View each : statement) {
    if (each.is(Kind::name)) result.allergens.push_back(normal_name(each));
  }
}

void read_texts(View statement, std::vector<std::string>& texts) {
  for (const View child : statement) {
    if (child.is(Kind::string) || child.is(Kind::curly_string)) texts.push_back(text_of(child));
  }
}

void read_also(View statement, std::vector<std::string>& names) {
  for (const View each : statement) {
    if (each.is(Kind::name)) names.push_back(normal_name(each));
  }
}

}  // namespace

void declare_things(Context& context, View file) {
  for (const View item : file) {
    const bool is_class = item.is(Kind::class_declaration);
    if (!is_class && !item.is(Kind::ingredient)) continue;
    const View name = item.child(Kind::name);
    Thing thing;
    if (is_class) {
      thing.of_class = ClassId(context.program.classes.size());
      context.program.classes.emplace_back();
      context.program.classes.back().name = normal_name(name);
      context.program.classes.back().span = name.span();
    } else {
      thing.ingredient = new_ingredient(context, normal_name(name), name.span());
    }
    add_thing(context, normal_name(name), thing, name.span());
    const View block = item.child(is_class ? Kind::class_block : Kind::ingredient_block);
    for (const View statement : block) {
      if (!statement.is(Kind::also)) continue;
      for (const View each : statement) {
        if (each.is(Kind::name)) add_thing(context, normal_name(each), thing, each.span());
      }
    }
  }
}

void resolve_class(Context& context, View declaration, Class& result) {
  result.parents = parent_ids(context, declaration);
  if (const View where = declaration.child(Kind::where)) {
    for (const View child : where) {
      if (!child.is(Kind::condition)) continue;
      if (auto condition = read_condition(context, child)) result.conditions.push_back(*condition);
    }
  }
  for (const View statement : declaration.child(Kind::class_block)) {
    if (statement.is(Kind::usually)) {
      const auto thing = find_thing(context, statement.child(Kind::name), Wanted::ingredient);
      if (thing) result.usually = thing->ingredient;
    } else if (statement.is(Kind::also)) {
      read_also(statement, result.also);
    }
  }
}

void resolve_ingredient(Context& context, View declaration, Ingredient& result) {
  result.parents = parent_ids(context, declaration);
  for (const View statement : declaration.child(Kind::ingredient_block)) {
    switch (statement.kind()) {
      case Kind::also:
        read_also(statement, result.also);
        break;
      case Kind::composition:
        read_composition(context, statement, result);
        break;
      case Kind::figures: {
        const std::string origin = origin_of(statement);
        for (const View value : statement) {
          if (value.is(Kind::property_value)) read_property(context, value, origin, result);
        }
        break;
      }
      case Kind::raw:
        read_raw(context, statement, result);
        break;
      case Kind::allergen:
        read_allergens(statement, result);
        break;
      case Kind::made_of:
        result.compound = true;
        read_also(statement, result.made_of);
        break;
      case Kind::compound:
        result.compound = true;
        break;
      case Kind::note:
        read_texts(statement, result.notes);
        break;
      case Kind::source:
        read_texts(statement, result.sources);
        break;
      default:
        break;
    }
  }
}

}  // namespace maslin::language
