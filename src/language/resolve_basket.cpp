// SPDX-License-Identifier: Apache-2.0
// Baskets, kitchens and the lines both are made of.
#include <fmt/format.h>

#include "language/amounts.hpp"
#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

const Rational exact_one(1);

// The place right before a block's closing brace, or its end where that is missing.
Span close_of(View block) {
  Span span = block.span();
  if (block.text().ends_with("}")) --span.end;
  return {span.file, span.end, span.end};
}

std::string title_of(View declaration, std::string_view keyword) {
  if (const View text = text_child(declaration)) return text_of(text);
  if (const View name = declaration.child(Kind::name)) return normal_name(name);
  return std::string(keyword);
}

// Names given to plain things in reports: "1 onion weighs about 110 g".
std::string grams(const Rational& weight) { return weight.to_decimal(1) + " g"; }

class LineReader {
 public:
  LineReader(Context& context, View view) : context_(context), view_(view) {}

  std::optional<Line> read() {
    const View counted = view_.child(Kind::counted);
    const View name = (counted ? counted : view_).child(Kind::name);
    if (counted && report_unit_first(counted, name)) return std::nullopt;
    const auto thing = find_thing(context_, name, Wanted::ingredient);
    bool good = thing.has_value();
    if (thing) line_.ingredient = thing->ingredient;
    line_.name = normal_name(name);
    line_.span = name.span();
    line_.amount_span = line_.span;
    line_.to_buy = view_.has(Kind::to_buy);
    if (counted) {
      good = read_count(counted) && good;
    } else if (const View amount = view_.child(Kind::amount)) {
      good = read_amount(amount, good) && good;
    }
    for (const View clause : view_) good = read_clause(clause, good) && good;
    good = good && check_amount();
    if (!good) return std::nullopt;
    return line_;
  }

 private:
  const Ingredient& ingredient() const { return context_.program[line_.ingredient]; }

  // `2 kg onions`: how much stands before the name.
  bool report_unit_first(View counted, View name) {
    std::vector<View> words;
    for (const View child : name) {
      if (child.is(Kind::word)) words.push_back(child);
    }
    if (words.size() < 2 || !is_unit(context_, words[0].text())) return false;
    const std::string thing(context_.sources.text(joined(words[1].span(), words.back().span())));
    const std::string amount(context_.sources.text(joined(counted.span(), words[0].span())));
    const std::string mended = thing + " " + amount;
    context_.report(Code::name_first, counted.span(), "the name comes first, then how much")
        .with_fix({Fix::Kind::safe, "write `" + mended + "`", {{counted.span(), mended}}});
    return true;
  }

  bool read_count(View counted) {
    const auto number = read_number(context_, number_child(counted));
    line_.amount_span = counted.span();
    line_.counted = true;
    if (!number || !line_.ingredient.valid()) return false;
    return count_to_weight(*number, counted.span());
  }

  bool count_to_weight(const Rational& number, Span span) {
    if (!ingredient().piece) {
      context_
          .report(Code::missing_piece, span,
                  fmt::format("what one {} weighs is not known", ingredient().name))
          .with_mend("weigh them, and write the weight");
      return false;
    }
    const Rational piece = middle(ingredient().piece->value);
    line_.weight = number * piece;
    // Tables of household weights give the piece ready to eat; weighing is better.
    line_.basis = WeighedAs::prepared;
    line_.estimate = fmt::format("one {} taken as {}", ingredient().name, grams(piece));
    return true;
  }

  bool read_amount(View amount, bool known) {
    const auto quantity = read_quantity(context_, amount.child(Kind::quantity));
    line_.amount_span = amount.span();
    if (!quantity || !known) return false;
    const View basis = amount.child(Kind::weighed_as);
    if (quantity->dimension.is_number() && !quantity->percent && !basis) {
      return count_to_weight(quantity->value, amount.span());
    }
    const auto weight = to_weight(*quantity);
    if (!weight) return false;
    line_.weight = *weight;
    if (!basis) return check_basis_needed(amount);
    if (basis.text() == "gross") line_.basis = WeighedAs::gross;
    if (basis.text() == "drained") line_.basis = WeighedAs::drained;
    return true;
  }

  // Nothing is cut away from sugar; of an onion it must be said whether it was.
  bool check_basis_needed(View amount) {
    const bool trimmed = view_.has(Kind::trim);
    if (trimmed) {
      line_.basis = WeighedAs::gross;
      return true;
    }
    const auto& edible = ingredient().edible;
    if (!edible || edible->value.low >= exact_one) return true;
    const Span after{amount.span().file, amount.span().end, amount.span().end};
    context_
        .report(Code::which_weight, amount.span(),
                fmt::format("is this {} as brought in, or ready for the pan?", ingredient().name))
        .with_why(fmt::format("about {} % of it is cut away, and the vinegar goes by what is left",
                              ((exact_one - middle(edible->value)) * 100).to_decimal(0)))
        .with_mend("write `gross` for as brought in, `prepared` for ready for the pan")
        .with_fix({Fix::Kind::suggested, "say gross", {{after, " gross"}}})
        .with_fix({Fix::Kind::suggested, "say prepared", {{after, " prepared"}}});
    return false;
  }

  std::optional<Rational> to_weight(const Measure& measure) {
    if (measure.dimension == dimensions::mass) return measure.value;
    if (measure.dimension == dimensions::volume) return volume_to_weight(measure);
    expect_dimension(context_, measure, dimensions::mass, "how much there is", "1.4 kg");
    return std::nullopt;
  }

  std::optional<Rational> volume_to_weight(const Measure& measure) {
    if (!ingredient().density) {
      context_
          .report(Code::volume_without_density, measure.span,
                  fmt::format("what a millilitre of {} weighs is not known", ingredient().name))
          .with_why("a volume becomes a weight only through a density")
          .with_mend("weigh it, and write the weight");
      return std::nullopt;
    }
    const Rational density = middle(ingredient().density->value);
    line_.estimate =
        fmt::format("a millilitre of {} taken as {} g", ingredient().name, density.to_decimal(3));
    return measure.value * density;
  }

  std::optional<Rational> weight_of(View measure) {
    if (!measure) return std::nullopt;
    const auto value = measure.is(Kind::measure) ? read_measure(context_, measure)
                                                 : read_quantity(context_, measure);
    if (!value) return std::nullopt;
    return to_weight(*value);
  }

  bool read_clause(View clause, bool known) {
    switch (clause.kind()) {
      case Kind::trim:
        return read_trim(clause);
      case Kind::use_first:
        line_.use_first = true;
        return true;
      case Kind::sulphited:
        line_.sulphited = true;
        return true;
      case Kind::origin:
        line_.from = text_of(text_child(clause));
        return true;
      case Kind::strength:
        return read_acidity(clause);
      case Kind::spoiled:
      case Kind::keep_back:
      case Kind::at_most:
      case Kind::packs:
      case Kind::price:
        return known && read_weight_clause(clause);
      case Kind::at_least:
        context_.report(Code::misplaced_clause, clause.span(),
                        "a line says what there is, not what is wanted");
        return false;
      default:
        return true;
    }
  }

  bool read_weight_clause(View clause) {
    if (clause.is(Kind::price)) return read_price(clause);
    const View quantity =
        clause.is(Kind::packs) ? clause.child(Kind::quantity) : clause.child(Kind::measure);
    const auto weight = weight_of(quantity);
    if (!weight) return false;
    if (clause.is(Kind::spoiled)) line_.spoiled = *weight;
    if (clause.is(Kind::keep_back)) line_.keep_back = *weight;
    if (clause.is(Kind::at_most)) line_.at_most = *weight;
    if (clause.is(Kind::packs)) line_.pack = *weight;
    return true;
  }

  bool read_trim(View clause) {
    const auto measure = read_measure(context_, clause.child(Kind::measure));
    if (!measure ||
        !expect_dimension(context_, *measure, dimensions::number, "a trim", "trim 34 %")) {
      return false;
    }
    if (measure->value >= exact_one) {
      context_
          .report(Code::figure_out_of_range, measure->span,
                  "a trim of 100 % or more leaves nothing")
          .with_mend("write the share that is cut away: `trim 34 %`");
      return false;
    }
    line_.trim = measure->value;
    return true;
  }

  bool read_acidity(View clause) {
    const auto measure = read_measure(context_, clause.child(Kind::measure));
    if (!measure ||
        !expect_dimension(context_, *measure, dimensions::number, "an acidity", "5 % acidity")) {
      return false;
    }
    if (!measure->percent || !measure->value.is_positive() || measure->value > exact_one) {
      context_
          .report(Code::figure_out_of_range, measure->span,
                  "an acidity is a percentage between 0 and 100: grams in 100 ml")
          .with_mend("write it as on the bottle: `5 % acidity`");
      return false;
    }
    line_.acidity = measure->value;
    return true;
  }

  bool read_price(View clause) {
    const auto number = read_number(context_, number_child(clause));
    const View per = clause.child(Kind::per);
    const View quantity = per.child(Kind::quantity);
    std::optional<Measure> unit;
    if (quantity) {
      unit = read_quantity(context_, quantity);
    } else if (const auto id = read_unit(context_, per.child(Kind::unit))) {
      unit = Measure{};
      unit->value = context_.program[*id].factor;
      unit->dimension = context_.program[*id].dimension;
      unit->span = per.span();
    }
    if (!number || !unit) return false;
    const auto weight = to_weight(*unit);
    if (!weight || !weight->is_positive()) return false;
    line_.price = *number / *weight;
    return true;
  }

  bool check_amount() {
    if (!line_.weight) return check_purchase();
    if (!line_.weight->is_positive()) {
      context_
          .report(Code::nothing_there, line_.amount_span,
                  fmt::format("there is no {} on this line", ingredient().name))
          .with_mend("leave the line out, or write how much there is");
      return false;
    }
    if (line_.trim && line_.basis != WeighedAs::gross) {
      context_
          .report(Code::mixed_basis, view_.child(Kind::trim).span(),
                  "a trim is cut from the gross weight, and this weight is already prepared")
          .with_mend("leave the trim out, or write `gross`");
      return false;
    }
    if (line_.spoiled + line_.keep_back > *line_.weight) {
      context_.report(Code::more_than_there_is, line_.amount_span,
                      "more is spoiled or kept back than there is");
      return false;
    }
    return check_strength();
  }

  bool check_purchase() {
    if (line_.trim || line_.spoiled.is_positive() || line_.keep_back.is_positive()) {
      context_.report(Code::misplaced_clause, view_.span(),
                      "what is only to be bought has no trim, spoilage or rest to keep yet");
      return false;
    }
    return check_strength();
  }

  bool check_strength() {
    if (line_.acidity || !needs_strength(ingredient())) return true;
    const Span after{view_.span().file, view_.span().end, view_.span().end};
    context_
        .report(Code::missing_strength, line_.span,
                fmt::format("the strength of this {} is not given", ingredient().name))
        .with_why("an acid of unknown strength cannot be counted on")
        .with_mend("write what is on the bottle: `, 5 % acidity`")
        .with_fix({Fix::Kind::suggested, "say 5 %", {{after, ", 5 % acidity"}}});
    return false;
  }

  Context& context_;
  View view_;
  Line line_;
};

class KitchenReader {
 public:
  KitchenReader(Context& context, Kitchen& result) : context_(context), result_(result) {}

  void read(View block) {
    for (const View statement : block) read_statement(statement);
  }

 private:
  std::optional<Rational> plain(View quantity, const Dimension& dimension, std::string_view what,
                                std::string_view example) {
    auto value = read_plain(context_, quantity, dimension, what, example);
    if (!value) result_.poisoned = true;
    return value;
  }

  void read_statement(View statement) {
    const View quantity = statement.child(Kind::quantity);
    switch (statement.kind()) {
      case Kind::pan:
        read_pan(statement);
        break;
      case Kind::hob:
        (void)plain(quantity, dimensions::power, "the power of a hob", "2.4 kW");
        later("how long to boil down on this hob", statement);
        break;
      case Kind::altitude:
        if (const auto metres =
                plain(quantity, dimensions::length, "an altitude", "altitude 140 m")) {
          result_.altitude = Length(*metres);
        }
        later("boiling at this altitude", statement);
        break;
      case Kind::scales:
        read_scales(statement);
        break;
      case Kind::spoons:
        read_spoons(statement);
        break;
      case Kind::jars:
        read_jars(statement);
        break;
      case Kind::store:
        read_store(statement);
        break;
      case Kind::law:
        result_.law = text_of(text_child(statement));
        later("what the law of the place asks", statement);
        break;
      case Kind::bad_item:
        result_.poisoned = true;
        break;
      default:
        break;
    }
  }

  void later(std::string what, View statement) {
    result_.uncomputed.push_back({std::move(what), statement.span()});
  }

  void read_pan(View statement) {
    const auto volume =
        plain(statement.child(Kind::quantity), dimensions::volume, "what a pan holds", "pan 9 l");
    if (volume) result_.pan = Volume(*volume);
    if (const View across = statement.child(Kind::across)) {
      (void)plain(across.child(Kind::quantity), dimensions::length, "a width", "30 cm across");
    }
    if (const View weighs = statement.child(Kind::weighs)) {
      (void)plain(weighs.child(Kind::quantity), dimensions::mass, "a weight", "weighs 2.1 kg");
    }
    later("whether it fits the pan, and in how many boils", statement);
  }

  void read_scales(View statement) {
    const auto step = plain(statement.child(Kind::quantity), dimensions::mass,
                            "what scales weigh to", "scales to 5 g");
    if (step && !step->is_positive()) {
      context_.report(Code::bad_number, statement.span(), "scales cannot weigh to nothing");
      result_.poisoned = true;
    } else if (step) {
      result_.scale_step = Mass(*step);
    }
    if (const View limit = statement.child(Kind::scale_limit)) {
      const auto most = plain(limit.child(Kind::quantity), dimensions::mass,
                              "the most that scales carry", "up to 5 kg");
      if (most) result_.scale_limit = Mass(*most);
    }
  }

  void read_spoons(View statement) {
    const auto step =
        plain(statement.child(Kind::quantity), dimensions::volume, "a spoon", "spoons to 1/4 tsp");
    if (step && step->is_positive()) result_.spoon_step = Volume(*step);
  }

  void read_jars(View statement) {
    for (const View jar : statement) {
      if (!jar.is(Kind::jar_count)) continue;
      (void)read_number(context_, number_child(jar));
      (void)plain(jar.child(Kind::quantity), dimensions::volume, "what a jar holds", "282 ml");
    }
    later("which jars it fills", statement);
  }

  void read_store(View statement) {
    result_.store_close = close_of(statement.child(Kind::basket_block));
    for (const View child : statement.child(Kind::basket_block)) {
      if (child.is(Kind::bad_item)) result_.poisoned = true;
      if (!child.is(Kind::basket_line)) continue;
      if (auto line = resolve_line(context_, child)) {
        result_.store.push_back(std::move(*line));
      } else {
        result_.poisoned = true;
      }
    }
  }

  Context& context_;
  Kitchen& result_;
};

}  // namespace

std::optional<Line> resolve_line(Context& context, View line) {
  return LineReader(context, line).read();
}

void resolve_basket(Context& context, View declaration, Basket& result) {
  result.name = title_of(declaration, "basket");
  result.span = declaration.child(Kind::keyword).span();
  const View block = declaration.child(Kind::basket_block);
  result.close = close_of(block);
  const std::string_view before =
      declaration.tree().text.substr(0, result.close.begin);
  const std::size_t last = before.find_last_not_of(" \t");
  result.close_on_own_line = last != std::string_view::npos && before[last] == '\n';
  for (const View child : declaration.child(Kind::basket_block)) {
    if (child.is(Kind::bad_item)) result.poisoned = true;
    if (!child.is(Kind::basket_line)) continue;
    if (auto line = resolve_line(context, child)) {
      result.lines.push_back(std::move(*line));
    } else {
      result.poisoned = true;
    }
  }
}

void resolve_kitchen(Context& context, View declaration, Kitchen& result) {
  result.name = title_of(declaration, "kitchen");
  result.span = declaration.child(Kind::keyword).span();
  KitchenReader(context, result).read(declaration.child(Kind::kitchen_block));
}

void check_names_within(Context& context, View declaration) {
  if (declaration.is(Kind::batch)) {
    const View name = declaration.child(Kind::name);
    if (context.names.frameworks.find(normal_name(name)) == nullptr) {
      context.report(Code::unknown_name, name.span(),
                     fmt::format("no framework is named `{}`", normal_name(name)));
    }
  }
  std::vector<View> open = {declaration};
  while (!open.empty()) {
    const View view = open.back();
    open.pop_back();
    for (const View child : view) {
      if (child.is(Kind::basket_line)) {
        (void)resolve_line(context, child);
      } else if (child.is(Kind::quantity)) {
        (void)read_quantity(context, child);
      } else {
        open.push_back(child);
      }
    }
  }
}

}  // namespace maslin::language
