// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "label/basis.hpp"
#include "label/label.hpp"
#include "label/quantities.hpp"
#include "label/readings.hpp"
#include "label/reserved.hpp"
#include "language/contents.hpp"
#include "plan/timeline.hpp"

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

void report_no_law(const Program& program, const plan::Task& task, Diagnostics& diagnostics) {
  const language::Kitchen* kitchen = task.kitchen.valid() ? &program[task.kitchen] : nullptr;
  if (kitchen != nullptr && language::law_named(kitchen->law) != nullptr) return;
  const std::string message = "no law is given: nothing on this label was held against one";
  auto& found = kitchen != nullptr ? diagnostics.report(Code::no_law, kitchen->span, message)
                                   : diagnostics.report_without_place(Code::no_law, message);
  found.with_mend(
      fmt::format("write `law \"…\"` into the kitchen: one of {}", language::known_laws()));
}

class Maker {
 public:
  Maker(const Program& program, const Basis& basis, Diagnostics& diagnostics)
      : program_(program),
        basis_(basis),
        draft_(basis.draft),
        framework_(program[draft_.task.framework]),
        kitchen_(draft_.task.kitchen.valid() ? &program[draft_.task.kitchen] : nullptr),
        finished_(basis.finished),
        diagnostics_(diagnostics) {}

  Label run() {
    if (kitchen_ != nullptr) {
      label_.law = language::law_named(kitchen_->law);
      label_.law_as_of = kitchen_->law_as_of;
    }
    label_.mark = basis_.mark;
    label_.record = basis_.record;
    label_.boils = basis_.boils;
    label_.notes = basis_.notes;
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
  FinishedMass middle_finished() const { return middle_of(finished_); }

  void blank(std::string what, std::string why) {
    label_.blanks.push_back({std::move(what), std::move(why)});
  }

  // ---- The name -----------------------------------------------------------------------------

  void add_name() {
    if (label_.law == nullptr) return;
    const auto judged =
        judge_name({program_, draft_, finished_}, *label_.name, *label_.law, label_.law_as_of);
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
            judged->name, standard_of(*judged)));
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

  // "European Union, as of 2026-06-14": of several the latest, unless the kitchen names a day.
  std::string standard_of(const Judgement& judged) const {
    std::string text(label_.law->name);
    if (judged.standard == nullptr || !judged.standard->as_of) return text;
    return text + ", as of " + text_of(*judged.standard->as_of);
  }

  void note_met(const Judgement& judged) {
    std::string text = fmt::format(
        "The name `{}`: what the standard ({}) asks of fruit and solids is met by "
        "calculation, at the unfavourable end; nothing of it was measured.",
        judged.name, standard_of(judged));
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
    if (!salts()) return;
    blank("salt",
          "what salting or a brine leaves in the produce is not worked out: have the salt "
          "of 100 g measured");
    const auto& all = program_.ingredients;
    const auto salt =
        std::find_if(all.begin(), all.end(), [](const auto& each) { return each.name == "salt"; });
    if (salt == all.end()) return;
    const language::IngredientId id(static_cast<std::size_t>(salt - all.begin()));
    const bool listed = std::any_of(used_.begin(), used_.end(),
                                    [&](const Used& each) { return each.ingredient == id; });
    if (listed) return;
    const Used trace{id, Mass(), Mass()};
    label_.ingredients.push_back(label::listed(program_, trace, declared, label_.law));
    used_.push_back(trace);
  }

  // Produce lies in salt or a brine that is poured or rinsed off.
  bool salts() const {
    return has_step([](const language::Step& step) {
      const bool salting =
          step.kind == language::StepKind::brine || step.kind == language::StepKind::dry_salt;
      return salting && step.strength.has_value();
    });
  }

  template <class Is>
  bool has_step(const Is& is) const {
    const auto& stages = framework_.method.stages;
    return std::any_of(stages.begin(), stages.end(), [&](const auto& stage) {
      return std::any_of(stage.steps.begin(), stage.steps.end(), is);
    });
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

  science::Computed<language::Contents> contents_of_it() const {
    std::vector<language::InPan> parts;
    constexpr double grams_in_kilogram = 1000;
    for (const plan::TakenId& id : plan::all_taken(draft_)) {
      const plan::Taken& taken = plan::taken_of(draft_, id);
      parts.push_back({{taken.ingredient, taken.acidity},
                       Kilogram(taken.weight.to_double() / grams_in_kilogram),
                       {id.list, taken.slot}});
    }
    const Kilogram finished(middle_finished().to_double() / grams_in_kilogram);
    return language::Contents::of(program_, framework_, parts, finished);
  }

  void add_nutrition() {
    if (ferments(framework_.method)) {
      blank("nutrition", "what ferments uses up sugars: no table says how much");
      return;
    }
    const auto contents = contents_of_it();
    if (!contents) {
      blank("nutrition", "it could not be worked out");
      return;
    }
    label_.nutrition = nutrition_rows(middle_of(science::nutrients(contents->left())));
    if (!salts()) return;
    for (NutritionRow& row : label_.nutrition) {
      if (row.what == "salt") row.amount.reset();
    }
  }

  void add_lots() {
    label_.lots = basis_.lots;
    const bool filled = std::any_of(label_.lots.begin(), label_.lots.end(),
                                    [](const Lots& lots) { return !lots.jars.empty(); });
    if (!filled) {
      const bool has_jars = kitchen_ != nullptr && !kitchen_->jars.empty();
      blank("net quantity", std::string(has_jars ? "jars were not worked out for this"
                                                 : "the kitchen names no jars") +
                                ": weigh full ones, less the jar and lid");
      return;
    }
    label_.notes.emplace_back(
        "Net quantities are worked out at the least; weigh full jars, less the jar and lid, before "
        "you print.");
    if (basis_.part_filled) blank("net quantity of a jar that is not full", "weigh it");
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
      const language::Ingredient& ingredient = program_[each.ingredient];
      if (ingredient.compound && ingredient.made_of.empty()) compounds.push_back(ingredient.name);
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
          each.standard.empty() ||
          (met_ != nullptr && met_->name == each.standard && is_since(*met_, each.since));
      if (each.law == label_.law->name && of_this) {
        blank(std::string(each.what), std::string(each.why));
      }
    }
  }

  // What is boiled down has no liquor.
  bool may_drain() const {
    if (has_step([](const auto& step) { return step.kind == language::StepKind::pack; })) {
      return true;
    }
    return !framework_.method.stages.empty() &&
           !has_step([](const auto& step) { return step.kind == language::StepKind::reduce; });
  }

  // The author's months are no month of this boil before what must be measured was measured.
  void add_best_before() {
    if (framework_.routes.empty()) {
      blank("best before", "the framework claims no way of keeping: no months");
    } else if (basis_.boil != nullptr) {
      add_months(readings_of(program_, framework_, *basis_.boil));
    } else {
      blank("best before", "no months before these readings are in: " + joined(asked_figures()));
    }
  }

  std::vector<std::string> asked_figures() const {
    std::vector<std::string> figures;
    for (const language::RouteClaim& claim : framework_.routes) {
      for (const language::ToRead& reading : program_[claim.route].readings) {
        if (std::find(figures.begin(), figures.end(), reading.figure) == figures.end()) {
          figures.push_back(reading.figure);
        }
      }
    }
    return figures;
  }

  void add_months(const Readings& readings) {
    if (!readings.complete()) {
      blank("best before",
            "no months before these readings are in: " +
                joined(readings.missing.empty() ? asked_figures() : readings.missing));
      return;
    }
    if (const auto missed = floors_missed(); !missed.empty()) {
      blank("best before", "no months, by what was used: " + joined(missed));
      return;
    }
    // How long jars lay in boiling water is no part of a record yet, and without those minutes the
    // readings say too little.
    for (const language::RouteClaim& claim : framework_.routes) {
      const language::Route& route = program_[claim.route];
      if (route.processes.empty()) continue;
      blank("best before", fmt::format("no months: the minutes in boiling water that the route {} "
                                       "goes by cannot be recorded",
                                       route.name));
      return;
    }
    label_.notes.push_back(fmt::format("Readings complete: {}. The months are the author's claim.",
                                       joined(readings.shown)));
    blank("released by", "readings release nothing: a person puts their name to it");
    if (!framework_.best_within) {
      blank("best before", "the framework states no months");
      return;
    }
    label_.best_within = framework_.best_within->low;
    blank("best before", "counted from the date made");
  }

  // Floors of the routes that nobody reads are held against what was used, not against the plan.
  std::vector<std::string> floors_missed() const {
    std::vector<std::string> missed;
    const auto contents = contents_of_it();
    for (const language::Limit& limit : framework_.limits) {
      if (!limit.route.valid() || is_read(limit)) continue;
      const std::string what(limit.property ? language::name_of(*limit.property)
                                            : std::string_view(limit.share_of.name));
      const bool computed = contents && limit.property && !is_linear(limit) && is_computed(limit);
      const auto value = computed ? std::optional(contents->value_of(limit)) : std::nullopt;
      if (!value || !*value) {
        missed.push_back(what + " could not be worked out");
      } else if ((limit.has_low && value->value().low < limit.range.low.to_double()) ||
                 (limit.has_high && value->value().high > limit.range.high.to_double())) {
        missed.push_back(
            fmt::format("{} may be outside the floor of {}", what, program_[limit.route].name));
      }
    }
    const bool packed =
        has_step([](const auto& step) { return step.kind == language::StepKind::pack; });
    for (const language::RouteClaim& claim : framework_.routes) {
      if (packed && program_[claim.route].liquor) {
        missed.emplace_back("how sour the liquor was is not worked out");
      }
    }
    return missed;
  }

  // Whether the route asks for the figure itself, which counts for more than a calculation.
  bool is_read(const language::Limit& limit) const {
    const auto& readings = program_[limit.route].readings;
    return limit.property &&
           std::any_of(readings.begin(), readings.end(), [&](const language::ToRead& each) {
             return each.figure == language::name_of(*limit.property);
           });
  }

  const Program& program_;
  const Basis& basis_;
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
  report_no_law(program, plan.verified.draft().task, diagnostics);
  return Maker(program, basis_of(program, plan), diagnostics).run();
}

std::vector<Label> make_labels(const Program& program, const language::Batch& batch,
                               const plan::Task& task, const plan::Plan* plan,
                               Diagnostics& diagnostics) {
  std::vector<Label> labels;
  const auto bases = bases_of(program, batch, task, plan, diagnostics);
  if (!bases) return labels;
  report_no_law(program, task, diagnostics);
  for (const Basis& basis : *bases) labels.push_back(Maker(program, basis, diagnostics).run());
  return labels;
}

std::string lot_mark(const Label& label, long boil) {
  if (label.boils == 1 && !label.record) return label.mark;
  return fmt::format("{}, boil {}", label.mark, boil);
}

}  // namespace maslin::label
