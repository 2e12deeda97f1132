// SPDX-License-Identifier: Apache-2.0
#include "property/random_misfit.hpp"

#include <fmt/format.h>

#include "support/planning.hpp"

namespace maslin::test {
namespace {

class Spoiler {
 public:
  explicit Spoiler(std::mt19937& random) : random_(random) {
    do {
      case_ = random_case(random);
    } while (!Planned(text_of(case_)).fits());
  }

  RandomMisfit run() {
    aim_ = case_.batch * real(0.5, 1);
    spoil();
    if (between(0, 3) == 0) spoil();
    RandomMisfit misfit;
    misfit.text = text_of(case_);
    misfit.aim.weight = static_cast<long>(aim_);
    const int kind = between(0, 9);
    const bool boiled = misfit.text.find("soluble solids") != std::string::npos;
    misfit.aim.kind = kind < 3 && boiled ? plan::AimKind::finished
                      : kind < 8         ? plan::AimKind::prepared
                                         : plan::AimKind::most;
    return misfit;
  }

 private:
  int between(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
  double real(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random_);
  }

  void spoil() {
    const int kind = between(0, 11);
    if (kind < 3) {
      aim_ *= real(1.5, 6);
    } else if (kind < 6) {
      shrink(case_.lines);
    } else if (kind < 9) {
      shrink(case_.store);
    } else if (kind < 10) {
      case_.limits.front() = fmt::format("low acid <= {} % of prepared produce", between(10, 60));
    } else if (kind < 11) {
      leave_one_out();
    } else {
      ask_for_few_solids();
    }
  }

  // Less than what is added brings by itself, which no basket mends.
  void ask_for_few_solids() {
    for (std::string& limit : case_.limits) {
      if (limit.rfind("soluble solids", 0) == 0) limit = "soluble solids 5 .. 8 %";
    }
  }

  void shrink(std::vector<RandomLine>& lines) {
    if (lines.empty()) return;
    RandomLine& line = one_of(lines);
    const double part = real(0.02, 0.5);
    line.grams *= part;
    line.at_most *= part;
  }

  void leave_one_out() {
    if (case_.lines.size() < 2) return;
    case_.lines.erase(case_.lines.begin() + between(0, static_cast<int>(case_.lines.size()) - 1));
  }

  RandomLine& one_of(std::vector<RandomLine>& lines) {
    return lines[static_cast<std::size_t>(between(0, static_cast<int>(lines.size()) - 1))];
  }

  std::mt19937& random_;
  RandomCase case_;
  double aim_ = 0;
};

}  // namespace

RandomMisfit random_misfit(std::mt19937& random) { return Spoiler(random).run(); }

}  // namespace maslin::test
