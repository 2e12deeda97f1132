// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <nlohmann/json.hpp>
#include <ostream>

#include "command/command.hpp"
#include "command/envelope.hpp"
#include "prove/mend.hpp"
#include "report/json_check.hpp"
#include "report/proof.hpp"

namespace maslin::command {

namespace {

// Every framework of the user's that could be understood.
std::vector<report::Proved> prove_all(const language::Program& program, Diagnostics& diagnostics) {
  std::vector<report::Proved> result;
  for (std::size_t i = program.library_frameworks; i < program.frameworks.size(); ++i) {
    const language::Framework& framework = program.frameworks[i];
    if (framework.poisoned || framework.refines.valid() || framework.shares.empty()) continue;
    prove::Proof proof = prove::prove(program, framework);
    const auto mends = proof.verdict == prove::Verdict::breaks
                           ? prove::find_mends(program, framework, proof)
                           : std::vector<prove::Mend>{};
    report::tell_proof(program, framework, proof, mends, diagnostics);
    result.push_back({language::FrameworkId(i), std::move(proof)});
  }
  return result;
}

std::string counted(std::size_t count, std::string_view one) {
  return fmt::format("{} {}{}", count, one, count == 1 ? "" : "s");
}

}  // namespace

int check(const Inputs& inputs, Files& files, const Streams& streams) {
  Session session(files);
  const int code = load(session, inputs, streams);
  if (code != done) return code;
  const language::Program& program = session.program();
  const std::vector<report::Proved> proved = prove_all(program, session.diagnostics());
  const int warned = print_diagnostics(session, streams);
  if (streams.envelope != nullptr) {
    streams.envelope->set_result("check", report::check_json(session.sources(), program, proved));
    return warned;
  }
  for (const report::Proved& each : proved) {
    streams.out << report::proof_text(session.sources(), program, program[each.framework],
                                      each.proof);
  }
  const std::size_t frameworks = program.frameworks.size() - program.library_frameworks;
  streams.out << fmt::format(
      "checked: {}, {}, {}: names, quantities, types, shares, classes, substitutions; limits for "
      "every mix, at the unfavourable end of the tables\n",
      counted(frameworks, "framework"), counted(program.baskets.size(), "basket"),
      counted(program.kitchens.size(), "kitchen"));
  streams.out << "not checked: whether a basket fits (`maslin plan`); how exactly it is weighed, "
                 "trimmed, cut and stopped; nothing was measured\n";
  return warned;
}

}  // namespace maslin::command
