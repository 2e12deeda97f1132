// SPDX-License-Identifier: Apache-2.0
#include "prove/proof.hpp"

#include <algorithm>
#include <cmath>

#include "prove/confirm.hpp"
#include "prove/rays.hpp"
#include "prove/worst_mix.hpp"

namespace maslin::prove {
namespace {

constexpr std::size_t most_rays = 20000;
constexpr std::size_t most_choices = 400;
constexpr std::size_t most_answers = 8;
// Rows are scaled to coefficients of the order of one, for a kilogram: a thousandth of a gram.
constexpr double tolerance = 1e-6;

// What dividing a mix among its members costs, for each of them, beside a sum.
constexpr std::size_t steps_of_a_member = 16;

// Shares of the water that may be asked to stay, from boiling hard to not at all.
std::vector<double> grid(const language::Framework& framework) {
  if (!says_how_far(framework)) return {1};
  std::vector<double> result;
  constexpr int steps = 39;
  for (int i = steps; i >= 2; --i) result.push_back(i / static_cast<double>(steps + 1));
  return result;
}

void scale(Row& row) {
  double most = 0;
  for (const double each : row.of_member) most = std::max(most, std::abs(each));
  for (const double each : row.of_answer) most = std::max(most, std::abs(each));
  if (!(most > 0)) return;
  for (double& each : row.of_member) each /= most;
  for (double& each : row.of_answer) each /= most;
  row.constant /= most;
}

// How far the worst mix is from being met, by the ray that shows it.
struct Found {
  double value = -1;  // above 0: it cannot be met
  Mix mix;
  std::vector<std::size_t> limits;
};

std::vector<std::size_t> limits_in(const Ray& ray, const std::vector<Row>& rows) {
  std::vector<std::size_t> result;
  for (const Ray::Part& part : ray.parts) {
    const Row& row = rows[part.row];
    if (row.is_limit && std::find(result.begin(), result.end(), row.limit) == result.end()) {
      result.push_back(row.limit);
    }
  }
  return result;
}

// Nothing when there are too many rays to look at.
std::optional<Found> worst_of(const Case& given, const Choice& choice, double water_kept,
                              Effort& effort) {
  const std::vector<Cap> caps = caps_of(given, choice);
  auto rows = rows_of(given, choice, expected_boiling(given, choice, water_kept));
  std::vector<std::vector<double>> answers;
  for (Row& row : rows) {
    scale(row);
    answers.push_back(row.of_answer);
  }
  const auto rays = elementary_rays(answers, most_rays, effort);
  if (!rays) return std::nullopt;
  // Where no limit depends on the mix there is nothing that could break.
  Found worst;
  for (const Ray& ray : *rays) {
    std::vector<double> scores(given.members.size(), 0.0);
    double constant = 0;
    bool speaks_of_limits = false;
    for (const Ray::Part& part : ray.parts) {
      const Row& row = rows[part.row];
      speaks_of_limits = speaks_of_limits || row.is_limit;
      constant -= part.weight * row.constant;
      for (std::size_t m = 0; m < row.of_member.size(); ++m) {
        scores[m] -= part.weight * row.of_member[m];
      }
    }
    if (!speaks_of_limits) continue;
    if (!effort.spend(given.members.size() * (ray.parts.size() + steps_of_a_member))) {
      return std::nullopt;
    }
    const auto mix = worst_mix(given, caps, scores);
    if (!mix) return std::nullopt;
    const double value = mix->value + constant;
    if (value > worst.value) worst = Found{value, *mix, limits_in(ray, rows)};
  }
  return worst;
}

std::vector<Ingredient> ingredients_of(const Case& given, const Mix& mix) {
  constexpr double a_crumb = 1e-6;
  std::vector<Ingredient> result;
  for (std::size_t m = 0; m < mix.parts.size(); ++m) {
    if (mix.parts[m] <= a_crumb) continue;
    result.push_back({given.members[m].ingredient, given.members[m].share, mix.parts[m]});
  }
  return result;
}

// The widest share halved: what serves every mix of a half need not serve those of the other.
std::optional<std::pair<Case, Case>> halves_of(const Case& given) {
  constexpr double narrow = 0.01;
  std::size_t widest = 0;
  const auto width = [&](std::size_t share) {
    return given.shares[share].high - given.shares[share].low;
  };
  for (std::size_t share = 1; share < given.shares.size(); ++share) {
    if (width(share) > width(widest)) widest = share;
  }
  if (given.shares.empty() || width(widest) < narrow) return std::nullopt;
  const double middle = (given.shares[widest].low + given.shares[widest].high) / 2;
  Case low = given;
  low.shares[widest].high = middle;
  Case high = given;
  high.shares[widest].low = middle;
  return std::pair{std::move(low), std::move(high)};
}

bool admits(const Case& given, const Choice& choice) {
  const std::vector<double> even(given.members.size(), 0.0);
  return worst_mix(given, caps_of(given, choice), even).has_value();
}

class Prover {
 public:
  Prover(const Case& given, Effort& effort)
      : given_(given), effort_(effort), grid_(grid(given.framework)) {}

  Proof run() {
    const auto& limits = given_.framework.limits;
    if (std::none_of(limits.begin(), limits.end(), is_proved)) {
      return {Verdict::no_limits, {}, {}, {}, {}, {}};
    }
    if (answers_of(given_) > most_answers) {
      return not_shown("more additions are ranges than are looked through",
                       "state some of what is added as one amount, not as a range");
    }
    const auto choices = choices_of(given_, most_choices);
    if (!choices) {
      return not_shown(
          "what is added is named by classes too wide to look through",
          "name what is added more narrowly: `vinegar as cider vinegar, wine vinegar`");
    }
    if (choices->empty()) {
      return not_shown("a route takes nothing that could be added for one of them",
                       "name something that the route takes, or claim another route");
    }
    bool admits_any = false;
    for (const Choice& choice : *choices) {
      if (!admits(given_, choice)) continue;
      admits_any = true;
      parts_left_ = most_parts;
      if (auto ended = look_at(given_, choice)) return std::move(*ended);
    }
    if (!admits_any) {
      return not_shown("no mix keeps to its shares and to the caps on the produce",
                       "widen a share, or a cap on the produce");
    }
    return proof(Verdict::holds, nearest_choice_, nearest_);
  }

 private:
  // How many parts of the mixes are looked at by themselves.
  static constexpr int most_parts = 64;

  static Proof not_shown(std::string reason, std::string advice) {
    return {Verdict::not_shown, {}, {}, {}, std::move(reason), std::move(advice)};
  }

  Proof proof(Verdict verdict, const Choice& choice, const Found& found) const {
    return {verdict, ingredients_of(given_, found.mix), choice.additions, found.limits, {}, {}};
  }

  // Nothing when every mix of this part can be met.
  std::optional<Proof> look_at(const Case& part, const Choice& choice) {
    if (!admits(part, choice)) return std::nullopt;
    const auto found = best_over_grid(part, choice);
    if (!found) {
      return not_shown("its limits combine in more ways than are looked through",
                       "name the produce more narrowly, state some of what is added as one amount, "
                       "or leave out a limit that another makes needless");
    }
    if (found->value <= tolerance) {
      if (nearest_.limits.empty() || found->value > nearest_.value) {
        nearest_ = *found;
        nearest_choice_ = choice;
      }
      return std::nullopt;
    }
    if (is_refused(given_, choice, found->mix)) return proof(Verdict::breaks, choice, *found);
    const auto halves = halves_of(part);
    if (!halves || --parts_left_ < 0) {
      Proof result = proof(Verdict::not_shown, choice, *found);
      result.reason =
          "the bounds of the calculation are too wide for mixes like this one, which by itself can "
          "be brought inside the limits";
      result.advice =
          "narrow the shares or the classes that this mix is made of, or let more acid be "
          "added";
      return result;
    }
    if (auto ended = look_at(halves->first, choice)) return ended;
    return look_at(halves->second, choice);
  }

  // One share of the water that serves every mix; begins where it served before.
  std::optional<Found> best_over_grid(const Case& part, const Choice& choice) {
    std::optional<Found> best;
    const std::size_t begin = served_;
    for (std::size_t i = 0; i < grid_.size(); ++i) {
      const std::size_t at = (begin + i) % grid_.size();
      const auto found = worst_of(part, choice, grid_[at], effort_);
      if (!found) return std::nullopt;
      if (!best || found->value < best->value) {
        best = found;
        served_ = at;
      }
      if (best->value <= tolerance) break;
    }
    return best;
  }

  const Case& given_;
  Effort& effort_;
  std::vector<double> grid_;
  std::size_t served_ = 0;
  int parts_left_ = most_parts;
  Found nearest_;
  Choice nearest_choice_;
};

}  // namespace

Proof prove(const language::Program& program, const language::Framework& framework,
            Effort& effort) {
  const Case given = case_of(program, framework);
  return Prover(given, effort).run();
}

Proof prove(const language::Program& program, const language::Framework& framework) {
  Effort effort(most_effort);
  return prove(program, framework, effort);
}

}  // namespace maslin::prove
