// SPDX-License-Identifier: Apache-2.0
#include "prove/admissible.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "language/contents.hpp"
#include "language/membership.hpp"

namespace maslin::test {
namespace {

using language::Limit;
using language::Program;
using language::Whole;

language::Line line_of(language::IngredientId ingredient, const Rational& grams) {
  language::Line line;
  line.ingredient = ingredient;
  line.weight = grams;
  line.basis = language::WeighedAs::prepared;
  return line;
}

std::vector<plan::Taken> in_pan(const plan::Draft& draft) {
  std::vector<plan::Taken> all = draft.produce;
  all.insert(all.end(), draft.additions.begin(), draft.additions.end());
  all.insert(all.end(), draft.substitutes.begin(), draft.substitutes.end());
  return all;
}

Rational weight_of(const std::vector<plan::Taken>& list) {
  Rational sum;
  for (const plan::Taken& each : list) sum += each.weight;
  return sum;
}

// Of the whole that the limit names, exactly.
Range<double> linear_value(const Program& program, const plan::Draft& draft, const Limit& limit) {
  Rational low;
  Rational high;
  for (const plan::Taken& each : in_pan(draft)) {
    Bounds share{0, 0};
    if (!limit.property) {
      if (takes(program, limit.share_of, each.ingredient)) share = Bounds::exactly(1);
    } else {
      share = share_of(program, *limit.property, {each.ingredient, each.acidity})
                  .value_or(Bounds{0, 1});
    }
    low += each.weight * share.low;
    high += each.weight * share.high;
  }
  Rational whole = draft.finished ? *draft.finished : weight_of(in_pan(draft));
  if (limit.whole == Whole::prepared_produce) whole = weight_of(draft.produce);
  if (limit.whole == Whole::produce_and_water) {
    whole = weight_of(draft.produce);
    for (const plan::Taken& each : draft.additions) {
      if (program[each.ingredient].name == "water") whole += each.weight;
    }
  }
  return {(low / whole).to_double(), (high / whole).to_double()};
}

std::optional<Range<double>> value_of(const Program& program, const plan::Draft& draft,
                                      const Limit& limit) {
  if (is_linear(limit)) return linear_value(program, draft, limit);
  constexpr double grams = 1000;
  std::vector<language::InPan> parts;
  for (const plan::TakenId& id : plan::all_taken(draft)) {
    const plan::Taken& each = plan::taken_of(draft, id);
    parts.push_back({{each.ingredient, each.acidity},
                     Kilogram(each.weight.to_double() / grams),
                     {id.list, each.slot}});
  }
  std::optional<Kilogram> finished;
  if (draft.finished) finished = Kilogram(draft.finished->to_double() / grams);
  const auto pan = language::Contents::of(program, program[draft.task.framework], parts, finished);
  if (!pan) return std::nullopt;
  const auto value = pan->value_of(limit);
  if (!value) return std::nullopt;
  return value.value();
}

}  // namespace

World::World(const std::string& text)
    : files_({{"/kitchen/test.maslin", text}}), session_(std::make_unique<Session>(files_)) {
  if (!text.empty()) session_->load("/kitchen/test.maslin");
  session_->compile();
}

plan::Task World::put(language::FrameworkId framework, const prove::Case& given,
                      const prove::Choice& choice, const prove::Mix& mix, int kilograms) {
  language::Program& program = session_->program();
  language::Basket basket;
  constexpr double a_crumb = 1e-9;
  for (std::size_t m = 0; m < mix.parts.size(); ++m) {
    const auto grams = static_cast<long>(std::ceil(mix.parts[m] * 1000 * kilograms - a_crumb));
    if (grams > 0) basket.lines.push_back(line_of(given.members[m].ingredient, Rational(grams)));
  }
  language::Kitchen kitchen;
  kitchen.scale_step = Mass(Rational(1));
  for (const language::Stuff& stuff : choice.additions) {
    language::Line line = line_of(stuff.ingredient, Rational(10000000));
    line.acidity = stuff.acidity;
    kitchen.store.push_back(std::move(line));
  }
  program.baskets = {std::move(basket)};
  program.kitchens = {std::move(kitchen)};
  plan::Task task;
  task.framework = framework;
  task.basket = language::BasketId(0);
  task.kitchen = language::KitchenId(0);
  task.aim = {plan::AimKind::prepared, Rational(1000L * kilograms)};
  return task;
}

std::optional<prove::Mix> random_mix(std::mt19937& random, const prove::Case& given,
                                     const prove::Choice& choice) {
  const auto caps = prove::caps_of(given, choice);
  std::uniform_real_distribution<double> real(0, 1);
  // Some shares and some members are sought, others avoided.
  const auto corner = [&] {
    std::vector<double> scores(given.members.size());
    for (double& each : scores) each = real(random);
    return prove::worst_mix(given, caps, scores);
  };
  auto mix = corner();
  if (!mix) return std::nullopt;
  const int others =
      std::bernoulli_distribution(0.5)(random) ? 0 : 1 + static_cast<int>(random() % 4);
  for (int i = 0; i < others; ++i) {
    const auto other = corner();
    const double part = real(random);
    for (std::size_t m = 0; m < mix->parts.size(); ++m) {
      mix->parts[m] += part * (other->parts[m] - mix->parts[m]);
    }
  }
  return mix;
}

bool keeps_to_shares(const language::Framework& framework, const prove::Case& given,
                     const prove::Mix& mix) {
  constexpr double close = 1e-7;
  std::vector<double> of_share(framework.shares.size(), 0.0);
  double whole = 0;
  for (std::size_t m = 0; m < mix.parts.size(); ++m) {
    if (mix.parts[m] < -close) return false;
    of_share[given.members[m].share] += mix.parts[m];
    whole += mix.parts[m];
  }
  if (std::abs(whole - 1) > close) return false;
  for (std::size_t s = 0; s < of_share.size(); ++s) {
    const Bounds& range = framework.shares[s].range;
    if (of_share[s] < range.low.to_double() - close) return false;
    if (of_share[s] > range.high.to_double() + close) return false;
  }
  return true;
}

std::string broken_limits(const language::Program& program, const plan::Draft& draft) {
  constexpr double close = 1e-9;  // of floating point; a bound that is met exactly is met
  std::string text;
  for (const Limit& limit : program[draft.task.framework].limits) {
    if (!is_computed(limit)) continue;
    const auto value = value_of(program, draft, limit);
    const std::string name =
        limit.property ? std::string(language::name_of(*limit.property)) : limit.share_of.name;
    if (!value) {
      text += name + " cannot be worked out\n";
    } else if ((limit.has_low && value->low < limit.range.low.to_double() - close) ||
               (limit.has_high && value->high > limit.range.high.to_double() + close)) {
      text += fmt::format("{}: {} .. {}, where {} .. {} is allowed\n", name, value->low,
                          value->high, limit.range.low.to_double(), limit.range.high.to_double());
    }
  }
  return text;
}

}  // namespace maslin::test
