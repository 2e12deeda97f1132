// SPDX-License-Identifier: Apache-2.0
// Whatever the program prints as JSON keeps to the published schema, by a validator that is none of
// ours; and the schema refuses what is altered.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "json/run_program.hpp"

namespace maslin::json_test {
namespace {

const std::filesystem::path source_folder = std::filesystem::path(MASLIN_SOURCE_DIR);

void copy_examples(const Folder& folder) {
  for (const char* from : {"examples", "examples/baskets"}) {
    for (const auto& each : std::filesystem::directory_iterator(source_folder / from)) {
      if (each.path().extension() != ".maslin") continue;
      std::filesystem::copy_file(each.path(), folder.path() / each.path().filename());
    }
  }
}

// The arguments of a run that prints JSON, and what it ends with.
struct Case {
  std::vector<std::string> arguments;
  int exit = 0;
};

const std::string hostile = "no \xff\xfe\x1b[31m \"<script>\" \xe2\x80\xae name";

std::vector<Case> cases() {
  return {
      {{"plan", "chutney.maslin", "october.maslin", "village_hall.maslin", "--json"}, 0},
      {{"plan", "first.maslin", "tuesday.maslin", "--json"}, 0},
      {{"plan", "first.maslin", "tuesday.maslin", "--to", "json", "--aim", "1 kg finished"}, 0},
      {{"plan", "first.maslin", "tuesday.maslin", "--to=json", "--aim", "1 kg prepared"}, 0},
      {{"plan", "october.maslin", "--framework", "orchard chutney", "--json"}, 0},
      {{"plan", "hot.maslin", "--json"}, 0},
      {{"plan", "fruit_jam.maslin", "--framework", "fruit jam", "--json"}, 0},
      {{"plan", "chutney.maslin", "october.maslin", "village_hall.maslin", "--to", "blend"}, 0},
      {{"plan", "first.maslin", "tuesday.maslin", "--to", "blend", "--json"}, 0},
      {{"plan", "first.maslin", "little.maslin", "--json", "--aim", "3 kg prepared"}, 1},
      {{"plan", "first.maslin", "less.maslin", "--json", "--aim", "3 kg prepared", "--mend"}, 1},
      {{"plan", "first.maslin", "wrong.maslin", "--json"}, 1},
      {{"plan", "first.maslin", "--to", "blend"}, 1},
      {{"plan", "nothere.maslin", "--json"}, 3},
      {{"plan", hostile, "--json"}, 3},
      {{"plan", "first.maslin", "tuesday.maslin", "--aim", hostile, "--json"}, 1},
      {{"plan", "first.maslin", "tuesday.maslin", "--basket", hostile, "--json"}, 1},
      {{"label", "chutney.maslin", "october.maslin", "village_hall.maslin", "--json"}, 0},
      {{"label", "first.maslin", "tuesday.maslin", "--to", "json"}, 0},
      {{"label", "chutney.maslin", "october.maslin", "village_hall.maslin", "made.maslin",
        "--json"},
       0},
      {{"label", "chutney.maslin", "village_hall.maslin", "made.maslin", "--json"}, 1},
      {{"label", "first.maslin", "tuesday.maslin", "--to", "html", "--json"}, 2},
      {{"label", "first.maslin", "little.maslin", "--json", "--aim", "3 kg prepared"}, 1},
      {{"check", "chutney.maslin", "october.maslin", "village_hall.maslin", "--json"}, 0},
      {{"check", "wrong.maslin", "--json"}, 1},
      {{"check", "bytes.maslin", "--json"}, 1},
      {{"check", "warned.maslin", "--json"}, 0},
      {{"explain", "--json"}, 0},
      {{"explain", "ingredients", "--json"}, 0},
      {{"explain", "quince", "--json"}, 0},
      {{"explain", "cider", "vinegar", "--json"}, 0},
      {{"explain", "sharp", "fruit", "--json"}, 0},
      {{"explain", "vinegar", "--json"}, 0},
      {{"explain", "tsp", "--json"}, 0},
      {{"explain", "%", "--json"}, 0},
      {{"explain", "pint", "--json"}, 0},
      {{"explain", "orchard chutney", "--json"}, 0},
      {{"explain", "decimal-comma", "--json"}, 0},
      {{"explain", "sugar", "--json"}, 0},
      {{"explain", "boiling", "water", "--json"}, 0},
      {{"explain", "jam", "--json"}, 0},
      {{"explain", "water", "activity", "--json"}, 0},
      {{"explain", hostile, "--json"}, 1},
      {{"--json"}, 2},
      {{"--json", "--help"}, 0},
      {{"--json", "--version"}, 0},
      {{"plan", "--help", "--json"}, 0},
      {{"frobnicate", "--json"}, 2},
      {{"--json", hostile}, 2},
      {{"plan", "--json"}, 2},
      {{"check", "first.maslin", "--frob", "--json"}, 2},
      {{"plan", "first.maslin", "--to", "pdf", "--json"}, 2},
      {{"plan", "first.maslin", "--to", "markdown", "--json"}, 2},
      {{"plan", "first.maslin", "--short", "--json"}, 2},
  };
}

void write_inputs(const Folder& folder) {
  copy_examples(folder);
  folder.write("first.maslin", small_framework);
  folder.write("tuesday.maslin", small_basket);
  folder.write("little.maslin", "basket {\n  apple 2.5 kg gross\n  onion 40 g prepared\n}\n");
  folder.write("hot.maslin",
               "framework hot jam {\n  produce { onion 30 .. 50 %; apple 50 .. 70 % }\n"
               "  per kilogram { sugar 700 g; vinegar 100 ml; cayenne 1 g }\n"
               "  limits { soluble solids 30 .. 60 %; water >= 20 % }\n}\n"
               "basket { onion 1 kg prepared, at 0.8 per kg; apple 2 kg prepared }\n"
               "kitchen { pan 9 l; jars 9 of 282 ml at 0.5 each, 9 of 190 ml }\n");
  folder.write("made.maslin",
               "batch \"2026-10-10 a\" of village chutney version 1 {\n"
               "  boil 1 { used { apple 1 kg prepared } filled at 88 °C { 2 of 282 ml } }\n}\n");
  folder.write("less.maslin",
               "basket {\n  apple 2.5 kg gross\n  onion 400 g prepared\n"
               "  beetroot 600 g prepared\n  raisin 500 g\n}\n");
  folder.write("wrong.maslin",
               "basket {\n  apple 2,5 kg gross\n  onoin 2 kg\n  beetroot 600 g\n  pear 1 pint\n"
               "  onion 2 kg gross\n  \"a \x5c|<script>`\" 2 kg\n}\n");
  folder.write("warned.maslin", "basket {\n  onion 2kg gross\n}\n");
  folder.write("bytes.maslin", "basket {\n  onion 2 kg gross \xff\n}\n");
}

// The validator and what it needs, once a build.
std::filesystem::path install_validator(const Folder& folder) {
  const auto modules = std::filesystem::path(MASLIN_PROGRAM).parent_path() / "json_validator";
  std::filesystem::create_directories(modules);
  const auto overwrite = std::filesystem::copy_options::overwrite_existing;
  for (const char* name : {"package.json", "package-lock.json"}) {
    std::filesystem::copy_file(source_folder / "tests/json" / name, modules / name, overwrite);
  }
  const Ran npm = folder.run(
      "npm", {"ci", "--prefix", modules.string(), "--no-audit", "--no-fund", "--ignore-scripts"});
  EXPECT_EQ(npm.exit, 0) << "The validator cannot be installed. `npm` must be there (Debian: "
                            "nodejs and npm) and able to reach its registry.\n"
                         << npm.out << npm.err;
  return modules / "node_modules";
}

TEST(Schema, HoldsForEveryOutputAndForNothingElse) {
  const Folder folder;
  write_inputs(folder);
  const Folder outputs;
  int number = 100;
  for (const Case& each : cases()) {
    const Ran ran = folder.maslin(each.arguments);
    std::string words = std::to_string(number);
    for (const std::string& argument : each.arguments) words += " " + argument;
    EXPECT_EQ(ran.exit, each.exit) << words << "\n" << ran.out;
    EXPECT_EQ(ran.err, "") << words;
    outputs.write(std::to_string(number) + "." + each.arguments[0].substr(0, 7) + ".json", ran.out);
    ++number;
  }
  const Ran node = folder.run("node", {"--version"});
  ASSERT_EQ(node.exit, 0) << "Node is missing (Debian: nodejs and npm): the JSON was not validated";
  const auto modules = install_validator(folder);
  const Ran checked = folder.run(
      "node", {(source_folder / "tests/json/validate.js").string(), modules.string(),
               (source_folder / "schema/maslin.schema.json").string(), outputs.path().string()});
  EXPECT_EQ(checked.exit, 0) << checked.out << checked.err;
  RecordProperty("validated", checked.out);
}

}  // namespace
}  // namespace maslin::json_test
