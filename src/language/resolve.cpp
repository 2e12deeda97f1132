// SPDX-License-Identifier: Apache-2.0
#include "language/resolve.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <sstream>

#include "base/spelling.hpp"
#include "language/context.hpp"
#include "language/let.hpp"
#include "language/membership.hpp"
#include "language/resolve_parts.hpp"
#include "language/values.hpp"
#include "syntax/advice.hpp"
#include "syntax/words.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

// Declarations in the order of their ids, as the declaring steps met them.
class Resolver {
 public:
  explicit Resolver(Context& context)
      : context_(context),
        next_class_(context.program.classes.size()),
        next_framework_(context.program.frameworks.size()),
        next_route_(context.program.routes.size()) {}

  void run(const std::deque<syntax::SyntaxTree>& trees) {
    const std::size_t classes = next_class_;
    const std::size_t frameworks = next_framework_;
    declare(trees);
    for (const auto& tree : trees) resolve_units(context_, syntax::root(tree));
    resolve_things(trees);
    // Most files declare neither: then the library's memberships stand as they are. A method asks
    // for them.
    if (classes != next_class_ || !context_.declared.empty()) find_members(context_.program);
    context_.program.own_ingredients = context_.declared;
    resolve_rest(trees);
    check_claimed_processes(context_, frameworks);
    take_on_floors(context_.program, frameworks);
    check_unused_lets(context_);
  }

 private:
  void declare(const std::deque<syntax::SyntaxTree>& trees) {
    for (const syntax::SyntaxTree& tree : trees) {
      const View file = syntax::root(tree);
      declare_units(context_, file);
      declare_things(context_, file);
      declare_frameworks(context_, file);
      declare_routes(context_, file);
      declare_lets(context_, file);
    }
  }

  // Classes and ingredients before what is made of them, in whatever order they are written.
  void resolve_things(const std::deque<syntax::SyntaxTree>& trees) {
    for (const syntax::SyntaxTree& tree : trees) {
      for (const View item : syntax::root(tree)) {
        if (item.is(Kind::class_declaration)) {
          resolve_class(context_, item, context_.program.classes[next_class_++]);
        } else if (item.is(Kind::ingredient)) {
          const IngredientId id = context_.declared[next_ingredient_++];
          resolve_ingredient(context_, item, context_.program.ingredients[id.index]);
        }
      }
    }
  }

  // A framework after the one it refines, in whatever order they are written.
  void resolve_frameworks(const std::deque<syntax::SyntaxTree>& trees) {
    auto& frameworks = context_.program.frameworks;
    const std::size_t first = next_framework_;
    std::vector<View> open;
    for (const syntax::SyntaxTree& tree : trees) {
      for (const View item : syntax::root(tree)) {
        if (item.is(Kind::framework)) open.push_back(item);
      }
    }
    for (std::size_t i = 0; i < open.size(); ++i) {
      find_parent(context_, open[i], frameworks[first + i]);
    }
    std::vector<bool> resolved(open.size(), false);
    const auto is_ready = [&](FrameworkId parent) {
      return !parent.valid() || parent.index < first || resolved[parent.index - first];
    };
    for (bool more = true; more;) {
      more = false;
      for (std::size_t i = 0; i < open.size(); ++i) {
        if (resolved[i] || !is_ready(frameworks[first + i].refines)) continue;
        resolve_framework(context_, open[i], frameworks[first + i]);
        resolved[i] = true;
        more = true;
      }
    }
    for (std::size_t i = 0; i < open.size(); ++i) {
      if (resolved[i]) continue;
      Framework& framework = frameworks[first + i];
      context_
          .report(Code::refines_itself, framework.span,
                  fmt::format("following `refines` from `{}` leads in a circle", framework.name))
          .with_mend("let one of them stand by itself");
      framework.poisoned = true;
    }
  }

  void resolve_rest(const std::deque<syntax::SyntaxTree>& trees) {
    resolve_frameworks(trees);
    for (const syntax::SyntaxTree& tree : trees) {
      for (const View item : syntax::root(tree)) resolve_item(item);
    }
  }

  void resolve_item(View item) {
    Program& program = context_.program;
    switch (item.kind()) {
      case Kind::basket:
        program.baskets.emplace_back();
        resolve_basket(context_, item, program.baskets.back());
        break;
      case Kind::kitchen:
        program.kitchens.emplace_back();
        resolve_kitchen(context_, item, program.kitchens.back());
        break;
      case Kind::route:
        resolve_route(context_, item, program.routes[next_route_++]);
        break;
      case Kind::standard:
        program.standards.push_back(resolve_standard(context_, item));
        break;
      case Kind::batch:
        program.batches.emplace_back();
        resolve_batch(context_, item, program.batches.back());
        break;
      default:
        break;
    }
  }

  Context& context_;
  std::size_t next_class_;
  std::size_t next_ingredient_ = 0;  // of those declared
  std::size_t next_framework_;
  std::size_t next_route_;
};

void run(const Sources& sources, const std::deque<syntax::SyntaxTree>& trees, Resolved& result,
         Diagnostics& diagnostics, bool in_library) {
  std::unordered_map<std::string, NamedValue> lets;
  Context context{sources, diagnostics, result.program, result.names, lets};
  context.in_library = in_library;
  Resolver(context).run(trees);
}

}  // namespace

Resolved resolve_library(const Sources& sources, const std::deque<syntax::SyntaxTree>& library,
                         Diagnostics& diagnostics) {
  Resolved result;
  run(sources, library, result, diagnostics, true);
  result.program.library_frameworks = result.program.frameworks.size();
  result.program.library_classes = result.program.classes.size();
  result.program.library_routes = result.program.routes.size();
  result.program.library_standards = result.program.standards.size();
  return result;
}

void resolve(const Sources& sources, const std::deque<syntax::SyntaxTree>& user, Resolved& library,
             Diagnostics& diagnostics) {
  run(sources, user, library, diagnostics, false);
}

namespace {

// `PEAR` for `pear`: nothing else can be meant.
std::optional<std::string> in_small_letters(const Context& context, const std::string& key) {
  const std::string small = lower_case(key);
  if (small == key || context.names.things.find(small) == nullptr) return std::nullopt;
  return small;
}

bool is_of_class(const Program& program, std::size_t ingredient, ClassId id) {
  return ingredient < program.classes_of.size() &&
         id.index < program.classes_of[ingredient].size() &&
         program.classes_of[ingredient][id.index];
}

// A class where one of it is meant, or one where its class is meant.
void report_wrong_kind(Context& context, View name, const std::string& key, const Thing& thing) {
  constexpr std::size_t offered = 4;
  std::vector<std::string> others;
  const Program& program = context.program;
  if (thing.of_class.valid()) {
    for (std::size_t i = 0; i < program.ingredients.size(); ++i) {
      if (is_of_class(program, i, thing.of_class)) others.push_back(program.ingredients[i].name);
    }
  } else {
    for (const ClassId id : program[thing.ingredient].parents) others.push_back(program[id].name);
  }
  const bool more = others.size() > offered;
  if (more) others.resize(offered);
  const std::string list = others.empty() ? "" : ": " + one_of(others) + (more ? ", or …" : "");
  auto& found = context.report(
      Code::wrong_kind, name.span(),
      thing.of_class.valid()
          ? fmt::format("`{}` is a class of ingredients, and one ingredient is meant here", key)
          : fmt::format("`{}` is an ingredient, and a class is meant here", key));
  found.with_mend(thing.of_class.valid() ? "name the one it is" + list : "name a class" + list);
}

// As it has to be written: in quotes where a word of it would end it.
std::string written_name(const std::string& key) {
  std::istringstream words(key);
  for (std::string word; words >> word;) {
    if (syntax::is_reserved(word)) return '"' + key + '"';
  }
  return key;
}

void offer(View name, const std::vector<std::string>& near, Diagnostic& found) {
  found.with_mend(fmt::format("did you mean {}?", one_of(near)));
  for (const std::string& each : near) {
    found.with_fix({Fix::Kind::suggested, fmt::format("write `{}`", each), {{name.span(), each}}});
  }
}

// The nearest names of the fitting kind; of one thing only its own name, or else the nearest.
std::vector<std::string> near_things(const Context& context, const std::string& key,
                                     Wanted wanted) {
  constexpr std::size_t looked_at = 12;
  constexpr std::size_t offered = 4;
  std::vector<std::string_view> known;
  for (const std::string_view each : context.names.things.all()) {
    const Thing thing = context.names.things.find(std::string(each))->value;
    const bool fits =
        wanted == Wanted::anything || (wanted == Wanted::ingredient) == thing.ingredient.valid();
    if (fits) known.push_back(each);
  }
  std::vector<std::string> result;
  std::vector<Thing> offered_things;
  const auto near = nearest(key, known, looked_at);
  for (const std::string& each : near) {
    const Thing thing = context.names.things.find(each)->value;
    const bool again =
        std::any_of(offered_things.begin(), offered_things.end(), [&](const Thing& other) {
          return other.ingredient == thing.ingredient && other.of_class == thing.of_class;
        });
    if (again || result.size() == offered) continue;
    offered_things.push_back(thing);
    const std::string& own = thing.ingredient.valid() ? context.program[thing.ingredient].name
                                                      : context.program[thing.of_class].name;
    const bool own_is_near = std::find(near.begin(), near.end(), own) != near.end();
    result.push_back(own_is_near ? own : each);
  }
  return result;
}

// "apple, onion, vinegar" for `apple onion vinegar`: the longest names first; empty where it is not
// made of names alone.
std::string with_commas(const Context& context, std::string_view key) {
  for (std::size_t end = key.size(); end != std::string_view::npos && end > 0;
       end = key.rfind(' ', end - 1)) {
    const std::string first(key.substr(0, end));
    if (context.names.things.find(first) == nullptr) continue;
    if (end == key.size()) return first;
    const std::string others = with_commas(context, key.substr(end + 1));
    if (!others.empty()) return first + ", " + others;
  }
  return {};
}

}  // namespace

std::optional<Thing> find_thing(Context& context, View name, Wanted wanted) {
  const std::string key = normal_name(name);
  const auto* found = context.names.things.find(key);
  if (found != nullptr) {
    const Thing thing = found->value;
    const bool fits =
        wanted == Wanted::anything || (wanted == Wanted::ingredient) == thing.ingredient.valid();
    if (fits) return thing;
    report_wrong_kind(context, name, key, thing);
    return std::nullopt;
  }
  if (const auto small = in_small_letters(context, key)) {
    context.report(Code::unknown_name, name.span(), fmt::format("`{}` is not known", key))
        .with_mend(fmt::format("names are written as they are declared: `{}`", *small))
        .with_fix({Fix::Kind::safe, fmt::format("write `{}`", *small), {{name.span(), *small}}});
    return std::nullopt;
  }
  // No longer list is written without commas by a slip; and trying all ways stays little work.
  constexpr long most_blanks = 7;
  const bool short_enough = std::count(key.begin(), key.end(), ' ') <= most_blanks;
  const std::string several = short_enough ? with_commas(context, key) : std::string();
  if (!several.empty()) {
    context
        .report(Code::unknown_name, name.span(),
                fmt::format("`{}` is no name, but several side by side", key))
        .with_mend(fmt::format("put commas between them: `{}`", several))
        .with_fix({Fix::Kind::suggested, "put commas between them", {{name.span(), several}}});
    return std::nullopt;
  }
  const auto near = near_things(context, key, wanted);
  const bool choice = near.size() > 1 && near[0].find(key) != std::string::npos &&
                      near[1].find(key) != std::string::npos;
  auto& report = context.report(choice ? Code::ambiguous_name : Code::unknown_name, name.span(),
                                choice ? fmt::format("`{}` could be several things", key)
                                       : fmt::format("nothing is known by the name `{}`", key));
  if (const std::string_view advice = syntax::advice_on_name(key); !advice.empty() && !choice) {
    report.with_mend(std::string(advice));
  } else if (is_unit(context, key)) {
    report.with_mend(fmt::format("`{}` is a unit: name what is weighed, `onion 2 {}`", key, key));
  } else if (!near.empty()) {
    offer(name, near, report);
  } else if (const std::string_view home = syntax::home_of(key); !home.empty()) {
    report.with_mend(fmt::format("`{}` belongs in {}", key, home));
  } else {
    report.with_mend(fmt::format("declare it: `ingredient {} is … {{ … }}`", written_name(key)));
  }
  return std::nullopt;
}

std::string one_of(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) text += i + 1 == names.size() ? " or " : ", ";
    text += fmt::format("`{}`", names[i]);
  }
  return text;
}

std::vector<Target> resolve_targets(Context& context, View parent, Wanted wanted) {
  std::vector<Target> targets;
  for (const View child : parent) {
    if (!child.is(Kind::name)) continue;
    if (auto target = resolve_target(context, child, wanted)) targets.push_back(std::move(*target));
  }
  return targets;
}

std::optional<Target> resolve_target(Context& context, View name, Wanted wanted) {
  const auto thing = find_thing(context, name, wanted);
  if (!thing) return std::nullopt;
  Target target;
  target.name = normal_name(name);
  target.of_class = thing->of_class;
  target.ingredient = thing->ingredient;
  target.span = name.span();
  return target;
}

void report_duplicate(Context& context, Code code, std::string_view what, const std::string& name,
                      Span again, Span first, std::string_view mend) {
  context.report(code, again, fmt::format("{} `{}` is there twice", what, name))
      .with_because(first, "first here")
      .with_mend(std::string(mend));
}

}  // namespace maslin::language
