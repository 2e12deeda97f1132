// SPDX-License-Identifier: Apache-2.0
#include "language/let.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

constexpr int deepest_let = 100;

std::optional<Quantity> value_of_name(Context& context, View name) {
  const std::string key = normal_name(name);
  const auto found = context.lets.find(key);
  if (found == context.lets.end()) {
    std::vector<std::string_view> known;
    for (const auto& [each, value] : context.lets) known.push_back(each);
    auto& report =
        context.report(Code::unknown_name, name.span(), fmt::format("no value is named `{}`", key));
    const auto near = nearest(key, known, 1);
    if (!near.empty()) {
      report.with_mend(fmt::format("did you mean `{}`?", near[0]));
      report.with_fix({Fix::Kind::suggested, "write `" + near[0] + "`", {{name.span(), near[0]}}});
    }
    return std::nullopt;
  }
  NamedValue& named = found->second;
  named.used = true;
  if (named.in_progress) {
    context.report(Code::cyclic_value, name.span(), fmt::format("`{}` is made from itself", key))
        .with_because(named.declaration.span(), "declared here")
        .with_mend("write one of them as a plain quantity");
    named.failed = true;
    return std::nullopt;
  }
  if (!named.value && !named.failed) {
    if (context.let_depth == deepest_let) {
      context.report(Code::too_deep, name.span(), "values are built on values too many times over");
      named.failed = true;
      return std::nullopt;
    }
    ++context.let_depth;
    named.in_progress = true;
    const auto value = evaluate(context, named.declaration.child(Kind::expression));
    --context.let_depth;
    named.in_progress = false;
    named.value = value;
    named.failed = !value;
    return value;
  }
  return named.value;
}

std::optional<Quantity> factor_value(Context& context, View factor) {
  if (const View name = factor.child(Kind::name)) return value_of_name(context, name);
  const auto measure = read_measure(context, factor.child(Kind::measure));
  if (!measure) return std::nullopt;
  return Quantity{measure->value, measure->dimension};
}

std::optional<Quantity> term_value(Context& context, View term) {
  std::optional<Quantity> result;
  bool divides = false;
  for (const View child : term) {
    if (child.is(Kind::divide)) divides = true;
    if (child.is(Kind::times)) divides = false;
    if (!child.is(Kind::factor)) continue;
    const auto value = factor_value(context, child);
    if (!value) return std::nullopt;
    if (!result) {
      result = value;
    } else if (divides && value->value.is_zero()) {
      context.report(Code::bad_number, child.span(), "nothing can be divided by nought");
      return std::nullopt;
    } else if (divides) {
      result = Quantity{result->value / value->value, result->dimension / value->dimension};
    } else {
      result = Quantity{result->value * value->value, result->dimension * value->dimension};
    }
  }
  return result;
}

}  // namespace

std::optional<Quantity> evaluate(Context& context, View expression) {
  std::optional<Quantity> result;
  bool subtracts = false;
  for (const View child : expression) {
    if (child.is(Kind::minus)) subtracts = true;
    if (child.is(Kind::add_sign)) subtracts = false;
    if (!child.is(Kind::term)) continue;
    const auto value = term_value(context, child);
    if (!value) return std::nullopt;
    if (!result) {
      result = value;
      continue;
    }
    if (result->dimension != value->dimension) {
      context
          .report(Code::wrong_dimension, child.span(),
                  fmt::format("{} and {} cannot be {}", describe(result->dimension),
                              describe(value->dimension),
                              subtracts ? "taken from one another" : "added up"))
          .with_mend("give both the same kind of unit");
      return std::nullopt;
    }
    result->value = subtracts ? result->value - value->value : result->value + value->value;
  }
  if (result && !result->value.is_defined()) {
    context
        .report(Code::number_too_large, expression.span(),
                "this value is too large or too fine to reckon with exactly")
        .with_mend("use fewer digits");
    return std::nullopt;
  }
  if (result && result->value.is_negative()) {
    context.report(Code::bad_number, expression.span(), "this value is less than nothing")
        .with_why("nothing that is weighed or measured here can be negative")
        .with_mend("take the smaller from the larger");
    return std::nullopt;
  }
  return result;
}

void check_unused_lets(Context& context) {
  std::vector<std::string> names;
  for (const auto& [name, value] : context.lets) names.push_back(name);
  std::sort(names.begin(), names.end());
  for (const std::string& name : names) {
    NamedValue& named = context.lets.find(name)->second;
    if (named.used) continue;
    const View declaration = named.declaration;
    (void)evaluate(context, declaration.child(Kind::expression));
    context
        .report(Code::unused_let, declaration.child(Kind::name).span(),
                fmt::format("nothing uses `{}`", name))
        .with_mend(fmt::format("use it as `({})`, or leave it out", name));
  }
}

}  // namespace maslin::language
