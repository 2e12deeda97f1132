// SPDX-License-Identifier: Apache-2.0
// A village kitchen, written in the language, and drafts for it made by hand: for the tests of the
// verifier. Its figures are round numbers, for reckoning with; they are nobody's measurements.
#pragma once

#include <gtest/gtest.h>

#include <deque>
#include <optional>
#include <string>
#include <string_view>

#include "diagnostic/diagnostic.hpp"
#include "language/resolve.hpp"
#include "plan/verify.hpp"
#include "source/source.hpp"
#include "syntax/parse.hpp"
#include "syntax/problems.hpp"

namespace maslin::plan::testing {

inline Rational number(std::string_view text) {
  const bool below = text.substr(0, 1) == "-";
  const auto value = Rational::from_decimal(below ? text.substr(1) : text);
  if (!value) return Rational::undefined();
  return below ? -*value : *value;
}

inline language::Program read(const std::string& text) {
  Sources sources;
  Diagnostics diagnostics;
  const FileId file = sources.add(SourceFile("village.maslin", text));
  std::deque<syntax::SyntaxTree> trees;
  trees.push_back(syntax::parse(file, sources.file(file).text()));
  syntax::report_problems(trees.back(), diagnostics);
  language::Resolved resolved;
  language::resolve(sources, trees, resolved, diagnostics);
  for (const Diagnostic& each : diagnostics.all()) {
    ADD_FAILURE() << each.message << ": "
                  << (each.primary ? sources.text(each.primary->span) : std::string_view());
  }
  return std::move(resolved.program);
}

inline language::IngredientId ingredient(const language::Program& program, std::string_view name) {
  for (std::size_t i = 0; i < program.ingredients.size(); ++i) {
    if (program.ingredients[i].name == name) return language::IngredientId(i);
  }
  ADD_FAILURE() << "no ingredient is called " << name;
  return language::IngredientId(0);
}

// From the scales.
inline Taken weighed(const language::Program& program, std::size_t slot, std::string_view name,
                     language::Origin origin, std::string_view grams) {
  Taken taken;
  taken.slot = slot;
  taken.ingredient = ingredient(program, name);
  taken.origin = origin;
  taken.weight = number(grams);
  taken.amount = taken.weight;
  return taken;
}

// In millilitres or pieces.
inline Taken measured(const language::Program& program, std::size_t slot, std::string_view name,
                      Tool tool, std::string_view amount, std::string_view grams) {
  Taken taken = weighed(program, slot, name, language::Origin::to_have, grams);
  taken.tool = tool;
  taken.amount = number(amount);
  return taken;
}

inline Task task(Aim aim = {}) {
  return {language::FrameworkId(0), language::BasketId(0), language::KitchenId(0), aim, {}};
}

inline constexpr std::string_view things = R"(
unit g is mass
unit % = 0.01
unit kg = 1000 g, also kilogram
unit ml is volume
unit l = 1000 ml
unit tsp = 5 ml

class produce
class fruit is produce
class sharp fruit is fruit where highest pH <= 4.2
class low acid is produce where highest pH > 4.5
class dried fruit
class vinegar { usually plain vinegar }
class lemon juice

ingredient apple is fruit {
  composition  water 86 g, sugars 10 .. 12 g, malic acid 0.5 g
  pH           3.3 .. 3.9
  edible       76 %
}
ingredient pear is fruit {
  composition  water 84 g, sugars 10 g
  pH           3.5 .. 4.6
}
ingredient onion is produce {
  composition  water 89 g, sugars 4 .. 5 g
  pH           5.3 .. 5.8
}
ingredient squash is produce {
  composition  water 90 g, sugars 3 .. 4 g
  pH           5.8 .. 6.2
  edible       70 .. 80 %
}
ingredient carrot is produce {
  composition  water 88 g, sugars 5 g
  pH           5.9 .. 6.4
}
ingredient sultana is dried fruit { composition water 18 g, sugars 60 .. 70 g }
ingredient sugar { composition water 0 g, sugars 100 g }
ingredient salt { composition water 0 g, salt 100 g }
ingredient plain vinegar is vinegar {
  composition  water 95 g, sugars 0 g, acetic acid 5 g
  density      1.01 g per ml
}
ingredient bottled lemon juice is lemon juice {
  composition  water 92 g, sugars 2 g, citric acid 4 g
  density      1.03 g per ml
}
ingredient fresh lemon juice is lemon juice {
  composition  water 92 g, sugars 2 g, citric acid 4 g
  density      1.03 g per ml
}
ingredient ground allspice {
  composition  water 8 g, sugars 0 .. 50 g
  density      0.4 g per ml
}
ingredient clove {
  composition  water 8 g, sugars 2 g
  piece        0.1 g
}
)";

// Slots as a draft numbers them. Additions: vinegar 0, sugar 1, dried fruit 2, salt 3, allspice 4,
// clove 5. Substitutions: dried fruit 0, lemon juice 1, vinegar 2. Limits: low acid 0, acetic acid
// 1, soluble solids 2.
inline constexpr std::string_view village = R"(
framework orchard mix {
  title "Orchard mix"
  version 1
  status own
  basis prepared produce
  produce {
    onion        20 %
    sharp fruit  50 .. 70 %
    squash       10 .. 25 %
  }
  per kilogram {
    vinegar          420 .. 520 ml
    sugar            300 g
    dried fruit      80 .. 120 g
    salt             10 g
    ground allspice  1 tsp
    clove            2
  }
  substitute {
    dried fruit for sugar by sugars full up to 50 %
    lemon juice for vinegar by acidity optional up to 10 % only bottled lemon juice
    vinegar for vinegar by acetic acid
  }
  limits {
    low acid <= 45 % of prepared produce
    acetic acid >= 20 g per kilogram of prepared produce
    soluble solids 36 .. 46 %
  }
}
basket "second week of October" {
  apple    3 kg gross
  apple    600 g prepared, use first
  onion    1.2 kg gross, trim 10 %, spoiled 100 g, keep back 100 g
  squash   1.5 kg gross
  carrot   250 g prepared
  sultana  to buy, at most 400 g
}
kitchen "village hall" {
  scales  to 5 g
  spoons  to 1/4 tsp
  store {
    plain vinegar 3 l, 5 % acidity; plain vinegar 1 l, 6 % acidity
    sugar 3 kg
    bottled lemon juice 500 ml; fresh lemon juice 500 ml
  }
}
)";

inline language::Program village_program() {
  return read(std::string(things) + std::string(village));
}

// 4 kg of prepared produce. Reckoned by hand: low acid 45 %, vinegar 1820 / 1.01 + 75 = 1877 ml,
// sugar 940 + 260 of the sultanas = 1200 g, acetic acid 22.5 g per kilogram.
inline Draft village_draft(const language::Program& program) {
  using language::Origin;
  Draft draft;
  draft.task = task();
  Taken early = weighed(program, 1, "apple", Origin::basket, "500");
  early.use_first = true;
  draft.produce = {weighed(program, 0, "onion", Origin::basket, "800"), early,
                   weighed(program, 1, "apple", Origin::basket, "1700"),
                   weighed(program, 2, "squash", Origin::basket, "1000")};
  Taken vinegar = weighed(program, 0, "plain vinegar", Origin::store, "1820");
  vinegar.acidity = number("0.05");
  draft.additions = {vinegar,
                     weighed(program, 1, "sugar", Origin::store, "940"),
                     weighed(program, 2, "sultana", Origin::to_buy, "400"),
                     weighed(program, 3, "salt", Origin::to_have, "40"),
                     measured(program, 4, "ground allspice", Tool::spoons, "20", "8"),
                     measured(program, 5, "clove", Tool::count, "8", "0.8")};
  draft.substitutes = {weighed(program, 1, "bottled lemon juice", Origin::store, "100")};
  draft.credits = {260, 75, 0};
  draft.finished = 4200;
  return draft;
}

inline std::string told(const std::vector<Breach>& breaches) {
  std::string text;
  for (const Breach& each : breaches) text += each.text + "\n";
  return text;
}

inline void expect_passes(const language::Program& program, const Draft& draft,
                          const std::string& what = {}) {
  const auto result = verify(program, draft);
  EXPECT_TRUE(result.ok()) << what << ": " << (result.ok() ? "" : told(result.error()));
}

inline void expect_breach(const language::Program& program, const Draft& draft, Breach::Kind kind,
                          const std::string& what = {}) {
  const auto result = verify(program, draft);
  ASSERT_FALSE(result.ok()) << what << " passed";
  bool found = false;
  for (const Breach& each : result.error()) found = found || each.kind == kind;
  EXPECT_TRUE(found) << what << " was refused for another reason: " << told(result.error());
}

}  // namespace maslin::plan::testing
