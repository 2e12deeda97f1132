// SPDX-License-Identifier: Apache-2.0
// Every diagnostic has a page, and what a page shows as wrong and right is so.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "command/command.hpp"
#include "diagnostic/diagnostic.hpp"
#include "golden/page.hpp"
#include "support/golden_case.hpp"
#include "support/golden_files.hpp"

namespace maslin::test {
namespace {

constexpr const char* text_name = "week.maslin";

// No text of a page can show these.
const std::map<Code, std::string>& shown_by_no_text() {
  static const std::map<Code, std::string> reasons = {
      {Code::file_too_large, "a page of 64 MiB helps nobody; FilesTooLarge below holds it"},
      {Code::too_many_lots, "nor does one of 20 000 lines; BasketsTooLong below holds it"},
      {Code::unsolved, "a fault of the program itself, which no input is known to bring about"}};
  return reasons;
}

// These come only in the company of others.
const std::map<Code, std::set<Code>>& company() {
  static const std::map<Code, std::set<Code>> allowed = {
      {Code::too_many_errors, {Code::unknown_statement}}};
  return allowed;
}

struct Shown {
  Texts texts;
  std::vector<std::string> roots;  // texts that the program was given by name
  std::vector<std::string> words;  // of the command
};

// What the fences of a section come down to: some texts, and one command.
Shown shown_of(const Section& section) {
  Shown shown;
  for (const Fence& fence : section.fences) {
    std::vector<std::string> info = words_of(fence.info);
    if (info.empty()) info = {"none"};
    if (info[0] == "command") {
      shown.words = words_of(fence.content);
      continue;
    }
    const bool named = info.size() > 1 && info[1] != "plan";
    const std::string name = named ? info[1] : text_name;
    shown.texts[name] = fence.content;
    shown.words = {"maslin", "check", name};
    if (!named && info.size() > 1) {
      shown.words = {"maslin", "plan", name};
      shown.words.insert(shown.words.end(), info.begin() + 2, info.end());
    }
  }
  for (const std::string& word : shown.words) {
    if (shown.texts.count(word) > 0) shown.roots.push_back(word);
  }
  return shown;
}

std::string run_command(const Shown& shown, int& exit) {
  MemoryFiles files(shown.texts);
  std::vector<const char*> arguments;
  for (const std::string& word : shown.words) arguments.push_back(word.c_str());
  std::istringstream in;
  std::ostringstream out;
  std::ostringstream err;
  exit = command::run(static_cast<int>(arguments.size()), arguments.data(), files, {in, out, err});
  return err.str();
}

// From `week.maslin:5:3: error: … [too-little]`.
std::vector<Code> codes_in(const std::string& messages) {
  std::vector<Code> codes;
  std::istringstream lines(messages);
  for (std::string line; std::getline(lines, line);) {
    const bool head =
        line.find("error: ") != std::string::npos || line.find("warning: ") != std::string::npos;
    const std::size_t open = line.rfind(" [");
    if (!head || line.empty() || line.back() != ']' || open == std::string::npos) continue;
    const auto code = code_named(line.substr(open + 2, line.size() - open - 3));
    if (code) codes.push_back(*code);
  }
  return codes;
}

bool reports(const std::vector<Code>& found, Code code) {
  return std::find(found.begin(), found.end(), code) != found.end();
}

void check_wrong(const Section& section, Code code) {
  int exit = 0;
  const std::string messages = run_command(shown_of(section), exit);
  const std::vector<Code> found = codes_in(messages);
  EXPECT_TRUE(reports(found, code)) << messages;
  for (const Code each : found) {
    const auto friends = company().find(code);
    const bool expected =
        each == code || (friends != company().end() && friends->second.count(each) > 0);
    EXPECT_TRUE(expected) << "also reports " << name_of(each) << "\n" << messages;
  }
  const bool error = severity_of(code) == Severity::error;
  if (error) {
    EXPECT_NE(exit, 0);
  }
}

void check_right(const Section& section) {
  int exit = 0;
  const std::string messages = run_command(shown_of(section), exit);
  EXPECT_EQ(exit, 0) << messages;
  EXPECT_TRUE(codes_in(messages).empty()) << messages;
}

std::vector<std::string> headings(const Page& page) {
  std::vector<std::string> result;
  for (const Section& section : page.sections) result.push_back(section.heading);
  return result;
}

TEST(Pages, SayWhatWhyAndHowAndShowBoth) {
  const std::vector<std::string> wanted = {"What", "Why it matters", "How to mend it", "Wrong",
                                           "Right"};
  for (const Code code : all_codes()) {
    SCOPED_TRACE(std::string(name_of(code)));
    const Page page = read_page(std::string(page_of(code)));
    EXPECT_EQ(page.title, name_of(code));
    ASSERT_EQ(headings(page), wanted);
    for (const char* heading : {"What", "Why it matters", "How to mend it"}) {
      EXPECT_GT(page.find(heading)->prose.size(), 20U) << heading;
    }
    if (shown_by_no_text().count(code) > 0) {
      EXPECT_TRUE(page.find("Wrong")->fences.empty());
      EXPECT_FALSE(page.find("Wrong")->prose.empty());
      continue;
    }
    check_wrong(*page.find("Wrong"), code);
    check_right(*page.find("Right"));
  }
}

TEST(Pages, NeverPromise) {
  for (const Code code : all_codes()) {
    const std::string page(page_of(code));
    for (const char* word : {" safe", "Safe", " OK", "will keep", "guarantee"}) {
      EXPECT_EQ(page.find(word), std::string::npos) << name_of(code) << ": " << word;
    }
  }
}

TEST(Pages, EverySafeFixMendsWhatItIsOfferedFor) {
  for (const Code code : all_codes()) {
    for (const Section& section : read_page(std::string(page_of(code))).sections) {
      const Shown shown = shown_of(section);
      EXPECT_EQ(failing_fixes(shown.texts, shown.roots), "") << name_of(code);
    }
  }
}

TEST(Pages, FilesTooLargeAreRefusedUnread) {
  constexpr std::size_t too_many_bytes = (std::size_t{64} << 20) + 1;
  const auto found = diagnostics_of({{text_name, std::string(too_many_bytes, '#')}}, {text_name});
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].code, Code::file_too_large);
}

TEST(Pages, BasketsTooLongAreToldOnce) {
  for (const std::string before : {"basket {\n", "kitchen { store {\n"}) {
    std::string text = before;
    for (int i = 0; i <= 20000; ++i) text += "onion 1 g prepared\n";
    text += before.starts_with("kitchen") ? "} }\n" : "}\n";
    const auto found = diagnostics_of({{text_name, text}}, {text_name});
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].code, Code::too_many_lots);
    EXPECT_EQ(found[0].mends.size(), 1U);
  }
}

}  // namespace
}  // namespace maslin::test
