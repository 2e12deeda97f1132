// SPDX-License-Identifier: Apache-2.0
#include "report/sheet.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "language/amounts.hpp"
#include "language/membership.hpp"
#include "plan/weights.hpp"
#include "report/afternoon_figures.hpp"
#include "report/cautions.hpp"
#include "report/cost.hpp"
#include "report/draw.hpp"
#include "report/keeping.hpp"
#include "report/left_over.hpp"
#include "report/measure.hpp"
#include "report/method_assumptions.hpp"
#include "report/method_sections.hpp"
#include "report/pectin.hpp"
#include "report/process.hpp"
#include "report/pungency.hpp"
#include "report/purchase.hpp"
#include "report/readings.hpp"
#include "report/words.hpp"

namespace maslin::report {
namespace {

using language::Framework;
using plan::percent_text;
using plan::range_text;
using plan::Taken;
using plan::weight_text;

class SheetMaker {
 public:
  SheetMaker(const Sources& sources, const language::Program& program, const plan::Plan& plan)
      : sources_(sources),
        program_(program),
        plan_(plan),
        verified_(plan.verified),
        draft_(plan.verified.draft()),
        framework_(program[draft_.task.framework]),
        basket_(program[draft_.task.basket]),
        kitchen_(draft_.task.kitchen.valid() ? &program[draft_.task.kitchen] : nullptr),
        tools_(plan::tools_of(program, draft_.task.kitchen)),
        drawer_(program, basket_, kitchen_) {}

  Sheet run() {
    head();
    what_fits();
    produce();
    additions();
    accounts();
    limits();
    pungency();
    finish();
    for (Section& part : method_sections(program_, plan_)) {
      sheet_.sections.push_back(std::move(part));
    }
    if (auto process = process_section(program_, plan_)) {
      sheet_.sections.push_back(std::move(*process));
    }
    notes();
    add_afternoon_figures(plan_, sheet_);
    to_get();
    cost();
    sheet_.sections.push_back(left_over_section(program_, plan_));
    assumed();
    not_computed();
    keeping();
    sheet_.sections.push_back(readings_section(program_, plan_));
    cautions();
    return std::move(sheet_);
  }

 private:
  Section& section(std::string title, Topic topic = Topic::other) {
    sheet_.sections.push_back({std::move(title), {}, {}, {}, topic});
    return sheet_.sections.back();
  }
  const std::string& name(language::IngredientId id) const { return program_[id].name; }

  void head() {
    sheet_.title = framework_.title;
    const auto& tested = plan_.afternoon.tested;
    const bool as_tested = tested && tested->holds();
    std::string line = "framework " + framework_.name;
    if (framework_.version.is_positive()) line += ", version " + framework_.version.to_decimal(3);
    sheet_.head.push_back(line + ", " + status_text(framework_, as_tested));
    sheet_.head.push_back(fmt::format("basket: {}; kitchen: {}", basket_.name,
                                      kitchen_ != nullptr ? kitchen_->name : "none given"));
  }

  void what_fits() {
    Section& part = section("What fits", Topic::fits);
    std::string text = fmt::format(
        "{} of prepared produce go into the {}, {} with all that is added.",
        weight_text(verified_.prepared_total().in_base()),
        is_heated(framework_.method) ? "pan" : "crock", weight_text(verified_.ingoing().in_base()));
    if (const auto finished = verified_.finished()) {
      text += fmt::format(" Boiled down, that is about {}.", weight_text(finished->in_base()));
    }
    part.paragraphs.push_back(text);
    if (draft_.task.aim.kind != plan::AimKind::most) return;
    const std::string limiting = limiting_text();
    if (!limiting.empty()) part.paragraphs.push_back(limiting);
  }

  std::string limiting_text() const {
    std::vector<std::string> names;
    for (const plan::Limiting& each : plan_.limiting) {
      if (each.ingredient) names.push_back(name(*each.ingredient));
    }
    std::sort(names.begin(), names.end());
    names.erase(std::unique(names.begin(), names.end()), names.end());
    if (names.empty()) return {};
    std::string list = names[0];
    for (std::size_t i = 1; i < names.size(); ++i) {
      list += (i + 1 == names.size() ? " and " : ", ") + names[i];
    }
    std::string bounds;
    for (const plan::Limiting& each : plan_.limiting) {
      if (each.statement.kind != blend::StatementKind::share) continue;
      const language::ProduceShare& share = framework_.shares[each.statement.index];
      bounds += fmt::format("{}{} ({})", bounds.empty() ? "" : ", ", share.target.name,
                            range_text(share.range));
    }
    std::string text = "No larger batch fits, since this is used up: " + list;
    if (!bounds.empty()) text += "; the shares that stand against more of the rest: " + bounds;
    return text + ".";
  }

  // ---- Produce ----------------------------------------------------------------------------------

  void produce() {
    Section& part = section("Produce to weigh", Topic::produce);
    part.table.heads = {"take", "as brought in", "ready for the pan", "actual", "cut", "counts as"};
    part.table.weighed = {1, 2};
    for (std::size_t i = 0; i < framework_.shares.size(); ++i) {
      for (const Taken& taken : draft_.produce) {
        if (taken.slot == i) produce_rows(taken, framework_.shares[i], part.table);
      }
    }
    part.table.rows.push_back(
        {"in all", "", weight_text(verified_.prepared_total().in_base()), "", "", ""});
    Section& shares = section("Shares reached", Topic::shares);
    shares.table.heads = {"share", "reached", "allowed"};
    for (std::size_t i = 0; i < framework_.shares.size(); ++i) {
      const language::ProduceShare& share = framework_.shares[i];
      std::string allowed = range_text(share.range);
      if (share.prefer) allowed += ", preferred " + percent_text(*share.prefer);
      shares.table.rows.push_back(
          {share.target.name, percent_text(verified_.shares()[i]), allowed});
      sheet_.shares.push_back(
          {share.target.name, verified_.shares()[i], share.range, share.prefer});
    }
  }

  void produce_rows(const Taken& taken, const language::ProduceShare& share, Table& table) {
    const std::string& ingredient = name(taken.ingredient);
    const std::string cut = share.cut ? share.cut->text : "";
    const auto drawn = drawer_.draw(taken);
    if (drawn.empty()) {
      table.rows.push_back(
          {ingredient + ", bought", "", weight_text(taken.weight), blank, cut, share.target.name});
      return;
    }
    for (const Drawn& each : drawn) {
      const language::Line& line = *each.line;
      const bool gross = line.basis == language::WeighedAs::gross;
      std::string what = ingredient;
      if (line.use_first) what += ", first";
      if (!line.from.empty()) what += fmt::format(", from {}", line.from);
      if (gross && !line.trim && program_[line.ingredient].edible) {
        trims_.insert(line.ingredient);
      }
      if (!line.estimate.empty()) estimates_.insert(line.estimate);
      table.rows.push_back({what, gross ? weight_text(each.gross.round_to(tools_.scale_step)) : "",
                            weight_text(each.prepared), blank, cut, share.target.name});
    }
  }

  // ---- What is added ----------------------------------------------------------------------------

  void additions() {
    if (draft_.additions.empty() && draft_.substitutes.empty()) return;
    Section& part = section("To add, in the order of the framework", Topic::additions);
    part.table.heads = {"add", "weigh", "or", "actual", "asked for per kilogram"};
    part.table.weighed = {1};
    for (std::size_t i = 0; i < framework_.additions.size(); ++i) {
      for (const Taken& taken : draft_.additions) {
        if (taken.slot == i) {
          const language::Addition& addition = framework_.additions[i];
          part.table.rows.push_back(addition_row(
              taken, asked_for(addition), addition.measured == language::Measured::by_volume));
        }
      }
    }
    for (const Taken& taken : draft_.substitutes) {
      const auto& substitution = framework_.substitutions[taken.slot];
      part.table.rows.push_back(
          addition_row(taken, "stands for " + substitution.replaced.name, true));
    }
    for (const Taken& taken : draft_.additions) {
      if (taken.within_five_percent) continue;
      part.points.push_back(
          fmt::format("{}: with the scales and spoons of this kitchen more than 5 % beside what "
                      "was worked out, and inside what is asked for.",
                      name(taken.ingredient)));
    }
  }

  std::string asked_for(const language::Addition& addition) const {
    const std::string_view unit = addition.measured == language::Measured::by_weight   ? " g"
                                  : addition.measured == language::Measured::by_volume ? " ml"
                                                                                       : "";
    std::string text = addition.range.low.to_decimal(2);
    if (!addition.range.is_exact()) text += " .. " + addition.range.high.to_decimal(2);
    text += unit;
    const bool acid =
        std::any_of(draft_.additions.begin(), draft_.additions.end(), [&](const Taken& taken) {
          return &framework_.additions[taken.slot] == &addition && taken.acidity.has_value();
        });
    if (acid) text += fmt::format(" at {}", percent_text(stated_strength(addition)));
    return text;
  }

  // Spoons for little, millilitres for what pours; nobody measures a kilogram of sugar by volume.
  static std::string volume_text(const Taken& taken, const language::Ingredient& ingredient,
                                 bool asked_by_volume) {
    const Rational volume = taken.weight / middle(ingredient.density->value);
    const Rational spoonfuls(60);
    if (volume <= spoonfuls) return spoons_text(volume);
    return asked_by_volume ? volume.to_decimal(0) + " ml" : "";
  }

  std::vector<std::string> addition_row(const Taken& taken, std::string asked,
                                        bool asked_by_volume) {
    const language::Ingredient& ingredient = program_[taken.ingredient];
    std::string what = ingredient.name;
    if (taken.acidity) what += fmt::format(", {} acidity", percent_text(*taken.acidity));
    std::string weigh = weight_text(taken.weight);
    std::string other;
    if (taken.tool == plan::Tool::count) {
      weigh = "about " + weigh;
      other = taken.amount.to_decimal(0) + (taken.amount == Rational(1) ? " piece" : " pieces");
      estimates_.insert(fmt::format("one {} taken as {} g", ingredient.name,
                                    middle(ingredient.piece->value).to_decimal(2)));
    } else if (ingredient.density) {
      other = volume_text(taken, ingredient, asked_by_volume);
    }
    if (taken.tool == plan::Tool::spoons) {
      weigh = "about " + weigh;
      estimates_.insert(fmt::format("a millilitre of {} taken as {} g", ingredient.name,
                                    middle(ingredient.density->value).to_decimal(3)));
    }
    return {std::move(what), std::move(weigh), std::move(other), blank, std::move(asked)};
  }

  void accounts() {
    for (const plan::Account& account : verified_.accounts()) {
      // A donor that is not at hand is no part of the account.
      if (!account.brought_expected.is_positive()) continue;
      const auto& substitution = framework_.substitutions[account.substitution];
      const auto& addition = framework_.additions[substitution.addition];
      const bool volume = addition.measured == language::Measured::by_volume;
      const auto amount = [&](const Rational& value) {
        return volume ? value.to_decimal(0) + " ml" : weight_text(value.round_to(1));
      };
      Section& part =
          section(fmt::format("Account of {}", substitution.replaced.name), Topic::account);
      std::string text = fmt::format("Of {} wanted in all {} brings {}", amount(account.wanted),
                                     substitution.donor.name, amount(account.brought_expected));
      if (!account.brought.is_exact()) {
        text += fmt::format(" ({} to {} by the tables)", amount(account.brought.low),
                            amount(account.brought.high));
      }
      text += fmt::format(", and {} is counted", amount(account.counted));
      if (substitution.cap) {
        text += fmt::format(" (at most {} may be)", percent_text(*substitution.cap));
      }
      part.paragraphs.push_back(text + fmt::format(": {} of {} to add.", amount(account.to_add),
                                                   substitution.replaced.name));
    }
  }

  // ---- Limits and boiling down ------------------------------------------------------------------

  void limits() {
    if (verified_.limits().empty()) return;
    Section& part = section("Limits this framework declares", Topic::limits);
    part.table.heads = {"limit", "by the tables", "allowed", "margin"};
    for (const plan::LimitValue& value : verified_.limits()) {
      const language::Limit& limit = framework_.limits[value.limit];
      const Measure measure = measure_of(limit);
      Rational margin = limit.has_low ? value.margin.low : value.margin.high;
      if (limit.has_low && limit.has_high) margin = smaller(value.margin.low, value.margin.high);
      part.table.rows.push_back({limit_name(program_, limit), measure.text(value.value),
                                 measure.allowed(limit), measure.margin(margin)});
    }
    part.points.push_back(
        "Worked out from tables of composition, at the unfavourable end; not measured.");
  }

  void pungency() {
    const auto pungency = pungency_of(program_, plan_);
    if (!pungency) return;
    section("Pungency", Topic::pungency)
        .paragraphs.push_back(
            fmt::format("{} Scoville heat units in what is finished, by {} alone: one kind of pod "
                        "differs several-fold from the next. Pepper, mustard and ginger are not "
                        "counted. Taste it.",
                        text_of(pungency->finished), fmt::join(pungency->pods, ", ")));
  }

  void finish() {
    const auto finished = verified_.finished();
    if (!finished) return;
    Section& part = section("Boiling down", Topic::boiling_down);
    const Rational off = verified_.ingoing().in_base() - finished->in_base();
    std::string text = fmt::format("Of {} in the pan {} boil off, down to about {}",
                                   weight_text(verified_.ingoing().in_base()), weight_text(off),
                                   weight_text(finished->in_base()));
    sheet_.boiling_down =
        BoilingDown{Range<IngoingMass>::exactly(verified_.ingoing()), *finished, {}, {}};
    if (const auto window = verified_.window()) {
      const FinishedMass least(window->least.in_base().ceil_to(1));
      const FinishedMass most(window->most.in_base().floor_to(1));
      sheet_.boiling_down->window = {least, most};
      // Else `When to stop` says it, boil by boil.
      const plan::Boils& boils = plan_.afternoon.boils;
      if (!boils.stop || !boils.pan_known || boils.too_many) {
        text += fmt::format("; the limits hold from {} to {}, whatever the tables' figures",
                            weight_text(least.in_base()), weight_text(most.in_base()));
      }
    }
    part.paragraphs.push_back(text + ".");
    const auto groups = pectin_groups(program_, draft_);
    if (plan::is_boiled_to_a_set(framework_.method) && !groups.empty()) {
      part.points.push_back(pectin_text(groups));
    }
  }

  // ---- What is bought, left, assumed, not done --------------------------------------------------

  void to_get() {
    sheet_.shopping = shopping_lines(program_, plan_);
    if (sheet_.shopping.empty()) return;
    Section& part = section("To get", Topic::to_get);
    part.table.heads = {"what", "how much", "in packs", "costs", ""};
    for (const ShoppingLine& line : sheet_.shopping) part.table.rows.push_back(purchase_row(line));
  }

  static std::vector<std::string> purchase_row(const ShoppingLine& line) {
    const Purchase& purchase = line.purchase;
    std::string how_much = weight_text(purchase.weight);
    if (purchase.gross) how_much += " (gross)";
    std::string packs;
    if (purchase.packs) {
      packs = fmt::format("{} of {}", purchase.packs->to_decimal(0), weight_text(*purchase.pack));
    }
    return {line.what, how_much, packs, purchase.cost ? purchase.cost->to_decimal(2, true) : "",
            purchase.listed ? "to buy" : "not listed in the basket or the store"};
  }

  void cost() {
    const auto cost = cost_of(program_, plan_);
    if (!cost) return;
    Section& part = section("What it costs", Topic::cost);
    part.paragraphs.push_back(cost_text(*cost));
    if (!cost->unpriced.empty()) {
      part.points.push_back(
          fmt::format("without what has no price: {}", fmt::join(cost->unpriced, ", ")));
    }
    part.points.push_back(
        fmt::format("of what goes in, not of whole packs; {} is counted",
                    cost->jars ? "neither fuel nor work" : "no jar, no fuel and no work"));
  }

  // What the author says to whoever cooks.
  void notes() {
    if (framework_.notes.empty()) return;
    section("Notes", Topic::notes).points = framework_.notes;
  }

  void assumed() {
    Section& part = section("What was assumed", Topic::assumed);
    std::string trims;
    for (const language::IngredientId id : trims_) {
      const auto& edible = *program_[id].edible;
      trims += fmt::format("{}{} {} ({})", trims.empty() ? "" : ", ", name(id),
                           percent_text(middle(edible.value)), origin(id, edible.origin));
    }
    if (!trims.empty()) {
      part.points.push_back("ready for the pan once trimmed, by estimate: " + trims +
                            "; weigh again after trimming");
    }
    if (!estimates_.empty()) {
      part.points.push_back(fmt::format("estimates: {}", fmt::join(estimates_, "; ")));
    }
    if (kitchen_ == nullptr) {
      part.points.emplace_back(
          "no kitchen is given, so that neither pan, time nor jars are worked out; name it beside "
          "the basket: `kitchen \"mine\" { pan 9 l; jars 24 of 282 ml }`");
    }
    if (tools_.assumed)
      part.points.push_back("scales that weigh to 1 g, since the kitchen names none");
    for (std::string& each : method_assumptions(program_, plan_)) {
      part.points.push_back(std::move(each));
    }
    std::map<std::string, language::IngredientId> used;
    for (const auto* list : {&draft_.produce, &draft_.additions, &draft_.substitutes}) {
      for (const Taken& taken : *list) used.emplace(name(taken.ingredient), taken.ingredient);
    }
    std::string tables;
    std::set<std::string> titles;
    for (const auto& [ingredient, id] : used) {
      const std::string from = origin(id, {});
      if (from.empty()) continue;
      for (std::string& title : tables_of(program_[id].sources)) titles.insert(std::move(title));
      tables += fmt::format("{}{} ({})", tables.empty() ? "" : ", ", ingredient, from);
    }
    const std::string composition = "composition, which differs from one fruit to the next, from ";
    part.points.push_back(composition + "tables: " + tables);
    if (titles.empty()) return;
    std::string brief;
    for (const std::string& title : titles) brief += (brief.empty() ? "" : "; ") + title;
    part.last_in_brief = composition + brief + " (which entry of each is on the sheet as text)";
  }

  std::string origin(language::IngredientId id, const std::string& own) const {
    return own.empty() ? sources_text(program_[id].sources) : own;
  }

  void not_computed() {
    Section part{"Not worked out, and not checked", {}, {}, {}, Topic::not_computed};
    for (const language::Limit& limit : framework_.limits) {
      if (is_computed(limit)) continue;
      const SourceFile& file = sources_.file(limit.span.file);
      part.points.push_back(fmt::format("the limit `{}` ({}:{})", sources_.text(limit.span),
                                        file.name(), file.position(limit.span.begin).line));
    }
    if (!part.points.empty()) sheet_.sections.push_back(std::move(part));
  }

  void keeping() { sheet_.sections.push_back(keeping_section(program_, plan_)); }

  void cautions() {
    Section& part = section("Cautions", Topic::cautions);
    part.points = cautions_for(program_, draft_);
  }

  const Sources& sources_;
  const language::Program& program_;
  const plan::Plan& plan_;
  const plan::VerifiedPlan& verified_;
  const plan::Draft& draft_;
  const Framework& framework_;
  const language::Basket& basket_;
  const language::Kitchen* kitchen_;
  plan::Tools tools_;
  Drawer drawer_;
  Sheet sheet_;
  std::set<language::IngredientId> trims_;
  std::set<std::string> estimates_;
};

}  // namespace

Sheet make_sheet(const Sources& sources, const language::Program& program, const plan::Plan& plan) {
  return SheetMaker(sources, program, plan).run();
}

}  // namespace maslin::report
