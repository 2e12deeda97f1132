// SPDX-License-Identifier: Apache-2.0
#include "language/readable.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "language/readings.hpp"
#include "language/resolve_parts.hpp"

namespace maslin::language {
namespace {

using syntax::View;

const std::array<Readable, 10>& readable() {
  static const std::array<Readable, 10> all = {
      {{"pH", dimensions::number, Scale::own, true, Rational(14)},
       {filling_temperature, dimensions::temperature},
       {"storage temperature", dimensions::temperature},
       {"soluble solids", dimensions::number, Scale::percent},
       {"salt", dimensions::number, Scale::percent},
       {"titratable acidity", dimensions::number, Scale::percent},
       {"water activity", dimensions::number, Scale::own, true, Rational(1)},
       {"seal", dimensions::number, Scale::none},
       {"weight", dimensions::mass, Scale::own, false},
       {"temperature", dimensions::temperature, Scale::own, false}}};
  return all;
}

std::string_view example_of(const Readable& what) {
  if (what.dimension == dimensions::mass) return "weight 5.02 kg with pan";
  if (what.dimension == dimensions::temperature) return "85 °C";
  return what.scale == Scale::percent ? "66 %" : "pH 3.7";
}

void report_unreadable(Context& context, View figure, bool by_routes) {
  const std::string name = normal_name(figure.text());
  std::vector<std::string_view> known;
  std::vector<std::string> all;
  for (const Readable& each : readable()) {
    if (by_routes && !each.by_routes) continue;
    known.push_back(each.name);
    all.emplace_back(each.name);
  }
  auto& found = context.report(Code::unknown_property, figure.span(),
                               fmt::format("`{}` is nothing that is read of a batch", name));
  const auto near = nearest(name, known, 1);
  if (near.empty()) {
    found.with_mend("what is read is " + one_of(all));
    return;
  }
  found.with_mend(fmt::format("did you mean `{}`?", near[0]));
  found.with_fix({Fix::Kind::suggested, "write `" + near[0] + "`", {{figure.span(), near[0]}}});
}

}  // namespace

std::vector<std::string_view> reading_names() {
  std::vector<std::string_view> names;
  for (const Readable& each : readable()) {
    if (each.by_routes) names.push_back(each.name);
  }
  return names;
}

const Readable* read_readable(Context& context, View figure, bool by_routes) {
  const std::string name = normal_name(figure.text());
  const auto& all = readable();
  const auto* found = std::find_if(all.begin(), all.end(), [&](const Readable& each) {
    return each.name == name && (each.by_routes || !by_routes);
  });
  if (found != all.end()) return found;
  report_unreadable(context, figure, by_routes);
  return nullptr;
}

std::optional<Rational> read_figure_of(Context& context, const Readable& what, View written) {
  if (what.scale == Scale::none) {
    context
        .report(Code::unexpected, written.span(),
                fmt::format("a {} has no figure: it is looked at", what.name))
        .with_mend("write `seal all`, or how many hold: `seal 8 of 9`");
    return std::nullopt;
  }
  const auto measure = read_measure(context, written);
  const std::string_view example = example_of(what);
  if (!measure || !expect_dimension(context, *measure, what.dimension, what.name, example)) {
    return std::nullopt;
  }
  if (what.scale == Scale::percent && !is_share(context, *measure, example)) return std::nullopt;
  const Rational most =
      what.scale == Scale::percent ? Rational(1) : what.most.value_or(measure->value);
  const bool wrong_scale = what.most.has_value() && measure->percent;
  if (wrong_scale || measure->value > most) {
    context
        .report(Code::figure_out_of_range, measure->span,
                fmt::format("this cannot be a reading of {}", what.name))
        .with_mend(fmt::format("look at the digits and the unit: `{}`", example));
    return std::nullopt;
  }
  return measure->value;
}

}  // namespace maslin::language
