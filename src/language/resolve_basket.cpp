// SPDX-License-Identifier: Apache-2.0
// Baskets, and the lines that they, stores and what went into a boil are made of.
#include <fmt/format.h>

#include "language/amounts.hpp"
#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

const Rational exact_one(1);

// More than any kitchen weighs out, and about what is planned in the time of a breath.
constexpr std::size_t most_lots = 20000;

// Names given to plain things in reports: "1 onion weighs about 110 g".
std::string grams(const Rational& weight) { return weight.to_decimal(1) + " g"; }

class LineReader {
 public:
  LineReader(Context& context, View view, LineOf of) : context_(context), view_(view), of_(of) {}

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
    good = !report_repeats() && good;
    for (const View clause : view_) good = read_clause(clause, good) && good;
    good = good && check_amount();
    if (!good) return std::nullopt;
    return line_;
  }

 private:
  const Ingredient& ingredient() const { return context_.program[line_.ingredient]; }

  // Of two trims only one can be right.
  bool report_repeats() {
    bool any = false;
    for (const Kind kind : {Kind::trim, Kind::spoiled, Kind::keep_back, Kind::at_most, Kind::packs,
                            Kind::price, Kind::strength}) {
      View first;
      for (const View clause : view_) {
        if (!clause.is(kind)) continue;
        if (first) {
          report_duplicate(context_, Code::duplicate, "the clause", std::string(clause.text()),
                           clause.span(), first.span(), "leave one out");
          any = true;
        }
        first = clause;
      }
    }
    return any;
  }

  // `2 kg onions`: how much stands before the name.
  bool report_unit_first(View counted, View name) {
    std::vector<View> words;
    for (const View child : name) {
      if (child.is(Kind::word)) words.push_back(child);
    }
    if (words.size() < 2 || !is_unit(context_, words[0].text())) return false;
    // `2 kg gross onions`: what belongs behind the weight goes there.
    const std::string_view second = words[1].text();
    const bool basis = words.size() > 2 && (second == "gross" || second == "prepared");
    const View first = words[basis ? 2 : 1];
    const std::string thing(context_.sources.text(joined(first.span(), words.back().span())));
    const std::string amount(context_.sources.text(joined(counted.span(), words[0].span())));
    const std::string mended = thing + " " + amount + (basis ? " " + std::string(second) : "");
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

  void report_no_piece(Span span) {
    const std::string& name = ingredient().name;
    if (view_.has(Kind::counted)) {
      context_
          .report(Code::missing_piece, span, fmt::format("what one {} weighs is not known", name))
          .with_mend(fmt::format("weigh them, and write the weight: `{} 1.4 kg`", name));
      return;
    }
    context_
        .report(Code::missing_unit, span,
                fmt::format("`{}` has no unit, and what one {} weighs is not known",
                            context_.sources.text(span), name))
        .with_mend("write for example `1.4 kg`");
  }

  bool count_to_weight(const Rational& number, Span span) {
    if (!ingredient().piece) {
      report_no_piece(span);
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
    expect_dimension(context_, measure, dimensions::mass, "what a line holds", "1.4 kg");
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
        context_
            .report(Code::misplaced_clause, clause.span(),
                    "a line says what there is, not what is wanted")
            .with_mend("leave it out; `use first` marks what should go into the pan soonest");
        return false;
      default:
        return true;
    }
  }

  // `spoiled 10 %`: the weight that this is of what the line holds.
  bool report_share(View clause, View written) {
    const View number = written.child(Kind::quantity);
    const View unit = number.child(Kind::unit);
    if (!unit || unit.text() != "%" || written.has(Kind::per)) return false;
    const std::string what = clause.is(Kind::spoiled) ? "what is spoiled" : "what is kept back";
    auto& found = context_.report(
        Code::wrong_dimension, written.span(),
        fmt::format("{} is written as a weight, and `{}` is a share", what, written.text()));
    found.with_mend(
        fmt::format("weigh it: `{} 200 g`", clause.is(Kind::spoiled) ? "spoiled" : "keep back"));
    const auto share = read_quantity(context_, number);
    if (!share || !line_.weight || share->value >= exact_one) return true;
    const std::string weight = (*line_.weight * share->value).to_decimal(0) + " g";
    found.with_fix({Fix::Kind::suggested,
                    fmt::format("write `{}`, which is {} of {}", weight, written.text(),
                                context_.sources.text(line_.amount_span)),
                    {{written.span(), weight}}});
    return true;
  }

  bool read_weight_clause(View clause) {
    if (clause.is(Kind::price)) return read_price(clause);
    const View quantity =
        clause.is(Kind::packs) ? clause.child(Kind::quantity) : clause.child(Kind::measure);
    const bool of_the_line = clause.is(Kind::spoiled) || clause.is(Kind::keep_back);
    if (of_the_line && report_share(clause, quantity)) return false;
    const auto weight = weight_of(quantity);
    if (!weight) return false;
    if (clause.is(Kind::spoiled)) line_.spoiled = *weight;
    if (clause.is(Kind::keep_back)) line_.keep_back = *weight;
    if (clause.is(Kind::at_most)) {
      line_.at_most = *weight;
      line_.at_most_span = quantity.span();
    }
    if (clause.is(Kind::packs)) line_.pack = *weight;
    return true;
  }

  bool read_trim(View clause) {
    const auto measure = read_measure(context_, clause.child(Kind::measure));
    if (!measure ||
        !expect_dimension(context_, *measure, dimensions::number, "a trim", "trim 34 %")) {
      return false;
    }
    if (!measure->percent && measure->value >= exact_one) {
      report_no_percent(context_, *measure, "trim 34 %");
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
    if (!measure->percent) {
      report_no_percent(context_, *measure, "5 % acidity");
      return false;
    }
    if (!measure->value.is_positive() || measure->value > exact_one) {
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
    if (!weight) return false;
    if (!weight->is_positive()) {
      context_.report(Code::bad_number, per.span(), "nothing costs a price for each none")
          .with_mend("write for how much it is: `at 6.80 per kg`");
      return false;
    }
    line_.price = *number / *weight;
    return true;
  }

  // Beyond any kitchen, and soon beyond what the solver tells apart.
  bool is_absurd(const std::optional<Rational>& weight, Span span) {
    const Rational most(100000000);  // g
    if (!weight || *weight <= most) return false;
    context_
        .report(Code::number_too_large, span,
                fmt::format("this is {} t of {}, more than any kitchen takes in",
                            (*weight / Rational(1000000)).to_decimal(0), ingredient().name))
        .with_mend("look at the digits and the unit; at most 100 t are taken");
    return true;
  }

  bool check_amount() {
    if (is_absurd(line_.at_most, line_.at_most_span)) return false;
    if (of_ == LineOf::batch && report_not_used()) return false;
    if (!line_.weight) return check_purchase();
    if (is_absurd(line_.weight, line_.amount_span)) return false;
    if (of_ == LineOf::batch && line_.weight->is_zero()) return true;
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
      auto& found = context_.report(
          Code::more_than_there_is, line_.amount_span,
          fmt::format("{} is spoiled or kept back of {}", grams(line_.spoiled + line_.keep_back),
                      grams(*line_.weight)));
      for (const Kind kind : {Kind::spoiled, Kind::keep_back}) {
        if (const View clause = view_.child(kind)) found.with_because(clause.span(), "");
      }
      found.with_mend("the weight on the line is everything, with what is spoiled or kept back");
      return false;
    }
    return check_strength();
  }

  // What is to be bought went into no boil.
  bool report_not_used() {
    for (const Kind kind : {Kind::to_buy, Kind::at_most, Kind::use_first}) {
      if (!view_.has(kind)) continue;
      context_
          .report(Code::misplaced_clause, view_.child(kind).span(),
                  "a line here says what went in, not what there is or is to be had")
          .with_mend("write the weight that went in: `apple 1.805 kg prepared`");
      return true;
    }
    return false;
  }

  bool check_purchase() {
    for (const Kind kind : {Kind::trim, Kind::spoiled, Kind::keep_back}) {
      if (!view_.has(kind)) continue;
      context_
          .report(Code::misplaced_clause, view_.child(kind).span(),
                  "what is only to be bought has no trim, spoilage or rest to keep yet")
          .with_mend("leave it out until it is bought and weighed");
      return false;
    }
    return check_strength();
  }

  bool check_strength() {
    const bool known = line_.acidity || of_ == LineOf::batch;
    if (known || !needs_strength(ingredient())) return true;
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
  LineOf of_;
  Line line_;
};

}  // namespace

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

bool resolve_lines(Context& context, View block, std::vector<Line>& lines, LineOf of) {
  bool good = true;
  std::size_t lots = 0;
  for (const View child : block) {
    if (child.is(Kind::bad_item)) good = false;
    if (!child.is(Kind::basket_line)) continue;
    if (lots++ == most_lots) {
      context
          .report(Code::too_many_lots, child.span(),
                  fmt::format("here stands more than the {} lots that are taken", most_lots))
          .with_mend("write lots of one kind as one, or name another file");
      return false;
    }
    if (auto line = LineReader(context, child, of).read()) {
      lines.push_back(std::move(*line));
    } else {
      good = false;
    }
  }
  return good;
}

void resolve_basket(Context& context, View declaration, Basket& result) {
  result.name = title_of(declaration, "basket");
  result.span = declaration.child(Kind::keyword).span();
  const View block = declaration.child(Kind::basket_block);
  result.close = close_of(block);
  const std::string_view before = declaration.tree().text.substr(0, result.close.begin);
  const std::size_t last = before.find_last_not_of(" \t");
  result.close_on_own_line = last != std::string_view::npos && before[last] == '\n';
  if (!resolve_lines(context, block, result.lines, LineOf::stock)) result.poisoned = true;
}

}  // namespace maslin::language
