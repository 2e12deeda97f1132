// SPDX-License-Identifier: Apache-2.0
#include "report/keeping.hpp"

#include <fmt/format.h>

#include <cmath>

#include "language/contents.hpp"
#include "plan/filling.hpp"
#include "report/words.hpp"
#include "science/keeping.hpp"

namespace maslin::report {
namespace {

using language::Property;
using language::Whole;

constexpr double grams_in_kilogram = 1000;

std::optional<language::Contents> contents_of(const language::Program& program,
                                              const plan::VerifiedPlan& plan) {
  std::vector<language::InPan> parts;
  for (const plan::TakenId& id : plan::all_taken(plan.draft())) {
    const plan::Taken& taken = plan::taken_of(plan.draft(), id);
    parts.push_back({{taken.ingredient, taken.acidity},
                     Kilogram(taken.weight.to_double() / grams_in_kilogram),
                     {id.list, taken.slot}});
  }
  std::optional<Kilogram> finished;
  if (plan.finished()) finished = Kilogram(plan.finished()->to_double() / grams_in_kilogram);
  auto contents =
      language::Contents::of(program, program[plan.draft().task.framework], parts, finished);
  if (!contents) return std::nullopt;
  return std::move(contents.value());
}

std::string range_text(const Range<double>& range, int places, double scale = 1,
                       std::string_view unit = "") {
  const std::string low = fmt::format("{:.{}f}", range.low * scale, places);
  const std::string high = fmt::format("{:.{}f}", range.high * scale, places);
  return (low == high ? low : low + " .. " + high) + std::string(unit);
}

std::string_view assumption_text(science::PhAssumption assumption) {
  switch (assumption) {
    case science::PhAssumption::published_ph:
      return "its published pH";
    case science::PhAssumption::unknown_ph:
      return "its pH, which no table has";
    case science::PhAssumption::minerals:
      return "its minerals";
    case science::PhAssumption::acid_content:
      break;
  }
  return "how much acid it holds";
}

class KeepingMaker {
 public:
  KeepingMaker(const language::Program& program, const plan::Plan& plan)
      : program_(program),
        plan_(plan.verified),
        tested_(plan.afternoon.tested),
        framework_(program[plan_.draft().task.framework]),
        contents_(contents_of(program, plan_)) {}

  Section run() {
    section_ = {"Keeping", {}, {}, {}, Topic::keeping};
    if (framework_.routes.empty()) {
      section_.paragraphs.emplace_back(
          "Keep it cold. No keeping route is claimed and no reading was taken, so nothing here "
          "says that it may stand on a shelf.");
    }
    for (const language::RouteClaim& claim : framework_.routes) add_route(claim);
    how_long_held();
    figures();
    claims_of_the_author();
    return std::move(section_);
  }

 private:
  void add_route(const language::RouteClaim& claim) {
    const language::Route& route = program_[claim.route];
    std::string text = fmt::format("Claimed: the route {}", route.name);
    if (!route.place.empty()) text += ", by the rules of " + route.place;
    if (route.as_of) text += " as of " + route.as_of->to_decimal(0);
    text += route.floors.empty()
                ? ". It has no floor that can be worked out."
                : ". By the tables its floors are met; the margins stand under the limits.";
    text +=
        " Hold it cold until every reading is in, for each boil, and a person has put their "
        "name to it.";
    section_.paragraphs.push_back(std::move(text));
    std::string readings;
    for (const language::ToRead& reading : route.readings) {
      readings += (readings.empty() ? "" : "; ") + reading_text(reading);
    }
    if (!readings.empty()) section_.points.push_back("to be read before release: " + readings);
    if (!route.processes.empty() && claim.product.empty()) {
      section_.points.emplace_back(
          "the minutes of its table belong to the tested recipes, to the letter; this framework "
          "is none of them and inherits none");
    }
    for (const std::string& source : route.sources) section_.points.push_back("after " + source);
  }

  void how_long_held() {
    const auto held = plan::holding_of(framework_.method);
    if (!held) return;
    const auto minutes = [](const Duration& time) {
      return (time.in_base() / Rational(60)).to_decimal(1);
    };
    section_.points.push_back(fmt::format(
        "published for heat that leaves one in 100,000 acid-resistant bacteria: {} °C in the "
        "middle "
        "of the jar for {} min where the pH that is read is 4.1 or less, {} min up to 4.6; nothing "
        "above that, and nothing for spores (Breidt and others, 2010, 2014)",
        held->heat.in_base().to_decimal(1), minutes(held->to_4_1), minutes(held->to_4_6)));
  }

  void figures() {
    if (!contents_) return;
    section_.table.heads = {"figure, worked out", "by the tables", "held against"};
    add_ph();
    if (const auto activity = contents_->water_activity()) {
      row("water activity", {activity->low.in_unit(), activity->high.in_unit()}, 3,
          "line 0.85 (21 CFR 114): wetter, it needs acid");
    }
    add_index();
    add_acid_of_volatiles();
    if (!section_.table.rows.empty()) {
      section_.points.emplace_back(
          "worked out at both ends of every figure; it may refuse and never passes: measure, and "
          "ask your food-safety authority");
    }
  }

  void row(std::string_view name, const Range<double>& range, int places, std::string_view against,
           double scale = 1, std::string_view unit = "") {
    section_.table.rows.push_back(
        {std::string(name), range_text(range, places, scale, unit), std::string(against)});
  }

  void add_ph() {
    const auto ph = contents_->ph();
    if (!ph) return;
    const double high = ph->range.high.in_unit();
    const double line = science::low_acid_line(science::Jurisdiction::united_kingdom).in_unit();
    row("pH, not measured", {ph->range.low.in_unit(), high}, 2,
        fmt::format("line {:.1f} (British guidance): high end {:.2f} {}", line,
                    std::abs(line - high), high <= line ? "below" : "above"));
    const auto taken = plan::all_taken(plan_.draft());
    section_.points.push_back(fmt::format(
        "pH expected about {:.1f}; in finished foods such a figure was up to {:.2f} off; "
        "widest through {}, {}",
        ph->expected.in_unit(), science::claimed_uncertainty.in_unit(),
        program_[plan::taken_of(plan_.draft(), taken[ph->driver]).ingredient].name,
        assumption_text(ph->assumption)));
  }

  void add_index() {
    language::Limit limit;
    limit.property = Property::stability_index;
    if (const auto value = contents_->value_of(limit)) {
      row("stability index", *value, 1, "line 63 (CIMSCEE): for acid, salt, sugar alone");
    }
  }

  void add_acid_of_volatiles() {
    constexpr double percent = 100;
    language::Limit limit;
    limit.property = Property::acetic_acid;
    limit.whole = Whole::volatile_matter;
    if (const auto value = contents_->value_of(limit)) {
      row("acetic acid in what boils away", *value, 2,
          "line 3.6 % (Adams and Moss): for acid alone", percent, " %");
    }
  }

  void claims_of_the_author() {
    std::string text;
    if (framework_.mature) {
      text = "mature " + duration_text(framework_.mature->low);
    }
    if (framework_.best_within) {
      text += (text.empty() ? "" : ", ") +
              fmt::format("best within {}", duration_text(framework_.best_within->high));
    }
    if (text.empty()) return;
    const bool tested = framework_.status == language::Status::tested;
    const bool holds = tested_ && tested_->holds();
    section_.points.push_back((!tested ? "the author's own claim, not checked: "
                               : holds ? "as the source says of what it tested: "
                                       : "of the tested recipe, not of this mix: ") +
                              text);
  }

  const language::Program& program_;
  const plan::VerifiedPlan& plan_;
  const std::optional<plan::Tested>& tested_;
  const language::Framework& framework_;
  std::optional<language::Contents> contents_;
  Section section_;
};

}  // namespace

std::string reading_text(const language::ToRead& reading) {
  const bool temperature = reading.dimension == dimensions::temperature;
  const bool share = reading.figure != "pH" && reading.figure != "water activity" && !temperature;
  const auto value = [&](const Rational& bound) {
    if (temperature) return bound.to_decimal(1) + " °C";
    return share ? (bound * 100).to_decimal(2) + " %" : bound.to_decimal(2);
  };
  std::string text = reading.figure;
  if (reading.has_low && reading.has_high) {
    return text + " " + value(reading.range.low) + " to " + value(reading.range.high);
  }
  if (reading.has_low) text += " at least " + value(reading.range.low);
  if (reading.has_high) text += " at most " + value(reading.range.high);
  return text;
}

Section keeping_section(const language::Program& program, const plan::Plan& plan) {
  return KeepingMaker(program, plan).run();
}

}  // namespace maslin::report
