// SPDX-License-Identifier: Apache-2.0
#include "report/explain.hpp"

#include <nlohmann/json.hpp>
#include <ostream>

#include "command/command.hpp"
#include "command/envelope.hpp"
#include "report/json_explain.hpp"

namespace maslin::command {

int explain(const std::vector<std::string>& words, const Inputs& inputs, Files& files,
            const Streams& streams) {
  std::string name;
  for (const std::string& word : words) name += (name.empty() ? "" : " ") + word;
  Session session(files);
  // A diagnostic is asked about while the files are wrong, and needs none of them.
  const Inputs read = code_named(name) ? Inputs() : inputs;
  if (const int code = load(session, read, streams); code != done) return code;
  const report::Explanation explanation =
      report::explain(session.sources(), session.program(), session.names(), name);
  if (streams.envelope != nullptr) {
    (void)print_diagnostics(session, streams);
    streams.envelope->set_result(
        "explain", report::explain_json(session.sources(), session.program(), name, explanation));
    return explanation.found ? done : findings;
  }
  (explanation.found ? streams.out : streams.err) << explanation.text;
  return explanation.found ? done : findings;
}

}  // namespace maslin::command
