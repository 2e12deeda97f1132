// SPDX-License-Identifier: Apache-2.0
#include "language/refine.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "language/membership.hpp"

namespace maslin::language {
namespace {

bool is_same(const Target& a, const Target& b) {
  return a.ingredient == b.ingredient && a.of_class == b.of_class;
}

// Where a method is empty, or was not understood, it has no place of its own.
Span place_of_method(const Framework& framework) {
  return framework.method.span.file.valid() ? framework.method.span : framework.span;
}

Diagnostic& report_wider(Context& context, Span span, std::string what, Span parent) {
  return context.report(Code::widens_parent, span, std::move(what))
      .with_because(parent, "the parent")
      .with_why("what was checked of the parent would not hold of the child");
}

bool lies_within(const Bounds& inner, const Bounds& outer) {
  return outer.low <= inner.low && inner.high <= outer.high;
}

// Whether everything the one takes is taken by the other.
bool takes_no_more(const Program& program, const Target& inner, const Target& outer) {
  const auto all = members(program, inner);
  return std::all_of(all.begin(), all.end(),
                     [&](IngredientId id) { return takes(program, outer, id); });
}

// The slot of the parent that a line of the child narrows: the same name, or the one that takes all
// it takes.
template <class Slot>
const Slot* slot_of(const Program& program, const std::vector<Slot>& slots, const Target& target) {
  for (const Slot& slot : slots) {
    if (is_same(slot.target, target)) return &slot;
  }
  for (const Slot& slot : slots) {
    if (takes_no_more(program, target, slot.target)) return &slot;
  }
  return nullptr;
}

template <class Slot>
bool narrows(Context& context, const Slot& child, const Slot& parent) {
  bool good = true;
  if (!takes_no_more(context.program, child.target, parent.target)) {
    report_wider(
        context, child.target.span,
        fmt::format("`{}` takes more than `{}` does", child.target.name, parent.target.name),
        parent.span);
    good = false;
  }
  if (!lies_within(child.range, parent.range)) {
    report_wider(context, child.range_span, "this range reaches outside the parent's",
                 parent.range_span)
        .with_mend("keep inside it, or write the framework out in full");
    good = false;
  }
  return good;
}

bool is_dry_spice(const Context& context, const Target& target) {
  const auto* spice = context.names.things.find("spice");
  const auto* herb = context.names.things.find("dried herb");
  const auto all = members(context.program, target);
  return !all.empty() && std::all_of(all.begin(), all.end(), [&](IngredientId id) {
    return (spice != nullptr && is_member(context.program, id, spice->value.of_class)) ||
           (herb != nullptr && is_member(context.program, id, herb->value.of_class));
  });
}

// Larger pieces take heat and acid later. A child that says nothing cuts as its parent does.
bool cuts_no_larger(Context& context, ProduceShare& child, const ProduceShare& parent) {
  if (!child.cut) child.cut = parent.cut;
  if (!parent.cut || !parent.cut->at_most) return true;
  const bool measured = child.cut->at_most.has_value();
  if (measured && *child.cut->at_most <= *parent.cut->at_most) return true;
  report_wider(context, child.cut->span,
               measured ? "these pieces are larger than the parent's"
                        : "this does not say that the pieces are as small as the parent's",
               parent.cut->span)
      .with_mend("cut them as small, or write the framework out in full");
  return false;
}

// Where nothing is said an acid is of 5 %.
bool is_no_weaker(Context& context, const Addition& child, const Addition& parent) {
  const Rational usual(Rational::Wide{5}, Rational::Wide{100});
  if (child.strength.value_or(usual) >= parent.strength.value_or(usual)) return true;
  report_wider(context, child.span, "this is weaker than what the parent adds", parent.span)
      .with_mend("keep its strength, or write the framework out in full");
  return false;
}

bool keeps_to(Context& context, ProduceShare& child, const ProduceShare& parent) {
  return cuts_no_larger(context, child, parent);
}
bool keeps_to(Context& context, Addition& child, const Addition& parent) {
  return is_no_weaker(context, child, parent);
}

// The parent's slots in their order, each as the child narrows it.
template <class Slot>
bool lay_over(Context& context, const std::vector<Slot>& parent, std::vector<Slot>& child,
              bool spice_may_be_new) {
  bool good = true;
  std::vector<Slot> result = parent;
  for (Slot& own : child) {
    const Slot* slot = slot_of(context.program, parent, own.target);
    if (slot != nullptr) {
      good = narrows(context, own, *slot) && good;
      good = keeps_to(context, own, *slot) && good;
      result[static_cast<std::size_t>(slot - parent.data())] = std::move(own);
      continue;
    }
    if (spice_may_be_new && is_dry_spice(context, own.target)) {
      result.push_back(std::move(own));
      continue;
    }
    report_wider(context, own.span, fmt::format("the parent has no `{}`", own.target.name),
                 parent.empty() ? own.span : parent.front().span)
        .with_mend(spice_may_be_new ? "a child may add dry spice, and nothing else"
                                    : "a child names no produce that its parent does not take");
    good = false;
  }
  child = std::move(result);
  return good;
}

// A spice that no step of the parent's names goes in with what is added last.
void add_to_method(Method& method, const Target& target, std::size_t index) {
  Step* last = nullptr;
  for (Stage& stage : method.stages) {
    for (Step& step : stage.steps) {
      if (step.kind == StepKind::add) last = &step;
    }
  }
  if (last == nullptr) return;
  last->parts.push_back({target.name, {{SlotKind::addition, index}}, 1, false, target.span});
}

Duration heated(const Method& method) {
  Duration sum;
  for (const Stage& stage : method.stages) {
    for (const Step& step : stage.steps) {
      const bool heats = step.kind == StepKind::simmer || is_at_the_boil(step.kind);
      if (heats && step.lasting) sum += step.lasting->time.low;
    }
  }
  return sum;
}

bool check_limit(Context& context, const Limit& limit, const Limit& of_parent) {
  const bool same = limit.property == of_parent.property && limit.whole == of_parent.whole &&
                    (limit.property || is_same(limit.share_of, of_parent.share_of));
  if (!same) return true;
  const bool low = of_parent.has_low && limit.has_low && limit.range.low < of_parent.range.low;
  const bool high = of_parent.has_high && limit.has_high && limit.range.high > of_parent.range.high;
  if (!low && !high) return true;
  report_wider(context, limit.span, "this limit asks less than the parent's", of_parent.span)
      .with_mend("leave it out: the parent's holds");
  return false;
}

// A child fills as hot as its parent does.
bool check_filling(Context& context, const Framework& parent, const Framework& child) {
  const auto& asked = parent.method.filling;
  if (!asked || !asked->heat) return true;
  const auto& own = child.method.filling;
  if (own && own->heat && *own->heat >= *asked->heat) return true;
  report_wider(context, own ? own->span : place_of_method(child),
               own ? "this is filled less hot than the parent's" : "this method fills nothing hot",
               asked->span)
      .with_mend("fill as hot, or leave the method to the parent");
  return false;
}

bool is_longer(const std::optional<Range<Duration>>& time,
               const std::optional<Range<Duration>>& than) {
  return time && than && time->high > than->high;
}

}  // namespace

void begin_child(const Framework& parent, Framework& child) {
  Framework result = parent;
  result.name = child.name;
  result.title = child.name;
  result.version = child.version;
  // What refines a tested one goes back to its source, and was not tested itself.
  if (parent.status != Status::tested) {
    result.status = Status::own;
    result.status_source.clear();
  }
  result.status_span = {};
  result.span = child.span;
  result.produce_span = child.span;
  result.refines = child.refines;
  result.shares.clear();
  result.additions.clear();
  result.poisoned = parent.poisoned;
  child = std::move(result);
}

bool narrow_parent(Context& context, const Framework& parent, Framework& child) {
  const bool shares = lay_over(context, parent.shares, child.shares, false);
  const bool additions = lay_over(context, parent.additions, child.additions, true);
  for (std::size_t i = parent.additions.size(); i < child.additions.size(); ++i) {
    add_to_method(child.method, child.additions[i].target, i);
  }
  return shares && additions;
}

bool check_child(Context& context, const Framework& parent, const Framework& child) {
  bool good = true;
  for (std::size_t i = parent.substitutions.size(); i < child.substitutions.size(); ++i) {
    report_wider(context, child.substitutions[i].span, "a child adds no substitution", parent.span)
        .with_mend("leave it out, or write the framework out in full");
    good = false;
  }
  for (std::size_t i = parent.limits.size(); i < child.limits.size(); ++i) {
    for (const Limit& of_parent : parent.limits) {
      good = check_limit(context, child.limits[i], of_parent) && good;
    }
  }
  if (heated(child.method) < heated(parent.method)) {
    report_wider(context, place_of_method(child),
                 "this method cooks for less time than the parent's", parent.method.span)
        .with_mend("cook as long, or leave the method to the parent");
    good = false;
  }
  good = check_filling(context, parent, child) && good;
  if (is_longer(child.best_within, parent.best_within)) {
    report_wider(context, child.span, "a child does not keep longer than its parent", parent.span);
    good = false;
  }
  if (child.once_opened && parent.once_opened &&
      is_longer(child.once_opened->within, parent.once_opened->within)) {
    report_wider(context, child.once_opened->span,
                 "once opened, a child does not keep longer than its parent", parent.span);
    good = false;
  }
  return good;
}

}  // namespace maslin::language
