// SPDX-License-Identifier: Apache-2.0
#include <map>
#include <nlohmann/json.hpp>
#include <ostream>

#include "command/command.hpp"
#include "command/envelope.hpp"
#include "command/mended.hpp"
#include "command/task.hpp"
#include "plan/make.hpp"
#include "plan/solve.hpp"
#include "report/csv.hpp"
#include "report/html.hpp"
#include "report/json_blend.hpp"
#include "report/json_plan.hpp"
#include "report/markdown.hpp"
#include "report/sheet.hpp"
#include "report/shopping.hpp"
#include "report/text.hpp"

namespace maslin::command {
namespace {

// The linear programme that the plan would start from, for those who want to check it.
int print_blend(Session& session, const plan::Task& task, const Streams& streams) {
  const language::Program& program = session.program();
  const language::Kitchen* kitchen = task.kitchen.valid() ? &program[task.kitchen] : nullptr;
  const blend::Grounding grounding{program, program[task.framework], program[task.basket], kitchen};
  const bool good = check_grounding(grounding, session.diagnostics());
  const int code = print_diagnostics(session, streams);
  if (!good) return code;
  blend::Setting setting;
  setting.goal = plan::goal_of(task.aim);
  streams.envelope->set_result("blend",
                               report::blend_json(session.sources(), task, grounding, setting,
                                                  blend::ground(grounding, setting)));
  return code;
}

void print_plan(const Session& session, const plan::Plan& plan, const std::string& to,
                const Streams& streams) {
  if (streams.envelope != nullptr) {
    streams.envelope->set_result("plan",
                                 report::plan_json(session.sources(), session.program(), plan));
    return;
  }
  using Printer = std::string (*)(const report::Sheet&);
  const std::map<std::string_view, Printer> printers = {{"text", report::to_text},
                                                        {"markdown", report::to_markdown},
                                                        {"html", report::to_html},
                                                        {"shopping", report::to_shopping},
                                                        {"csv", report::to_csv}};
  streams.out << printers.at(to)(report::make_sheet(session.sources(), session.program(), plan));
}

}  // namespace

int plan(const Inputs& inputs, const PlanOptions& options, Files& files, const Streams& streams) {
  Session session(files);
  if (const int code = load(session, inputs, streams); code != done) return code;
  auto task = make_task(session, options);
  if (!task) return print_diagnostics(session, streams);
  if (options.to == "blend" && streams.envelope != nullptr) {
    return print_blend(session, *task, streams);
  }
  const auto made = make_plan(session, *task);
  const int code = print_diagnostics(session, streams);
  if (!made.plan) {
    if (options.mend) return write_mended(session, made.mends, files, streams);
    return code == done ? findings : code;
  }
  print_plan(session, *made.plan, options.to, streams);
  return code;
}

}  // namespace maslin::command
