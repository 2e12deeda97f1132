// SPDX-License-Identifier: Apache-2.0
#include "report/explain.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "diagnostic/render.hpp"
#include "report/explain_text.hpp"
#include "science/composition.hpp"

namespace maslin::report {
namespace {

using language::Names;
using language::Program;

std::string row(std::string_view head, std::string_view text) {
  return fmt::format("  {:<15} {}\n", head, text);
}

std::string overview(const Program& program) {
  const auto one_of = [](std::size_t count, std::string_view list) {
    return fmt::format("one of {}: `maslin explain {}`", count, list);
  };
  return "maslin explain NAME, where NAME is one of\n" +
         row("a diagnostic", "the word in brackets behind a message, for example too-little") +
         row("a term", one_of(all_terms().size(), "terms")) +
         row("an ingredient", one_of(program.ingredients.size(), "ingredients")) +
         row("a class", one_of(program.classes.size(), "classes")) +
         row("a framework", one_of(program.frameworks.size(), "frameworks")) +
         row("a route", one_of(program.routes.size(), "routes")) +
         row("a standard", one_of(program.standards.size(), "standards")) +
         row("a unit", "for example tsp: `maslin explain units`") +
         row("codes", "all diagnostics; `composition`: the substances a composition may list") +
         "Everything of that name is shown; the kind before it asks for one: `maslin explain route "
         "sugar`.\n";
}

template <class Things>
std::vector<std::string> names_of(const Things& things) {
  std::vector<std::string> names;
  for (const auto& each : things) names.push_back(each.name);
  return names;
}

std::string lines(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& each : names) text += printable(each) + "\n";
  return text;
}

std::string sorted_lines(std::vector<std::string> names) {
  std::sort(names.begin(), names.end());
  return lines(names);
}

// Empty where the name is none of the lists.
std::string list(const Program& program, const std::string& name) {
  if (name == "ingredients") return sorted_lines(names_of(program.ingredients));
  if (name == "classes") return sorted_lines(names_of(program.classes));
  if (name == "frameworks") return sorted_lines(names_of(program.frameworks));
  if (name == "routes") return sorted_lines(names_of(program.routes));
  if (name == "terms") return lines(names_of(all_terms()));
  if (name == "units") return lines(names_of(program.units));
  std::vector<std::string> all;
  if (name == "standards") {
    for (const language::Standard& each : program.standards) {
      all.push_back(fmt::format("{} in {}", each.name, each.place));
    }
    return sorted_lines(std::move(all));
  }
  if (name == "composition") {
    for (std::size_t i = 0; i < science::substance_count; ++i) {
      all.emplace_back(science::name_of(static_cast<science::Substance>(i)));
    }
  }
  if (name == "codes") {
    for (const Code code : all_codes()) {
      all.push_back(fmt::format("{:<24}{}", name_of(code), summary_of(code)));
    }
  }
  return lines(all);
}

std::string with_place(const Meaning& meaning) {
  std::string text = fmt::format("the {}", kind_of(meaning));
  if (const auto* standard = std::get_if<const language::Standard*>(&meaning)) {
    text += fmt::format(" ({})", (*standard)->place);
  }
  return text;
}

// What to ask for to have the last of several alone.
std::string alone(const std::string& name, const Meaning& meaning) {
  if (const auto* standard = std::get_if<const language::Standard*>(&meaning)) {
    return fmt::format("{} in {}", (*standard)->name, (*standard)->place);
  }
  return fmt::format("{} {}", kind_of(meaning), name);
}

// "2 things go by this name: the ingredient, the route. One alone: `maslin explain route sugar`."
std::string all_text(const std::string& name, const std::vector<Explained>& things) {
  if (things.size() == 1) return things.front().text;
  std::string kinds;
  for (const Explained& each : things) {
    kinds += (kinds.empty() ? "" : ", ") + with_place(each.meaning);
  }
  std::string text =
      printable(fmt::format("{} things go by the name {}: {}. One alone: `maslin explain {}`.",
                            things.size(), name, kinds, alone(name, things.back().meaning)));
  text += "\n";
  for (const Explained& each : things) text += "\n" + each.text;
  return text;
}

std::string unknown(const Program& program, const Names& names, const std::string& name) {
  const auto near = names_near(program, names, name);
  std::string text = printable(fmt::format("nothing is known by the name `{}`", name)) + "\n";
  if (!near.empty()) {
    text += printable(fmt::format("did you mean: {}", fmt::join(near, ", "))) + "\n";
  }
  return text + "`maslin explain` says what there is\n";
}

}  // namespace

Explanation explain(const Sources& sources, const Program& program, const Names& names,
                    const std::string& written) {
  const std::string name = language::normal_name(written);
  if (name.empty()) return {true, overview(program), {}};
  if (std::string text = list(program, name); !text.empty()) return {true, std::move(text), {}};
  Explanation result;
  for (const Meaning& each : meanings_of(program, names, name)) {
    result.things.push_back({each, explain_text(sources, program, each)});
  }
  result.found = !result.things.empty();
  result.text = result.found ? all_text(name, result.things) : unknown(program, names, name);
  return result;
}

}  // namespace maslin::report
