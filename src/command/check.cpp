// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <nlohmann/json.hpp>
#include <ostream>

#include "command/command.hpp"
#include "command/envelope.hpp"
#include "report/json_check.hpp"

namespace maslin::command {

int check(const Inputs& inputs, Files& files, const Streams& streams) {
  Session session(files);
  const int code = load(session, inputs, streams);
  if (code != done) return code;
  const int warned = print_diagnostics(session, streams);
  const language::Program& program = session.program();
  if (streams.envelope != nullptr) {
    streams.envelope->set_result("check", report::check_json(session.sources(), program));
    return warned;
  }
  streams.out << fmt::format(
      "checked: {} framework(s), {} basket(s), {} kitchen(s): names, quantities, types, shares, "
      "classes, substitutions\n",
      program.frameworks.size() - program.library_frameworks, program.baskets.size(),
      program.kitchens.size());
  streams.out << "not checked: whether a basket fits (`maslin plan`); methods, keeping routes, pH "
                 "and water activity\n";
  return warned;
}

}  // namespace maslin::command
