// SPDX-License-Identifier: Apache-2.0
#include "report/left_over.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "plan/weights.hpp"

namespace maslin::report {
namespace {

std::string left_text(const language::Program& program, const plan::Plan& plan) {
  std::string list;
  for (const plan::Leftover& left : plan.verified.leftovers()) {
    list += fmt::format("{}{} {}", list.empty() ? "" : ", ", program[left.ingredient].name,
                        plan::weight_text(left.left.in_base().round_to(1)));
  }
  return list.empty() ? "Nothing." : list + ".";
}

// Named as something to buy, and worth buying by no wish of the framework.
std::string passed_over(const language::Program& program, const plan::Draft& draft) {
  std::string list;
  const auto taken = plan::all_taken(draft);
  for (const language::Line& line : program[draft.task.basket].lines) {
    const bool used = std::any_of(taken.begin(), taken.end(), [&](const plan::TakenId& id) {
      return plan::taken_of(draft, id).ingredient == line.ingredient;
    });
    if (!line.to_buy || used) continue;
    list += (list.empty() ? "" : ", ") + program[line.ingredient].name;
  }
  return list;
}

}  // namespace

Section left_over_section(const language::Program& program, const plan::Plan& plan) {
  Section section{"Left in the basket, ready for the pan", {}, {}, {}, Topic::left_over};
  section.paragraphs.push_back(left_text(program, plan));
  const std::string passed = passed_over(program, plan.verified.draft());
  if (!passed.empty()) section.points.push_back("to buy by the basket, and not needed: " + passed);
  if (!plan.use_up.empty()) {
    section.points.push_back("to use up all that fits the framework, add " + plan.use_up);
  }
  return section;
}

}  // namespace maslin::report
