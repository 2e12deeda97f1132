// SPDX-License-Identifier: Apache-2.0
#include "label/label.hpp"

#include <nlohmann/json.hpp>
#include <ostream>

#include "command/command.hpp"
#include "command/envelope.hpp"
#include "command/task.hpp"
#include "report/json_label.hpp"
#include "report/label_html.hpp"
#include "report/label_text.hpp"

namespace maslin::command {

int label(const Inputs& inputs, const PlanOptions& options, const LabelOptions& label_options,
          Files& files, const Streams& streams) {
  Session session(files);
  if (const int code = load(session, inputs, streams); code != done) return code;
  const auto task = make_task(session, options);
  if (!task) return print_diagnostics(session, streams);
  const auto made = make_plan(session, *task);
  std::optional<label::Label> label;
  if (made.plan) {
    label = label::make_label(session.program(), *made.plan, session.diagnostics());
  }
  const int code = print_diagnostics(session, streams);
  if (!label) return code == done ? findings : code;
  if (streams.envelope != nullptr) {
    streams.envelope->set_result("label", report::label_json(*label));
  } else if (options.to == "html") {
    streams.out << (label_options.card ? report::card_html(*label) : report::label_html(*label));
  } else {
    streams.out << (label_options.card ? report::card_text(*label) : report::label_text(*label));
  }
  return code;
}

}  // namespace maslin::command
