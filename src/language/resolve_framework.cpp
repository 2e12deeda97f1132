// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "language/refine.hpp"
#include "language/resolve_parts.hpp"
#include "language/taste.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

const Rational kilogram(1000);  // g

bool refuse_other_basis(Context& context, const Measure& measure, std::string_view where) {
  const auto whole = read_whole(context, measure);
  if (!whole) return true;
  if (*whole == Whole::none || *whole == Whole::prepared_produce) return false;
  context
      .report(Code::mixed_basis, measure.whole.span(),
              fmt::format("{} goes by prepared produce, not by this", where))
      .with_why("a share of what is finished depends on how far it is boiled down")
      .with_mend("state it under `limits`");
  return true;
}

std::optional<Bounds> closed(const MeasureRange& range, const Rational& low, const Rational& high) {
  return Bounds{range.has_low ? range.bounds.low : low, range.has_high ? range.bounds.high : high};
}

// By whatever name.
bool is_same(const Target& a, const Target& b) {
  return a.ingredient == b.ingredient && a.of_class == b.of_class;
}

void narrow(Context& context, View statement, Target& target) {
  if (const View narrowing = statement.child(Kind::narrowing)) {
    target.narrowed = resolve_targets(context, narrowing, Wanted::anything);
  }
}

std::optional<Rational> read_preferred_share(Context& context, View statement) {
  const View prefer = statement.child(Kind::prefer);
  if (!prefer) return std::nullopt;
  const auto measure = read_measure(context, prefer.child(Kind::measure));
  if (!measure || !is_share(context, *measure, "prefer 10 %")) return std::nullopt;
  return measure->value;
}

void check_preferred(Context& context, View statement, const std::optional<Rational>& prefer,
                     const Bounds& range) {
  if (!prefer || range.contains(*prefer)) return;
  context
      .report(Code::prefer_outside, statement.child(Kind::prefer).span(),
              "what is preferred lies outside the range")
      .with_because(statement.child(Kind::range).span(), "the range")
      .with_mend("prefer something inside the range, or widen it");
}

bool read_share(Context& context, View statement, Framework& result) {
  auto target = resolve_target(context, statement.child(Kind::name), Wanted::anything);
  const auto range = read_range(context, statement.child(Kind::range));
  if (!target || !range) return false;
  if (!is_share(context, range->first, "12 .. 20 %") ||
      refuse_other_basis(context, range->first, "a share of the produce")) {
    return false;
  }
  narrow(context, statement, *target);
  ProduceShare share;
  share.target = std::move(*target);
  share.range = *closed(*range, 0, 1);
  share.span = statement.span();
  share.range_span = range->span;
  if (share.range.high > Rational(1)) {
    context.report(Code::figure_out_of_range, range->span, "no share can be more than 100 %")
        .with_mend("100 % is all of the produce");
    return false;
  }
  share.prefer = read_preferred_share(context, statement);
  check_preferred(context, statement, share.prefer, share.range);
  share.cut = read_cut(context, statement.child(Kind::cut));
  for (const ProduceShare& other : result.shares) {
    if (!is_same(other.target, share.target)) continue;
    report_duplicate(context, Code::duplicate, "the share of", share.target.name, share.target.span,
                     other.target.span, "leave one out");
    return false;
  }
  result.shares.push_back(std::move(share));
  return true;
}

// How much per kilogram: what is measured, and how many base units of it one written unit is.
struct PerKilogram {
  Measured measured{};
  Rational factor = 1;
};

std::optional<PerKilogram> per_kilogram_form(Context& context, const Measure& measure) {
  const Dimension& dimension = measure.dimension;
  if (refuse_other_basis(context, measure, "what is added")) return std::nullopt;
  const bool per_mass = measure.has_per || measure.computed;
  if (dimension == dimensions::mass) return PerKilogram{Measured::by_weight, 1};
  if (dimension == dimensions::volume) return PerKilogram{Measured::by_volume, 1};
  if (dimension == dimensions::volume / dimensions::mass && per_mass) {
    return PerKilogram{Measured::by_volume, kilogram};
  }
  if (dimension.is_number() && per_mass) return PerKilogram{Measured::by_weight, kilogram};
  if (dimension.is_number() && measure.percent) {
    if (measure.whole) return PerKilogram{Measured::by_weight, kilogram};
    context.report(Code::percent_of_what, measure.span, "this percentage does not say of what")
        .with_why("of the prepared produce and of the finished product are very different weights")
        .with_mend(fmt::format(
            "write `{} of prepared produce`, or the weight for each kilogram of it: `{} g`",
            context.sources.text(measure.span), (measure.value * kilogram).to_decimal(1)))
        .with_fix(
            {Fix::Kind::suggested,
             "say of prepared produce",
             {{{measure.span.file, measure.span.end, measure.span.end}, " of prepared produce"}}});
    return std::nullopt;
  }
  if (dimension.is_number()) return PerKilogram{Measured::by_count, 1};
  context
      .report(Code::wrong_dimension, measure.span,
              fmt::format("what is added is a weight, a volume or a count, but `{}` is {}",
                          context.sources.text(measure.span), describe(dimension)))
      .with_mend("write for example `300 g`, `460 ml` or `2`");
  return std::nullopt;
}

std::optional<Rational> read_strength(Context& context, View strength) {
  if (!strength) return std::nullopt;
  const auto measure = read_measure(context, strength.child(Kind::measure));
  if (!measure || !is_share(context, *measure, "5 % acidity")) return std::nullopt;
  if (!measure->value.is_positive() || measure->value > Rational(1)) {
    context
        .report(Code::figure_out_of_range, measure->span,
                "an acidity lies between 0 and 100 g in 100 ml")
        .with_mend("write it as on the bottle: `5 % acidity`");
    return std::nullopt;
  }
  return measure->value;  // g per 100 ml as a percentage: g per ml
}

void read_preferred_amount(Context& context, View statement, const PerKilogram& form,
                           Addition& addition) {
  const View prefer = statement.child(Kind::prefer);
  if (!prefer) return;
  const auto measure = read_measure(context, prefer.child(Kind::measure));
  if (!measure) return;
  const auto preferred = per_kilogram_form(context, *measure);
  if (!preferred) return;
  if (preferred->measured != form.measured) {
    context
        .report(Code::wrong_dimension, measure->span,
                "what is preferred is not measured as the range is")
        .with_because(statement.child(Kind::range).span(), "the range")
        .with_mend("measure both by weight, or both by volume");
    return;
  }
  addition.prefer = measure->value * preferred->factor;
  check_preferred(context, statement, addition.prefer, addition.range);
}

bool read_addition(Context& context, View statement, Framework& result) {
  auto target = resolve_target(context, statement.child(Kind::name), Wanted::anything);
  const auto range = read_range(context, statement.child(Kind::range));
  if (!target || !range) return false;
  const auto form = per_kilogram_form(context, range->first);
  if (!form) return false;
  if (!range->has_high) {
    context.report(Code::open_figure, range->span, "this amount has no upper end")
        .with_mend("write a range: `420 .. 520 ml`");
    return false;
  }
  narrow(context, statement, *target);
  Addition addition;
  addition.target = std::move(*target);
  addition.measured = form->measured;
  const Bounds bounds = *closed(*range, 0, 0);
  addition.range = {bounds.low * form->factor, bounds.high * form->factor};
  addition.unit = range->first.unit;
  addition.span = statement.span();
  addition.range_span = range->span;
  addition.strength = read_strength(context, statement.child(Kind::strength));
  read_preferred_amount(context, statement, *form, addition);
  for (const Addition& other : result.additions) {
    if (!is_same(other.target, addition.target)) continue;
    report_duplicate(context, Code::duplicate, "the addition of", addition.target.name,
                     addition.target.span, other.target.span, "leave one out");
    return false;
  }
  result.additions.push_back(std::move(addition));
  return true;
}

// After every addition is known: a substitution names one of them.
bool read_substitution(Context& context, View statement, Framework& result) {
  std::vector<View> names;
  for (const View child : statement) {
    if (child.is(Kind::name)) names.push_back(child);
  }
  auto donor = resolve_target(context, names[0], Wanted::anything);
  auto replaced = resolve_target(context, names[1], Wanted::anything);
  if (!donor || !replaced) return false;
  Substitution substitution;
  substitution.span = statement.span();
  const auto place =
      std::find_if(result.additions.begin(), result.additions.end(),
                   [&](const Addition& each) { return each.target.name == replaced->name; });
  if (place == result.additions.end()) {
    context
        .report(Code::nothing_to_replace, names[1].span(),
                fmt::format("`{}` is not among what is added per kilogram", replaced->name))
        .with_mend(fmt::format("add `{}` under `per kilogram`, or leave this out", replaced->name));
    return false;
  }
  substitution.addition = static_cast<std::size_t>(place - result.additions.begin());
  substitution.donor = std::move(*donor);
  substitution.replaced = std::move(*replaced);
  const std::string by = normal_name(statement.child(Kind::property).text());
  const auto property = property_named(by);
  if (!property) {
    context
        .report(Code::unknown_property, statement.child(Kind::property).span(),
                fmt::format("nothing is exchanged by `{}`", by))
        .with_mend("one of sugars, acidity, acetic acid, salt, soluble solids, weight");
    return false;
  }
  substitution.by = *property;
  if (const View extent = statement.child(Kind::extent)) {
    substitution.extent = extent.text() == "full" ? Extent::full : Extent::optional;
  }
  if (const View cap = statement.child(Kind::cap)) {
    const auto measure = read_measure(context, cap.child(Kind::measure));
    if (!measure || !is_share(context, *measure, "up to 50 %")) return false;
    substitution.cap = measure->value;
    substitution.cap_span = cap.span();
  }
  if (const View only = statement.child(Kind::only)) {
    substitution.only = resolve_targets(context, only, Wanted::anything);
  }
  result.substitutions.push_back(std::move(substitution));
  return true;
}

std::optional<Range<Duration>> read_duration(Context& context, View statement) {
  const auto range = read_range(context, statement.child(Kind::range));
  if (!range ||
      !expect_dimension(context, range->first, dimensions::time, "what stands here", "8 weeks")) {
    return std::nullopt;
  }
  const Bounds bounds{range->has_low ? range->bounds.low : Rational(0),
                      range->has_high ? range->bounds.high : range->bounds.low};
  return Range<Duration>{Duration(bounds.low), Duration(bounds.high)};
}

void read_status(View statement, Framework& result) {
  if (statement.has_keyword("own")) result.status = Status::own;
  if (statement.has_keyword("traditional")) result.status = Status::traditional;
  if (statement.has_keyword("tested")) result.status = Status::tested;
  result.status_source = text_of(text_child(statement));
  result.status_span = statement.span();
}

void read_basis(Context& context, View statement) {
  const View name = statement.child(Kind::name);
  if (normal_name(name) == "prepared produce") return;
  context
      .report(Code::unknown_whole, name.span(),
              fmt::format("`{}` is no basis that is understood", normal_name(name)))
      .with_mend("write `basis prepared produce`")
      .with_fix(
          {Fix::Kind::suggested, "write `prepared produce`", {{name.span(), "prepared produce"}}});
}

// Every name inside that is meant to be an ingredient or a class, wherever it stands.
void check_part_names(Context& context, View part) {
  for (const View child : part) {
    const bool names_a_part = part.is(Kind::stage) || part.is(Kind::whole);
    if (child.is(Kind::name) && !names_a_part) {
      (void)find_thing(context, child, Wanted::anything);
    } else if (!child.is(Kind::bad_item)) {
      check_part_names(context, child);
    }
  }
}

class FrameworkReader {
 public:
  FrameworkReader(Context& context, Framework& result) : context_(context), result_(result) {}

  void read(View block) {
    report_repeats(block);
    // By value: the list of frameworks is where this one stands as well.
    std::optional<Framework> parent;
    if (result_.refines.valid()) {
      parent = context_.program[result_.refines];
      begin_child(*parent, result_);
    }
    for (const View statement : block) read_simple(statement);
    for (const View statement : block) {
      if (statement.is(Kind::per_kilogram)) each(statement, Kind::addition_block);
    }
    if (parent && !narrow_parent(context_, *parent, result_)) result_.poisoned = true;
    for (const View statement : block) {
      if (statement.is(Kind::substitute)) each(statement, Kind::substitute_block);
      if (statement.is(Kind::taste)) each(statement, Kind::taste_block);
    }
    for (const View statement : block) {
      if (!statement.is(Kind::method)) continue;
      if (parent) result_.method = {};
      read_steps(statement);
    }
    if (parent && !check_child(context_, *parent, result_)) result_.poisoned = true;
  }

 private:
  // What can only be said once.
  void report_repeats(View block) {
    constexpr Kind once[] = {Kind::title,       Kind::version, Kind::status,
                             Kind::basis,       Kind::mature,  Kind::best_within,
                             Kind::once_opened, Kind::produce, Kind::per_kilogram};
    for (const Kind kind : once) {
      View first;
      for (const View statement : block) {
        if (!statement.is(kind)) continue;
        const View word = statement.child(Kind::keyword);
        if (first) {
          report_duplicate(context_, Code::duplicate, "the statement", std::string(word.text()),
                           word.span(), first.span(), "leave one out, or put both into one");
        } else {
          first = word;
        }
      }
    }
  }

  void read_simple(View statement) {
    switch (statement.kind()) {
      case Kind::title:
        result_.title = text_of(text_child(statement));
        break;
      case Kind::version: {
        const auto number = read_number(context_, number_child(statement));
        if (number) result_.version = *number;
        break;
      }
      case Kind::status:
        read_status(statement, result_);
        break;
      case Kind::basis:
        read_basis(context_, statement);
        break;
      case Kind::mature:
        result_.mature = read_duration(context_, statement);
        break;
      case Kind::best_within:
        result_.best_within = read_duration(context_, statement);
        break;
      case Kind::once_opened:
        result_.once_opened = OnceOpened{};
        result_.once_opened->span = statement.span();
        if (statement.has(Kind::range)) {
          result_.once_opened->within = read_duration(context_, statement);
        }
        break;
      case Kind::note:
        read_texts_into(statement, result_.notes);
        break;
      case Kind::source:
        read_texts_into(statement, result_.sources);
        break;
      case Kind::produce:
        result_.produce_span = statement.child(Kind::keyword).span();
        each(statement, Kind::produce_block);
        break;
      case Kind::limits:
        each(statement, Kind::limits_block);
        break;
      case Kind::bad_item:
        result_.poisoned = true;
        break;
      default:
        break;
    }
  }

  void read_steps(View statement) {
    // Where a slot was not understood nobody knows what it is called; that was told.
    if (result_.poisoned) {
      check_part_names(context_, statement);
    } else if (!read_method(context_, statement, result_)) {
      result_.poisoned = true;
    }
  }

  void each(View statement, Kind block) {
    for (const View child : statement.child(block)) {
      bool good = true;
      switch (child.kind()) {
        case Kind::share:
          good = read_share(context_, child, result_);
          break;
        case Kind::addition:
          good = read_addition(context_, child, result_);
          break;
        case Kind::substitution:
          good = read_substitution(context_, child, result_);
          break;
        case Kind::limit: {
          auto limit = read_limit(context_, child, LimitOf::framework);
          good = limit.has_value();
          if (good) result_.limits.push_back(std::move(*limit));
          break;
        }
        case Kind::variant: {
          auto variant = resolve_variant(context_, child, result_);
          good = variant.has_value();
          if (good) result_.variants.push_back(std::move(*variant));
          break;
        }
        case Kind::route_claim:
          good = read_route_claim(context_, child, result_);
          break;
        case Kind::bad_item:
          good = false;
          break;
        default:
          break;
      }
      if (!good) result_.poisoned = true;
    }
  }

  Context& context_;
  Framework& result_;
};

}  // namespace

void report_unknown_framework(Context& context, View name) {
  const std::string wanted = normal_name(name);
  auto& found = context.report(Code::unknown_name, name.span(),
                               fmt::format("no framework is named `{}`", wanted));
  const auto near = nearest(wanted, context.names.frameworks.all(), 1);
  if (near.empty()) {
    found.with_mend("`maslin explain frameworks` lists those of the library");
    return;
  }
  found.with_mend(fmt::format("did you mean `{}`?", near[0]));
  found.with_fix({Fix::Kind::suggested, "write `" + near[0] + "`", {{name.span(), near[0]}}});
}

void declare_frameworks(Context& context, View file) {
  for (const View item : file) {
    if (!item.is(Kind::framework)) continue;
    const View name = item.child(Kind::name);
    Framework framework;
    framework.name = normal_name(name);
    framework.span = name.span();
    framework.title = framework.name;
    const FrameworkId id(context.program.frameworks.size());
    if (!context.names.frameworks.add(framework.name, id, framework.span)) {
      report_duplicate(context, Code::duplicate, "the framework", framework.name, framework.span,
                       context.names.frameworks.find(framework.name)->span);
    }
    context.program.frameworks.push_back(std::move(framework));
  }
}

void find_parent(Context& context, View declaration, Framework& result) {
  const View refines = declaration.child(Kind::refines);
  if (!refines) return;
  const View name = refines.child(Kind::name);
  const auto* parent = context.names.frameworks.find(normal_name(name));
  if (parent == nullptr) {
    report_unknown_framework(context, name);
    result.poisoned = true;
  } else {
    result.refines = parent->value;
  }
}

bool read_recipe_amounts(Context& context, View block, Recipe& result) {
  Framework amounts;
  FrameworkReader(context, amounts).read(block);
  result.shares = std::move(amounts.shares);
  result.additions = std::move(amounts.additions);
  return !amounts.poisoned;
}

void resolve_framework(Context& context, View declaration, Framework& result) {
  FrameworkReader(context, result).read(declaration.child(Kind::framework_block));
}

}  // namespace maslin::language
