// SPDX-License-Identifier: Apache-2.0
#include "report/method_sections.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "plan/weights.hpp"
#include "report/left_in_pan.hpp"
#include "report/measure.hpp"
#include "report/steps.hpp"
#include "report/vessel_lines.hpp"

namespace maslin::report {
namespace {

using language::StepKind;
using plan::percent_text;
using plan::weight_text;

std::string litres_text(const Volume& volume) {
  return (volume.in_base() / Rational(1000)).to_decimal(1) + " l";
}

std::string litres_range(const Range<Volume>& volume) {
  const std::string low = litres_text(volume.low);
  const std::string high = litres_text(volume.high);
  return low == high ? low : fmt::format("{} to {}", low.substr(0, low.find(' ')), high);
}

std::string length_range(const Range<Length>& length) {
  const std::string low = length.low.in_base().to_decimal(0);
  const std::string high = length.high.in_base().to_decimal(0);
  return (low == high ? low : low + " to " + high) + " mm";
}

class MethodSections {
 public:
  MethodSections(const language::Program& program, const plan::Plan& plan)
      : program_(program),
        plan_(plan),
        draft_(plan.verified.draft()),
        afternoon_(plan.afternoon),
        boils_(plan.afternoon.boils),
        method_(program[draft_.task.framework].method),
        kitchen_(draft_.task.kitchen.valid() ? &program[draft_.task.kitchen] : nullptr) {}

  std::vector<Section> run() {
    the_pan();
    the_method();
    when_to_stop();
    the_clock();
    the_jars();
    return std::move(sections_);
  }

 private:
  Section& section(std::string title, Topic topic = Topic::other) {
    sections_.push_back({std::move(title), {}, {}, {}, topic});
    return sections_.back();
  }

  const std::string& name(const plan::TakenId& id) const {
    return program_[plan::taken_of(draft_, id).ingredient].name;
  }

  // ---- The pan ----------------------------------------------------------------------------------

  void the_pan() {
    // What is packed raw and left to ferment sees no pan.
    if (!boils_.pan_known || !boils_.ingoing.high.is_positive()) return;
    Section& part = section("The pan", Topic::pan);
    if (boils_.too_many) {
      part.paragraphs.push_back("This pan is too small for the batch; no boils were worked out.");
      return;
    }
    const std::string most = litres_text(kitchen_->pan->holds * boils_.fill);
    part.paragraphs.push_back(fmt::format(
        "{} of {} at the start, raw: the pan holds {}, and is to be no more than {} full, which is "
        "{}.",
        boils_.count == 1 ? "One boil" : fmt::format("{} equal boils", boils_.count),
        litres_range(boils_.ingoing), litres_text(kitchen_->pan->holds), fill_text(), most));
    if (boils_.count > 1) {
      part.points.push_back(
          "Each boil is a batch of its own: measure, fill and mark its jars by themselves.");
    }
    outside(part);
    uneven(part);
  }

  void outside(Section& part) const {
    const plan::BoilMiss* rounded = nullptr;
    for (const plan::BoilMiss& miss : afternoon_.misses) {
      if (!miss.breaks_limit) {
        if (rounded == nullptr || rounded->by < miss.by) rounded = &miss;
        continue;
      }
      part.points.push_back(fmt::format(
          "Boil {} is outside a limit that the whole is inside of: it reaches {} %. See "
          "the message; do not make it like this.",
          miss.boil, (miss.value * 100).to_decimal(2)));
    }
    if (rounded == nullptr) return;
    const auto& framework = program_[draft_.task.framework];
    std::string what;
    if (rounded->limit) {
      const language::Limit& limit = framework.limits[*rounded->limit];
      what = limit_name(program_, limit) + ", " + measure_of(limit).allowed(limit);
    } else {
      const language::ProduceShare& share = framework.shares[rounded->share];
      what = share.target.name + ", " + plan::range_text(share.range);
    }
    part.points.push_back(fmt::format("By steps of the scales boil {} reaches {} %: {}.",
                                      rounded->boil, (rounded->value * 100).to_decimal(2), what));
  }

  void uneven(Section& part) const {
    const bool any = std::any_of(boils_.items.begin(), boils_.items.end(), [&](const auto& item) {
      return item.dealt.first_boils > 0 && item.dealt.first_boils < boils_.count &&
             !(item.dealt.first == item.dealt.others);
    });
    if (any) {
      part.points.push_back(
          "Of two amounts, as in 1 × 335 g, 1 × 330 g, the first boils get the first.");
    }
    if (boils_.uneven.empty()) return;
    std::string names;
    for (const plan::TakenId& id : boils_.uneven) names += (names.empty() ? "" : ", ") + name(id);
    part.points.push_back("As they are measured out, these divide no more evenly: " + names + ".");
  }

  // "two thirds"
  std::string fill_text() const {
    if (boils_.fill == plan::fill_of_a_pan) return "two thirds";
    if (boils_.fill == plan::fill_with_syrup) return "half";
    return percent_text(boils_.fill);
  }

  // ---- The method -------------------------------------------------------------------------------

  void the_method() {
    if (boils_.too_many) return;
    if (method_.is_stated()) {
      stages();
    } else if (boils_.count > 1) {
      Section& part = section("Into each boil");
      part.table.heads = {"what", "each boil", "actual"};
      part.table.weighed = {1};
      for (const plan::BoilItem& item : boils_.items) part.table.rows.push_back(item_row("", item));
      for (auto& row : part.table.rows) row.erase(row.begin());
    }
  }

  void stages() {
    Section& part = section(boils_.count > 1 ? "Method, for each boil" : "Method", Topic::method);
    part.table.heads = {"stage", "what to do", boils_.count > 1 ? "each boil" : "how much",
                        "actual"};
    for (std::size_t i = 0; i < afternoon_.timeline.size(); ++i) {
      const language::Stage& stage = *afternoon_.timeline[i].stage;
      std::string title = stage_title(stage);
      for (std::size_t j = 0; j < stage.steps.size(); ++j) {
        step_rows(i, j, title, part.table);
      }
    }
    if (method_.filling)
      part.table.rows.push_back({"jars", filling_text(*method_.filling), "", ""});
    for (const auto& stage : method_.stages) {
      for (const auto& step : stage.steps) notes(step, part);
    }
    for (const plan::Salting& each : afternoon_.saltings) part.points.push_back(salt_text(each));
    add_liquor_lines(program_, plan_, part);
    add_vessel_line(program_, plan_, part);
  }

  static std::string stage_title(const language::Stage& stage) {
    if (stage.days_before == 1) return "the day before";
    if (stage.days_before > 1) return fmt::format("{} days before", stage.days_before);
    return stage.name;
  }

  // The title stands once, at the first row of the stage.
  void step_rows(std::size_t i, std::size_t j, std::string& title, Table& table) const {
    const language::Step step = with_names(method_.stages[i].steps[j]);
    const auto row = [&](std::vector<std::string> cells) {
      cells[0] = title;
      title.clear();
      table.rows.push_back(std::move(cells));
    };
    const bool brings = step.kind == StepKind::add || step.kind == StepKind::pack;
    if (!brings) row({"", step_text(step) + left_in_pan(draft_, afternoon_, i, j), "", ""});
    for (const plan::BoilItem& item : boils_.items) {
      if (item.stage != i || item.step != j) continue;
      const std::string verb = item.aside ? "for that, " : step_text(step) + " ";
      row(item_row(verb, item));
    }
    // What was soaked brings what it lay in.
    for (const plan::Item& item : afternoon_.timeline[i].steps[j].entering) {
      if (item.aside) row({"", what_it_lay_in(item.taken), "", ""});
    }
  }

  // "and the cider vinegar that sultana lay in"
  std::string what_it_lay_in(const plan::TakenId& liquid) const {
    const language::Slot slot{liquid.list, plan::taken_of(draft_, liquid).slot};
    std::string names;
    for (const auto& stage : method_.stages) {
      for (const auto& step : stage.steps) {
        const bool in_it = step.in && std::find(step.in->slots.begin(), step.in->slots.end(),
                                                slot) != step.in->slots.end();
        if (!in_it) continue;
        const language::Step named = with_names(step);
        for (const language::Part& part : named.parts) {
          names += (names.empty() ? "" : ", ") + part.name;
        }
      }
    }
    return fmt::format("and the {} that {} lay in", name(liquid), names);
  }

  // What a step names, by the names of what is taken for it.
  language::Step with_names(language::Step step) const {
    const auto nothing = [&](const language::Part& part) { return taken_for(part).empty(); };
    if (!std::all_of(step.parts.begin(), step.parts.end(), nothing)) {
      step.parts.erase(std::remove_if(step.parts.begin(), step.parts.end(), nothing),
                       step.parts.end());
    }
    for (language::Part& part : step.parts) name_taken(part);
    if (step.in) name_taken(*step.in);
    return step;
  }

  std::vector<std::string> taken_for(const language::Part& part) const {
    std::vector<std::string> names;
    for (const plan::TakenId& id : plan::all_taken(draft_)) {
      const language::Slot slot{id.list, plan::taken_of(draft_, id).slot};
      if (std::find(part.slots.begin(), part.slots.end(), slot) != part.slots.end()) {
        names.push_back(name(id));
      }
    }
    return names;
  }

  // More than a few are called as the framework calls them.
  void name_taken(language::Part& part) const {
    constexpr std::size_t few = 3;
    const auto names = taken_for(part);
    if (names.empty() || names.size() > few) return;
    part.name = names[0];
    for (std::size_t i = 1; i < names.size(); ++i) {
      part.name += (i + 1 == names.size() ? " and " : ", ") + names[i];
    }
    part.slots.resize(1);
  }

  std::vector<std::string> item_row(const std::string& verb, const plan::BoilItem& item) const {
    const plan::Taken& taken = plan::taken_of(draft_, item.taken);
    return {"", verb + name(item.taken), dealt_text(boils_, item, taken.tool), "______"};
  }

  void notes(const language::Step& step, Section& part) const {
    if (step.lost) {
      part.points.push_back(
          fmt::format("Salt draws {} of the weight as water: weigh what is drained.",
                      plan::range_text(*step.lost)));
    }
  }

  std::string salt_text(const plan::Salting& salting) const {
    const auto each = [&](const Mass& mass) {
      return weight_text((mass.in_base() / Rational(boils_.count)).round_to(1));
    };
    if (salting.water.is_zero()) {
      return fmt::format("Salt to rub in and rinse off: {}, on top of what is weighed out.",
                         each(salting.salt));
    }
    return fmt::format(
        "Brine as heavy as the vegetables: {} of salt in {} of water, on top of what is weighed "
        "out.",
        each(salting.salt), each(salting.water));
  }

  // ---- When to stop -----------------------------------------------------------------------------

  void when_to_stop() {
    if (!boils_.stop || !boils_.pan_known || boils_.too_many) return;
    const plan::StopWeight& stop = *boils_.stop;
    Section& part = section("When to stop", Topic::stop);
    const Rational contents = stop.contents.in_base();
    const Bounds window{stop.window.low.in_base(), stop.window.high.in_base()};
    const std::string of = boils_.count > 1 ? "Each boil" : "What is in the pan";
    if (!stop.scales_carry_it) {
      part.paragraphs.push_back(
          fmt::format("{} comes down to {} ({}), more than these scales carry{}: go by the depth; "
                      "nobody lifts a boiling pan.",
                      of, weight_text(contents), between(window), stop.pan ? " with the pan" : ""));
    } else if (stop.pan) {
      const Rational pan = stop.pan->in_base();
      part.paragraphs.push_back(fmt::format(
          "Stop when the pan, off the heat, stands on the scales at {} ({}): {} and the pan's "
          "own {}.",
          weight_text(contents + pan), between({window.low + pan, window.high + pan}),
          weight_text(contents), weight_text(pan)));
    } else {
      part.paragraphs.push_back(
          fmt::format("{} comes down to {} ({}), and the pan on top of that: weigh it empty first.",
                      of, weight_text(contents), between(window)));
    }
    depth(part);
    if (afternoon_.set) {
      part.points.push_back(fmt::format(
          "By a thermometer that is {} to {} °C, where water boils at {} °C; and try a drop on a "
          "cold plate.",
          afternoon_.set->low.in_base().to_decimal(1), afternoon_.set->high.in_base().to_decimal(1),
          afternoon_.height->water_boils.in_base().to_decimal(1)));
    }
  }

  static std::string between(const Bounds& window) {
    if (window.is_exact()) return "no limit says how far beside it";
    return fmt::format("the limits hold from {} to {}", weight_text(window.low),
                       weight_text(window.high));
  }

  void depth(Section& part) const {
    if (!boils_.depths) {
      if (!boils_.stop->scales_carry_it) {
        part.points.push_back(
            "How deep that is cannot be told: write in the kitchen how wide the pan is, `30 cm "
            "across`.");
      }
      return;
    }
    part.points.push_back(
        fmt::format("By a clean wooden spoon stood upright: {} deep when all is in, {} when it is "
                    "done, roughly.",
                    length_range(boils_.depths->start), length_range(boils_.depths->stop)));
  }

  // ---- The clock --------------------------------------------------------------------------------

  void the_clock() {
    if (!afternoon_.clock) return;
    const plan::Clock& clock = *afternoon_.clock;
    Section& part =
        section(boils_.count > 1 ? "The clock, for each boil" : "The clock", Topic::clock);
    part.table.heads = {"since lighting the hob", "at the boil", "done"};
    std::string at_the_boil;  // in the row of what then ends
    for (const plan::ClockMark& mark : clock.marks) {
      if (mark.what == plan::ClockMark::What::at_the_boil) {
        at_the_boil = time_range_text(mark.at);
      } else {
        part.table.rows.push_back(
            {mark_text(mark), std::exchange(at_the_boil, ""), time_range_text(mark.at)});
      }
    }
    if (boils_.count > 1) {
      part.table.rows.push_back({fmt::format("all {} boils, one after another", boils_.count), "",
                                 time_range_text(clock.all_boils)});
    }
    part.points.push_back(
        fmt::format("This hob boils off {} to {} of water in an hour, {}.",
                    weight_text(clock.water_in_an_hour.low.in_base()),
                    weight_text(clock.water_in_an_hour.high.in_base()),
                    clock.measured ? "as the pan was weighed twice in this kitchen"
                                   : "turned down or at full heat, by its power and how much of "
                                     "that reaches a pan"));
    if (!boils_.scales_carry_start || clock.measured) return;
    const Rational minutes = plan::between_weighings.in_base() / Rational(60);
    part.points.push_back(
        fmt::format("To calibrate, weigh at the boil, off the heat, and again {} min later: what "
                    "is still to boil off, "
                    "divided by what was lost, times {} min, is what it takes.",
                    minutes.to_decimal(0), minutes.to_decimal(0)));
  }

  // What has ended then.
  std::string mark_text(const plan::ClockMark& mark) const {
    if (mark.what == plan::ClockMark::What::last_lid) return "the last lid on";
    if (mark.what == plan::ClockMark::What::boiled_down) return "boiling down";
    const language::Stage& stage = method_.stages[mark.stage];
    const StepKind kind = stage.steps[mark.step].kind;
    return fmt::format("{}: {}", stage.name,
                       kind == StepKind::reduce ? "boiling down"
                       : kind == StepKind::boil ? "boiling"
                                                : "simmering");
  }

  // ---- The jars ---------------------------------------------------------------------------------

  void the_jars() {
    if (!afternoon_.jars) return;
    const plan::JarPlan& jars = *afternoon_.jars;
    Section& part = section("Jars", Topic::jars);
    part.paragraphs.push_back(fmt::format(
        "About {} to {} ml{} are expected, filled {} mm below the rim.", jars.expected_ml.low,
        jars.expected_ml.high, boils_.count > 1 ? " from each boil" : "",
        jars.headspace.in_base().to_decimal(1)));
    part.table.heads = {"jar", "filled to", "to fill", "to spare", "in all to warm"};
    for (std::size_t i = 0; i < jars.sizes.size(); ++i) {
      const long used = jars.used[i];
      const long spare = jars.to_spare[i];
      if (used + spare == 0) continue;
      part.table.rows.push_back({jars.sizes[i].holds.in_base().to_decimal(0) + " ml",
                                 fmt::format("{} ml", jars.sizes[i].fill), std::to_string(used),
                                 std::to_string(spare), std::to_string(used + spare)});
    }
    for (const plan::FilledBoils& each : jars.boils) {
      if (boils_.count > 1) part.points.push_back(boil_text(each) + filling_of(each.filling));
      if (boils_.count == 1) part.points.push_back("Filled: " + filling_of(each.filling));
    }
    if (jars.left_ml > 0) {
      part.points.push_back(fmt::format("No jar is left for {} ml.", jars.left_ml));
    }
    if (!draft_.task.jars.empty()) stay_empty(part);
    part.points.push_back(
        "Warm as many lids as jars. A jar that is not full goes into the cold, and is eaten "
        "first.");
  }

  // Of those that were to be filled.
  void stay_empty(Section& part) const {
    const plan::JarPlan& jars = *afternoon_.jars;
    long empty = 0;
    for (std::size_t i = 0; i < jars.sizes.size(); ++i) empty += jars.sizes[i].count - jars.used[i];
    if (empty == 0) return;
    part.points.push_back(fmt::format("{} of the jars that were to be filled {} empty: {}.", empty,
                                      empty == 1 ? "stays" : "stay",
                                      boils_.count > 1 ? "equal boils fill no more of them"
                                                       : "the basket fills no more of them"));
  }

  static std::string boil_text(const plan::FilledBoils& each) {
    if (each.first == each.last) return fmt::format("Boil {}: ", each.first);
    const bool two = each.first + 1 == each.last;
    return fmt::format("Boils {} {} {}, each: ", each.first, two ? "and" : "to", each.last);
  }

  std::string filling_of(const plan::Filling& filling) const {
    const auto& sizes = afternoon_.jars->sizes;
    std::string text;
    const auto add = [&](const std::string& words) { text += (text.empty() ? "" : ", ") + words; };
    for (std::size_t i = 0; i < filling.full.size(); ++i) {
      if (filling.full[i] == 0) continue;
      add(fmt::format("{} of {} ml full", filling.full[i], sizes[i].holds.in_base().to_decimal(0)));
    }
    if (filling.part_size) {
      add(fmt::format("1 of {} ml with about {} ml in it",
                      sizes[*filling.part_size].holds.in_base().to_decimal(0), filling.part_ml));
    }
    return text.empty() ? "none" : text;
  }

  const language::Program& program_;
  const plan::Plan& plan_;
  const plan::Draft& draft_;
  const plan::Afternoon& afternoon_;
  const plan::Boils& boils_;
  const language::Method& method_;
  const language::Kitchen* kitchen_;
  std::vector<Section> sections_;
};

}  // namespace

std::vector<Section> method_sections(const language::Program& program, const plan::Plan& plan) {
  return MethodSections(program, plan).run();
}

}  // namespace maslin::report
