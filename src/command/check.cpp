// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <array>
#include <nlohmann/json.hpp>
#include <ostream>

#include "command/command.hpp"
#include "command/envelope.hpp"
#include "driver/proofs.hpp"
#include "language/taste.hpp"
#include "report/json_check.hpp"
#include "report/proof.hpp"

namespace maslin::command {
namespace {

// "1 framework and 2 baskets"; "the text" where it declares none of them.
std::string what_was_read(const language::Program& program) {
  const std::array<std::pair<std::size_t, std::string_view>, 3> counts = {
      {{program.frameworks.size() - program.library_frameworks, "framework"},
       {program.baskets.size(), "basket"},
       {program.kitchens.size(), "kitchen"}}};
  std::vector<std::string> parts;
  for (const auto& [count, what] : counts) {
    if (count > 0) parts.push_back(fmt::format("{} {}{}", count, what, count == 1 ? "" : "s"));
  }
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    text += (i == 0 ? "" : i + 1 == parts.size() ? " and " : ", ") + parts[i];
  }
  return parts.empty() ? "the text" : text;
}

// Every framework of the user's that could be understood.
std::vector<report::Proved> prove_all(Session& session) {
  const language::Program& program = session.program();
  Proofs proofs;
  std::vector<report::Proved> result;
  for (std::size_t i = program.library_frameworks; i < program.frameworks.size(); ++i) {
    const language::Framework& framework = program.frameworks[i];
    if (framework.poisoned || framework.shares.empty()) continue;
    const language::FrameworkId id(i);
    const KeptProof& kept = proofs.of(session, id);
    report::tell_proof(program, framework, kept.proof, kept.mends, session.diagnostics());
    result.push_back({id, kept.proof});
    if (!kept.taste) continue;
    const language::Variant& variant = framework.variants[kept.taste->variant];
    report::tell_proof(program, with_taste(framework, variant), kept.taste->proof, {},
                       session.diagnostics());
    result.back().taste = variant.name;
  }
  return result;
}

}  // namespace

int check(const Inputs& inputs, Files& files, const Streams& streams) {
  Session session(files);
  const int code = load(session, inputs, streams);
  if (code != done) return code;
  const language::Program& program = session.program();
  const std::vector<report::Proved> proved = prove_all(session);
  const int warned = print_diagnostics(session, streams);
  if (streams.envelope != nullptr) {
    streams.envelope->set_result("check", report::check_json(session.sources(), program, proved));
    return warned;
  }
  for (const report::Proved& each : proved) {
    streams.out << report::proof_text(session.sources(), program, program[each.framework], each);
  }
  streams.out << fmt::format(
      "checked {}: names, quantities, types, shares, classes, substitutions, methods; limits for "
      "every mix, at the unfavourable end of the tables\n",
      what_was_read(program));
  streams.out << "not checked: whether a basket fits (`maslin plan`); how exactly it is weighed, "
                 "trimmed, cut and stopped; nothing was measured\n";
  return warned;
}

}  // namespace maslin::command
