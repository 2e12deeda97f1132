// SPDX-License-Identifier: Apache-2.0
#include "command/task.hpp"

#include <fmt/format.h>

#include "command/aim.hpp"
#include "language/taste.hpp"
#include "plan/fill.hpp"

namespace maslin::command {
namespace {

// One of several by its name; the only one where no name is given.
template <class List>
std::optional<std::size_t> choose(const List& list, std::size_t first, const std::string& wanted,
                                  std::string_view what, Diagnostics& diagnostics) {
  std::string names;
  for (std::size_t i = 0; i < list.size(); ++i) {
    if (!wanted.empty() && list[i].name == wanted) return i;
    if (i >= first) names += fmt::format("{}`{}`", names.empty() ? "" : ", ", list[i].name);
  }
  const std::size_t count = list.size() - first;
  if (wanted.empty() && count == 1) return first;
  auto& found = diagnostics.report_without_place(
      Code::no_choice, !wanted.empty() ? fmt::format("no {} is named `{}`", what, wanted)
                       : count == 0    ? fmt::format("these files declare no {}", what)
                                       : fmt::format("these files declare {} {}{}", count, what,
                                                  what == "batch" ? "es" : "s"));
  std::vector<std::string_view> known;
  known.reserve(list.size());
  for (const auto& each : list) known.push_back(each.name);
  const auto near = language::nearest(wanted, known, 1);
  if (!near.empty()) {
    found.with_mend(fmt::format("did you mean `{}`?", near[0]));
  } else if (count > 0) {
    found.with_mend(fmt::format("choose with `--{}`: {}", what, names));
  } else if (what == "framework") {
    found.with_mend(
        "name a file with a framework as well, or one of the library with `--framework`: "
        "`maslin explain frameworks` lists them");
  } else {
    found.with_mend(fmt::format("name a file with a {} as well", what));
  }
  return std::nullopt;
}

struct Named {
  std::string name;
};

std::optional<plan::Task> chosen_task(Session& session, const PlanOptions& options,
                                      Baskets baskets) {
  const language::Program& program = session.program();
  Diagnostics& diagnostics = session.diagnostics();
  const auto framework = choose(program.frameworks, program.library_frameworks, options.framework,
                                "framework", diagnostics);
  plan::Task task;
  bool good = framework.has_value();
  if (framework) task.framework = language::FrameworkId(*framework);
  const bool none = baskets == Baskets::optional && program.baskets.empty();
  if (!none || !options.basket.empty()) {
    const auto basket = choose(program.baskets, 0, options.basket, "basket", diagnostics);
    if (basket) task.basket = language::BasketId(*basket);
    good = good && basket;
  }
  // A kitchen may be left out; several need a choice.
  if (!program.kitchens.empty() || !options.kitchen.empty()) {
    const auto kitchen = choose(program.kitchens, 0, options.kitchen, "kitchen", diagnostics);
    if (kitchen) task.kitchen = language::KitchenId(*kitchen);
    good = good && kitchen;
  }
  if (!options.aim.empty()) {
    const auto aim = read_aim(session, options.aim);
    if (aim) task.aim = *aim;
    good = good && aim;
  }
  if (!options.fill.empty()) {
    auto jars = read_jars(session, options.fill);
    good = good && jars;
    if (jars) task.jars = std::move(*jars);
  }
  return good ? std::optional(task) : std::nullopt;
}

// A variant of taste is a framework of its own, beside the one it varies.
bool take_taste(Session& session, const std::string& taste, plan::Task& task) {
  language::Program& program = session.program();
  const language::Framework& framework = program[task.framework];
  std::string names;
  for (const language::Variant& variant : framework.variants) {
    if (variant.name == taste) {
      program.frameworks.push_back(language::with_taste(framework, variant));
      task.framework = language::FrameworkId(program.frameworks.size() - 1);
      return true;
    }
    names += fmt::format("{}`{}`", names.empty() ? "" : ", ", variant.name);
  }
  auto& found = session.diagnostics().report_without_place(
      Code::no_choice, fmt::format("`{}` has no taste named `{}`", framework.name, taste));
  found.with_mend(names.empty() ? "declare it: `taste { sharper { vinegar * 1.10 } }`"
                                : "one of " + names);
  return false;
}

}  // namespace

BatchChoice choose_batch(Session& session, const std::string& wanted, PlanOptions& options) {
  const language::Program& program = session.program();
  std::vector<Named> batches;
  std::vector<std::size_t> places;
  for (std::size_t i = 0; i < program.batches.size(); ++i) {
    const language::Batch& batch = program.batches[i];
    if (!options.framework.empty() && program[batch.framework].name != options.framework) continue;
    batches.push_back({batch.name});
    places.push_back(i);
  }
  if (batches.empty() && wanted.empty()) return {};
  const auto found = choose(batches, 0, wanted, "batch", session.diagnostics());
  if (!found) return {std::nullopt, false};
  const language::BatchId id(places[*found]);
  options.framework = program[program[id].framework].name;
  return {id, true};
}

std::optional<plan::Task> make_task(Session& session, const PlanOptions& options, Baskets baskets) {
  auto task = chosen_task(session, options, baskets);
  if (!task || options.taste.empty() || take_taste(session, options.taste, *task)) return task;
  return std::nullopt;
}

plan::Made make_plan(Session& session, plan::Task task) {
  if (!task.jars.empty()) task.aim = plan::aim_to_fill(session.program(), task);
  return plan::make_plan(session.program(), task, session.diagnostics());
}

}  // namespace maslin::command
