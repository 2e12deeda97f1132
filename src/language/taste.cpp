// SPDX-License-Identifier: Apache-2.0
#include "language/taste.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

std::optional<Adjustment> resolve_adjustment(Context& context, View view,
                                             const Framework& framework) {
  const auto target = resolve_target(context, view.child(Kind::name), Wanted::anything);
  const auto factor = read_number(context, number_child(view));
  if (!target || !factor) return std::nullopt;
  const auto place =
      std::find_if(framework.additions.begin(), framework.additions.end(),
                   [&](const Addition& each) { return each.target.name == target->name; });
  if (place == framework.additions.end()) {
    context
        .report(Code::nothing_to_replace, target->span,
                fmt::format("`{}` is not among what is added per kilogram", target->name))
        .with_mend(fmt::format("add `{}` under `per kilogram`, or leave this out", target->name));
    return std::nullopt;
  }
  return Adjustment{static_cast<std::size_t>(place - framework.additions.begin()), *factor,
                    view.span()};
}

}  // namespace

std::optional<Variant> resolve_variant(Context& context, View view, const Framework& framework) {
  Variant variant;
  variant.name = normal_name(view.child(Kind::name));
  variant.span = view.child(Kind::name).span();
  for (const Variant& other : framework.variants) {
    if (other.name != variant.name) continue;
    report_duplicate(context, Code::duplicate, "the variant", variant.name, variant.span,
                     other.span);
    return std::nullopt;
  }
  for (const View child : view.child(Kind::variant_block)) {
    if (child.is(Kind::bad_item)) return std::nullopt;
    if (!child.is(Kind::adjustment)) continue;
    const auto adjustment = resolve_adjustment(context, child, framework);
    if (!adjustment) return std::nullopt;
    variant.adjustments.push_back(*adjustment);
  }
  return variant;
}

Framework with_taste(const Framework& framework, const Variant& variant) {
  Framework result = framework;
  result.title += ", " + variant.name;
  result.taste = variant.name;
  for (const Adjustment& adjustment : variant.adjustments) {
    Addition& addition = result.additions[adjustment.addition];
    addition.range = {addition.range.low * adjustment.factor,
                      addition.range.high * adjustment.factor};
    if (addition.prefer) addition.prefer = *addition.prefer * adjustment.factor;
  }
  return result;
}

}  // namespace maslin::language
