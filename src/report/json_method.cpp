// SPDX-License-Identifier: Apache-2.0
#include "report/json_method.hpp"

#include <nlohmann/json.hpp>

#include "diagnostic/json.hpp"
#include "diagnostic/render.hpp"
#include "language/checks/checks.hpp"
#include "plan/filling.hpp"
#include "report/json.hpp"
#include "report/json_tested.hpp"
#include "report/steps.hpp"

namespace maslin::report {
namespace {

using Json = nlohmann::ordered_json;

std::string_view kind_name(language::StepKind kind) {
  switch (kind) {
    case language::StepKind::add:
      return "add";
    case language::StepKind::pack:
      return "pack";
    case language::StepKind::take_out:
      return "take out";
    case language::StepKind::soak:
      return "soak";
    case language::StepKind::macerate:
      return "macerate";
    case language::StepKind::dry_salt:
      return "dry salt";
    case language::StepKind::brine:
      return "brine";
    case language::StepKind::strain:
      return "strain";
    case language::StepKind::simmer:
      return "simmer";
    case language::StepKind::boil:
      return "boil";
    case language::StepKind::reduce:
      return "reduce";
    case language::StepKind::ferment:
      break;
  }
  return "ferment";
}

std::string_view tool_name(plan::Tool tool) {
  switch (tool) {
    case plan::Tool::scales:
      return "scales";
    case plan::Tool::spoons:
      return "spoons";
    case plan::Tool::count:
      break;
  }
  return "count";
}

template <class Kind>
Json range_of(const Range<Exact<Kind>>& range, int places = 9) {
  Json json = range_json({range.low.in_base(), range.high.in_base()});
  if (places == 0) {
    json = range_json({range.low.in_base().floor_to(1), range.high.in_base().ceil_to(1)});
  }
  return json;
}

Json minutes_json(const Range<Duration>& time) {
  return range_json({time.low.in_base() / Rational(60), time.high.in_base() / Rational(60)});
}

class MethodWriter {
 public:
  MethodWriter(const Sources& sources, const language::Program& program, const plan::Plan& plan)
      : sources_(sources),
        program_(program),
        draft_(plan.verified.draft()),
        afternoon_(plan.afternoon),
        boils_(plan.afternoon.boils),
        method_(program[draft_.task.framework].method) {}

  void run(Json& json) const {
    if (afternoon_.height) json["water_boils"] = height();
    json["boils"] = boils();
    if (method_.is_stated()) json["method"] = method();
    if (afternoon_.clock) json["clock"] = clock();
    if (afternoon_.jars) json["jars"] = jars();
    if (!afternoon_.misses.empty()) json["boil_misses"] = misses();
    if (afternoon_.liquor) json["liquor"] = liquor(*afternoon_.liquor);
    if (const auto held = plan::holding_of(method_)) json["holding"] = holding(*held);
    if (afternoon_.tested) {
      json["tested"] = tested_json(sources_, program_, draft_.task.framework, *afternoon_.tested);
    }
  }

 private:
  Json liquor(const plan::Liquor& liquor) const {
    Json json = {
        {"acidity_g_per_100_ml", range_json({liquor.acidity.low * 100, liquor.acidity.high * 100})},
        {"acetic_acid_share", range_json(liquor.poured)},
        {"whole_jar_share", range_json(liquor.whole_jar)},
        {"water_share", number_json(liquor.water)}};
    const auto floor = language::liquor_floor(program_, program_[draft_.task.framework]);
    if (floor) json["floor_g_per_100_ml"] = acidity_json(floor->floor->acidity);
    return json;
  }

  static Json holding(const plan::Holding& held) {
    const auto minutes = [](const Duration& time) {
      return number_json(time.in_base() / Rational(60));
    };
    return {{"at_c", number_json(held.heat.in_base())},
            {"to_ph_4_1_minutes", minutes(held.to_4_1)},
            {"to_ph_4_6_minutes", minutes(held.to_4_6)}};
  }

  Json height() const {
    return {{"altitude_m", number_json(afternoon_.height->altitude.in_base() / Rational(1000))},
            {"assumed", afternoon_.height->assumed},
            {"at_c", number_json(afternoon_.height->water_boils.in_base())}};
  }

  // ---- The pan ----------------------------------------------------------------------------------

  Json boils() const {
    Json json = {{"count", boils_.count},
                 {"too_many", boils_.too_many},
                 {"fill_share", number_json(boils_.fill)},
                 {"ingoing_ml", range_of(boils_.ingoing, 0)}};
    if (boils_.too_many) return json;
    json["ingoing_g"] = range_of(boils_.weigh);
    json["items"] = items();
    if (boils_.stop) json["stop"] = stop(*boils_.stop);
    if (boils_.depths) {
      json["depth_mm"] = {{"start", range_of(boils_.depths->start, 0)},
                          {"stop", range_of(boils_.depths->stop, 0)}};
    }
    if (afternoon_.set) json["set_c"] = range_of(*afternoon_.set);
    return json;
  }

  Json items() const {
    Json json = Json::array();
    for (const plan::BoilItem& item : boils_.items) {
      const plan::Taken& taken = plan::taken_of(draft_, item.taken);
      Json each = {{"ingredient", printable(program_[taken.ingredient].name)},
                   {"tool", tool_name(taken.tool)}};
      if (method_.is_stated()) {
        each["stage"] = item.stage;
        each["step"] = item.step;
      }
      const plan::Dealt& dealt = item.dealt;
      each["first_boils"] = dealt.first_boils;
      each["first_g"] = number_json(dealt.first * item.grams_per_unit);
      each["others_g"] = number_json(dealt.others * item.grams_per_unit);
      each["first_amount"] = number_json(dealt.first);
      each["others_amount"] = number_json(dealt.others);
      json.push_back(std::move(each));
    }
    return json;
  }

  static Json stop(const plan::StopWeight& stop) {
    Json json = {{"contents_g", number_json(stop.contents.in_base())},
                 {"window_g", range_of(stop.window)},
                 {"scales_carry_it", stop.scales_carry_it}};
    if (stop.pan) {
      json["pan_g"] = number_json(stop.pan->in_base());
      json["with_pan_g"] = number_json(stop.contents.in_base() + stop.pan->in_base());
    }
    return json;
  }

  Json misses() const {
    Json json = Json::array();
    for (const plan::BoilMiss& miss : afternoon_.misses) {
      const Span place = plan::span_of(program_[draft_.task.framework], miss);
      json.push_back({{"boil", miss.boil},
                      {"share", number_json(miss.value)},
                      {"outside_by_share", number_json(miss.by)},
                      {"breaks_limit", miss.breaks_limit},
                      {"place", place_json(sources_, place)}});
    }
    return json;
  }

  // ---- The method -------------------------------------------------------------------------------

  Json method() const {
    Json stages = Json::array();
    for (const language::Stage& stage : method_.stages) {
      Json steps = Json::array();
      for (const language::Step& step : stage.steps) steps.push_back(step_json(step));
      stages.push_back({{"stage", printable(stage.name)},
                        {"days_before", stage.days_before},
                        {"steps", std::move(steps)},
                        {"place", place_json(sources_, stage.span)}});
    }
    Json json = {{"stages", std::move(stages)}};
    if (method_.filling) {
      Json filling = {{"hot", method_.filling->hot}};
      if (method_.filling->heat) filling["at_c"] = number_json(method_.filling->heat->in_base());
      if (method_.filling->headspace) {
        filling["headspace_mm"] = number_json(method_.filling->headspace->in_base());
      }
      filling["place"] = place_json(sources_, method_.filling->span);
      json["filling"] = std::move(filling);
    }
    return json;
  }

  Json step_json(const language::Step& step) const {
    Json json = {{"kind", kind_name(step.kind)}, {"text", printable(step_text(step))}};
    if (step.lasting) {
      json["minutes"] = minutes_json(step.lasting->time);
      json["or_longer"] = step.lasting->or_longer;
    }
    if (step.heat) json["at_c"] = range_of(*step.heat);
    if (step.solids) json["soluble_solids_share"] = number_json(*step.solids);
    if (step.weight) json["weight_share"] = number_json(*step.weight);
    if (step.strength) json["salt_share"] = number_json(*step.strength);
    if (!step.until.empty()) json["until"] = printable(step.until);
    json["place"] = place_json(sources_, step.span);
    return json;
  }

  // ---- The clock and the jars -------------------------------------------------------------------

  Json clock() const {
    const plan::Clock& clock = *afternoon_.clock;
    Json marks = Json::array();
    for (const plan::ClockMark& mark : clock.marks) {
      Json each = {{"what", mark_name(mark.what)}, {"minutes", minutes_json(mark.at)}};
      const bool of_step = mark.what == plan::ClockMark::What::at_the_boil ||
                           mark.what == plan::ClockMark::What::step_done;
      if (of_step && method_.is_stated()) {
        each["stage"] = mark.stage;
        each["step"] = mark.step;
      }
      marks.push_back(std::move(each));
    }
    return {{"marks", std::move(marks)},
            {"all_boils_minutes", minutes_json(clock.all_boils)},
            {"water_in_an_hour_g", range_of(clock.water_in_an_hour)},
            {"hob_assumed", clock.kind_assumed},
            {"measured", clock.measured}};
  }

  static std::string_view mark_name(plan::ClockMark::What what) {
    switch (what) {
      case plan::ClockMark::What::at_the_boil:
        return "at the boil";
      case plan::ClockMark::What::step_done:
        return "step done";
      case plan::ClockMark::What::boiled_down:
        return "boiled down";
      case plan::ClockMark::What::last_lid:
        break;
    }
    return "last lid";
  }

  Json jars() const {
    const plan::JarPlan& jars = *afternoon_.jars;
    Json sizes = Json::array();
    for (std::size_t i = 0; i < jars.sizes.size(); ++i) {
      sizes.push_back({{"holds_ml", number_json(jars.sizes[i].holds.in_base())},
                       {"fill_ml", jars.sizes[i].fill},
                       {"at_hand", jars.sizes[i].count},
                       {"used", jars.used[i]},
                       {"to_spare", jars.to_spare[i]}});
    }
    Json boils = Json::array();
    for (const plan::FilledBoils& each : jars.boils) {
      Json one = {{"first_boil", each.first},
                  {"last_boil", each.last},
                  {"full", each.filling.full},
                  {"left_ml", each.filling.left_ml}};
      if (each.filling.part_size) {
        one["part_filled"] = {{"size", *each.filling.part_size}, {"ml", each.filling.part_ml}};
      }
      boils.push_back(std::move(one));
    }
    return {{"headspace_mm", number_json(jars.headspace.in_base())},
            {"headspace_assumed", jars.headspace_assumed},
            {"expected_ml", {{"low", jars.expected_ml.low}, {"high", jars.expected_ml.high}}},
            {"sizes", std::move(sizes)},
            {"boils", std::move(boils)},
            {"left_ml", jars.left_ml}};
  }

  const Sources& sources_;
  const language::Program& program_;
  const plan::Draft& draft_;
  const plan::Afternoon& afternoon_;
  const plan::Boils& boils_;
  const language::Method& method_;
};

}  // namespace

void add_method_json(const Sources& sources, const language::Program& program,
                     const plan::Plan& plan, Json& json) {
  MethodWriter(sources, program, plan).run(json);
}

}  // namespace maslin::report
