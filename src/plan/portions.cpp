// SPDX-License-Identifier: Apache-2.0
#include "plan/portions.hpp"

#include <algorithm>

namespace maslin::plan {
namespace {

// How much smaller the whole may be so that its shares come out: steps of the scales, and a part.
constexpr int most_steps_less = 60;
const Rational least_part(Rational::Wide{9}, Rational::Wide{10});

class Weigher {
 public:
  Weigher(const Weighing& weighing, std::vector<Portion>& portions)
      : weighing_(weighing), portions_(portions) {
    for (const Portion& portion : portions_) exact_ += portion.exact;
  }

  bool run() {
    const Rational& step = weighing_.step;
    const Rational first = weighing_.from_above ? exact_.ceil_to(step) : exact_.floor_to(step);
    for (int less = 0; less <= most_steps_less; ++less) {
      wanted_ = first - step * Rational(less);
      if (!wanted_.is_positive() || wanted_ < first * least_part) break;
      if (try_whole()) return true;
    }
    return false;
  }

 private:
  // Whether every share comes out when this much is weighed in all.
  bool try_whole() {
    const Rational part = smaller(wanted_ / exact_, 1);
    Rational total;
    for (Portion& portion : portions_) {
      portion.weight = (portion.exact * part).floor_to(weighing_.step);
      total += portion.weight;
    }
    while (total < wanted_) {
      Portion* best = nullptr;
      for (std::size_t i = 0; i < portions_.size(); ++i) {
        Portion& portion = portions_[i];
        if (!has_room(portion) || is_capped(i)) continue;
        if (best == nullptr || comes_before(portion, *best)) best = &portion;
      }
      if (best == nullptr) return false;
      best->weight += weighing_.step;
      total += weighing_.step;
    }
    for (std::size_t share = 0; share < weighing_.shares.size(); ++share) {
      if (!holds(share)) return false;
    }
    return std::all_of(weighing_.caps.begin(), weighing_.caps.end(),
                       [&](const Cap& cap) { return weight_under(cap) <= cap.most * wanted_; });
  }

  Rational weight_under(const Cap& cap) const {
    Rational sum;
    for (std::size_t i = 0; i < portions_.size(); ++i) {
      if (cap.counts[i]) sum += portions_[i].weight;
    }
    return sum;
  }

  struct Share {
    Rational weight;
    Rational slack;  // a plain ratio is held to a step of the scales for each
  };
  Share share_of(std::size_t share) const {
    Share result;
    int count = 0;
    for (const Portion& portion : portions_) {
      if (portion.share != share || !portion.weight.is_positive()) continue;
      result.weight += portion.weight;
      ++count;
    }
    if (weighing_.shares[share].is_exact()) {
      result.slack = weighing_.step * Rational(std::max(count, 1));
    }
    return result;
  }

  bool holds(std::size_t index) const {
    const Share share = share_of(index);
    const Bounds& range = weighing_.shares[index];
    return share.weight >= range.low * wanted_ - share.slack &&
           share.weight <= range.high * wanted_ + share.slack;
  }

  // Whether a step more of it is there, and inside its share.
  bool has_room(const Portion& portion) const {
    Rational used = weighing_.step;
    for (const Portion& other : portions_) {
      if (other.supply == portion.supply) used += other.weight;
    }
    if (used > portion.available) return false;
    const Share share = share_of(portion.share);
    return share.weight + weighing_.step <=
           weighing_.shares[portion.share].high * wanted_ + share.slack;
  }

  bool is_capped(std::size_t portion) const {
    return std::any_of(weighing_.caps.begin(), weighing_.caps.end(), [&](const Cap& cap) {
      return cap.counts[portion] && weight_under(cap) + weighing_.step > cap.most * wanted_;
    });
  }

  // By how much the whole would have to be smaller for the share to be large enough.
  Rational lack(const Portion& portion) const {
    const Rational& low = weighing_.shares[portion.share].low;
    if (!low.is_positive()) return 0;
    return larger(wanted_ - share_of(portion.share).weight / low, 0);
  }

  Rational left_out(const Portion& portion) const { return portion.exact - portion.weight; }

  // Steps that rounding down left over go first to shares that would fall below their least, then
  // to acid produce before low-acid produce, the largest remainder first.
  bool comes_before(const Portion& a, const Portion& b) const {
    const Rational a_lacks = lack(a);
    const Rational b_lacks = lack(b);
    if (a_lacks != b_lacks) return a_lacks > b_lacks;
    const bool a_has = left_out(a).is_positive();
    const bool b_has = left_out(b).is_positive();
    if (a_has != b_has) return a_has;
    if (a.low_acid != b.low_acid) return b.low_acid;
    return left_out(a) > left_out(b);
  }

  const Weighing& weighing_;
  std::vector<Portion>& portions_;
  Rational exact_;
  Rational wanted_;
};

}  // namespace

bool weigh_out(const Weighing& weighing, std::vector<Portion>& portions) {
  return Weigher(weighing, portions).run();
}

}  // namespace maslin::plan
