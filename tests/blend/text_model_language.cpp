// SPDX-License-Identifier: Apache-2.0
// The language's side of a model of figures, and random models.
#include <fmt/format.h>

#include <algorithm>

#include "blend/text_model.hpp"

namespace maslin::test {
namespace {

std::string tenths(int value) { return fmt::format("{}.{}", value / 10, value % 10); }

std::string ingredient_text(const ModelLot& lot) {
  std::string text = fmt::format("ingredient {} is {} {{\n", lot.name, lot.of_class);
  text += fmt::format("  composition sucrose {} g", tenths(lot.sugars));
  if (lot.citric > 0) text += fmt::format(", citric acid {} g", tenths(lot.citric));
  if (lot.acidity > 0) text += fmt::format(", acetic acid {} g", tenths(lot.acidity));
  text += fmt::format("\n  soluble solids {} %\n  total solids {} %\n", tenths(lot.soluble),
                      tenths(lot.total_solids));
  text += fmt::format("  density {}.{:03} g per ml\n", lot.density / 1000, lot.density % 1000);
  text += fmt::format("  pH {}\n  source \"invented for this test\"\n}}\n", lot.low_acid ? 5 : 3);
  return text;
}

std::string line_text(const ModelLot& lot) {
  std::string text = "  " + lot.name;
  if (lot.bought) {
    text += " to buy";
    if (lot.at_most > 0) text += fmt::format(", at most {} g", lot.at_most);
    if (lot.price > 0) text += fmt::format(", at {} per kg", tenths(lot.price));
  } else {
    text += fmt::format(" {} g", lot.own);
    if (lot.trim > 0) text += fmt::format(" gross, trim {} %", lot.trim);
  }
  if (lot.acidity > 0) text += fmt::format(", {} % acidity", tenths(lot.acidity));
  if (lot.use_first) text += ", use first";
  return text + "\n";
}

std::string range_text(int low, int high, const std::string& unit, std::optional<int> prefer) {
  std::string text =
      low == high ? fmt::format("{} {}", low, unit) : fmt::format("{} .. {} {}", low, high, unit);
  if (prefer) text += fmt::format(" prefer {} {}", *prefer, unit);
  return text + "\n";
}

std::string limits_text(const TextModel& model) {
  std::string text = "  limits {\n";
  if (model.low_acid) {
    text += fmt::format("    low acid <= {} % of prepared produce\n", *model.low_acid);
  }
  if (model.acetic) {
    text +=
        fmt::format("    acetic acid >= {} g per kilogram of prepared produce\n", *model.acetic);
  }
  if (model.solids_low && model.solids_high) {
    text += fmt::format("    soluble solids {} .. {} %\n", *model.solids_low, *model.solids_high);
  }
  return text + "  }\n";
}

std::string credits_text(const TextModel& model) {
  std::string text;
  for (const ModelCredit& credit : model.credits) {
    text += fmt::format("    {} for {} by {} {} up to {} %\n", credit.donor,
                        model.additions[credit.addition].of_class,
                        credit.by_acidity ? "acidity" : "sugars", credit.full ? "full" : "optional",
                        credit.cap);
  }
  if (model.strengths) text += "    kind vinegar for kind vinegar by acetic acid\n";
  return text.empty() ? text : "  substitute {\n" + text + "  }\n";
}

class Maker {
 public:
  explicit Maker(std::mt19937& random) : random_(random) {}

  TextModel run() {
    draw_produce();
    draw_acid();
    draw_sweet();
    draw_limits();
    if (chance(0.4)) model_.aim = batch_ / 2;
    return std::move(model_);
  }

 private:
  int between(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
  bool chance(double part) { return std::bernoulli_distribution(part)(random_); }

  void draw_produce() {
    batch_ = between(1000, 40000);
    const std::vector<std::string> names = {"one", "two", "three", "four"};
    const int count = between(2, 4);
    std::vector<int> mix(static_cast<std::size_t>(count), 100 / count);
    for (int i = 0; i < count; ++i) {
      const auto at = static_cast<std::size_t>(i);
      ModelShare share{"kind " + names[at], std::max(0, mix[at] - between(2, 20)),
                       std::min(100, mix[at] + between(2, 30)), std::nullopt};
      if (chance(0.5)) share.prefer = between(share.low, share.high);
      for (int lot = between(1, 3); lot > 0; --lot) draw_lot(share.of_class, names[at], lot);
      model_.shares.push_back(share);
    }
  }

  void draw_lot(const std::string& of_class, const std::string& name, int number) {
    const std::vector<std::string> ordinals = {"", "early", "late", "windfall"};
    ModelLot lot;
    lot.name = ordinals[static_cast<std::size_t>(number)] + " " + name;
    lot.of_class = of_class;
    lot.sugars = between(10, 120);
    lot.soluble = lot.sugars + between(1, 30);
    lot.total_solids = lot.soluble + between(0, 30);
    lot.low_acid = chance(0.5);
    lot.own = between(batch_ / 10, batch_ / 2);
    lot.trim = chance(0.5) ? between(5, 40) : 0;
    lot.use_first = chance(0.2);
    model_.lots.push_back(lot);
    if (!chance(0.25)) return;
    lot.bought = true;
    lot.trim = 0;
    lot.use_first = false;
    lot.at_most = between(batch_ / 20, batch_ / 4);
    lot.price = priced_ ? between(5, 90) : 0;
    model_.lots.push_back(lot);
  }

  void draw_acid() {
    const bool by_volume = chance(0.7);
    ModelAddition addition{"kind vinegar", by_volume ? "ml" : "g", between(200, 350), 0,
                           std::nullopt};
    addition.high = addition.low + (chance(0.3) ? 0 : between(20, 200));
    if (chance(0.5)) addition.prefer = between(addition.low, addition.high);
    model_.strengths = chance(0.6);
    const std::vector<std::string> names = {"plain sour", "strong sour", "weak sour"};
    const std::vector<int> strengths = {50, 60, 45};
    for (std::size_t i = 0; i < (model_.strengths ? names.size() : 1); ++i) {
      ModelLot lot;
      lot.name = names[i];
      lot.of_class = "kind vinegar";
      lot.in_store = true;
      lot.acidity = strengths[i];
      lot.soluble = between(0, 10);
      lot.total_solids = lot.soluble;
      lot.density = between(1001, 1020);
      lot.own = between(batch_ / 10, batch_);
      model_.lots.push_back(lot);
    }
    model_.additions.push_back(addition);
    if (by_volume && chance(0.4)) draw_juice();
  }

  void draw_juice() {
    ModelLot lot;
    lot.name = "sharp juice";
    lot.of_class = "kind juice";
    lot.in_store = true;
    lot.citric = between(40, 60);
    lot.soluble = 80;
    lot.total_solids = 90;
    lot.density = 1030;
    lot.own = between(batch_ / 50, batch_ / 5);
    model_.lots.push_back(lot);
    model_.credits.push_back({"kind juice", 0, true, false, between(5, 30)});
  }

  void draw_sweet() {
    ModelLot lot;
    lot.name = "plain sweet";
    lot.of_class = "kind sweet";
    lot.in_store = true;
    lot.sugars = 1000;
    lot.soluble = 1000;
    lot.total_solids = 1000;
    lot.own = between(batch_ / 4, batch_);
    model_.lots.push_back(lot);
    ModelAddition sugar{"kind sweet", "g", between(100, 400), 0, std::nullopt};
    sugar.high = sugar.low + (chance(0.6) ? 0 : between(10, 80));
    if (chance(0.4)) sugar.prefer = between(sugar.low, sugar.high);
    const std::size_t at = model_.additions.size();
    model_.additions.push_back(sugar);
    if (!chance(0.8)) return;
    ModelAddition dried{"kind dried", "g", between(40, 150), 0, std::nullopt};
    dried.high = dried.low + (chance(0.3) ? 0 : between(10, 80));
    model_.additions.push_back(dried);
    for (const char* name : {"dark dried", "light dried", "dear dried"}) {
      lot = {};
      lot.name = name;
      lot.of_class = "kind dried";
      lot.sugars = between(500, 680);
      lot.soluble = lot.sugars + 20;
      lot.total_solids = lot.soluble + 90;
      lot.low_acid = chance(0.5);
      lot.own = between(batch_ / 60, batch_ / 8);
      lot.bought = name == std::string("dear dried");
      lot.at_most = lot.bought ? batch_ : 0;
      lot.price = lot.bought && priced_ ? between(5, 90) : 0;
      model_.lots.push_back(lot);
    }
    model_.credits.push_back({"kind dried", at, false, chance(0.6), 10 * between(2, 10)});
  }

  void draw_limits() {
    model_.low_acid = chance(0.5) ? 200 : between(50, 100);
    if (chance(0.5)) model_.acetic = between(5, 11);
    if (chance(0.7)) {
      model_.solids_low = between(20, 40);
      model_.solids_high = *model_.solids_low + between(2, 10);
    }
  }

  std::mt19937& random_;
  TextModel model_;
  int batch_ = 0;
  bool priced_ = chance(0.7);
};

}  // namespace

TextModel random_model(std::mt19937& random) { return Maker(random).run(); }

std::string language_text(const TextModel& model) {
  std::string text =
      "class kind vinegar is vinegar\nclass kind juice is acid\nclass kind sweet\n"
      "class kind dried is produce\n";
  for (const ModelShare& share : model.shares) text += "class " + share.of_class + " is produce\n";
  std::vector<std::string> known;
  for (const ModelLot& lot : model.lots) {
    if (std::find(known.begin(), known.end(), lot.name) == known.end()) {
      text += ingredient_text(lot);
    }
    known.push_back(lot.name);
  }
  text += "framework figures {\n  produce {\n";
  for (const ModelShare& share : model.shares) {
    text += "    " + share.of_class + " " + range_text(share.low, share.high, "%", share.prefer);
  }
  text += "  }\n  per kilogram {\n";
  for (const ModelAddition& each : model.additions) {
    text += "    " + each.of_class + " " + range_text(each.low, each.high, each.unit, each.prefer);
  }
  text += "  }\n" + credits_text(model) + limits_text(model) + "}\nbasket {\n";
  for (const ModelLot& lot : model.lots) {
    if (!lot.in_store) text += line_text(lot);
  }
  text += "}\nkitchen \"figures\" {\n  store {\n";
  for (const ModelLot& lot : model.lots) {
    if (lot.in_store) text += line_text(lot);
  }
  return text + "  }\n}\n";
}

}  // namespace maslin::test
