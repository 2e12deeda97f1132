// SPDX-License-Identifier: Apache-2.0
#include "property/random_case.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace maslin::test {
namespace {

struct Slot {
  std::string target;
  std::vector<std::string> members;
};

// What a share may take, and what of it may lie in the basket.
const std::vector<Slot> slots = {
    {"sharp fruit", {"apple", "cooking apple", "quince", "gooseberry", "rhubarb"}},
    {"mild fruit", {"pear", "plum", "apricot"}},
    {"onion", {"onion"}},
    {"onion family", {"onion", "leek", "shallot"}},
    {"root", {"carrot", "beetroot", "parsnip", "swede"}},
    {"squash", {"butternut squash", "pumpkin", "courgette"}},
    {"brassica", {"cabbage", "cauliflower", "red cabbage"}},
    {"green tomato", {"green tomato"}},
    {"celery", {"celery"}},
};

class Maker {
 public:
  Maker(std::mt19937& random, const RandomKind& kind) : random_(random), kind_(kind) {}

  RandomCase run() {
    draw_tools();
    draw_size();
    draw_produce();
    draw_acid();
    draw_sweet();
    draw_seasoning();
    draw_limits();
    return std::move(case_);
  }

 private:
  int between(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
  double real(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random_);
  }
  bool chance(double part) { return std::bernoulli_distribution(part)(random_); }
  template <class List>
  const auto& one_of(const List& list) {
    return list[static_cast<std::size_t>(between(0, static_cast<int>(list.size()) - 1))];
  }

  void draw_tools() {
    const std::vector<int> steps = {1, 1, 2, 5, 10, 20};
    const int most = kind_.coarse_scales ? static_cast<int>(steps.size()) - 1 : 1;
    case_.step = steps[static_cast<std::size_t>(between(0, most))];
    case_.scales = fmt::format("  scales to {} g\n", case_.step);
    if (chance(0.6)) {
      const std::vector<std::string> spoons = {"1/4 tsp", "1/2 tsp", "1/8 tsp"};
      case_.scales += fmt::format("  spoons to {}\n", one_of(spoons));
    }
  }

  // As many small batches as large ones.
  void draw_size() {
    const double smallest = std::max(kind_.smallest, 200 * case_.step);
    const double largest = std::max(kind_.largest, smallest);
    case_.batch = std::exp(real(std::log(smallest), std::log(largest)));
  }

  // ---- Produce ----------------------------------------------------------------------------------

  void draw_produce() {
    std::vector<Slot> chosen = slots;
    std::shuffle(chosen.begin(), chosen.end(), random_);
    chosen.resize(static_cast<std::size_t>(between(1, 6)));
    const std::vector<int> mix = draw_mix(chosen.size());
    const bool plain = kind_.plain_ratios && chance(0.2);
    for (std::size_t i = 0; i < chosen.size(); ++i) {
      draw_share(chosen[i].target, mix[i], plain || (kind_.plain_ratios && chance(0.1)));
      draw_lots(chosen[i].members, case_.batch * mix[i] / 100);
    }
  }

  // Whole per cents that add up to a hundred.
  std::vector<int> draw_mix(std::size_t count) {
    std::vector<int> mix(count, 3);
    int left = 100 - 3 * static_cast<int>(count);
    for (std::size_t i = 0; i + 1 < count; ++i) {
      const int part = between(0, left);
      mix[i] += part;
      left -= part;
    }
    mix.back() += left;
    return mix;
  }

  void draw_share(const std::string& target, int percent, bool plain) {
    if (plain) {
      case_.shares.push_back(fmt::format("{} {} %", target, percent));
      return;
    }
    const int low = std::max(0, percent - between(1, 25));
    const int high = std::min(100, percent + between(1, 25));
    std::string share = fmt::format("{} {} .. {} %", target, low, high);
    if (chance(0.4)) share += fmt::format(" prefer {} %", between(low, high));
    case_.shares.push_back(share);
  }

  void draw_lots(const std::vector<std::string>& members, double grams) {
    std::vector<std::string> names = members;
    std::shuffle(names.begin(), names.end(), random_);
    names.resize(std::min<std::size_t>(names.size(), static_cast<std::size_t>(between(1, 3))));
    for (const std::string& name : names) {
      const double part = grams / static_cast<double>(names.size()) * real(1.0, 1.7);
      const int lots = chance(0.2) ? between(2, 3) : 1;
      for (int lot = 0; lot < lots; ++lot) draw_lot(name, part / lots);
      // Own and to buy of the same.
      if (chance(0.15)) draw_bought(name, grams);
    }
  }

  void draw_lot(const std::string& name, double prepared) {
    RandomLine line{name, prepared, 0, "prepared", {}};
    if (chance(0.4)) {
      const int trim = between(5, 40);
      line.grams = prepared * 100 / (100 - trim);
      line.basis = "gross";
      line.clauses = fmt::format(", trim {} %", trim);
    } else if (chance(0.3)) {
      line.grams = prepared * 1.6;
      line.basis = "gross";
    }
    if (chance(0.15)) line.clauses += ", use first";
    case_.lines.push_back(line);
  }

  void draw_bought(const std::string& name, double grams) {
    RandomLine line{name, 0, 0, {}, {}};
    if (chance(0.6)) line.at_most = grams * real(0.2, 1);
    if (chance(0.5)) line.clauses = fmt::format(", at {}.{} per kg", between(1, 9), between(0, 9));
    case_.lines.push_back(line);
  }

  // ---- Additions --------------------------------------------------------------------------------

  // A range around what is drawn, or that alone.
  std::string range(int low, int high, double plain, const std::string& unit) {
    const int middle = between(low, high);
    if (chance(plain)) return fmt::format("{} {}", middle, unit);
    const int least = std::max(0, middle - between(1, std::max(1, middle / 4)));
    const int most = middle + between(1, std::max(1, middle / 4));
    std::string text = fmt::format("{} .. {} {}", least, most, unit);
    if (chance(0.4)) text += fmt::format(" prefer {} {}", between(least, most), unit);
    return text;
  }

  void draw_acid() {
    if (chance(0.15)) return;
    const bool named = chance(0.3);
    const std::string target = named ? "cider vinegar" : "vinegar";
    case_.additions.push_back(target + " " + range(250, 600, 0.3, chance(0.8) ? "ml" : "g"));
    const bool by_volume = case_.additions.back().find("ml") != std::string::npos;
    const bool strengths = chance(0.5);
    if (strengths) {
      case_.substitutions.push_back(fmt::format("{0} for {0} by acetic acid", target));
    }
    if (chance(0.7)) {
      store("cider vinegar", case_.batch * real(0.5, 1), ", 5 % acidity");
      if (strengths) store("cider vinegar", case_.batch * real(0.1, 0.6), ", 6 % acidity");
      if (strengths && !named) store("malt vinegar", case_.batch * 0.3, ", 4.5 % acidity");
    }
    if (by_volume && chance(0.3)) {
      case_.substitutions.push_back(
          fmt::format("lemon juice for {} by acidity optional up to {} % only bottled lemon juice",
                      target, between(5, 20)));
      store("bottled lemon juice", case_.batch * real(0.01, 0.2), {});
    }
  }

  void draw_sweet() {
    if (chance(0.1)) return;
    case_.additions.push_back("sugar " + range(60, 450, 0.6, "g"));
    if (chance(0.3)) store("sugar", case_.batch * real(0.2, 1), {});
    if (chance(0.6)) {
      case_.additions.push_back("dried fruit " + range(30, 200, 0.3, "g"));
      for (const char* name : {"sultana", "date", "raisin"}) {
        if (!chance(0.7)) continue;
        store(name, case_.batch * real(0.02, 0.3), {},
              name == std::string("date") ? "prepared" : "");
        if (chance(0.2)) draw_bought(name, case_.batch * 0.2);
      }
      // At least one is there to be had.
      draw_bought("dried apricot", case_.batch * 0.3);
      if (chance(0.7)) draw_credit("dried fruit");
      // One supply for two slots.
      if (chance(0.15)) case_.additions.push_back("raisin " + range(10, 40, 0.3, "g"));
    } else if (chance(0.2)) {
      store("honey", case_.batch * real(0.02, 0.4), {});
      draw_credit("honey");
    }
  }

  void draw_credit(const std::string& donor) {
    std::string text =
        fmt::format("{} for sugar by sugars {}", donor, chance(0.6) ? "full" : "optional");
    if (chance(0.8)) text += fmt::format(" up to {} %", 10 * between(1, 9));
    case_.substitutions.push_back(text);
  }

  void draw_seasoning() {
    if (chance(0.8)) case_.additions.push_back("salt " + range(5, 20, 0.7, "g"));
    if (chance(0.5))
      case_.additions.push_back(chance(0.5) ? "ground allspice 1 tsp"
                                            : "ground allspice 1 .. 2 tsp");
    if (chance(0.3))
      case_.additions.push_back("whole clove " + std::string(chance(0.5) ? "2" : "2 .. 5"));
    if (chance(0.3)) case_.additions.push_back("ground ginger " + range(2, 9, 0.5, "g"));
    if (chance(0.2)) case_.additions.push_back("mustard seed 1 tbsp");
  }

  // ---- Limits -----------------------------------------------------------------------------------

  void draw_limits() {
    // Credits by produce of an unknown share of low acid need a cap: it is always there.
    const int cap = chance(0.6) ? 110 : between(40, 100);
    case_.limits.push_back(fmt::format("low acid <= {} % of prepared produce", cap));
    const bool sour =
        !case_.additions.empty() && case_.additions.front().find("vinegar") != std::string::npos;
    if (sour && chance(0.3)) {
      case_.limits.push_back(
          fmt::format("acetic acid >= {} g per kilogram of prepared produce", between(8, 14)));
    }
    // Without sugar, solids in that range are what hardly anything is boiled down to.
    const bool sweet = std::any_of(case_.additions.begin(), case_.additions.end(),
                                   [](const auto& each) { return each.rfind("sugar", 0) == 0; });
    if (sweet && chance(0.6)) {
      const int low = between(18, 45);
      case_.limits.push_back(fmt::format("soluble solids {} .. {} %", low, low + between(8, 20)));
    }
    if (chance(0.15)) {
      case_.limits.push_back(
          fmt::format("salt <= {} g per kilogram of prepared produce", between(22, 40)));
    }
  }

  void store(const std::string& name, double grams, const std::string& clauses,
             const std::string& basis = {}) {
    case_.store.push_back({name, grams, 0, basis, clauses});
  }

  std::mt19937& random_;
  const RandomKind& kind_;
  RandomCase case_;
};

std::string line_text(const RandomLine& line, double times) {
  std::string text = line.name;
  if (line.grams > 0) {
    text += fmt::format(" {:.0f} g", std::max(1.0, std::round(line.grams)) * times);
    if (!line.basis.empty()) text += " " + line.basis;
  } else {
    text += " to buy";
    if (line.at_most > 0) {
      text += fmt::format(", at most {:.0f} g", std::max(1.0, std::round(line.at_most)) * times);
    }
  }
  return text + line.clauses;
}

template <class List>
List in_order(List list, bool reversed) {
  if (reversed) std::reverse(list.begin(), list.end());
  return list;
}

std::string block(const std::string& name, const std::vector<std::string>& statements,
                  bool reversed) {
  if (statements.empty()) return {};
  std::string text = "  " + name + " {\n";
  for (const std::string& each : in_order(statements, reversed)) text += "    " + each + "\n";
  return text + "  }\n";
}

}  // namespace

RandomCase random_case(std::mt19937& random, const RandomKind& kind) {
  return Maker(random, kind).run();
}

std::string framework_text(const RandomCase& the_case, const Writing& writing) {
  std::vector<std::string> blocks = {block("produce", the_case.shares, writing.reversed),
                                     block("per kilogram", the_case.additions, writing.reversed),
                                     block("substitute", the_case.substitutions, writing.reversed),
                                     block("limits", the_case.limits, writing.reversed)};
  // What is replaced has to be known where it is read, so only the first and last change places.
  std::string text = fmt::format("framework {} {{\n", writing.framework);
  for (const std::string& each : in_order(blocks, writing.reversed)) text += each;
  return text + "}\n";
}

std::string basket_text(const RandomCase& the_case, const Writing& writing) {
  std::string text = fmt::format("basket \"{}\" {{\n", writing.basket);
  for (const RandomLine& line : in_order(the_case.lines, writing.reversed)) {
    text += "  " + line_text(line, writing.times) + "\n";
  }
  return text + "}\n";
}

std::string kitchen_text(const RandomCase& the_case, const Writing& writing) {
  std::string text = "kitchen \"random\" {\n" + the_case.scales;
  if (!the_case.store.empty()) {
    text += "  store {\n";
    for (const RandomLine& line : in_order(the_case.store, writing.reversed)) {
      text += "    " + line_text(line, writing.times) + "\n";
    }
    text += "  }\n";
  }
  return text + "}\n";
}

std::string text_of(const RandomCase& the_case, const Writing& writing) {
  const std::vector<std::string> parts = {framework_text(the_case, writing),
                                          basket_text(the_case, writing),
                                          kitchen_text(the_case, writing)};
  std::string text;
  for (const std::string& part : in_order(parts, writing.reversed)) text += part;
  return text;
}

int rounds(int few, int many) {
  const char* full = std::getenv("MASLIN_FULL");
  return full != nullptr && *full != '\0' ? many : few;
}

}  // namespace maslin::test
