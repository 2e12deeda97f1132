// SPDX-License-Identifier: Apache-2.0
// MathProg's side of a model of figures, in kilograms and litres. Sources of what is reckoned here:
// definitions (mass balance, shares of a sum); molar masses acetic acid 60.052 g, citric acid
// 192.123 g with three protons (IUPAC atomic weights).
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "blend/text_model.hpp"

namespace maslin::test {
namespace {

constexpr double usual_strength = 0.05;  // g per ml: vinegar of 5 % acidity

// Citric acid as acetic acid, by what it neutralises; the language rounds it to the milligram.
double as_acetic(double citric) {
  constexpr double grams_per_gram = 3 * 60.052 / 192.123;
  return citric * std::round(grams_per_gram * 1000) / 1000;
}

class Writer {
 public:
  Writer(const TextModel& model, const std::vector<bool>& at_cap)
      : model_(model), at_cap_(at_cap) {}

  std::string run(const std::vector<double>& reached) {
    variables();
    produce();
    additions();
    credits();
    limits();
    preferences();
    const auto stages = stages_of(model_);
    std::string text = variables_;
    text += goal(stages[reached.size()]);
    text += rows_;
    for (std::size_t i = 0; i < reached.size(); ++i) text += hold(i, stages[i], reached[i]);
    return text + "solve;\nend;\n";
  }

 private:
  void row(const std::string& text) { rows_ += fmt::format("s.t. r{}: {};\n", ++count_, text); }

  static double share(int tenths) { return tenths / 1000.0; }

  // ---- What there is of everything, and what it is taken for ------------------------------------

  bool is_produce(const ModelLot& lot) const {
    return std::any_of(model_.shares.begin(), model_.shares.end(),
                       [&](const ModelShare& each) { return each.of_class == lot.of_class; });
  }

  void variables() {
    variables_ = "var B >= 0;\n";
    if (model_.solids_low) variables_ += "var E >= 0;\n";
    for (std::size_t i = 0; i < model_.lots.size(); ++i) {
      const ModelLot& lot = model_.lots[i];
      variables_ += fmt::format("var x{} >= 0;\n", i);
      if (lot.bought) {
        if (lot.at_most > 0) row(fmt::format("x{} <= {}", i, lot.at_most / 1000.0));
      } else {
        row(fmt::format("x{} <= {:.12g}", i, lot.own / 1000.0 * (100 - lot.trim) / 100));
      }
    }
    for (std::size_t i = 0; i < model_.credits.size(); ++i) {
      variables_ += fmt::format("var c{} >= 0;\n", i);
    }
    if (model_.aim) row(fmt::format("B = {}", *model_.aim / 1000.0));
  }

  template <class Factor>
  std::string sum(Factor factor) const {
    std::string text = "0";
    for (std::size_t i = 0; i < model_.lots.size(); ++i) {
      const double each = factor(model_.lots[i]);
      if (each != 0) text += fmt::format(" + {:.15g} * x{}", each, i);
    }
    return text;
  }
  std::string sum_of_class(const std::string& of_class) const {
    return sum([&](const ModelLot& lot) { return lot.of_class == of_class ? 1.0 : 0.0; });
  }

  void produce() {
    row(sum([&](const ModelLot& lot) { return is_produce(lot) ? 1.0 : 0.0; }) + " = B");
    for (const ModelShare& each : model_.shares) {
      row(fmt::format("{} >= {} * B", sum_of_class(each.of_class), each.low / 100.0));
      row(fmt::format("{} <= {} * B", sum_of_class(each.of_class), each.high / 100.0));
    }
  }

  // ---- Additions and credits --------------------------------------------------------------------

  // A kilogram in the addition's measure, of the strength that is meant.
  static double measure(const ModelAddition& addition, const ModelLot& lot) {
    double amount = addition.unit == "ml" ? 1000.0 / lot.density : 1.0;
    if (lot.acidity > 0) amount *= share(lot.acidity) / usual_strength;
    return amount;
  }

  std::string amount_of(std::size_t index) const {
    const ModelAddition& addition = model_.additions[index];
    std::string text = sum([&](const ModelLot& lot) {
      return lot.of_class == addition.of_class ? measure(addition, lot) : 0.0;
    });
    for (std::size_t i = 0; i < model_.credits.size(); ++i) {
      if (model_.credits[i].addition == index) text += fmt::format(" + c{}", i);
    }
    return text;
  }

  void additions() {
    for (std::size_t i = 0; i < model_.additions.size(); ++i) {
      row(fmt::format("{} >= {} * B", amount_of(i), model_.additions[i].low / 1000.0));
      row(fmt::format("{} <= {} * B", amount_of(i), model_.additions[i].high / 1000.0));
    }
  }

  void credits() {
    std::size_t full = 0;
    for (std::size_t i = 0; i < model_.credits.size(); ++i) {
      const ModelCredit& credit = model_.credits[i];
      const std::string brought = sum([&](const ModelLot& lot) {
        if (lot.of_class != credit.donor) return 0.0;
        return credit.by_acidity ? as_acetic(share(lot.citric)) / usual_strength
                                 : share(lot.sugars);
      });
      const std::string capped =
          fmt::format("{} * ({})", credit.cap / 100.0, amount_of(credit.addition));
      const bool at_cap = credit.full && at_cap_[full];
      if (credit.full) ++full;
      // What is not in the pan anyway is put in only as far as it counts.
      if (credit.by_acidity) row(fmt::format("{} <= c{}", brought, i));
      // Full: the smaller of the two. Optional: no more than either.
      row(fmt::format("c{} {} {}", i, credit.full && !at_cap ? "=" : "<=", brought));
      row(fmt::format("c{} {} {}", i, at_cap ? "=" : "<=", capped));
    }
  }

  // ---- Limits -----------------------------------------------------------------------------------

  void limits() {
    if (model_.low_acid) {
      row(fmt::format("{} <= {} * B",
                      sum([](const ModelLot& lot) { return lot.low_acid ? 1.0 : 0.0; }),
                      *model_.low_acid / 100.0));
    }
    if (model_.acetic) {
      row(fmt::format("{} >= {} * B", sum([](const ModelLot& lot) {
                        return share(lot.acidity) / (lot.density / 1000.0);
                      }),
                      *model_.acetic / 1000.0));
    }
    if (!model_.solids_low) return;
    const std::string all = sum([](const ModelLot&) { return 1.0; });
    const std::string solids = sum([](const ModelLot& lot) { return share(lot.soluble); });
    row(fmt::format("{} >= {} * ({} - E)", solids, *model_.solids_low / 100.0, all));
    row(fmt::format("{} <= {} * ({} - E)", solids, *model_.solids_high / 100.0, all));
    row("E <= " + sum([](const ModelLot& lot) { return 1 - share(lot.total_solids); }));
    variables_ += "var f1 >= 0;\nvar f2 >= 0;\n";
    row(fmt::format("{} - {} * ({} - E) = f1 - f2", solids,
                    (*model_.solids_low + *model_.solids_high) / 200.0, all));
  }

  // ---- Objectives -------------------------------------------------------------------------------

  void prefer(const std::string& amount, double wanted, double kilograms) {
    const int number = ++deviations_;
    variables_ += fmt::format("var p{0} >= 0;\nvar m{0} >= 0;\n", number);
    row(fmt::format("{} - {:.15g} * B = p{} - m{}", amount, wanted, number, number));
    deviation_ += fmt::format(" + {:.15g} * (p{} + m{})", kilograms, number, number);
  }

  void preferences() {
    for (const ModelShare& each : model_.shares) {
      if (each.prefer) prefer(sum_of_class(each.of_class), *each.prefer / 100.0, 1);
    }
    for (std::size_t i = 0; i < model_.additions.size(); ++i) {
      const ModelAddition& addition = model_.additions[i];
      if (!addition.prefer) continue;
      // By the kilogram of the bottle whose name comes first.
      const ModelLot* first = nullptr;
      for (const ModelLot& lot : model_.lots) {
        if (lot.of_class != addition.of_class) continue;
        if (first == nullptr || lot.name < first->name) first = &lot;
      }
      prefer(amount_of(i), *addition.prefer / 1000.0, 1 / measure(addition, *first));
    }
  }

  std::string expression(const std::string& stage) const {
    if (stage == "most of the basket") {
      return sum([&](const ModelLot& lot) { return is_produce(lot) && !lot.bought ? 1.0 : 0.0; });
    }
    if (stage == "use first") {
      return sum([&](const ModelLot& lot) { return is_produce(lot) && lot.use_first ? 1.0 : 0.0; });
    }
    if (stage == "bought") {
      return sum([&](const ModelLot& lot) {
        return !lot.bought ? 0.0 : all_priced() ? lot.price / 10.0 : 1.0;
      });
    }
    if (stage == "nearest to what is preferred") return "0" + deviation_;
    if (stage == "finish") return "f1 + f2";
    return sum([&](const ModelLot& lot) {  // least added
      for (const ModelAddition& each : model_.additions) {
        if (each.of_class == lot.of_class) return each.prefer ? 0.0 : 1.0;
      }
      return is_produce(lot) ? 0.0 : 1.0;
    });
  }

  bool all_priced() const {
    return std::all_of(model_.lots.begin(), model_.lots.end(),
                       [](const ModelLot& lot) { return !lot.bought || lot.price > 0; });
  }

  static bool is_most(const std::string& stage) {
    return stage == "most of the basket" || stage == "use first";
  }

  std::string goal(const std::string& stage) const {
    return fmt::format("{} goal: {};\n", is_most(stage) ? "maximize" : "minimize",
                       expression(stage));
  }

  std::string hold(std::size_t number, const std::string& stage, double reached) const {
    const double air = 1e-9 * (1 + std::abs(reached));
    return fmt::format(
        "s.t. held{}: {} {} {:.15g};\n", number, expression(stage),
        is_most(stage) ? ">=" : "<=", is_most(stage) ? reached - air : reached + air);
  }

  const TextModel& model_;
  const std::vector<bool>& at_cap_;
  std::string variables_;
  std::string rows_;
  std::string deviation_;
  int count_ = 0;
  int deviations_ = 0;
};

}  // namespace

std::vector<std::string> stages_of(const TextModel& model) {
  const auto any_lot = [&](auto wanted) {
    return std::any_of(model.lots.begin(), model.lots.end(), wanted);
  };
  std::vector<std::string> stages;
  if (!model.aim) stages.emplace_back("most of the basket");
  if (any_lot([](const ModelLot& lot) { return lot.use_first; })) stages.emplace_back("use first");
  if (any_lot([](const ModelLot& lot) { return lot.bought; })) stages.emplace_back("bought");
  const auto prefers = [](const auto& each) { return each.prefer.has_value(); };
  if (std::any_of(model.shares.begin(), model.shares.end(), prefers) ||
      std::any_of(model.additions.begin(), model.additions.end(), prefers)) {
    stages.emplace_back("nearest to what is preferred");
  }
  const bool juice = any_lot([](const ModelLot& lot) { return lot.of_class == "kind juice"; });
  if (juice || !std::all_of(model.additions.begin(), model.additions.end(), prefers)) {
    stages.emplace_back("least added");
  }
  if (model.solids_low) stages.emplace_back("finish");
  return stages;
}

std::size_t full_credits(const TextModel& model) {
  return static_cast<std::size_t>(std::count_if(model.credits.begin(), model.credits.end(),
                                                [](const auto& each) { return each.full; }));
}

std::string mathprog_text(const TextModel& model, const std::vector<bool>& at_cap,
                          const std::vector<double>& reached) {
  return Writer(model, at_cap).run(reached);
}

}  // namespace maslin::test
