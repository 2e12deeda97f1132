// SPDX-License-Identifier: Apache-2.0
#include "support/planning.hpp"

#include <gtest/gtest.h>

#include <array>
#include <cstdio>

#include "report/sheet.hpp"
#include "report/text.hpp"

namespace maslin::test {

Planned::Planned(const std::string& text, plan::Aim aim)
    : Planned({{"/kitchen/test.maslin", text}}, "/kitchen/test.maslin", aim) {}

Planned::Planned(const Texts& texts, const std::string& root, plan::Aim aim)
    : files_(texts), session_(std::make_unique<Session>(files_)) {
  session_->load(root);
  session_->compile();
  const language::Program& program = session_->program();
  if (session_->diagnostics().has_errors() || program.baskets.empty()) return;
  task_.framework = language::FrameworkId(program.frameworks.size() - 1);
  task_.basket = language::BasketId(program.baskets.size() - 1);
  if (!program.kitchens.empty()) {
    task_.kitchen = language::KitchenId(program.kitchens.size() - 1);
  }
  task_.aim = aim;
  made_ = plan::make_plan(program, task_, session_->diagnostics());
}

std::vector<std::string> Planned::codes() const {
  std::vector<std::string> result;
  for (const Diagnostic& each : session_->diagnostics().all()) {
    result.emplace_back(name_of(each.code));
  }
  return result;
}

std::string Planned::messages() const {
  std::string result;
  for (const Diagnostic& each : session_->diagnostics().all()) {
    result += each.message + "\n";
    for (const std::string& mend : each.mends) result += "  " + mend + "\n";
  }
  return result;
}

plan::Solved Planned::optimum() const {
  if (!task_.framework.valid()) return {};
  const language::Program& all = program();
  const language::Kitchen* kitchen = task_.kitchen.valid() ? &all[task_.kitchen] : nullptr;
  const blend::Grounding grounding{all, all[task_.framework], all[task_.basket], kitchen};
  blend::Setting setting;
  setting.goal = plan::goal_of(task_.aim);
  return plan::solve_best(grounding, setting);
}

std::string Planned::sheet() const {
  return report::to_text(report::make_sheet(session_->sources(), program(), plan()));
}

double Planned::weight(const std::string& ingredient) const {
  Rational sum;
  for (const auto* list : {&draft().produce, &draft().additions, &draft().substitutes}) {
    for (const plan::Taken& taken : *list) {
      if (program()[taken.ingredient].name == ingredient) sum += taken.weight;
    }
  }
  return sum.to_double();
}

plan::Aim prepared_aim(long grams) { return {plan::AimKind::prepared, Rational(grams)}; }
plan::Aim finished_aim(long grams) { return {plan::AimKind::finished, Rational(grams)}; }

std::string output_of(const std::string& program, const std::string& arguments) {
  const std::string found = "command -v " + program + " >/dev/null 2>&1";
  if (std::system(found.c_str()) != 0) {
    ADD_FAILURE() << "the program `" << program << "` is needed for this check";
    return {};
  }
  std::string output;
  std::FILE* pipe = popen((program + " " + arguments + " 2>&1").c_str(), "r");
  std::array<char, 4096> buffer{};
  for (std::size_t got = 1; got > 0;) {
    got = std::fread(buffer.data(), 1, buffer.size(), pipe);
    output.append(buffer.data(), got);
  }
  pclose(pipe);
  return output;
}

}  // namespace maslin::test
