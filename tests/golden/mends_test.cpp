// SPDX-License-Identifier: Apache-2.0
// Every mend that a golden case prints is followed from its text, and then there is a plan.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "support/golden_case.hpp"
#include "support/mending.hpp"

namespace maslin::test {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;

std::vector<std::pair<std::string, GoldenCase>> misfits() {
  std::vector<std::pair<std::string, GoldenCase>> found;
  for (const auto& entry :
       fs::directory_iterator(fs::path(MASLIN_SOURCE_DIR) / "tests/golden/plan")) {
    std::ifstream in(entry.path(), std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    GoldenCase golden = read_case(text.str());
    if (golden.content_of("exit").empty()) continue;
    found.emplace_back(entry.path().filename().string(), std::move(golden));
  }
  std::sort(found.begin(), found.end(),
            [](const auto& a, const auto& b) { return a.first < b.first; });
  return found;
}

std::string command_of(const GoldenCase& golden) {
  std::string command = golden.content_of("command");
  while (!command.empty() && command.back() == '\n') command.pop_back();
  return command;
}

Json envelope_of(GoldenCase golden) {
  golden.replace("command", command_of(golden) + " --json\n");
  return Json::parse(run_case(golden).out);
}

// With the edits of one fix made in its inputs.
GoldenCase mended(GoldenCase golden, const Json& fix) {
  for (Split& split : golden.splits) {
    std::vector<Edit> edits;
    for (const Json& edit : fix.at("edits")) {
      if (edit.at("file") != split.name) continue;
      Edit each;
      each.span.begin = edit.at("begin").at("offset").get<std::uint32_t>();
      each.span.end = edit.at("end").at("offset").get<std::uint32_t>();
      each.text = edit.at("text").get<std::string>();
      edits.push_back(each);
    }
    split.content = edited(split.content, edits);
  }
  return golden;
}

GoldenCase aimed(GoldenCase golden, const std::string& aim) {
  std::string command = command_of(golden);
  // The aim stands instead of the one before, or instead of the jars to fill.
  const std::size_t at = std::min(command.find(" --aim"), command.find(" --fill"));
  if (at != std::string::npos) command.resize(at);
  golden.replace("command", command + " --aim \"" + aim + "\"\n");
  return golden;
}

void expect_a_plan(const GoldenCase& golden, const std::string& mend) {
  const Ran ran = run_case(golden);
  EXPECT_EQ(ran.exit, 0) << mend << "\n" << write_case(golden) << ran.err;
}

// The misfits that a cook is most likely to meet; each must be there, and must be one.
const std::vector<std::string> ten_misfits = {
    "too_little.test",      "too_much.test",     "two_at_once.test",       "low_acid_cap.test",
    "limits_clash.test",    "store_short.test",  "to_buy_too_little.test", "nothing_of_class.test",
    "swap_at_its_cap.test", "aim_too_large.test"};

TEST(Mends, TheTenMisfitsAreThere) {
  const auto all = misfits();
  for (const std::string& name : ten_misfits) {
    EXPECT_TRUE(std::any_of(all.begin(), all.end(), [&](const auto& each) {
      return each.first == name;
    })) << name;
  }
}

TEST(Mends, EveryOneOfAGoldenCaseMakesThePlan) {
  int followed = 0;
  for (const auto& [name, golden] : misfits()) {
    SCOPED_TRACE(name);
    const Json envelope = envelope_of(golden);
    for (const Json& diagnostic : envelope.at("diagnostics")) {
      for (const Json& fix : diagnostic.at("fixes")) {
        expect_a_plan(mended(golden, fix), fix.at("title").get<std::string>());
        ++followed;
      }
      for (const Json& mend : diagnostic.at("mends")) {
        const auto aim = aim_in_words(mend.get<std::string>());
        if (!aim) continue;
        expect_a_plan(aimed(golden, *aim), *aim);
        ++followed;
      }
    }
  }
  EXPECT_GE(followed, 20);
}

}  // namespace
}  // namespace maslin::test
