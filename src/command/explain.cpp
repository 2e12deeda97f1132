// SPDX-License-Identifier: Apache-2.0
#include <ostream>

#include "command/command.hpp"
#include "diagnostic/render.hpp"
#include "report/explain.hpp"

namespace maslin::command {

int explain(const std::vector<std::string>& words, const Inputs& inputs, Files& files,
            const Streams& streams) {
  std::string name;
  for (const std::string& word : words) name += (name.empty() ? "" : " ") + word;
  // A diagnostic needs no library.
  if (const auto code = code_named(name)) {
    streams.out << page_of(*code);
    return done;
  }
  Session session(files);
  if (const int code = load(session, inputs, streams); code != done) return code;
  const report::Explanation explanation =
      report::explain(session.sources(), session.program(), session.names(), name);
  (explanation.found ? streams.out : streams.err) << explanation.text;
  return explanation.found ? done : findings;
}

}  // namespace maslin::command
