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

namespace {

// Of a batch where there is one, by what was used; else of a plan. None after a report.
std::vector<label::Label> make_labels(Session& session, PlanOptions options,
                                      const std::string& wanted) {
  const auto choice = choose_batch(session, wanted, options);
  if (!choice.good) return {};
  const auto task = make_task(session, options, choice.batch ? Baskets::optional : Baskets::asked);
  if (!task) return {};
  if (!task->basket.valid()) {
    return label::make_labels(session.program(), session.program()[*choice.batch], *task, nullptr,
                              session.diagnostics());
  }
  const auto made = make_plan(session, *task);
  if (!made.plan) return {};
  if (!choice.batch) {
    return {label::make_label(session.program(), *made.plan, session.diagnostics())};
  }
  return label::make_labels(session.program(), session.program()[*choice.batch], *task, &*made.plan,
                            session.diagnostics());
}

}  // namespace

int label(const Inputs& inputs, const PlanOptions& options, const LabelOptions& label_options,
          Files& files, const Streams& streams) {
  Session session(files);
  if (const int code = load(session, inputs, streams); code != done) return code;
  const auto labels = make_labels(session, options, label_options.batch);
  const int code = print_diagnostics(session, streams);
  if (labels.empty()) return code == done ? findings : code;
  if (streams.envelope != nullptr) {
    streams.envelope->set_result("labels", report::labels_json(labels));
  } else if (options.to == "html") {
    streams.out << (label_options.card ? report::card_html(labels) : report::label_html(labels));
  } else {
    streams.out << (label_options.card ? report::card_text(labels) : report::label_text(labels));
  }
  return code;
}

}  // namespace maslin::command
