// SPDX-License-Identifier: Apache-2.0
#include "report/explain_text.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "diagnostic/render.hpp"
#include "language/membership.hpp"
#include "plan/weights.hpp"
#include "report/documentation.hpp"
#include "report/keeping.hpp"
#include "report/process.hpp"
#include "report/steps.hpp"
#include "report/text.hpp"
#include "report/words.hpp"

namespace maslin::report {
namespace {

using language::Class;
using language::ClassId;
using language::Figure;
using language::Framework;
using language::Ingredient;
using language::IngredientId;
using language::Program;

std::string joined(const std::vector<std::string>& list) {
  std::string text;
  for (const std::string& each : list) text += (text.empty() ? "" : ", ") + each;
  return text;
}

std::string bounds_text(const Bounds& bounds, int places) {
  if (bounds.is_exact()) return bounds.low.to_decimal(places);
  return bounds.low.to_decimal(places) + " .. " + bounds.high.to_decimal(places);
}

// As written, with one blank where several or a line end were.
std::string on_one_line(std::string_view text) {
  std::string result;
  for (const char c : text) {
    const bool blank = c == ' ' || c == '\t' || c == '\n' || c == '\r';
    if (!blank) result += c;
    if (blank && !result.empty() && result.back() != ' ') result += ' ';
  }
  return result;
}

class Writer {
 public:
  Writer(const Sources& sources, const Program& program) : sources_(sources), program_(program) {}

  std::string take() { return std::move(out_); }

  void write(IngredientId id) { ingredient(program_[id], id); }
  void write(ClassId id) { of_class(program_[id], id); }
  void write(language::FrameworkId id) { framework(program_[id]); }
  void write(language::RouteId id) { route(program_[id]); }
  void write(const language::Standard* found) { standard(*found); }
  void write(const Term* found) { term(*found); }
  void write(language::UnitId id) { unit(program_[id]); }
  void write(Code code) { out_ += page_of(code); }

 private:
  template <class... Args>
  void line(fmt::format_string<Args...> form, Args&&... args) {
    out_ += printable(fmt::format(form, std::forward<Args>(args)...)) + "\n";
  }

  void row(std::string_view head, const std::string& value, const std::string& origin = {}) {
    line("  {:<15} {}{}", head, value, origin.empty() ? "" : "  (" + origin + ")");
  }

  std::string place(Span span) const {
    const SourceFile& file = sources_.file(span.file);
    return fmt::format("{}:{}", file.name(), file.position(span.begin).line);
  }

  void documentation(Span name) {
    for (const std::string& each : documentation_of(sources_, name)) line("  {}", each);
  }

  std::string dated(const std::string& place, const std::optional<Date>& as_of) const {
    return place + (as_of ? (place.empty() ? "as of " : ", as of ") + text_of(*as_of) : "");
  }

  void route(const language::Route& route) {
    line("{}: a keeping route ({})", route.name, place(route.span));
    documentation(route.span);
    if (const std::string where = dated(route.place, route.as_of); !where.empty()) {
      row("rules of", where);
    }
    for (const language::Limit& floor : route.floors) {
      row("floor", on_one_line(sources_.text(floor.span)));
    }
    if (route.liquor) {
      row("floor", on_one_line(sources_.text(route.liquor->span)) +
                       ", in what covers a pack, before sugar and salt go in");
    }
    if (route.headspace) row("jars", on_one_line(sources_.text(route.headspace->span)));
    for (const language::ToRead& reading : route.readings) {
      row("to be read", reading_text(reading));
    }
    for (const language::Refusal& refusal : route.refusals) {
      std::vector<std::string> names;
      for (const language::Target& target : refusal.targets) names.push_back(target.name);
      row("does not take", joined(names) + ": " + refusal.because);
    }
    for (const language::Process& process : route.processes) {
      row("table", on_one_line(sources_.text(process.span)));
    }
    for (const language::Recipe& each : route.recipes) recipe(each);
    for (const std::string& note : route.notes) row("note", note);
    for (const std::string& source : route.sources) row("source", source);
  }

  // The amounts that the rows of a table belong to, on as many lines as there are kinds.
  void recipe(const language::Recipe& found) {
    std::vector<std::string> produce;
    std::vector<std::string> added;
    for (const auto& share : found.shares) {
      produce.push_back(on_one_line(sources_.text(share.span)));
    }
    for (const auto& addition : found.additions) {
      added.push_back(on_one_line(sources_.text(addition.span)));
    }
    std::string text = fmt::format("for {}: {}", found.product, fmt::join(produce, ", "));
    if (!added.empty()) text += fmt::format("; per kilogram {}", fmt::join(added, ", "));
    if (found.headspace) {
      text += fmt::format("; headspace {} mm", found.headspace->in_base().to_decimal(1));
    }
    row("tested amounts", text);
    for (const std::string& note : found.notes) row("in the source", note);
  }

  void standard(const language::Standard& found) {
    line("{}: a standard ({})", found.name, place(found.span));
    documentation(found.span);
    row("law of", dated(found.place, found.as_of));
    if (!found.reserved_name.empty()) row("reserves", "the name " + found.reserved_name);
    for (const language::Limit& limit : found.limits) {
      row("asks", on_one_line(sources_.text(limit.span)));
    }
    for (const std::string& note : found.notes) row("note", note);
    for (const std::string& source : found.sources) row("source", source);
  }

  void term(const Term& found) {
    line("{}: a term of the sheet", found.name);
    const auto flowing_row = [&](const std::string& head, const std::string& text) {
      constexpr std::size_t indent = 18;
      out_ += fmt::format("  {:<15} {}\n", head, wrapped(text, indent));
    };
    if (!found.also.empty()) {
      flowing_row("also", fmt::format("{}", fmt::join(found.also, "; ")));
    }
    for (const TermPart& part : found.parts) flowing_row(part.head, part.text);
  }

  void figure(std::string_view head, const std::optional<Figure>& figure, bool share,
              std::string_view unit) {
    if (!figure) return;
    const Bounds value =
        share ? Bounds{figure->value.low * 100, figure->value.high * 100} : figure->value;
    row(head, fmt::format("{}{}", bounds_text(value, 3), unit), figure->origin);
  }

  void ingredient(const Ingredient& found, IngredientId id) {
    line("{}: an ingredient ({})", found.name, place(found.span));
    documentation(found.span);
    if (!found.also.empty()) row("also", joined(found.also));
    row("belongs to", classes_of(id));
    figure("pH", found.ph, false, "");
    if (!found.ph) row("pH", "not known: counts as low-acid produce where it is produce");
    figure("edible", found.edible, true, " % of the gross weight");
    figure("density", found.density, false, " g per ml");
    figure("piece", found.piece, false, " g");
    figure("soluble solids", found.soluble_solids, true, " %");
    figure("total solids", found.total_solids, true, " %");
    // Kept per gram; tables have it per 100 g.
    figure("ash alkalinity", found.ash_alkalinity, true, " mmol per 100 g");
    figure("pungency", found.pungency, false, " Scoville heat units of the dry matter");
    composition(found);
    raw(found);
    row("allergens", !found.allergens_stated ? "not stated: read the packet"
                     : found.allergens.empty() || found.allergens[0].empty()
                         ? "none known of the plain ingredient"
                         : joined(found.allergens));
    if (found.compound) {
      row("made of", found.made_of.empty() ? "not stated: read the packet" : joined(found.made_of));
    }
    for (const std::string& note : found.notes) row("note", note);
    for (const std::string& source : found.sources) row("source", source);
  }

  std::string classes_of(IngredientId id) const {
    std::vector<std::string> classes;
    for (std::size_t i = 0; i < program_.classes.size(); ++i) {
      if (is_member(program_, id, ClassId(i))) classes.push_back(program_.classes[i].name);
    }
    return classes.empty() ? "no class" : joined(classes);
  }

  void composition(const Ingredient& found) {
    line("  per 100 g ready for the pan:");
    for (std::size_t i = 0; i < science::substance_count; ++i) {
      const auto substance = static_cast<science::Substance>(i);
      const auto& share = found.composition[substance];
      if (!share) continue;
      row("  " + std::string(science::name_of(substance)),
          bounds_text({share->low * 100, share->high * 100}, 3) + " g");
    }
    if (const auto solids = language::figure_of(found, language::Property::soluble_solids)) {
      row("soluble solids", bounds_text({solids->low * 100, solids->high * 100}, 1) + " %",
          "sugars, acids, salt and minerals of the table");
    }
    if (!found.composition_origin.empty()) row("composition", found.composition_origin);
  }

  void raw(const Ingredient& found) {
    if (found.raw == language::RawHazard::none_known) return;
    std::string text = found.raw == language::RawHazard::unsafe ? "unsafe" : "unpleasant";
    if (found.boil_first.is_positive()) {
      text += fmt::format(", boil at least {} min",
                          (found.boil_first.in_base() / Rational(60)).to_decimal(0));
    }
    row("raw", text, found.raw_reason);
  }

  void of_class(const Class& found, ClassId id) {
    line("{}: a class ({})", found.name, place(found.span));
    documentation(found.span);
    std::vector<std::string> parents;
    for (const ClassId parent : found.parents) parents.push_back(program_[parent].name);
    if (!parents.empty()) row("is", joined(parents));
    for (const language::Condition& condition : found.conditions) {
      row("where", on_one_line(sources_.text(condition.span)));
    }
    if (found.usually.valid()) row("usually", program_[found.usually].name);
    std::vector<std::string> members;
    for (std::size_t i = 0; i < program_.ingredients.size(); ++i) {
      if (is_member(program_, IngredientId(i), id)) members.push_back(program_.ingredients[i].name);
    }
    std::sort(members.begin(), members.end());
    row("members", members.empty() ? "none" : joined(members));
  }

  void framework(const Framework& found) {
    line("{}: a framework ({})", found.name, place(found.span));
    documentation(found.span);
    if (!found.title.empty()) row("title", found.title);
    if (!found.version.is_zero()) row("version", found.version.to_decimal(3));
    row("how it is known", status_text(found, found.status == language::Status::tested));
    if (found.refines.valid()) row("refines", program_[found.refines].name);
    for (const language::RouteClaim& claim : found.routes) {
      row("claims", "route " + program_[claim.route].name +
                        (claim.product.empty() ? "" : ", process for " + claim.product));
    }
    line("  produce:");
    for (const language::ProduceShare& share : found.shares) {
      row("  " + share.target.name, plan::range_text(share.range));
    }
    line("  per kilogram of prepared produce:");
    for (const language::Addition& addition : found.additions) {
      row("  " + addition.target.name, std::string(sources_.text(addition.range_span)));
    }
    if (!found.substitutions.empty()) line("  may stand in:");
    for (const language::Substitution& each : found.substitutions) {
      line("    {}", on_one_line(sources_.text(each.span)));
    }
    if (!found.limits.empty()) line("  limits:");
    for (const language::Limit& limit : found.limits)
      line("    {}", on_one_line(sources_.text(limit.span)));
    method(found.method);
    if (!found.variants.empty()) line("  to taste:");
    for (const language::Variant& each : found.variants) {
      std::string changes;
      for (const language::Adjustment& change : each.adjustments) {
        changes += (changes.empty() ? "" : "; ") + on_one_line(sources_.text(change.span));
      }
      row("  " + each.name, changes);
    }
    if (const std::string claims = claims_text(found); !claims.empty()) {
      row("claimed", claims + "; not checked");
    }
    for (const std::string& note : found.notes) row("note", note);
    for (const std::string& source : found.sources) row("source", source);
  }

  void method(const language::Method& method) {
    if (method.is_stated()) line("  method:");
    for (const language::Stage& stage : method.stages) {
      std::string steps;
      for (const language::Step& step : stage.steps) {
        steps += (steps.empty() ? "" : "; ") + whole_step_text(step);
      }
      if (stage.days_before > 0) {
        steps = fmt::format("{} day{} before: {}", stage.days_before,
                            stage.days_before == 1 ? "" : "s", steps);
      }
      row("  " + stage.name, steps);
    }
    if (method.filling) row("  jars", filling_text(*method.filling));
  }

  void unit(const language::Unit& found) {
    if (!found.could_be.empty()) {
      line("{}: not the same everywhere", found.name);
      for (const language::UnitId id : found.could_be) {
        row("could be",
            fmt::format("{}, {} ml", program_[id].name, program_[id].factor.to_decimal(3)));
      }
      return;
    }
    constexpr std::string_view bases[] = {"g", "ml", "s", "°C", "mm", "W"};
    std::string_view base;
    for (std::size_t i = 0; i < std::size(bases); ++i) {
      if (found.dimension.powers[i] == 1) base = bases[i];
    }
    line("{}: {}, {} {} ({})", found.name, describe(found.dimension), found.factor.to_decimal(10),
         base, place(found.span));
  }

  const Sources& sources_;
  const Program& program_;
  std::string out_;
};

}  // namespace

std::string explain_text(const Sources& sources, const Program& program, const Meaning& meaning) {
  Writer writer(sources, program);
  std::visit([&](const auto& found) { writer.write(found); }, meaning);
  return writer.take();
}

}  // namespace maslin::report
