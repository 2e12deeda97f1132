// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "language/membership.hpp"
#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

bool names_the_same(const Target& a, const Thing& b) {
  return a.ingredient == b.ingredient && a.of_class == b.of_class;
}

// Every slot of a framework that a test holds for. A donor that is a slot of its own already, or
// that only stands for another strength of the same, is none beside it.
template <class Holds>
std::vector<Slot> slots_where(const Framework& framework, const Holds& holds) {
  std::vector<Slot> slots;
  for (std::size_t i = 0; i < framework.shares.size(); ++i) {
    if (holds(framework.shares[i].target)) slots.push_back({SlotKind::produce, i});
  }
  for (std::size_t i = 0; i < framework.additions.size(); ++i) {
    if (holds(framework.additions[i].target)) slots.push_back({SlotKind::addition, i});
  }
  if (!slots.empty()) return slots;
  for (std::size_t i = 0; i < framework.substitutions.size(); ++i) {
    if (holds(framework.substitutions[i].donor)) slots.push_back({SlotKind::substitute, i});
  }
  return slots;
}

class MethodReader {
 public:
  MethodReader(Context& context, const Framework& framework)
      : context_(context), framework_(framework) {}

  // False when something in it was reported.
  bool read(View block, Method& method) {
    for (const View entry : block) {
      switch (entry.kind()) {
        case Kind::day_before:
        case Kind::stage:
          read_stage(entry, method);
          break;
        case Kind::fill:
          read_fill(entry, method);
          break;
        case Kind::bad_item:
          good_ = false;
          break;
        default:
          break;
      }
    }
    return good_;
  }

 private:
  void read_stage(View entry, Method& method) {
    Stage stage;
    stage.span = entry.child(Kind::keyword).span();
    stage.name = entry.is(Kind::stage) ? normal_name(entry.child(Kind::name)) : "before";
    if (entry.is(Kind::day_before)) stage.days_before = read_days(entry);
    if (entry.is(Kind::stage)) report_repeat(entry.child(Kind::name), method, stage.name);
    for (const View step : entry.child(Kind::step_block)) {
      if (step.is(Kind::bad_item)) good_ = false;
      if (auto read = read_step(step)) stage.steps.push_back(std::move(*read));
    }
    method.stages.push_back(std::move(stage));
  }

  void report_repeat(View name, const Method& method, const std::string& called) {
    for (const Stage& other : method.stages) {
      if (other.days_before > 0 || other.name != called) continue;
      report_duplicate(context_, Code::duplicate, "the stage", called, name.span(), other.span);
      good_ = false;
      return;
    }
  }

  long read_days(View entry) {
    const View count = number_child(entry);
    if (!count) return 1;
    constexpr int most = 60;
    const auto number = read_number(context_, count);
    if (number && number->is_integer() && number->is_positive() && *number <= Rational(most)) {
      return static_cast<long>(number->to_double());
    }
    if (number) {
      context_
          .report(Code::figure_out_of_range, count.span(),
                  fmt::format("days before are counted whole, from 1 to {}", most))
          .with_mend("write `day before` or for example `2 days before`");
    }
    good_ = false;
    return 1;
  }

  // ---- Steps ------------------------------------------------------------------------------------

  static std::optional<StepKind> kind_of(View step) {
    switch (step.kind()) {
      case Kind::add:
        return StepKind::add;
      case Kind::pack:
        return StepKind::pack;
      case Kind::take_out:
        return StepKind::take_out;
      case Kind::soak:
        return StepKind::soak;
      case Kind::macerate:
        return StepKind::macerate;
      case Kind::dry_salt:
        return StepKind::dry_salt;
      case Kind::brine:
        return StepKind::brine;
      case Kind::strain:
        return StepKind::strain;
      case Kind::simmer:
        return step.has_keyword("boil") ? StepKind::boil : StepKind::simmer;
      case Kind::reduce:
        return StepKind::reduce;
      case Kind::ferment:
        return StepKind::ferment;
      default:
        return std::nullopt;
    }
  }

  std::optional<Step> read_step(View view) {
    const auto kind = kind_of(view);
    if (!kind) return std::nullopt;
    Step step;
    step.kind = *kind;
    step.span = view.span();
    read_parts(view, step);
    for (const View child : view) read_clause(child, step);
    if (step.kind == StepKind::reduce) read_target(view, step);
    return step;
  }

  void read_clause(View child, Step& step) {
    switch (child.kind()) {
      case Kind::range:  // of simmer, boil, ferment
        step.lasting = read_lasting(child);
        break;
      case Kind::lasting:
        step.lasting = read_lasting(child.child(Kind::range));
        break;
      case Kind::at_least:  // of reduce
        step.lasting = read_least(child);
        break;
      case Kind::kept_at:
        step.heat = read_heat(child.child(Kind::range));
        break;
      case Kind::lid:
        step.lid = child.text() == "covered" ? Lid::covered : Lid::uncovered;
        break;
      case Kind::until:
        step.until = text_of(text_child(child));
        break;
      case Kind::salt_share:
        step.strength = read_share_of(child.child(Kind::measure), "at 10 %");
        break;
      case Kind::losing:
        step.lost = read_shares(child.child(Kind::range), "losing 5 .. 10 %");
        break;
      case Kind::keeping:
        step.kept = read_shares(child.child(Kind::range), "keeping 60 .. 80 %");
        break;
      default:
        break;
    }
  }

  // What stands before `in`, and the one part behind it.
  void read_parts(View view, Step& step) {
    bool inside = false;
    for (const View child : view) {
      if (child.is(Kind::keyword) && child.text() == "in") inside = true;
      if (!child.is(Kind::name) && !child.is(Kind::portion) && !child.is(Kind::rest) &&
          !child.is(Kind::everything)) {
        continue;
      }
      auto part = read_part(child);
      if (!part) {
        good_ = false;
      } else if (inside) {
        step.in = std::move(*part);
      } else {
        step.parts.push_back(std::move(*part));
      }
    }
  }

  std::optional<Part> read_part(View view) {
    const View name = view.is(Kind::name) ? view : view.child(Kind::name);
    const auto thing = find_thing(context_, name, Wanted::anything);
    if (!thing) return std::nullopt;
    Part part;
    part.name = normal_name(name);
    part.span = view.span();
    part.rest = view.is(Kind::rest);
    if (view.is(Kind::portion) && !read_fraction(view, part)) return std::nullopt;
    part.slots = slots_where(framework_, [&](const Target& target) {
      return view.is(Kind::everything) ? is_all_of(target, *thing) : names_the_same(target, *thing);
    });
    if (!part.slots.empty()) return part;
    report_unknown_part(name, *thing, view.is(Kind::everything));
    return std::nullopt;
  }

  bool read_fraction(View view, Part& part) {
    const View number = number_child(view);
    const auto fraction = read_number(context_, number);
    if (!fraction) return false;
    if (fraction->is_positive() && *fraction <= Rational(1)) {
      part.fraction = *fraction;
      return true;
    }
    context_
        .report(Code::figure_out_of_range, number.span(),
                "a part of something is more than nothing and no more than all of it")
        .with_mend("write for example `1/2 of vinegar`");
    return false;
  }

  bool is_all_of(const Target& target, const Thing& thing) const {
    if (names_the_same(target, thing)) return true;
    const auto list = members(context_.program, target);
    return thing.of_class.valid() && !list.empty() &&
           std::all_of(list.begin(), list.end(), [&](IngredientId id) {
             return is_member(context_.program, id, thing.of_class);
           });
  }

  void report_unknown_part(View name, const Thing& thing, bool all) {
    const std::string wanted = normal_name(name);
    auto& found = context_.report(
        Code::unknown_part, name.span(),
        all ? fmt::format("no slot of this framework holds nothing but `{}`", wanted)
            : fmt::format("`{}` is neither a share of the produce nor added per kilogram", wanted));
    std::vector<std::string> takers;
    bool whole = false;
    const auto look = [&](const Target& target) {
      if (thing.ingredient.valid() && takes(context_.program, target, thing.ingredient)) {
        takers.push_back(target.name);
      }
      whole = whole || (thing.of_class.valid() && is_all_of(target, thing));
    };
    for (const ProduceShare& share : framework_.shares) look(share.target);
    for (const Addition& addition : framework_.additions) look(addition.target);
    if (whole && !all) {
      found.with_mend(fmt::format("write `all {}` for every slot of that class", wanted));
      found.with_fix({Fix::Kind::suggested,
                      "write `all " + wanted + "`",
                      {{{name.span().file, name.span().begin, name.span().begin}, "all "}}});
    } else if (!takers.empty()) {
      found.with_mend(fmt::format("a step names the slot it goes by: {}", one_of(takers)));
    } else {
      found.with_mend("name it as it stands under `produce` or `per kilogram`, or add it there");
    }
  }

  // ---- Times, heats, shares ---------------------------------------------------------------------

  std::optional<Lasting> read_lasting(View view) {
    const auto range = read_range(context_, view);
    if (!range || !expect_dimension(context_, range->first, dimensions::time, "how long it takes",
                                    "20 min")) {
      good_ = false;
      return std::nullopt;
    }
    if (!range->has_low) return Lasting{{Duration(0), Duration(range->bounds.high)}, false};
    if (!range->has_high) {
      return Lasting{Range<Duration>::exactly(Duration(range->bounds.low)), true};
    }
    return Lasting{{Duration(range->bounds.low), Duration(range->bounds.high)}, false};
  }

  std::optional<Lasting> read_least(View at_least) {
    const auto time = read_plain(context_, at_least.child(Kind::measure), dimensions::time,
                                 "how long at least", "at least 20 min");
    if (!time) {
      good_ = false;
      return std::nullopt;
    }
    return Lasting{Range<Duration>::exactly(Duration(*time)), true};
  }

  std::optional<Range<Temperature>> read_heat(View view) {
    const auto range = read_range(context_, view);
    if (!range || !expect_dimension(context_, range->first, dimensions::temperature,
                                    "how warm it stands", "18 .. 22 °C")) {
      good_ = false;
      return std::nullopt;
    }
    const Bounds& bounds = range->bounds;
    return Range<Temperature>{Temperature(range->has_low ? bounds.low : bounds.high),
                              Temperature(range->has_high ? bounds.high : bounds.low)};
  }

  std::optional<Rational> read_share_of(View view, std::string_view example) {
    const auto measure = read_measure(context_, view);
    if (!measure || !is_share(context_, *measure, example) ||
        !is_part(measure->value, measure->span, example)) {
      good_ = false;
      return std::nullopt;
    }
    return measure->value;
  }

  std::optional<Bounds> read_shares(View view, std::string_view example) {
    const auto range = read_range(context_, view);
    if (!range || !is_share(context_, range->first, example)) {
      good_ = false;
      return std::nullopt;
    }
    const Bounds bounds{range->has_low ? range->bounds.low : Rational(0),
                        range->has_high ? range->bounds.high : Rational(1)};
    if (!is_part(bounds.high, range->span, example)) {
      good_ = false;
      return std::nullopt;
    }
    return bounds;
  }

  bool is_part(const Rational& share, Span span, std::string_view example) {
    if (share.is_positive() && share <= Rational(1)) return true;
    context_
        .report(Code::figure_out_of_range, span,
                "a share is more than nothing and no more than 100 %")
        .with_mend(fmt::format("write for example `{}`", example));
    return false;
  }

  void read_target(View view, Step& step) {
    const View figure = view.child(Kind::figure);
    const std::string name = normal_name(figure.text());
    const auto share = read_share_of(view.child(Kind::measure), "reduce to soluble solids 40 %");
    if (name == "soluble solids") {
      step.solids = share;
    } else if (name == "weight") {
      step.weight = share;
    } else {
      context_
          .report(Code::unknown_property, figure.span(),
                  fmt::format("nothing is boiled down to `{}`", name))
          .with_mend(
              "write `reduce to soluble solids 40 %`, or `reduce to weight 60 %` of what is "
              "in the pan then");
      good_ = false;
    }
  }

  // ---- Filling ----------------------------------------------------------------------------------

  void read_fill(View view, Method& method) {
    if (method.filling) {
      report_duplicate(context_, Code::duplicate, "the statement", "fill",
                       view.child(Kind::keyword).span(), method.filling->span, "leave one out");
      good_ = false;
      return;
    }
    Filling filling;
    filling.span = view.span();
    filling.hot = view.has(Kind::hot);
    if (const View heat = view.child(Kind::filling_heat)) {
      filling.heat = bounded<Temperature>(heat.child(Kind::quantity), dimensions::temperature,
                                          "how hot it is filled", "at 85 °C", {30, 110});
    }
    if (const View space = view.child(Kind::headspace)) {
      filling.headspace = bounded<Length>(space.child(Kind::quantity), dimensions::length,
                                          "a headspace", "headspace 13 mm", {0, 60});
    }
    method.filling = filling;
  }

  template <class Kind>
  std::optional<Kind> bounded(View quantity, const Dimension& dimension, std::string_view what,
                              std::string_view example, const Bounds& between) {
    const auto value = read_plain(context_, quantity, dimension, what, example);
    if (value && between.contains(*value)) return Kind(*value);
    if (value) {
      context_
          .report(Code::figure_out_of_range, quantity.span(),
                  fmt::format("{} lies between {} and {}, and this does not", what,
                              between.low.to_decimal(0), between.high.to_decimal(0)))
          .with_mend(fmt::format("write for example `{}`", example));
    }
    good_ = false;
    return std::nullopt;
  }

  Context& context_;
  const Framework& framework_;
  bool good_ = true;
};

}  // namespace

bool read_method(Context& context, View statement, Framework& result) {
  if (result.method.is_stated()) {
    report_duplicate(context, Code::duplicate, "the statement", "method",
                     statement.child(Kind::keyword).span(), result.method.span,
                     "leave one out, or put both into one");
    return false;
  }
  Method method;
  method.span = statement.child(Kind::keyword).span();
  const bool good = MethodReader(context, result).read(statement.child(Kind::method_block), method);
  result.method = std::move(method);
  return good;
}

}  // namespace maslin::language
