// SPDX-License-Identifier: Apache-2.0
#include "language/values.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/spelling.hpp"
#include "language/let.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

struct VulgarFraction {
  std::string_view text;
  int numerator;
  int denominator;
};
constexpr VulgarFraction vulgar_fractions[] = {{"½", 1, 2}, {"⅓", 1, 3}, {"⅔", 2, 3}, {"¼", 1, 4},
                                               {"¾", 3, 4}, {"⅕", 1, 5}, {"⅖", 2, 5}, {"⅗", 3, 5},
                                               {"⅘", 4, 5}, {"⅙", 1, 6}, {"⅚", 5, 6}, {"⅛", 1, 8},
                                               {"⅜", 3, 8}, {"⅝", 5, 8}, {"⅞", 7, 8}};

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

std::optional<Rational> fraction(std::string_view text) {
  const std::size_t slash = text.find('/');
  if (slash == std::string_view::npos) return Rational::from_decimal(text);
  const auto above = Rational::from_decimal(text.substr(0, slash));
  const auto below = Rational::from_decimal(text.substr(slash + 1));
  if (!above || !below) return std::nullopt;
  return *above / *below;
}

// "1 1/2", "1½", "½", "1/2", "0.25".
std::optional<Rational> number_value(std::string_view text) {
  for (const VulgarFraction& vulgar : vulgar_fractions) {
    if (!text.ends_with(vulgar.text)) continue;
    const Rational part(vulgar.numerator, vulgar.denominator);
    const std::string_view rest = trimmed(text.substr(0, text.size() - vulgar.text.size()));
    if (rest.empty()) return part;
    const auto before = Rational::from_decimal(rest);
    if (!before) return std::nullopt;
    return *before + part;
  }
  const std::size_t gap = text.find(' ');
  if (gap == std::string_view::npos) return fraction(text);
  const auto before = Rational::from_decimal(text.substr(0, gap));
  const auto after = fraction(trimmed(text.substr(gap)));
  if (!before || !after) return std::nullopt;
  return *before + *after;
}

void report_bad_number(Context& context, View view) {
  const std::string text(view.text());
  const Span span = view.span();
  if (text.find(',') != std::string::npos) {
    std::string with_point = text;
    std::replace(with_point.begin(), with_point.end(), ',', '.');
    const bool thousands = std::count(text.begin(), text.end(), ',') > 1;
    auto& found = context.report(Code::decimal_comma, span,
                                 fmt::format("`{}` has a comma between its digits", text));
    found.with_why(
        "a comma means a decimal point to some and thousands to others, and a guess "
        "could be wrong a thousandfold");
    if (!thousands) {
      found.with_mend(
          fmt::format("write `{}`, or leave the comma out if thousands were meant", with_point));
      found.with_fix({Fix::Kind::suggested, "use a decimal point", {{span, with_point}}});
    } else {
      found.with_mend("leave the commas out");
    }
    return;
  }
  if (text.front() == '.') {
    context.report(Code::bad_number, span, fmt::format("`{}` has nothing before its point", text))
        .with_fix({Fix::Kind::safe, "write the nought", {{span, "0" + text}}});
    return;
  }
  if (text.front() == '-') {
    context.report(Code::bad_number, span, fmt::format("`{}` is less than nothing", text))
        .with_why("nothing that is weighed or measured here can be negative")
        .with_mend("leave the minus out if it was meant as a dash");
    return;
  }
  context.report(Code::bad_number, span, fmt::format("`{}` is not a number written out", text))
      .with_mend("write all its digits, with a decimal point if it has one");
}

std::string unit_name(View view) { return normal_name(view.text()); }

// `lb4oz` as `lb 4 oz`.
std::string with_gaps(std::string_view text) {
  std::string result;
  const auto is_digit = [](char c) { return c >= '0' && c <= '9'; };
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (i > 0 && is_digit(text[i]) != is_digit(text[i - 1])) result += ' ';
    result += text[i];
  }
  return result;
}

// What is often written for a unit, where letters alone would lead elsewhere.
struct WrittenUnit {
  std::string_view written;
  std::string_view meant;
};
constexpr WrittenUnit written_units[] = {
    {"c", "°C"},   {"celsius", "°C"}, {"degrees", "°C"}, {"degree", "°C"}, {"deg", "°C"},
    {"f", "°F"},   {"gr", "g"},       {"gm", "g"},       {"gms", "g"},     {"grs", "g"},
    {"kgs", "kg"}, {"wk", "week"},    {"wks", "week"},   {"cent", "%"},    {"pc", "%"},
    {"ltr", "l"},  {"mins", "min"}};

// The units that a word may have been meant as, the likeliest first.
std::vector<std::string> units_meant(const Context& context, const std::string& name) {
  const std::string small = lower_case(name);
  const auto all = context.names.units.all();
  for (const std::string_view unit : all) {
    if (lower_case(unit) == small) return {std::string(unit)};
  }
  for (const WrittenUnit& each : written_units) {
    if (each.written != small) continue;
    if (small.starts_with("deg")) return {"°C", "°F"};
    return {std::string(each.meant)};
  }
  // Of a single letter every other single letter is one edit away.
  if (name.size() == 1) return {};
  return nearest(name, all, 2);
}

void report_unknown_unit(Context& context, View view) {
  const std::string name = unit_name(view);
  auto& found = context.report(Code::unknown_unit, view.span(),
                               fmt::format("`{}` is not a unit known here", name));
  if (const std::string parted = with_gaps(view.text()); parted != view.text()) {
    found.with_mend(fmt::format("write `{}` if that was meant", parted));
    found.with_fix({Fix::Kind::suggested, "put spaces between", {{view.span(), parted}}});
    return;
  }
  if (name == "x") {
    found.with_mend("write the sum, or give each lot a line of its own");
    return;
  }
  const auto near = units_meant(context, name);
  if (near.empty()) {
    found.with_mend("`maslin explain units` lists them");
    return;
  }
  found.with_mend(fmt::format("did you mean {}?", one_of(near)));
  found.with_fix({Fix::Kind::suggested, "write `" + near[0] + "`", {{view.span(), near[0]}}});
}

void report_ambiguous_unit(Context& context, View view, const Unit& unit) {
  auto& found = context.report(Code::ambiguous_unit, view.span(),
                               fmt::format("a `{}` is not the same everywhere", unit.name));
  Rational least;
  Rational most;
  std::string sizes;
  for (const UnitId id : unit.could_be) {
    const Unit& candidate = context.program[id];
    least = least.is_zero() ? candidate.factor : smaller(least, candidate.factor);
    most = larger(most, candidate.factor);
    sizes += fmt::format("{}`{}` is {} ml", sizes.empty() ? "" : ", ", candidate.name,
                         candidate.factor.to_decimal(0));
    found.with_fix(
        {Fix::Kind::suggested, "write `" + candidate.name + "`", {{view.span(), candidate.name}}});
  }
  const Rational apart = (most / least - 1) * 100;
  found.with_why(fmt::format("{}: {} % apart", sizes, apart.to_decimal(0)));
  found.with_mend("say which is meant");
}

// `200g`: read as meant, and said.
void warn_if_glued(Context& context, View number, View unit) {
  if (number.span().end != unit.span().begin || context.program.units.empty()) return;
  const char first = unit.text().front();
  if (first == '%' || static_cast<unsigned char>(first) >= 0x80) return;
  const Span between{number.span().file, number.span().end, number.span().end};
  context
      .report(Code::glued_unit, joined(number.span(), unit.span()),
              fmt::format("a space is missing between `{}` and `{}`", number.text(), unit.text()))
      .with_fix({Fix::Kind::safe, "put a space between", {{between, " "}}});
}

bool is_compound(const Unit& first, const Unit& second) {
  return (first.name == "lb" && second.name == "oz") || (first.name == "h" && second.name == "min");
}

struct CompoundPart {
  View number;
  View unit;
};

std::vector<CompoundPart> parts_of(View quantity) {
  std::vector<CompoundPart> parts;
  for (const View child : quantity) {
    if (child.is(Kind::number) || child.is(Kind::bad_number)) {
      parts.push_back({child, {}});
    } else if (child.is(Kind::unit) && !parts.empty()) {
      parts.back().unit = child;
    }
  }
  return parts;
}

// `1 kg 200 g` is plainly 1.2 kg; of two different kinds nothing is plain.
void report_compound(Context& context, const Measure& measure, const Rational& more,
                     const Unit& second, const CompoundPart& part) {
  const Unit& first = context.program[measure.unit];
  auto& found = context.report(
      Code::compound_unit, part.number.span(),
      fmt::format("`{}` and `{}` do not make one quantity", first.name, second.name));
  found.with_why("only lb with oz and h with min are written together");
  const Rational sum = (measure.value + more) / first.factor;
  const std::string digits = sum.to_decimal(3);
  const auto same = Rational::from_decimal(digits);
  if (first.dimension != second.dimension || !same || *same != sum) {
    found.with_mend("write one number and one unit");
    return;
  }
  const std::string whole = digits + " " + first.name;
  found.with_fix({Fix::Kind::safe,
                  "write `" + whole + "`",
                  {{joined(measure.span, part.unit.span()), whole}}});
}

bool read_part(Context& context, const CompoundPart& part, Measure& measure) {
  const auto number = read_number(context, part.number);
  // A unit is looked at even where the number is wrong: both are told in one run.
  std::optional<UnitId> unit;
  if (part.unit) {
    unit = read_unit(context, part.unit);
    if (unit) warn_if_glued(context, part.number, part.unit);
  }
  if (!number || (part.unit && !unit)) return false;
  if (!unit) {
    measure.value += *number;
    return true;
  }
  const Unit& found = context.program[*unit];
  if (measure.unit.valid() && !is_compound(context.program[measure.unit], found)) {
    report_compound(context, measure, *number * found.factor, found, part);
    return false;
  }
  measure.value += *number * found.factor;
  measure.scale = found.factor;
  measure.dimension = found.dimension;
  if (!measure.unit.valid()) measure.unit = *unit;
  measure.percent = found.name == "%";
  return true;
}

bool apply_per(Context& context, View per, Measure& measure) {
  const View quantity = per.child(Kind::quantity);
  std::optional<Measure> below;
  if (quantity) {
    below = read_quantity(context, quantity);
  } else if (const View unit = per.child(Kind::unit)) {
    if (const auto id = read_unit(context, unit)) {
      below = Measure{};
      below->value = context.program[*id].factor;
      below->dimension = context.program[*id].dimension;
    }
  }
  if (!below) return false;
  if (below->value.is_zero()) {
    context.report(Code::bad_number, per.span(), "nothing can be shared out over none");
    return false;
  }
  measure.value = measure.value / below->value;
  measure.scale = measure.scale / below->value;
  measure.dimension = measure.dimension / below->dimension;
  measure.has_per = true;
  return true;
}

bool report_too_large(Context& context, const Measure& measure) {
  if (measure.value.is_defined()) return false;
  context.report(Code::number_too_large, measure.span,
                 "this number is too large or too fine to reckon with exactly");
  return true;
}

// The left side of a range without a unit of its own takes the right side's, `per` and all.
void take_unit(Measure& left, const Measure& right) {
  if (left.unit.valid() || left.has_per || left.dimension != dimensions::number) return;
  left.value = left.value * right.scale;
  left.dimension = right.dimension;
  left.unit = right.unit;
  left.percent = right.percent;
}

void report_empty_range(Context& context, View view, const Measure& left, const Measure& right,
                        bool left_had_unit) {
  auto& found =
      context.report(Code::empty_range, view.span(),
                     fmt::format("`{}` runs from more to less, so nothing fits it", view.text()));
  // A pH or a count has no unit at all.
  const UnitId id = right.unit.valid() ? right.unit : left.unit;
  const std::string_view unit = id.valid() ? context.program[id].name : std::string_view();
  if (!left_had_unit && (unit == "kg" || unit == "l")) {
    const std::string smaller_unit = unit == "kg" ? "g" : "ml";
    const Span after{left.span.file, left.span.end, left.span.end};
    found.with_why(fmt::format("the unit at the end, {}, serves both sides", unit));
    found.with_mend(fmt::format("write `{} {}` if that was meant", context.sources.text(left.span),
                                smaller_unit));
    found.with_fix({Fix::Kind::suggested,
                    "give the first number the unit " + smaller_unit,
                    {{after, " " + smaller_unit}}});
    return;
  }
  found.with_mend("put the smaller number first");
}

std::optional<MeasureRange> read_open_range(Context& context, View bound, bool is_low) {
  const auto measure = read_measure(context, bound.child(Kind::measure));
  if (!measure) return std::nullopt;
  MeasureRange range;
  range.dimension = measure->dimension;
  range.first = *measure;
  range.span = bound.span();
  range.has_low = is_low;
  range.has_high = !is_low;
  (is_low ? range.bounds.low : range.bounds.high) = measure->value;
  return range;
}

void report_dash(Context& context, View dash) {
  const Span span = dash.span();
  context
      .report(Code::dash_range, span,
              fmt::format("a range is written with two dots, not `{}`", dash.text()))
      .with_fix({Fix::Kind::safe, "write `..`", {{span, ".."}}});
}

}  // namespace

View number_child(View parent) {
  for (const View child : parent) {
    if (child.is(Kind::number) || child.is(Kind::bad_number)) return child;
  }
  return {};
}

std::optional<Rational> read_number(Context& context, View view) {
  if (!view) return std::nullopt;
  if (view.is(Kind::bad_number)) {
    report_bad_number(context, view);
    return std::nullopt;
  }
  const auto value = number_value(view.text());
  if (!value) {
    context.report(Code::number_too_large, view.span(), "this number has more than 18 digits")
        .with_mend("write fewer digits, or a larger unit");
    return std::nullopt;
  }
  if (!value->is_defined()) {
    context.report(Code::bad_number, view.span(), "nothing can be divided by nought")
        .with_mend("write how much there is: `1/2`");
    return std::nullopt;
  }
  return value;
}

bool is_unit(const Context& context, std::string_view word) {
  return context.names.units.find(std::string(word)) != nullptr;
}

std::optional<UnitId> read_unit(Context& context, View view) {
  const auto* found = context.names.units.find(unit_name(view));
  if (found == nullptr) {
    report_unknown_unit(context, view);
    return std::nullopt;
  }
  const Unit& unit = context.program[found->value];
  if (!unit.could_be.empty()) {
    report_ambiguous_unit(context, view, unit);
    return std::nullopt;
  }
  return found->value;
}

std::optional<Measure> read_quantity(Context& context, View view) {
  if (!view) return std::nullopt;
  Measure measure;
  measure.span = view.span();
  bool good = true;
  for (const CompoundPart& part : parts_of(view)) {
    good = read_part(context, part, measure) && good;
  }
  if (!good || report_too_large(context, measure)) return std::nullopt;
  return measure;
}

std::optional<Measure> read_measure(Context& context, View view) {
  if (!view) return std::nullopt;
  std::optional<Measure> measure;
  if (const View bracketed = view.child(Kind::bracketed)) {
    const auto value = evaluate(context, bracketed.child(Kind::expression));
    if (!value) return std::nullopt;
    measure = Measure{};
    measure->value = value->value;
    measure->dimension = value->dimension;
    measure->computed = true;
  } else {
    measure = read_quantity(context, view.child(Kind::quantity));
  }
  if (!measure) return std::nullopt;
  measure->span = view.span();
  if (const View per = view.child(Kind::per)) {
    if (!apply_per(context, per, *measure)) return std::nullopt;
  }
  measure->whole = view.child(Kind::whole);
  if (report_too_large(context, *measure)) return std::nullopt;
  return measure;
}

std::optional<MeasureRange> read_range(Context& context, View view) {
  if (!view) return std::nullopt;
  if (const View low = view.child(Kind::at_least)) return read_open_range(context, low, true);
  if (const View high = view.child(Kind::at_most)) return read_open_range(context, high, false);
  std::vector<std::optional<Measure>> sides;
  for (const View child : view) {
    if (child.is(Kind::measure)) sides.push_back(read_measure(context, child));
    if (child.is(Kind::dash)) report_dash(context, child);
  }
  if (sides.empty() || !sides.front() || !sides.back()) return std::nullopt;
  Measure left = *sides.front();
  const Measure& right = *sides.back();
  const bool left_had_unit = left.unit.valid();
  if (sides.size() == 2) take_unit(left, right);
  if (left.dimension != right.dimension) {
    context
        .report(Code::wrong_dimension, view.span(),
                fmt::format("the two ends of this range are {} and {}", describe(left.dimension),
                            describe(right.dimension)))
        .with_mend("give both ends the same kind of unit");
    return std::nullopt;
  }
  if (right.value < left.value) {
    report_empty_range(context, view, left, right, left_had_unit);
    return std::nullopt;
  }
  MeasureRange range;
  range.bounds = {left.value, right.value};
  range.dimension = right.dimension;
  range.first = right;
  range.span = view.span();
  return range;
}

bool expect_dimension(Context& context, const Measure& measure, const Dimension& wanted,
                      std::string_view what, std::string_view example) {
  if (measure.dimension == wanted) return true;
  const bool bare = !measure.unit.valid() && measure.dimension.is_number() && !measure.has_per;
  const bool share = example.find('%') != std::string_view::npos;
  auto& found = context.report(
      bare ? Code::missing_unit : Code::wrong_dimension, measure.span,
      bare
          ? fmt::format("`{}` has no unit", context.sources.text(measure.span))
          : fmt::format("{} is {}, but `{}` is {}", what, share ? "a percentage" : describe(wanted),
                        context.sources.text(measure.span),
                        measure.percent ? "a percentage" : describe(measure.dimension)));
  found.with_mend(fmt::format("write for example `{}`", example));
  return false;
}

std::optional<Rational> read_plain(Context& context, View quantity, const Dimension& wanted,
                                   std::string_view what, std::string_view example) {
  const auto measure = quantity.is(Kind::measure) ? read_measure(context, quantity)
                                                  : read_quantity(context, quantity);
  if (!measure || !expect_dimension(context, *measure, wanted, what, example)) return std::nullopt;
  return measure->value;
}

}  // namespace maslin::language
