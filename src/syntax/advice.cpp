// SPDX-License-Identifier: Apache-2.0
#include "syntax/advice.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace maslin::syntax {
namespace {

struct Advice {
  std::string_view words;  // parted by blanks
  std::optional<At> at;
  std::string_view blocks;  // the kinds it is for, parted by blanks; empty for all
  std::string_view text;
};

constexpr std::string_view lines = "basket_block store_block";
constexpr std::string_view shares = "produce_block addition_block limits_block";

constexpr std::string_view comment = "a comment begins with `#`";
constexpr std::string_view ready = "ready for the pan is `prepared`: `apple 2 kg prepared`";
constexpr std::string_view brought = "as brought in is `gross`: `apple 2 kg gross`";
constexpr std::string_view guess = "write the weight alone; it is weighed again for the pan anyway";
constexpr std::string_view digits = "numbers are written in digits: `3 onions`";
constexpr std::string_view how_much =
    "how much is made follows from the basket, or is said with `--aim \"3 kg prepared\"`";
constexpr std::string_view range = "a range is written with two dots: `40 .. 60 %`";
constexpr std::string_view limit = "a limit is written with a sign: `low acid <= 45 % of …`";

constexpr Advice table[] = {
    {"// /* --", {}, "", comment},
    {"peeled chopped sliced cored stoned trimmed cleaned shelled net ready", At::inside, lines,
     ready},
    {"raw whole unpeeled untrimmed unwashed fresh", At::inside, lines, brought},
    {"gross prepared drained", At::inside, lines,
     "it stands right behind the weight, without a comma: `onion 2 kg gross`"},
    {"first", At::inside, lines, "what goes into the pan first is `use first`"},
    {"taste", At::inside, lines, "how much there is is a weight: `salt 500 g`"},
    {"max maximum up", At::inside, lines, "how much may be bought at the most is `at most 500 g`"},
    {"max maximum min minimum no or less more", At::inside, "limits_block", limit},
    {"about approx approximately circa roughly ~ ≈", At::inside, "", guess},
    {"£ $ € EUR GBP USD CHF", At::inside, lines, "a price is a plain number: `at 6.80 per kg`"},
    {"/", At::inside, "", "`per` is written out: `6.80 per kg`"},
    {"acidity", At::inside, lines, "the number comes first: `5 % acidity`"},
    {"spoiled keep", At::inside, lines, "the word comes first: `spoiled 200 g`, `keep back 100 g`"},
    {"to and between", At::inside, shares, range},
    {"+", At::inside, lines, "write the sum, or give each lot a line of its own"},
    {"' · ’", At::inside, "", "a number has a decimal point and no other marks"},
    {"|", At::inside, "", "between the parts of a line stands only a space"},
    {"[ (", At::inside, "file", "a block opens with `{` and closes with `}`"},
    {"to buy", At::first, lines, "the name comes first: `date to buy`"},
    {"` ~~~", At::first, "", "leave the marks out that a page or a mail put around the text"},
    {">", At::first, "", "leave the `>` of a quoted mail out at the beginning of every line"},
    {"|", At::first, "",
     "leave the lines of the table out: `onion 2 kg gross` in a `basket { … }`"},
    {"recipe Recipe", At::first, "file",
     "what is cooked by is a `framework`, and what there is a `basket`"},
    {"{ [", At::first, "file", "a block begins with its name: `basket {`"},
    {"cook heat stew warm bring fry bake", At::first, "step_block",
     "what is cooked is written `simmer 20 min` or `boil 20 min`"},
    {"±", At::inside, "", range},
    {"not no less more", At::first, "limits_block", limit},
    {"include import require load", At::first, "",
     "another file is read with `use \"chutney.maslin\"`"},
    {"makes make serves yield yields portions", At::first, "", how_much},
    {"keeps shelf", At::first, "framework_block", "write `best within 12 months`"},
};

// What is a statement of a framework by its place begins with one of its words.
constexpr std::string_view in_framework =
    "produce stands in `produce { … }` as shares, and what is added in `per kilogram { … }`";

bool has_word(std::string_view list, std::string_view word) {
  while (!list.empty()) {
    const std::size_t end = std::min(list.find(' '), list.size());
    if (list.substr(0, end) == word) return true;
    list.remove_prefix(std::min(end + 1, list.size()));
  }
  return false;
}

bool is_sign(char c) {
  const auto byte = static_cast<unsigned char>(c);
  constexpr unsigned char first_beyond_ascii = 0x80;
  const bool letter = (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z') ||
                      (byte >= '0' && byte <= '9') || byte >= first_beyond_ascii;
  return !letter;
}

std::string_view first_word(std::string_view text) {
  const auto end = std::find_if(text.begin(), text.end(), is_sign);
  return text.substr(0, static_cast<std::size_t>(end - text.begin()));
}

// Whether the text begins with one of the words: a sign wherever it stands, a word as a whole.
bool begins_with(std::string_view text, std::string_view words) {
  while (!words.empty()) {
    const std::size_t end = std::min(words.find(' '), words.size());
    const std::string_view word = words.substr(0, end);
    const bool letters = (word[0] >= 'a' && word[0] <= 'z') || (word[0] >= 'A' && word[0] <= 'Z');
    if (letters ? first_word(text) == word : text.substr(0, word.size()) == word) return true;
    words.remove_prefix(std::min(end + 1, words.size()));
  }
  return false;
}

}  // namespace

std::string_view advice_on(std::string_view rest, At at, Kind around) {
  for (const Advice& each : table) {
    const bool here = each.blocks.empty() || has_word(each.blocks, name_of(around));
    if (here && (!each.at || *each.at == at) && begins_with(rest, each.words)) return each.text;
  }
  return at == At::first && around == Kind::framework_block ? in_framework : std::string_view();
}

std::string_view advice_on_name(std::string_view name) {
  const std::string_view first = first_word(name);
  const std::size_t blank = name.find_last_of(' ');
  const std::string_view last = blank == std::string_view::npos ? name : name.substr(blank + 1);
  if (has_word("aim make makes", name)) return how_much;
  if (blank == std::string_view::npos) return {};
  if (has_word("gross prepared", last) || has_word("gross prepared", first)) {
    return "`gross` and `prepared` stand behind the weight: `onion 2 kg gross`";
  }
  if (has_word("about approx circa roughly", last)) return guess;
  if (has_word("max min maximum minimum than under below over above", last)) return limit;
  for (const std::string_view clause :
       {" use first", " trim", " spoiled", " keep back", " sulphited"}) {
    if (!name.ends_with(clause)) continue;
    return "what is said of a lot stands behind its weight: `onion 2 kg gross, use first`";
  }
  if (name.find(" and ") != std::string_view::npos) return "each thing has a line of its own";
  if (first == "buy") return "the name comes first: `date to buy`";
  return {};
}

std::string_view advice_on_unfinished(std::string_view statement, bool has_digits) {
  if (statement.front() == '"') return "only the name stands in quotes: `\"onion\" 2 kg gross`";
  if (statement.find('(') != std::string_view::npos) {
    return "a remark is a comment: put `#` before it, at the end of the line";
  }
  constexpr std::string_view numbers =
      "one two three four five six ten half a an twelve dozen couple";
  if (!has_digits && has_word(numbers, first_word(statement))) return digits;
  return {};
}

}  // namespace maslin::syntax
