// SPDX-License-Identifier: Apache-2.0
#include "prove/mend.hpp"

#include <algorithm>
#include <functional>
#include <set>

namespace maslin::prove {
namespace {

using language::Framework;

Rational hundredths(long value) { return Rational(Rational::Wide{value}, Rational::Wide{100}); }

// Nobody is advised to let a pH rise above 4.6 (21 CFR 114.3): above it botulism has grown.
bool is_over_the_line(const language::Limit& limit, const Rational& bound) {
  return limit.property == language::Property::ph && bound > hundredths(460);
}

class Mender {
 public:
  Mender(const language::Program& program, const Framework& framework, const Proof& proof)
      : program_(program), framework_(framework), proof_(proof) {}

  std::vector<Mend> run() {
    raise_acids();
    lower_shares();
    loosen_limits();
    return std::move(mends_);
  }

 private:
  using Change = std::function<void(Framework&, const Rational&)>;

  bool holds_with(const Change& change, const Rational& bound) {
    Framework changed = framework_;
    change(changed, bound);
    return prove(program_, changed, effort_).verdict == Verdict::holds;
  }

  // The first of the bounds, mildest first, with which every mix holds.
  void try_bounds(const Mend& mend, const std::vector<Rational>& bounds, const Change& change) {
    if (bounds.empty() || !holds_with(change, bounds.back())) return;
    std::size_t serves = bounds.size() - 1;
    std::size_t fails = 0;  // one before the first that may serve
    while (fails < serves) {
      const std::size_t between = (fails + serves) / 2;
      if (holds_with(change, bounds[between])) {
        serves = between;
      } else {
        fails = between + 1;
      }
    }
    mends_.push_back(mend);
    mends_.back().bound = bounds[serves];
  }

  void raise_acids() {
    for (std::size_t i = 0; i < framework_.additions.size(); ++i) {
      const auto& addition = framework_.additions[i];
      const bool acid = i < proof_.additions.size() && is_acid_donor(program_, proof_.additions[i]);
      if (addition.range.is_exact() || !acid) continue;
      std::vector<Rational> bounds;
      for (long percent = 105; percent <= 200; percent += 5) {
        // To ten millilitres or grams.
        bounds.push_back((addition.range.high * hundredths(percent)).ceil_to(10));
      }
      try_bounds({Mend::Kind::raise_addition, i, false, {}}, bounds,
                 [i](Framework& framework, const Rational& bound) {
                   framework.additions[i].range.high = bound;
                 });
    }
  }

  void lower_shares() {
    std::set<std::size_t> shares;
    for (const Ingredient& each : proof_.worst) shares.insert(each.share);
    for (const std::size_t i : shares) {
      const Bounds& range = framework_.shares[i].range;
      std::vector<Rational> bounds;
      for (Rational bound = range.high - hundredths(1); bound > range.low && bound.is_positive();
           bound -= hundredths(1)) {
        bounds.push_back(bound);
      }
      try_bounds({Mend::Kind::lower_share, i, false, {}}, bounds,
                 [i](Framework& framework, const Rational& bound) {
                   framework.shares[i].range.high = bound;
                 });
    }
  }

  void loosen_limits() {
    for (const std::size_t i : proof_.limits) {
      const language::Limit& limit = framework_.limits[i];
      // Floors of a route are loosened by nobody.
      if (limit.route.valid() || !limit.property) continue;
      if (limit.has_low) loosen(i, true, -1);
      if (limit.has_high) loosen(i, false, 1);
    }
  }

  void loosen(std::size_t index, bool low, int direction) {
    const Bounds& range = framework_.limits[index].range;
    std::vector<Rational> bounds;
    const Rational& from = low ? range.low : range.high;
    // A pH as it is read, in steps of a twentieth; others by hundredths of themselves.
    const bool is_ph = framework_.limits[index].property == language::Property::ph;
    const Rational step = is_ph ? hundredths(5) : from * hundredths(2);
    for (long steps = 1; steps <= 20; ++steps) {
      const Rational bound = from + step * Rational(steps * direction);
      if (!low && is_over_the_line(framework_.limits[index], bound)) break;
      bounds.push_back(bound);
    }
    try_bounds({Mend::Kind::loosen_limit, index, low, {}}, bounds,
               [index, low](Framework& framework, const Rational& bound) {
                 Bounds& changed = framework.limits[index].range;
                 (low ? changed.low : changed.high) = bound;
               });
  }

  const language::Program& program_;
  const Framework& framework_;
  const Proof& proof_;
  // All of them together may take as much as some proofs: those that are not looked at by then are
  // not offered.
  Effort effort_{most_effort};
  std::vector<Mend> mends_;
};

}  // namespace

std::vector<Mend> find_mends(const language::Program& program, const Framework& framework,
                             const Proof& proof) {
  if (proof.verdict != Verdict::breaks && proof.limits.empty()) return {};
  return Mender(program, framework, proof).run();
}

}  // namespace maslin::prove
