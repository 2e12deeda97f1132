// SPDX-License-Identifier: Apache-2.0
// A deletion filter: statements are dropped one by one, and dropped for good when the rest still
// cannot hold.
#include <algorithm>
#include <set>

#include "blend/elastic.hpp"
#include "blend/solver.hpp"

namespace maslin::blend {
namespace {

using Statements = std::set<Statement>;

std::vector<Statement> order_of_trial(const Statements& all,
                                      const std::vector<Statement>& try_first) {
  std::vector<Statement> order;
  Statements named;
  for (const Statement statement : try_first) {
    if (all.count(statement) != 0 && named.insert(statement).second) order.push_back(statement);
  }
  for (const Statement statement : all) {
    if (named.count(statement) == 0) order.push_back(statement);
  }
  return order;
}

// When the library stops, nothing is shown: the statement under trial stays.
bool cannot_hold(ElasticModel& model, const Statements& held) {
  const std::optional<double> total = model.measure(held);
  return total && *total > infeasible_above;
}

enum class Proofs : bool { ignored, trusted };

// Follows upon a measure that all together cannot hold. A statement outside the latest proof is
// dropped without a solve; that spares solves and does not change what is found.
Statements filter(ElasticModel& model, const std::vector<Statement>& order, Proofs proofs) {
  Statements held = model.statements();
  Statements proof = proofs == Proofs::trusted ? model.proof(held) : held;
  for (const Statement statement : order) {
    held.erase(statement);
    if (proof.count(statement) == 0) continue;
    if (cannot_hold(model, held)) {
      proof = proofs == Proofs::trusted ? model.proof(held) : held;
    } else {
      held.insert(statement);
    }
  }
  return held;
}

}  // namespace

std::vector<Statement> smallest_conflict(const LinearProgram& program,
                                         const std::vector<Statement>& try_first) {
  if (!well_formed(program)) return {};
  ElasticModel model(program);
  if (model.start() != Status::optimal) return {};
  if (!cannot_hold(model, model.statements())) return {};
  const std::vector<Statement> order = order_of_trial(model.statements(), try_first);
  Statements found = filter(model, order, Proofs::trusted);
  // A proof is only as good as its arithmetic: what it left must be a conflict by itself.
  if (!cannot_hold(model, found)) found = filter(model, order, Proofs::ignored);
  return {found.begin(), found.end()};
}

}  // namespace maslin::blend
