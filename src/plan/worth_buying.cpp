// SPDX-License-Identifier: Apache-2.0
#include "plan/worth_buying.hpp"

#include <algorithm>
#include <set>

#include "language/amounts.hpp"
#include "language/membership.hpp"

namespace maslin::plan {
namespace {

using blend::StatementInfo;
using blend::StatementKind;
using language::IngredientId;
using language::Target;

class Shopper {
 public:
  Shopper(const language::Program& program, const Task& task,
          const std::vector<StatementInfo>& conflict)
      : program_(program),
        framework_(program[task.framework]),
        supplies_(blend::supplies(program, program[task.basket],
                                  task.kitchen.valid() ? &program[task.kitchen] : nullptr)) {
    for (const StatementInfo& info : conflict) {
      if (info.kind == StatementKind::share) shares_.insert(info.index);
      any_limit_ = any_limit_ || info.kind == StatementKind::limit;
      any_supply_ = any_supply_ || info.kind == StatementKind::supply;
    }
  }

  std::vector<std::vector<IngredientId>> run() const {
    std::vector<std::vector<IngredientId>> result;
    for (std::size_t i = 0; i < framework_.shares.size(); ++i) {
      const language::ProduceShare& share = framework_.shares[i];
      const bool missing = is_missing(share.target);
      const bool lacking = missing && share.range.low.is_positive();
      const bool has_room = missing && any_supply_ && share.range.high.is_positive();
      if (any_limit_ || lacking || has_room || shares_.count(i) > 0) {
        result.push_back(commonest(share.target, true));
      }
    }
    for (const language::Addition& addition : framework_.additions) {
      const bool assumed =
          addition.target.ingredient.valid() || program_[addition.target.of_class].usually.valid();
      if (!assumed && addition.range.low.is_positive() && is_missing(addition.target)) {
        result.push_back(commonest(addition.target, false));
      }
    }
    return result;
  }

 private:
  bool is_missing(const Target& target) const {
    return std::none_of(supplies_.begin(), supplies_.end(), [&](const blend::Supply& supply) {
      return takes(program_, target, supply.ingredient);
    });
  }

  std::vector<IngredientId> commonest(const Target& target, bool produce) const {
    constexpr std::size_t of_each = 3;
    auto candidates = commonest_members(program_, target);
    const auto is_sour = [&](IngredientId id) {
      return produce && is_acid_donor(program_, {id, std::nullopt});
    };
    candidates.erase(std::remove_if(candidates.begin(), candidates.end(), is_sour),
                     candidates.end());
    if (candidates.size() > of_each) candidates.resize(of_each);
    return candidates;
  }

  const language::Program& program_;
  const language::Framework& framework_;
  std::vector<blend::Supply> supplies_;
  std::set<std::size_t> shares_;  // those that the conflict speaks of
  bool any_limit_ = false;
  bool any_supply_ = false;
};

}  // namespace

std::vector<std::vector<IngredientId>> worth_buying(const language::Program& program,
                                                    const Task& task,
                                                    const std::vector<StatementInfo>& conflict) {
  return Shopper(program, task, conflict).run();
}

}  // namespace maslin::plan
