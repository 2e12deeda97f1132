// SPDX-License-Identifier: Apache-2.0
#include "support/planning.hpp"

#include <gtest/gtest.h>

#include <array>
#include <cstdio>

namespace maslin::test {

Planned::Planned(const std::string& text, plan::Aim aim)
    : files_({{"/kitchen/test.maslin", text}}), session_(std::make_unique<Session>(files_)) {
  session_->load("/kitchen/test.maslin");
  session_->compile();
  const language::Program& program = session_->program();
  if (session_->diagnostics().has_errors() || program.baskets.empty()) return;
  plan::Task task;
  task.framework = language::FrameworkId(program.frameworks.size() - 1);
  task.basket = language::BasketId(program.baskets.size() - 1);
  if (!program.kitchens.empty()) {
    task.kitchen = language::KitchenId(program.kitchens.size() - 1);
  }
  task.aim = aim;
  made_ = plan::make_plan(program, task, session_->diagnostics());
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
