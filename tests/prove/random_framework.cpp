// SPDX-License-Identifier: Apache-2.0
#include "prove/random_framework.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

namespace maslin::test {
namespace {

class Maker {
 public:
  Maker(std::mt19937& random, const FrameworkKind& kind) : random_(random), kind_(kind) {}

  std::string run() {
    draw_produce();
    draw_additions();
    draw_limits();
    if (chance(0.6)) draw_method();
    std::string text = "framework \"random\" {\n";
    text += block("produce", produce_) + block("per kilogram", additions_) +
            block("substitute", substitutions_) + block("limits", limits_);
    if (!method_.empty()) text += "  method {\n" + method_ + "  }\n";
    return text + "}\n";
  }

 private:
  int between(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
  bool chance(double part) { return std::bernoulli_distribution(part)(random_); }

  static std::string block(const std::string& name, const std::vector<std::string>& statements) {
    if (statements.empty()) return {};
    std::string text = "  " + name + " {\n";
    for (const std::string& each : statements) text += "    " + each + "\n";
    return text + "  }\n";
  }

  // Around a mix that adds up, so that some mix keeps to every share.
  void draw_produce() {
    std::vector<std::string> targets = {"sharp fruit",  "mild fruit", "onion family", "root",
                                        "apple",        "carrot",     "brassica",     "onion",
                                        "green tomato", "squash",     "soft fruit",   "celery"};
    std::shuffle(targets.begin(), targets.end(), random_);
    targets.resize(static_cast<std::size_t>(between(1, 4)));
    int left = 100;
    for (std::size_t i = 0; i < targets.size(); ++i) {
      const bool last = i + 1 == targets.size();
      const int part = last ? left : between(0, left);
      left -= part;
      const int low = std::max(0, part - between(0, 20));
      const int high = std::min(100, part + between(1, 20));
      produce_.push_back(fmt::format("{} {} .. {} %", targets[i], low, high));
    }
  }

  std::string range(int low, int high, double plain, const std::string& unit) {
    const int least = between(low, high);
    if (chance(plain)) return fmt::format("{} {}", least, unit);
    return fmt::format("{} .. {} {}", least, least + between(1, std::max(2, high / 2)), unit);
  }

  void draw_additions() {
    const std::vector<std::string> kinds = {"vinegar", "distilled vinegar", "cider vinegar"};
    const std::string& vinegar = kinds[static_cast<std::size_t>(between(0, 2))];
    const auto most = static_cast<int>(800 * kind_.vinegar);
    additions_.push_back(vinegar + " " + range(most / 3, most, 0.15, "ml"));
    if (chance(0.5)) substitutions_.push_back(fmt::format("{0} for {0} by acetic acid", vinegar));
    const bool sweet = chance(0.7);
    if (sweet) additions_.push_back("sugar " + range(60, 500, 0.3, "g"));
    if (chance(0.8)) additions_.push_back("salt " + range(5, 30, 0.6, "g"));
    if (sweet && chance(0.3)) {
      additions_.push_back("vine fruit " + range(30, 150, 0.3, "g"));
      if (additions_[1].find("..") == std::string::npos && chance(0.7)) {
        substitutions_.push_back(
            fmt::format("vine fruit for sugar by sugars full up to {} %", 10 * between(2, 9)));
      }
    }
    if (chance(0.2)) additions_.push_back("water " + range(20, 200, 0.3, "ml"));
  }

  void draw_limits() {
    if (chance(0.6))
      limits_.push_back(fmt::format("pH <= {}.{}", chance(0.7) ? 4 : 3, between(0, 9)));
    if (chance(0.4)) {
      limits_.push_back(
          fmt::format("acetic acid >= {} g per kilogram of finished product", between(5, 25)));
    }
    if (chance(0.6)) {
      const int low = between(5, 50);
      const int high = low + between(6, 25);
      solids_ = (low + high) / 2;
      limits_.push_back(fmt::format("soluble solids {} .. {} %", low, high));
    }
    if (chance(0.25)) limits_.push_back(fmt::format("water activity <= 0.{}", between(86, 99)));
    if (chance(0.25)) limits_.push_back(fmt::format("stability index >= {}", between(15, 65)));
    if (chance(0.25)) {
      limits_.push_back(
          fmt::format("acetic acid >= {}.{} % of volatile matter", between(0, 3), between(1, 9)));
    }
    if (chance(0.3)) {
      limits_.push_back(fmt::format("low acid <= {} % of prepared produce", between(20, 95)));
    }
    if (limits_.empty()) limits_.emplace_back("pH <= 4.2");
  }

  // `vinegar` of `vinegar 300 ml`.
  static std::string name_in(const std::string& statement) {
    return statement.substr(0, statement.find_first_of("0123456789") - 1);
  }

  std::string heat() {
    const std::vector<std::string> lids = {"", " covered", " uncovered"};
    return fmt::format("{} {} min{}", chance(0.5) ? "simmer" : "boil", between(10, 40),
                       lids[static_cast<std::size_t>(between(0, 2))]);
  }

  // Everything in some stage, the vinegar perhaps in two.
  void draw_method() {
    const int stages = between(1, 4);
    std::vector<std::string> added(static_cast<std::size_t>(stages));
    const auto put = [&](const std::string& what, int stage) {
      std::string& list = added[static_cast<std::size_t>(stage)];
      list += (list.empty() ? "" : ", ") + what;
    };
    for (const std::string& each : produce_) put(name_in(each), between(0, stages - 1));
    for (std::size_t i = 0; i < additions_.size(); ++i) {
      const std::string name = name_in(additions_[i]);
      const int first = between(0, stages - 1);
      if (i == 0 && first + 1 < stages && chance(0.6)) {
        put(fmt::format("1/{} of {}", between(2, 4), name), first);
        put("the rest of " + name, between(first + 1, stages - 1));
      } else {
        put(name, first);
      }
    }
    const int boiled_down = between(0, stages - 1);
    for (int i = 0; i < stages; ++i) {
      method_ += fmt::format("    stage part{} {{\n", static_cast<char>('a' + i));
      const std::string& list = added[static_cast<std::size_t>(i)];
      if (!list.empty()) method_ += "      add " + list + "\n";
      const bool reduces = solids_ > 0 && i == boiled_down;
      if (reduces) method_ += fmt::format("      reduce to soluble solids {} %\n", solids_);
      if (!reduces || chance(0.3)) method_ += "      " + heat() + "\n";
      // Some of what may come is not to be eaten unboiled.
      if (i + 1 == stages) method_ += fmt::format("      boil {} min\n", between(15, 30));
      method_ += "    }\n";
    }
  }

  std::mt19937& random_;
  const FrameworkKind& kind_;
  std::string method_;
  int solids_ = 0;  // in the middle of what the limits ask for; none: they ask for none
  std::vector<std::string> produce_;
  std::vector<std::string> additions_;
  std::vector<std::string> substitutions_;
  std::vector<std::string> limits_;
};

}  // namespace

std::string random_framework(std::mt19937& random, const FrameworkKind& kind) {
  return Maker(random, kind).run();
}

}  // namespace maslin::test
