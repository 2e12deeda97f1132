// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "label/label.hpp"
#include "label/quantities.hpp"
#include "label/reserved.hpp"
#include "language/contents.hpp"
#include "plan/volumes.hpp"

namespace maslin::label {
namespace {

using language::Program;

std::vector<Used> used_in(const plan::Draft& draft) {
  std::vector<Used> used;
  for (const plan::TakenId& id : plan::all_taken(draft)) {
    const plan::Taken& taken = plan::taken_of(draft, id);
    auto same = std::find_if(used.begin(), used.end(),
                             [&](const Used& each) { return each.ingredient == taken.ingredient; });
    if (same == used.end()) same = used.insert(used.end(), {taken.ingredient, Mass(), Mass()});
    same->weight += Mass(taken.weight);
    if (taken.sulphited) same->sulphited += Mass(taken.weight);
  }
  return used;
}

std::string joined(const std::vector<std::string>& names) {
  return fmt::format("{}", fmt::join(names, ", "));
}

class Maker {
 public:
  Maker(const Program& program, const plan::Plan& plan, Diagnostics& diagnostics)
      : program_(program),
        plan_(plan),
        draft_(plan.verified.draft()),
        framework_(program[draft_.task.framework]),
        kitchen_(draft_.task.kitchen.valid() ? &program[draft_.task.kitchen] : nullptr),
        finished_(plan.afternoon.course.finish),
        diagnostics_(diagnostics) {}

  Label run() {
    if (kitchen_ != nullptr) label_.law = language::law_named(kitchen_->law);
    if (label_.law == nullptr) report_no_law();
    label_.basket = program_[draft_.task.basket].name;
    label_.boils = plan_.afternoon.boils.too_many ? 1 : plan_.afternoon.boils.count;
    label_.name = framework_.title.empty() ? framework_.name : framework_.title;
    add_name();
    add_ingredients();
    add_quantities();
    add_nutrition();
    add_lots();
    add_blanks();
    return std::move(label_);
  }

 private:
  FinishedMass middle_finished() const {
    return FinishedMass(middle({finished_.low.in_base(), finished_.high.in_base()}));
  }

  void blank(std::string what, std::string why) {
    label_.blanks.push_back({std::move(what), std::move(why)});
  }

  void report_no_law() {
    const std::string message = "no law is given: nothing on this label was held against one";
    auto& found = kitchen_ != nullptr ? diagnostics_.report(Code::no_law, kitchen_->span, message)
                                      : diagnostics_.report_without_place(Code::no_law, message);
    found.with_mend(
        fmt::format("write `law \"…\"` into the kitchen: one of {}", language::known_laws()));
  }

  // ---- The name -----------------------------------------------------------------------------

  void add_name() {
    if (label_.law == nullptr) return;
    const auto judged = judge_name({program_, draft_, finished_}, *label_.name, *label_.law);
    if (!judged) return;
    if (judged->unmet.empty()) {
      note_met(*judged);
      fruit_ = judged->fruit;
      met_ = judged->standard;
      return;
    }
    auto& found = diagnostics_.report(
        Code::reserved_name, framework_.span,
        fmt::format(
            "the law ({1}) reserves the name `{0}`, and this is not shown to meet what it asks",
            judged->name, label_.law->name));
    for (const std::string& each : judged->unmet) {
      found.with_why(found.why.empty() ? each : found.why + "; " + each);
    }
    found.with_mend(another_title(judged->name));
    if (judged->standard != nullptr) {
      found.with_mend("or declare what the standard asks among the framework's limits");
    }
    label_.name.reset();
    blank("name of the food", fmt::format("not `{}`: {}", judged->name, joined(judged->unmet)));
  }

  // The library's frameworks are refined, not changed.
  std::string another_title(const std::string& reserved) const {
    const language::FrameworkId id = draft_.task.framework;
    const std::string title = "title \"Fruit spread\"";
    if (id.index >= program_.library_frameworks) {
      return fmt::format("give the framework a title without `{}`: `{}`", reserved, title);
    }
    return fmt::format("give it a title without `{}`: `framework fruit spread refines {} {{ {} }}`",
                       reserved, framework_.name, title);
  }

  void note_met(const Judgement& judged) {
    std::string text = fmt::format(
        "The name `{}`: what the standard ({}) asks of fruit and solids is met by "
        "calculation, at the unfavourable end; nothing of it was measured.",
        judged.name, label_.law->name);
    for (const std::string& note : judged.standard->notes) text += " " + note;
    label_.notes.push_back(std::move(text));
  }

  // ---- Ingredients and allergens --------------------------------------------------------------

  void add_ingredients() {
    used_ = in_order(program_, used_in(draft_), middle_finished(), label_.law);
    Mass sulphited;
    for (const Used& each : used_) sulphited += each.sulphited;
    bool declared = false;
    if (sulphited.is_positive()) {
      const FinishedMass least(finished_.low);
      const Bounds high = sulphites_in(sulphited, least, usual_sulphites);
      const Bounds low = sulphites_in(sulphited, finished_.high, usual_sulphites);
      declared = declares_sulphites(high, label_.law);
      const Rational million(1000000);
      label_.notes.push_back(fmt::format(
          "Sulphites: {} to {} mg in a kilogram, if what is sulphited holds 1500 to 2000 mg/kg and "
          "none is lost; declared above 10 mg/kg. The packet may say more.",
          (low.low * million).to_decimal(1), (high.high * million).to_decimal(1)));
    }
    for (const Used& each : used_) {
      label_.ingredients.push_back(listed(program_, each, declared, label_.law));
    }
    add_salt_of_a_brine(declared);
    label_.card = card_of(program_, used_, declared, label_.law);
    label_.not_stated = not_stated(program_, used_);
  }

  // How much of it stays in the produce nobody knows before it is measured.
  void add_salt_of_a_brine(bool declared) {
    const auto salt = plan::salt_beside(program_, plan_.afternoon.saltings);
    if (!salt) return;
    blank("salt",
          "what salting or a brine leaves in the produce is not worked out: have the salt "
          "of 100 g measured");
    const bool listed = std::any_of(used_.begin(), used_.end(), [&](const Used& each) {
      return each.ingredient == salt->ingredient;
    });
    if (listed) return;
    const Used trace{salt->ingredient, Mass(), Mass()};
    label_.ingredients.push_back(label::listed(program_, trace, declared, label_.law));
    used_.push_back(trace);
  }

  void add_quantities() {
    if (label_.law != nullptr && !label_.law->says_quantities) return;
    const std::string& title = framework_.title.empty() ? framework_.name : framework_.title;
    // The most that may be left, so that no share is overstated.
    const std::vector<Named> named = named_in(program_, title, used_);
    label_.quantities = quantities_of(named, finished_.high);
    for (const Named& each : named) {
      if (each.kinds.empty()) continue;
      label_.notes.push_back(
          fmt::format("Counted for `{}` as well: {}.", each.what, joined(each.kinds)));
    }
    if (fruit_.is_positive()) {
      label_.quantities.push_back("prepared with " +
                                  per_100_g({"fruit", fruit_, {}}, finished_.high));
    }
  }

  // ---- Nutrition and weight -------------------------------------------------------------------

  void add_nutrition() {
    if (ferments(framework_.method)) {
      blank("nutrition", "what ferments uses up sugars: no table says how much");
      return;
    }
    std::vector<language::InPan> parts;
    constexpr double grams_in_kilogram = 1000;
    for (const plan::TakenId& id : plan::all_taken(draft_)) {
      const plan::Taken& taken = plan::taken_of(draft_, id);
      parts.push_back({{taken.ingredient, taken.acidity},
                       Kilogram(taken.weight.to_double() / grams_in_kilogram),
                       {id.list, taken.slot}});
    }
    const Kilogram finished(middle_finished().to_double() / grams_in_kilogram);
    const auto contents = language::Contents::of(program_, framework_, parts, finished);
    if (!contents) {
      blank("nutrition", "it could not be worked out");
      return;
    }
    label_.nutrition = nutrition_rows(middle_of(science::nutrients(contents->left())));
    if (plan_.afternoon.saltings.empty()) return;
    for (NutritionRow& row : label_.nutrition) {
      if (row.what == "salt") row.amount.reset();
    }
  }

  // The lightest that a full jar may be: little weight in much room.
  Mass net_of(long fill) const {
    const FinishedMass weight = middle_finished();
    const Range<Volume> room =
        plan::hot_volume(plan::solids_in(program_, draft_), {weight, weight});
    return Mass((Rational(fill) * weight.in_base() / room.high.in_base()).floor_to(1));
  }

  void add_lots() {
    const auto& jars = plan_.afternoon.jars;
    if (!jars) {
      label_.lots.push_back({1, label_.boils, {}});
      const bool has_jars = kitchen_ != nullptr && !kitchen_->jars.empty();
      blank("net quantity", std::string(has_jars ? "jars were not worked out for this"
                                                 : "the kitchen names no jars") +
                                ": weigh full ones, less the jar and lid");
      return;
    }
    bool part_filled = false;
    for (const plan::FilledBoils& boils : jars->boils) {
      Lots lots{boils.first, boils.last, {}};
      for (std::size_t i = 0; i < boils.filling.full.size(); ++i) {
        if (boils.filling.full[i] == 0) continue;
        lots.jars.push_back(
            {jars->sizes[i].holds, boils.filling.full[i], net_of(jars->sizes[i].fill)});
      }
      if (boils.filling.part_size) {
        part_filled = true;
        lots.jars.push_back({jars->sizes[*boils.filling.part_size].holds, 1, std::nullopt});
      }
      label_.lots.push_back(std::move(lots));
    }
    label_.notes.emplace_back(
        "Net quantities are worked out at the least; weigh full jars, less the jar and lid, before "
        "you print.");
    if (part_filled) blank("net quantity of a jar that is not full", "weigh it");
  }

  // ---- What the plan cannot know --------------------------------------------------------------

  void add_blanks() {
    blank("date made", "it belongs to the lot mark");
    add_best_before();
    if (may_drain()) {
      blank("drained weight",
            "of pieces in a liquor, when it has run off; what is thick all through has none");
    }
    if (!label_.not_stated.empty()) {
      blank("allergens of " + joined(label_.not_stated),
            "not stated is not none: read the packets, for sulphites too");
    }
    std::vector<std::string> compounds;
    for (const Used& each : used_) {
      const std::string& name = program_[each.ingredient].name;
      if (language::is_compound(name)) compounds.push_back(name);
    }
    if (!compounds.empty()) {
      blank("ingredients of " + joined(compounds), "they stand on its packet");
    }
    if (!label_.nutrition.empty()) blank("saturates", "no table here divides fat by kind");
    if (label_.law == nullptr) {
      blank("what the law of the place asks", "the kitchen does not say whose law holds");
      return;
    }
    for (const language::Asked& each : language::asked()) {
      const bool of_this =
          each.standard.empty() || (met_ != nullptr && met_->name == each.standard);
      if (each.law == label_.law->name && of_this) {
        blank(std::string(each.what), std::string(each.why));
      }
    }
  }

  // What is boiled down has no liquor.
  bool may_drain() const {
    if (plan_.afternoon.liquor) return true;
    const auto& stages = framework_.method.stages;
    return !stages.empty() && std::none_of(stages.begin(), stages.end(), [](const auto& stage) {
      return std::any_of(stage.steps.begin(), stage.steps.end(),
                         [](const auto& step) { return step.kind == language::StepKind::reduce; });
    });
  }

  // The author's months are no month of this batch before what must be measured was measured.
  void add_best_before() {
    std::vector<std::string> figures;
    for (const language::RouteClaim& claim : framework_.routes) {
      for (const language::ToRead& reading : program_[claim.route].readings) {
        if (std::find(figures.begin(), figures.end(), reading.figure) == figures.end()) {
          figures.push_back(reading.figure);
        }
      }
    }
    if (figures.empty()) {
      blank("best before", framework_.routes.empty()
                               ? "the framework claims no way of keeping: no months"
                               : "no months before the batch is measured");
      return;
    }
    blank("best before", "no months before these readings are in: " + joined(figures));
  }

  const Program& program_;
  const plan::Plan& plan_;
  const plan::Draft& draft_;
  const language::Framework& framework_;
  const language::Kitchen* kitchen_;
  Range<FinishedMass> finished_;
  Diagnostics& diagnostics_;
  std::vector<Used> used_;
  const language::Standard* met_ = nullptr;  // the one whose reserved name the food may bear
  Mass fruit_;                               // what the standard of a reserved name counts
  Label label_;
};

}  // namespace

Label make_label(const Program& program, const plan::Plan& plan, Diagnostics& diagnostics) {
  return Maker(program, plan, diagnostics).run();
}

std::string lot_mark(const Label& label, long boil) {
  if (label.boils == 1) return label.basket;
  return fmt::format("{}, boil {}", label.basket, boil);
}

}  // namespace maslin::label
