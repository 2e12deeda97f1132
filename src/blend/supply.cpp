// SPDX-License-Identifier: Apache-2.0
#include "blend/supply.hpp"

#include <map>
#include <string>
#include <tuple>

namespace maslin::blend {
namespace {

using language::Line;
using language::Program;
using language::WeighedAs;

// Absent sorts before every value.
using Key = std::tuple<std::string, std::uint32_t, Origin, std::pair<bool, Rational>, bool, bool,
                       std::pair<bool, Rational>>;

std::pair<bool, Rational> ordered(const std::optional<Rational>& value) {
  return {value.has_value(), value.value_or(Rational(0))};
}

Key key_of(const Program& program, const Line& line, Origin origin) {
  return {program[line.ingredient].name,
          line.ingredient.index,
          origin,
          ordered(line.acidity),
          !line.use_first,
          line.sulphited,
          ordered(line.price)};
}

class Collector {
 public:
  explicit Collector(const Program& program) : program_(program) {}

  void add_lines(const std::vector<Line>& lines, bool in_store) {
    for (std::uint32_t i = 0; i < lines.size(); ++i) {
      const Line& line = lines[i];
      const LineReference reference{in_store, i};
      if (line.weight) {
        const Rational weight = prepared_weight(program_, line).in_base();
        add(line, in_store ? Origin::store : Origin::basket, reference, weight);
      }
      if (line.to_buy) add_purchase(line, reference);
    }
  }

  std::vector<Supply> take() {
    std::vector<Supply> result;
    result.reserve(merged_.size());
    for (auto& [key, supply] : merged_) result.push_back(std::move(supply));
    return result;
  }

 private:
  // What is bought is weighed and paid for as in the shop, and trimmed after.
  void add_purchase(const Line& line, LineReference reference) {
    const auto& edible = program_[line.ingredient].edible;
    const Rational share = edible ? middle(edible->value) : Rational(1);
    Line prepared = line;
    if (line.price) prepared.price = *line.price / share;
    std::optional<Rational> most;
    if (line.at_most) most = *line.at_most * share;
    add(prepared, Origin::to_buy, reference, most);
  }

  void add(const Line& line, Origin origin, LineReference reference,
           const std::optional<Rational>& weight) {
    const auto [place, added] = merged_.try_emplace(key_of(program_, line, origin));
    Supply& supply = place->second;
    if (added) {
      supply.ingredient = line.ingredient;
      supply.origin = origin;
      supply.available = weight;
      supply.acidity = line.acidity;
      supply.use_first = line.use_first;
      supply.sulphited = line.sulphited;
      supply.price = line.price;
    } else if (supply.available && weight) {
      *supply.available += *weight;
    } else {
      supply.available.reset();
    }
    supply.lines.push_back(reference);
  }

  const Program& program_;
  std::map<Key, Supply> merged_;
};

}  // namespace

PreparedMass prepared_weight(const Program& program, const Line& line) {
  const Rational left = line.weight.value_or(Rational(0)) - line.spoiled - line.keep_back;
  if (line.basis != WeighedAs::gross) return PreparedMass(left);
  const auto& edible = program[line.ingredient].edible;
  Rational share = 1;
  if (line.trim) {
    share = Rational(1) - *line.trim;
  } else if (edible) {
    share = middle(edible->value);
  }
  return prepared_from(GrossMass(left), share);
}

std::vector<Supply> supplies(const Program& program, const language::Basket& basket,
                             const language::Kitchen* kitchen) {
  Collector collector(program);
  collector.add_lines(basket.lines, false);
  if (kitchen != nullptr) collector.add_lines(kitchen->store, true);
  return collector.take();
}

}  // namespace maslin::blend
