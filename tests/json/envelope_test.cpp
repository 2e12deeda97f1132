// SPDX-License-Identifier: Apache-2.0
// What --json, --short and --to print, by the real program.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "json/run_program.hpp"

namespace maslin::json_test {
namespace {

using Json = nlohmann::json;

const std::string wrong_basket =
    "basket \"Tuesday\" {\n"
    "  apple     2,5 kg gross\n"
    "  \"m\xC3\xBCsli\" 2 kg\n"
    "  beetroot  600 g\n"
    "}\n";

Json envelope_of(const Ran& ran) {
  EXPECT_EQ(ran.err, "");
  Json json = Json::parse(ran.out, nullptr, false);
  EXPECT_FALSE(json.is_discarded()) << ran.out;
  EXPECT_EQ(json["exit"], ran.exit);
  EXPECT_EQ(json["maslin"], "0.1.0");
  EXPECT_EQ(json["schema"], 1);
  return json;
}

class EnvelopeTest : public ::testing::Test {
 protected:
  void SetUp() override {
    folder.write("first.maslin", small_framework);
    folder.write("tuesday.maslin", small_basket);
    folder.write("wrong.maslin", wrong_basket);
  }
  Json plan(std::vector<std::string> more = {}) const {
    more.insert(more.begin(), {"plan", "first.maslin", "tuesday.maslin", "--json"});
    const Ran ran = folder.maslin(more);
    EXPECT_EQ(ran.exit, 0) << ran.out;
    return envelope_of(ran)["plan"];
  }

  Folder folder;
};

TEST_F(EnvelopeTest, TellsWrongUsage) {
  struct Wrong {
    std::vector<std::string> arguments;
    Json command;
    std::string message;
  };
  const std::vector<Wrong> all = {
      {{"--json"}, nullptr, "a subcommand is required"},
      {{"frobnicate", "--json"}, nullptr, "The following argument was not expected: frobnicate"},
      {{"--frob", "--json"}, nullptr, "The following argument was not expected: --frob"},
      {{"plan", "--json"}, "plan", "files is required"},
      {{"check", "--json", "wrong.maslin", "--frob"},
       "check",
       "The following argument was not expected: --frob"},
      {{"plan", "first.maslin", "--to", "pdf", "--json"},
       "plan",
       "--to: pdf not in {text,markdown,html,shopping,csv,json,blend}"},
      {{"plan", "first.maslin", "--to", "text", "--json"}, "plan", "--json excludes --to text"},
      {{"plan", "first.maslin", "--to", "blend", "--short"}, "plan", "--short excludes JSON"},
  };
  for (const Wrong& each : all) {
    const Ran ran = folder.maslin(each.arguments);
    EXPECT_EQ(ran.exit, 2);
    const Json json = envelope_of(ran);
    EXPECT_EQ(json["command"], each.command);
    EXPECT_EQ(json["usage"]["message"], each.message);
    EXPECT_TRUE(json["diagnostics"].empty());
  }
}

TEST_F(EnvelopeTest, WithoutItWrongUsageIsText) {
  const Ran ran = folder.maslin({"plan", "first.maslin", "--to", "pdf"});
  EXPECT_EQ(ran.exit, 2);
  EXPECT_EQ(ran.out, "");
  EXPECT_NE(ran.err.find("pdf not in"), std::string::npos);
  EXPECT_EQ(folder.maslin({"frobnicate"}).exit, 2);
  EXPECT_EQ(folder.maslin({}).exit, 2);
}

TEST_F(EnvelopeTest, TellsWhatIsWrongInAFile) {
  const Ran ran = folder.maslin({"check", "wrong.maslin", "--json"});
  EXPECT_EQ(ran.exit, 1);
  const Json json = envelope_of(ran);
  EXPECT_EQ(json["command"], "check");
  EXPECT_FALSE(json.contains("check"));
  ASSERT_EQ(json["diagnostics"].size(), 3U);
  const Json comma = json["diagnostics"][0];
  EXPECT_EQ(comma["code"], "decimal-comma");
  EXPECT_EQ(comma["severity"], "error");
  EXPECT_EQ(comma["primary"]["file"], "wrong.maslin");
  EXPECT_EQ(comma["primary"]["begin"], Json::parse(R"({"line":2,"column":13,"offset":31})"));
  EXPECT_EQ(comma["primary"]["end"], Json::parse(R"({"line":2,"column":16,"offset":34})"));
  EXPECT_EQ(comma["fixes"][0]["edits"][0]["text"], "2.5");
  EXPECT_EQ(json["diagnostics"][1]["code"], "unknown-name");
  // Columns count characters, offsets bytes.
  const Json which = json["diagnostics"][2]["primary"];
  EXPECT_EQ(wrong_basket.substr(which["begin"]["offset"], 5), "600 g");
  const Json name = json["diagnostics"][1]["primary"];
  const int characters = name["end"]["column"].get<int>() - name["begin"]["column"].get<int>();
  const int bytes = name["end"]["offset"].get<int>() - name["begin"]["offset"].get<int>();
  EXPECT_EQ(characters + 1, bytes);
}

TEST_F(EnvelopeTest, FixesCanBeAppliedAsTheyAre) {
  folder.write("glued.maslin", "basket {\n  onion 2kg gross; apple 1kg gross\n}\n");
  const Json json = envelope_of(folder.maslin({"check", "glued.maslin", "--json"}));
  ASSERT_EQ(json["diagnostics"].size(), 2U);
  EXPECT_EQ(json["diagnostics"][0]["severity"], "warning");
  std::string text = folder.read("glued.maslin");
  for (int i = 1; i >= 0; --i) {
    const Json edit = json["diagnostics"][i]["fixes"][0]["edits"][0];
    const std::size_t begin = edit["begin"]["offset"];
    const std::size_t end = edit["end"]["offset"];
    text.replace(begin, end - begin, edit["text"].get<std::string>());
  }
  EXPECT_EQ(text, "basket {\n  onion 2 kg gross; apple 1 kg gross\n}\n");
}

TEST_F(EnvelopeTest, FailsWithTheSystem) {
  const Ran ran = folder.maslin({"plan", "nothere.maslin", "--json"});
  EXPECT_EQ(ran.exit, 3);
  const Json json = envelope_of(ran);
  EXPECT_EQ(json["diagnostics"][0]["code"], "unreadable-file");
  EXPECT_FALSE(json["diagnostics"][0].contains("primary"));
}

TEST_F(EnvelopeTest, WeightsAreExactAndAddUp) {
  const Json json = plan();
  double sum = 0;
  for (const Json& each : json["produce"]) {
    double drawn = 0;
    for (const Json& draw : each["draws"]) drawn += draw["prepared_g"].get<double>();
    EXPECT_DOUBLE_EQ(drawn, each["weight_g"].get<double>());
    EXPECT_TRUE(each["weight_g"].is_number_integer()) << each;
    sum += each["weight_g"].get<double>();
  }
  EXPECT_EQ(sum, json["totals"]["prepared_g"]);
  double shares = 0;
  for (const Json& each : json["shares"]) {
    shares += each["share"].get<double>();
    EXPECT_GE(each["share"], each["allowed_share"]["low"]);
    EXPECT_LE(each["share"], each["allowed_share"]["high"]);
  }
  EXPECT_NEAR(shares, 1, 1e-8);
  EXPECT_EQ(json["produce"][0]["draws"][0]["place"]["begin"]["line"], 3);
  EXPECT_EQ(json["task"]["aim"]["kind"], "most");
  EXPECT_FALSE(json["task"].contains("kitchen"));
}

TEST_F(EnvelopeTest, SaysWhatIsAsked) {
  const Json json = plan({"--aim", "1.5 kg prepared"});
  EXPECT_EQ(json["task"]["aim"], Json::parse(R"({"kind":"prepared","weight_g":1500})"));
  EXPECT_EQ(json["totals"]["prepared_g"], 1500);
  const auto raisin = std::find_if(json["to_get"].begin(), json["to_get"].end(),
                                   [](const Json& e) { return e["ingredient"] == "raisin"; });
  ASSERT_NE(raisin, json["to_get"].end());
  EXPECT_EQ((*raisin)["pack_g"], 250);
  EXPECT_EQ((*raisin)["packs"], 1);
  EXPECT_EQ((*raisin)["cost"], 1);
}

TEST_F(EnvelopeTest, ToJsonIsTheSame) {
  const std::vector<std::string> files = {"plan", "first.maslin", "tuesday.maslin"};
  const auto with = [&](std::vector<std::string> more) {
    more.insert(more.begin(), files.begin(), files.end());
    return folder.maslin(more).out;
  };
  const std::string flag = with({"--json"});
  EXPECT_EQ(with({"--to", "json"}), flag);
  EXPECT_EQ(with({"--to=json"}), flag);
  EXPECT_EQ(folder.maslin({"--json", "plan", "first.maslin", "tuesday.maslin"}).out, flag);
  EXPECT_EQ(with({"--json"}), flag);
}

TEST_F(EnvelopeTest, HostileBytesNeverBreakIt) {
  const std::string name = "a\"b\\\n\x1b[31m\xff.maslin";
  folder.write(name, "basket {\n  onion \xff 2 kg\n}\n");
  const Json bytes = envelope_of(folder.maslin({"check", name, "--json"}));
  ASSERT_EQ(bytes["diagnostics"].size(), 1U);
  EXPECT_EQ(bytes["diagnostics"][0]["code"], "not-text");
  EXPECT_EQ(bytes["diagnostics"][0]["primary"]["file"], "a\"b\\\n\x1b[31m\xEF\xBF\xBD.maslin");
  folder.write(name, "basket {\n  \"</script>\\ |`\" 2 kg\n}\n");
  const Json names = envelope_of(folder.maslin({"check", name, "--json"}));
  EXPECT_EQ(names["diagnostics"][0]["code"], "unknown-name");
  EXPECT_EQ(names["diagnostics"][0]["message"], "nothing is known by the name `</script>\\ |``");
  const Json usage = envelope_of(folder.maslin({"\xff\x01", "--json"}));
  EXPECT_EQ(usage["exit"], 2);
}

TEST_F(EnvelopeTest, WordsNeverSteerATerminal) {
  folder.write("\x1b[31m.maslin", "basket {\n");
  const Json json = envelope_of(folder.maslin({"plan", "\x1b[31m", "--json"}));
  const std::string message = json["diagnostics"][0]["message"];
  EXPECT_EQ(message.find('\x1b'), std::string::npos) << message;
}

TEST_F(EnvelopeTest, ShortIsOneLineAMessage) {
  const Ran ran = folder.maslin({"check", "wrong.maslin", "--short"});
  EXPECT_EQ(ran.exit, 1);
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(ran.err,
            "wrong.maslin:2:13: error: `2,5` has a comma between its digits [decimal-comma]\n"
            "wrong.maslin:3:3: error: nothing is known by the name `m\xC3\xBCsli` [unknown-name]\n"
            "wrong.maslin:4:13: error: is this beetroot as brought in, or ready for the pan? "
            "[which-weight]\n");
  EXPECT_EQ(folder.maslin({"plan", "nothere.maslin", "--short"}).err,
            "maslin: error: `nothere.maslin` cannot be read: there is no such file "
            "[unreadable-file]\n");
}

TEST_F(EnvelopeTest, BlendIsTheProgrammeOfThePlan) {
  const Ran ran = folder.maslin({"plan", "first.maslin", "tuesday.maslin", "--to", "blend"});
  EXPECT_EQ(ran.exit, 0);
  const Json blend = envelope_of(ran)["blend"];
  EXPECT_EQ(blend["margin_kg"], 0);
  EXPECT_EQ(blend["credits_at_cap"], Json::parse("[false]"));
  EXPECT_EQ(blend["columns"][0]["role"], "total");
  for (const Json& row : blend["rows"]) {
    if (row["name"] != "have apple") continue;
    EXPECT_EQ(row["terms"].size(), 1U);
    EXPECT_EQ(blend["statements"][row["statement"].get<std::size_t>()]["text"], "apple");
  }
}

TEST_F(EnvelopeTest, MendedTextsAreNamed) {
  folder.write("less.maslin",
               "basket {\n  apple 2.5 kg gross\n  onion 400 g prepared\n"
               "  beetroot 600 g prepared\n  raisin 500 g\n}\n");
  const std::vector<std::string> aim = {"--aim", "3 kg prepared", "--mend", "--json"};
  std::vector<std::string> arguments = {"plan", "first.maslin", "less.maslin"};
  arguments.insert(arguments.end(), aim.begin(), aim.end());
  const Json json = envelope_of(folder.maslin(arguments));
  EXPECT_EQ(json["exit"], 1);
  EXPECT_EQ(json["mended"]["files"], Json::parse(R"(["less.mended.maslin"])"));
  EXPECT_NE(folder.read("less.mended.maslin"), "");
}

}  // namespace
}  // namespace maslin::json_test
