// SPDX-License-Identifier: Apache-2.0
// Limits, and the shares they and other statements are written as.
#include <fmt/format.h>

#include <algorithm>

#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

void report_sign(Context& context, View comparison) {
  const std::string_view sign = comparison.text();
  auto& found = context.report(Code::comparison_sign, comparison.span(),
                               fmt::format("a limit is written with `<=` or `>=`, not `{}`", sign));
  if (sign == "=") {
    found.with_mend("leave the sign out where exactly this much is meant");
    found.with_fix({Fix::Kind::suggested, "leave it out", {{comparison.span(), ""}}});
    return;
  }
  const std::string better = sign == ">" ? ">=" : "<=";
  found.with_fix({Fix::Kind::safe, "write `" + better + "`", {{comparison.span(), better}}});
}

bool read_limit_range(Context& context, View statement, Limit& limit, Measure& first) {
  if (const View comparison = statement.child(Kind::comparison)) {
    const auto measure = read_measure(context, statement.child(Kind::measure));
    if (!measure) return false;
    const std::string_view sign = comparison.text();
    const bool at_most = sign.starts_with("<") || sign == "≤";
    const bool at_least = sign.starts_with(">") || sign == "≥";
    if (sign == "<" || sign == ">" || sign == "=") {
      report_sign(context, comparison);
    }
    limit.has_high = at_most || sign == "=";
    limit.has_low = at_least || sign == "=";
    limit.range = Bounds::exactly(measure->value);
    first = *measure;
    return true;
  }
  const auto range = read_range(context, statement.child(Kind::range));
  if (!range) return false;
  if (range->has_low && range->has_high && range->bounds.low == range->bounds.high) {
    const Span before{range->span.file, range->span.begin, range->span.begin};
    context
        .report(Code::comparison_sign, range->span,
                "this limit does not say whether it is the least or the most")
        .with_why("nothing that is weighed meets a single value exactly")
        .with_mend("write `<=`, `>=` or a range: `36 .. 46 %`")
        .with_fix({Fix::Kind::suggested, "make it the most", {{before, "<= "}}})
        .with_fix({Fix::Kind::suggested, "make it the least", {{before, ">= "}}});
    return false;
  }
  limit.range = range->bounds;
  limit.has_low = range->has_low;
  limit.has_high = range->has_high;
  first = range->first;
  return true;
}

// `solubel solids`: a figure with a slip of the pen, where no ingredient or class is nearer.
bool report_near_figure(Context& context, View figure, const std::string& name) {
  if (context.names.things.find(name) != nullptr) return false;
  std::vector<std::string_view> known = property_names();
  const auto near = nearest(name, known, 1);
  if (near.empty() || !nearest(name, context.names.things.all(), 1).empty()) return false;
  context
      .report(Code::unknown_property, figure.span(), fmt::format("no figure is named `{}`", name))
      .with_mend(fmt::format("did you mean `{}`?", near[0]))
      .with_fix({Fix::Kind::suggested, "write `" + near[0] + "`", {{figure.span(), near[0]}}});
  return true;
}

// `pH <= 4 %`; 85 % of a water activity could only mean 0.85.
void report_percent(Context& context, const std::string& name, const Measure& measure) {
  auto& found = context.report(Code::wrong_dimension, measure.span,
                               fmt::format("a {} is a plain number without %", name));
  const std::string plain =
      (name == name_of(Property::water_activity) ? measure.value : measure.value * 100)
          .to_decimal(3);
  found.with_fix({Fix::Kind::suggested, "write `" + plain + "`", {{measure.span, plain}}});
}

void report_no_whole(Context& context, const Measure& measure) {
  const Span after{measure.span.file, measure.span.end, measure.span.end};
  context.report(Code::percent_of_what, measure.span, "this limit does not say of what")
      .with_why("what is boiled down holds more of everything in each kilogram")
      .with_mend("end it with `of prepared produce` or `of finished product`")
      .with_fix(
          {Fix::Kind::suggested, "say of prepared produce", {{after, " of prepared produce"}}})
      .with_fix(
          {Fix::Kind::suggested, "say of finished product", {{after, " of finished product"}}});
}

// The more acid and the drier, the lower: from below alone neither keeps anything.
bool check_scale(Context& context, const Limit& limit, const std::string& name) {
  if (!limit.property) return true;
  const bool ph = *limit.property == Property::ph;
  if (!ph && *limit.property != Property::water_activity) return true;
  const Bounds scale = ph ? Bounds{1, 9} : Bounds{0, 1};
  const bool low_fits = !limit.has_low || scale.contains(limit.range.low);
  const bool high_fits = !limit.has_high || scale.contains(limit.range.high);
  if (!low_fits || !high_fits) {
    context.report(Code::figure_out_of_range, limit.span,
                   fmt::format("a limit on the {} lies between {} and {}", name,
                               scale.low.to_decimal(0), scale.high.to_decimal(0)));
    return false;
  }
  if (!limit.has_low || limit.has_high) return true;
  const std::string turned = fmt::format("{} <= {}", name, limit.range.low.to_decimal(3));
  context
      .report(Code::comparison_sign, limit.span,
              fmt::format("this limits the {} from the wrong side", name))
      .with_why(ph ? "the lower a pH, the more acid it is" : "the lower it is, the less grows")
      .with_mend(fmt::format("write `{}`", turned))
      .with_fix({Fix::Kind::suggested, "write `" + turned + "`", {{limit.span, turned}}});
  return false;
}

}  // namespace

// What a measure says it is a share of, or per.
std::optional<Whole> read_whole(Context& context, const Measure& measure) {
  if (!measure.whole) return Whole::none;
  const std::string name = normal_name(measure.whole.child(Kind::name));
  if (name == "prepared produce" || name == "produce") return Whole::prepared_produce;
  if (name == "vegetables and water" || name == "produce and water")
    return Whole::produce_and_water;
  if (name == "finished product" || name == "finished") return Whole::finished_product;
  if (name == "volatile matter") return Whole::volatile_matter;
  if (name == "produce and sweetener") return Whole::produce_and_sweetener;
  context
      .report(Code::unknown_whole, measure.whole.span(),
              fmt::format("`{}` is nothing that a share can be taken of", name))
      .with_mend("write `of prepared produce`, `of vegetables and water` or `of finished product`");
  return std::nullopt;
}

void report_no_percent(Context& context, const Measure& measure, std::string_view example) {
  const std::string_view text = context.sources.text(measure.span);
  auto& found =
      context.report(Code::missing_unit, measure.span, fmt::format("`{}` has no %", text));
  // `0.4` is a share of the whole; a % behind it would make it a hundredth of that.
  if (measure.value <= Rational(1)) {
    found.with_mend(fmt::format("a share is written in %: `{} %` if that was meant",
                                (measure.value * 100).to_decimal(2)));
    return;
  }
  found.with_mend(fmt::format("write for example `{}`", example));
  found.with_fix({Fix::Kind::suggested,
                  "put a % behind it",
                  {{{measure.span.file, measure.span.end, measure.span.end}, " %"}}});
}

bool is_share(Context& context, const Measure& measure, std::string_view example) {
  if (!expect_dimension(context, measure, dimensions::number, "a share", example)) return false;
  if (measure.percent || measure.has_per || measure.computed) return true;
  report_no_percent(context, measure, example);
  return false;
}

std::optional<Limit> read_limit(Context& context, View statement, LimitOf of) {
  Limit limit;
  limit.span = statement.span();
  const View figure = statement.child(Kind::figure);
  const std::string name = normal_name(figure.text());
  limit.property = property_named(name);
  if (!limit.property) {
    if (report_near_figure(context, figure, name)) return std::nullopt;
    auto target = resolve_target(context, figure, Wanted::anything);
    if (!target) return std::nullopt;
    limit.share_of = std::move(*target);
  }
  Measure first;
  if (!read_limit_range(context, statement, limit, first)) return std::nullopt;
  if (limit.property && has_own_scale(*limit.property)) {
    if (!expect_dimension(context, first, dimensions::number, "a limit like this", "pH <= 4.0")) {
      return std::nullopt;
    }
    if (first.percent) {
      report_percent(context, name, first);
      return std::nullopt;
    }
  } else if (!is_share(context, first, "45 % of prepared produce")) {
    return std::nullopt;
  }
  if (!check_scale(context, limit, name)) return std::nullopt;
  const auto whole = read_whole(context, first);
  if (!whole) return std::nullopt;
  limit.whole = *whole;
  if (limit.whole == Whole::produce_and_sweetener && (of != LimitOf::standard || limit.property)) {
    context
        .report(Code::unknown_whole, first.whole.span(),
                "a share of `produce and sweetener` is only asked by the law of a name")
        .with_mend("write `of prepared produce` or `of finished product`");
    return std::nullopt;
  }
  const bool needs_whole = !limit.property || *limit.property == Property::acetic_acid ||
                           *limit.property == Property::acidity;
  if (needs_whole && limit.whole == Whole::none) {
    report_no_whole(context, first);
    return std::nullopt;
  }
  return limit;
}

}  // namespace maslin::language
