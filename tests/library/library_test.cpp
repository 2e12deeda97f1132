// SPDX-License-Identifier: Apache-2.0
// What must hold of every entry of the standard library, and of every framework in it.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

#include "base/embedded.hpp"
#include "driver/session.hpp"
#include "language/membership.hpp"
#include "plan/make.hpp"
#include "report/documentation.hpp"
#include "support/golden_files.hpp"

namespace maslin::test {
namespace {

using language::Class;
using language::ClassId;
using language::Figure;
using language::Framework;
using language::FrameworkId;
using language::Ingredient;
using language::IngredientId;
using language::Program;
using science::Substance;

// The program as it is without any file of a user.
class Library {
 public:
  Library() : session_(files_) { session_.compile(); }
  const Sources& sources() const { return session_.sources(); }
  const Program& program() const { return session_.program(); }
  const Session& session() const { return session_; }

 private:
  MemoryFiles files_{{}};
  Session session_;
};

const Library& library() {
  static const Library instance;
  return instance;
}

const std::vector<Ingredient>& ingredients() { return library().program().ingredients; }

IngredientId ingredient_named(const std::string& name) {
  const auto* found = library().session().names().things.find(name);
  return found == nullptr ? IngredientId() : found->value.ingredient;
}

bool belongs(const std::string& ingredient, const std::string& of_class) {
  const auto* found = library().session().names().things.find(of_class);
  const IngredientId id = ingredient_named(ingredient);
  if (found == nullptr || !found->value.of_class.valid() || !id.valid()) {
    ADD_FAILURE() << ingredient << ", " << of_class << ": no such name";
    return false;
  }
  return is_member(library().program(), id, found->value.of_class);
}

bool has_note(const Ingredient& ingredient, const std::string& words) {
  return std::any_of(ingredient.notes.begin(), ingredient.notes.end(),
                     [&](const auto& note) { return note.find(words) != std::string::npos; });
}

bool has_composition(const Ingredient& ingredient) {
  for (std::size_t i = 0; i < science::substance_count; ++i) {
    if (ingredient.composition[static_cast<Substance>(i)]) return true;
  }
  return false;
}

std::string read_text(const std::filesystem::path& path) {
  std::ifstream file(path);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

std::filesystem::path root() { return MASLIN_SOURCE_DIR; }

// ---- Ingredients --------------------------------------------------------------------------------

TEST(Library, HasNoFindingAndIsLargeEnough) {
  for (const Diagnostic& each : library().session().diagnostics().all()) {
    ADD_FAILURE() << name_of(each.code) << ": " << each.message;
  }
  EXPECT_GE(ingredients().size(), 180U);
  EXPECT_GE(library().program().frameworks.size(), 8U);
}

TEST(Library, CompositionsAddUpOrSayWhyNot) {
  for (const Ingredient& each : ingredients()) {
    if (!has_composition(each)) continue;
    const Bounds total = science::total(each.composition);
    const double middle = (total.low.to_double() + total.high.to_double()) * 50;
    // What is only a bound (sugars from none up) may be all of it.
    const bool bound = has_note(each, "No table has its sugars");
    const double most = bound ? total.high.to_double() * 100 : middle;
    const bool adds_up = most >= 97 && middle <= 103;
    const bool says_why = has_note(each, "are unnamed:") || has_note(each, "over 100 g:");
    EXPECT_TRUE(adds_up || says_why) << each.name << ": " << middle << " g of 100 g";
  }
}

TEST(Library, ANoteOnTheSumIsThereForAReason) {
  for (const Ingredient& each : ingredients()) {
    if (!has_note(each, "are unnamed:") && !has_note(each, "over 100 g:")) continue;
    const Bounds total = science::total(each.composition);
    const double middle = (total.low.to_double() + total.high.to_double()) * 50;
    EXPECT_TRUE(middle < 97.6 || middle > 102.4) << each.name << ": " << middle << " g of 100 g";
  }
}

TEST(Library, NothingIsCountedTwice) {
  for (const Ingredient& each : ingredients()) {
    const auto& parts = each.composition;
    // Salt is the sodium of a thing: listed as the one or the other.
    EXPECT_FALSE(parts[Substance::salt] && parts[Substance::sodium]) << each.name;
    if (!parts[Substance::ash]) continue;
    const Rational minerals = parts.or_none(Substance::sodium).low +
                              parts.or_none(Substance::potassium).low +
                              parts.or_none(Substance::calcium).low;
    const Rational slack(Rational::Wide{5}, Rational::Wide{1000});
    EXPECT_LE(minerals, parts[Substance::ash]->high + slack)
        << each.name << ": minerals are a part of the ash";
  }
}

void expect_within(const Ingredient& of, const std::optional<Figure>& figure, const char* what,
                   double least, double most) {
  if (!figure) return;
  EXPECT_LE(figure->value.low, figure->value.high) << of.name << ": " << what;
  EXPECT_GE(figure->value.low.to_double(), least) << of.name << ": " << what;
  EXPECT_LE(figure->value.high.to_double(), most) << of.name << ": " << what;
  EXPECT_FALSE(figure->origin.empty()) << of.name << ": " << what << ", from where?";
}

TEST(Library, FiguresAreOrderedPlausibleAndSourced) {
  for (const Ingredient& each : ingredients()) {
    expect_within(each, each.ph, "pH", 1.5, 8);
    expect_within(each, each.density, "density", 0.1, 2);
    expect_within(each, each.edible, "edible", 0.2, 1);
    expect_within(each, each.piece, "piece", 0.01, 10000);
    for (std::size_t i = 0; i < science::substance_count; ++i) {
      const auto& part = each.composition[static_cast<Substance>(i)];
      if (part) {
        EXPECT_LE(part->low, part->high) << each.name;
      }
    }
    if (has_composition(each) && each.sources.empty()) {
      EXPECT_FALSE(each.composition_origin.empty()) << each.name << ": composition, from where?";
    }
  }
}

// A composition that no row of a table stands behind says so.
TEST(Library, WhatIsFromMemoryIsMarked) {
  const std::regex table("(SR28|Ciqual 2020|CoFID 2015)");
  for (const Ingredient& each : ingredients()) {
    if (!has_composition(each)) continue;
    const bool drawn =
        std::any_of(each.sources.begin(), each.sources.end(),
                    [&](const std::string& source) { return std::regex_search(source, table); });
    if (drawn) continue;
    const std::string& origin = each.composition_origin;
    const bool marked = origin.find("memory") != std::string::npos ||
                        origin.find("molar masses") != std::string::npos ||
                        origin.find("per 100 ml and the density") != std::string::npos;
    EXPECT_TRUE(marked) << each.name << ": " << origin;
  }
}

TEST(Library, WhatIsUnsafeRawSaysWhy) {
  for (const Ingredient& each : ingredients()) {
    if (each.raw != language::RawHazard::unsafe) continue;
    EXPECT_FALSE(each.raw_reason.empty()) << each.name;
    EXPECT_TRUE(each.boil_first.is_positive()) << each.name << ": how long to boil it?";
  }
  for (const char* name :
       {"elderberry", "kidney bean", "green bean", "runner bean", "broad bean", "rowan berry"}) {
    ASSERT_TRUE(ingredient_named(name).valid()) << name;
    EXPECT_EQ(library().program()[ingredient_named(name)].raw, language::RawHazard::unsafe) << name;
  }
}

// ---- Names and classes --------------------------------------------------------------------------

TEST(Library, NoNameMeansTwoThings) {
  std::map<std::string, std::string> seen;
  const auto take = [&](const std::string& name, const std::string& owner) {
    const auto [place, is_new] = seen.try_emplace(name, owner);
    EXPECT_TRUE(is_new) << name << ": names " << owner << " and " << place->second;
  };
  for (const Ingredient& each : ingredients()) {
    take(each.name, each.name);
    for (const std::string& also : each.also) take(also, each.name);
  }
  for (const Class& each : library().program().classes) {
    take(each.name, "the class " + each.name);
    for (const std::string& also : each.also) take(also, "the class " + each.name);
  }
}

// What no route takes need not be in the library for that.
bool is_refused_by_a_route(ClassId of_class) {
  for (const language::Route& route : library().program().routes) {
    for (const language::Refusal& refusal : route.refusals) {
      for (const language::Target& target : refusal.targets) {
        if (target.of_class == of_class) return true;
      }
    }
  }
  return false;
}

TEST(Library, EachClassHasAMemberAndALineOnWhatItIs) {
  std::string text;
  for (const embedded::File& file : embedded::standard_library()) {
    if (file.path == "classes.maslin") text = file.text;
  }
  const Program& program = library().program();
  for (std::size_t i = 0; i < program.classes.size(); ++i) {
    const Class& each = program.classes[i];
    bool found = is_refused_by_a_route(ClassId(i));
    for (std::size_t k = 0; k < ingredients().size(); ++k) {
      found = found || is_member(program, IngredientId(k), ClassId(i));
    }
    EXPECT_TRUE(found) << each.name << ": nothing belongs to it";
    if (each.usually.valid()) {
      EXPECT_TRUE(is_member(program, each.usually, ClassId(i))) << each.name;
    }
    EXPECT_TRUE(std::regex_search(text, std::regex("\n## [^\n]+\nclass " + each.name + "\\b")))
        << each.name << ": no line says what it is";
  }
}

// The word fruit grants no acid.
TEST(Library, AcidGoesByFigures) {
  for (const char* name : {"fig", "melon", "honeydew melon", "watermelon", "mango", "banana",
                           "papaya", "Asian pear", "persimmon", "date", "dried fig", "tomato"}) {
    EXPECT_TRUE(belongs(name, "low acid")) << name;
    EXPECT_FALSE(belongs(name, "sharp fruit")) << name;
  }
  for (const char* name : {"apple", "quince", "gooseberry", "rhubarb", "lime"}) {
    EXPECT_TRUE(belongs(name, "sharp fruit")) << name;
  }
  for (const char* name : {"date", "dried fig"}) {
    EXPECT_TRUE(belongs(name, "dried fruit")) << name;
    EXPECT_FALSE(belongs(name, "vine fruit")) << name;
    EXPECT_FALSE(belongs(name, "sharp dried fruit")) << name;
  }
  for (const char* name : {"lemon", "fresh lemon juice", "fresh lime juice"}) {
    EXPECT_FALSE(belongs(name, "acid")) << name;
  }
}

TEST(Library, PromisesNothing) {
  const std::regex promise("\\b(safe|safely|OK|will keep|keeps for|guarantee\\w*|shelf.stable)\\b",
                           std::regex::icase);
  for (const embedded::File& file : embedded::standard_library()) {
    std::cmatch found;
    EXPECT_FALSE(
        std::regex_search(file.text.data(), file.text.data() + file.text.size(), found, promise))
        << file.path << ": " << found.str();
  }
}

// ---- Frameworks ---------------------------------------------------------------------------------

std::string file_name(const std::string& framework) {
  std::string name = framework;
  std::replace(name.begin(), name.end(), ' ', '_');
  return name + ".maslin";
}

TEST(Library, FrameworksSayWhatTheyAre) {
  const std::regex squash("squash|winter squash|summer squash");
  for (const Framework& each : library().program().frameworks) {
    EXPECT_FALSE(report::documentation_of(library().sources(), each.span).empty()) << each.name;
    EXPECT_TRUE(each.version.is_positive()) << each.name;
    EXPECT_TRUE(each.status == language::Status::own ||
                each.status == language::Status::traditional)
        << each.name << ": nothing here is unchanged from a tested source";
    Rational most_squash;
    for (const language::ProduceShare& share : each.shares) {
      if (std::regex_match(share.target.name, squash)) most_squash += share.range.high;
    }
    EXPECT_LE(most_squash.to_double(), 0.2) << each.name << ": squash";
  }
}

// Each framework plans with the basket of its name and the kitchen of the examples.
TEST(Library, EachFrameworkPlansWithItsBasket) {
  const Program& known = library().program();
  const std::string kitchen = read_text(root() / "examples/village_hall.maslin");
  ASSERT_FALSE(kitchen.empty());
  for (std::size_t i = 0; i < known.frameworks.size(); ++i) {
    const std::string& name = known.frameworks[i].name;
    const std::string basket = read_text(root() / "examples/baskets" / file_name(name));
    ASSERT_FALSE(basket.empty()) << name << ": no examples/baskets/" << file_name(name);
    MemoryFiles files{{}};
    Session session(files);
    session.load_text("basket.maslin", basket);
    session.load_text("kitchen.maslin", kitchen);
    session.compile();
    ASSERT_FALSE(session.diagnostics().has_errors()) << name;
    ASSERT_EQ(session.program().baskets.size(), 1U) << name;
    plan::Task task;
    task.framework = FrameworkId(i);
    task.basket = language::BasketId(0);
    task.kitchen = language::KitchenId(0);
    const plan::Made made = plan::make_plan(session.program(), task, session.diagnostics());
    EXPECT_TRUE(made.plan.has_value()) << name;
    for (const Diagnostic& each : session.diagnostics().all()) {
      ADD_FAILURE() << name << ": " << name_of(each.code) << ": " << each.message;
    }
    if (!made.plan) continue;
    EXPECT_GT(made.plan->verified.prepared_total().to_double(), 1000) << name;
  }
}

TEST(Library, EachBasketBelongsToAFramework) {
  std::vector<std::string> names;
  for (const Framework& each : library().program().frameworks) {
    names.push_back(file_name(each.name));
  }
  for (const auto& entry : std::filesystem::directory_iterator(root() / "examples/baskets")) {
    EXPECT_NE(std::find(names.begin(), names.end(), entry.path().filename().string()), names.end())
        << entry.path().filename();
  }
}

}  // namespace
}  // namespace maslin::test
