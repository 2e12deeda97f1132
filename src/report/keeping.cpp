// SPDX-License-Identifier: Apache-2.0
#include "report/keeping.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "plan/filling.hpp"
#include "report/keeping_figures.hpp"
#include "report/words.hpp"

namespace maslin::report {
namespace {

class KeepingMaker {
 public:
  KeepingMaker(const language::Program& program, const plan::Plan& plan)
      : program_(program),
        plan_(plan.verified),
        tested_(plan.afternoon.tested),
        framework_(program[plan_.draft().task.framework]),
        worked_out_(keeping_figures(program_, plan_)) {}

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
  // A predicted pH may refuse and never passes: where its margin is smaller than its error, that is
  // said.
  bool is_within_error(const language::RouteClaim& claim) const {
    const auto& values = plan_.limits();
    return std::any_of(values.begin(), values.end(), [&](const plan::LimitValue& value) {
      const language::Limit& limit = framework_.limits[value.limit];
      return limit.route == claim.route && limit.property == language::Property::ph &&
             limit.has_high && worked_out_.ph &&
             value.margin.high.to_double() < worked_out_.ph->off_by;
    });
  }

  void add_route(const language::RouteClaim& claim) {
    const language::Route& route = program_[claim.route];
    std::string text = fmt::format("Claimed: the route {}", route.name);
    if (!route.place.empty()) text += " (rules: " + route.place;
    if (route.as_of) text += (route.place.empty() ? " (as of " : " as of ") + text_of(*route.as_of);
    if (!route.place.empty() || route.as_of) text += ")";
    text += route.floors.empty()
                ? ". It has no floor that can be worked out."
                : ". By the tables its floors are met; the margins stand under the limits.";
    if (is_within_error(claim)) {
      text +=
          " The pH meets its own by less than such figures were found to be off: only a reading "
          "tells.";
    }
    text += language::ferments(framework_.method)
                ? " Once it has fermented, hold it cold until every reading is in"
                : " Hold it cold until every reading is in, for each boil";
    text += ", and a person has put their name to it.";
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
    if (!route.sources.empty()) {
      section_.points.push_back(
          fmt::format("sources of the route: {}", fmt::join(route.sources, "; ")));
    }
  }

  void how_long_held() {
    const auto held = plan::holding_of(framework_.method);
    if (!held) return;
    const auto minutes = [](const Duration& time) {
      return (time.in_base() / Rational(60)).to_decimal(1);
    };
    section_.points.push_back(fmt::format(
        "published to leave one in 100,000 acid-resistant bacteria: {} °C in the middle of the jar "
        "for {} min where the pH read is 4.1 or less, {} min up to 4.6; nothing above that, "
        "nothing for spores (Breidt and others, 2010, 2014)",
        held->heat.in_base().to_decimal(1), minutes(held->to_4_1), minutes(held->to_4_6)));
  }

  // A figure that is not there is never silently so.
  void not_worked_out() {
    if (worked_out_.not_worked_out.empty()) return;
    std::string names;
    for (const std::string_view each : worked_out_.not_worked_out) {
      names += (names.empty() ? "" : ", ") + std::string(each);
    }
    section_.points.push_back(fmt::format(
        "not worked out, since the mix lies outside what the tables or the formula are for: {}",
        names));
  }

  void figures() {
    not_worked_out();
    if (worked_out_.figures.empty()) return;
    section_.table.heads = {"figure, worked out", "by the tables", "held against the line"};
    for (const KeepingFigure& each : worked_out_.figures) {
      section_.table.rows.push_back({std::string(each.what), value_text(each), line_text(each)});
    }
    if (const auto& ph = worked_out_.ph) {
      section_.points.push_back(fmt::format(
          "pH expected about {:.1f}; in finished foods such a figure was up to {:.2f} off; widest "
          "through {}, {}",
          ph->value, ph->off_by, ph->widest_through, ph->assumption));
    }
    section_.points.emplace_back(
        "worked out at both ends of every figure; it may refuse and never passes: measure, and ask "
        "your food-safety authority");
  }

  void claims_of_the_author() {
    const std::string text = claims_text(framework_);
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
  KeepingFigures worked_out_;
  Section section_;
};

}  // namespace

std::string claims_text(const language::Framework& framework) {
  std::string text;
  if (framework.mature) text = "mature " + duration_text(framework.mature->low);
  if (framework.best_within) {
    text += (text.empty() ? "" : ", ") +
            fmt::format("best within {}", duration_text(framework.best_within->high));
  }
  if (const auto& opened = framework.once_opened) {
    text += (text.empty() ? "" : ", ") + std::string("once opened keep cold");
    if (opened->within) text += ", " + duration_text(opened->within->high);
  }
  return text;
}

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
