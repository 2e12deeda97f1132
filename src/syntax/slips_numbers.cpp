// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "syntax/stuck.hpp"
#include "syntax/words.hpp"

namespace maslin::syntax {
namespace {

struct NumberWord {
  std::string_view word;
  std::string_view digits;
};
constexpr std::array<NumberWord, 15> number_words = {{{"half", "1/2"},
                                                      {"one", "1"},
                                                      {"two", "2"},
                                                      {"three", "3"},
                                                      {"four", "4"},
                                                      {"five", "5"},
                                                      {"six", "6"},
                                                      {"seven", "7"},
                                                      {"eight", "8"},
                                                      {"nine", "9"},
                                                      {"ten", "10"},
                                                      {"eleven", "11"},
                                                      {"twelve", "12"},
                                                      {"dozen", "12"},
                                                      {"twenty", "20"}}};

// `onion ten kg`, `version one`: the word had become part of the name.
FoundSlip number_in_words(const Stuck& stuck) {
  if (!stuck.fits("a number")) return std::nullopt;
  for (std::size_t i = 0; i < stuck.tokens.size() && i <= stuck.at; ++i) {
    const auto number =
        std::find_if(number_words.begin(), number_words.end(),
                     [&](const NumberWord& each) { return each.word == stuck.text(i); });
    if (number == number_words.end()) continue;
    // `a dozen`, `half a kilogram`.
    const bool before = i > 0 && stuck.text(i - 1) == "a";
    const bool behind = stuck.text(i + 1) == "a";
    const Span span = stuck.span(before ? i - 1 : i, behind ? i + 1 : i);
    auto found = slip(Code::unexpected, span, "numbers are written in digits");
    found.with_fix(suggested(fmt::format("write `{}`", number->digits),
                             {{span, std::string(number->digits)}}));
    return found;
  }
  return std::nullopt;
}

// `onion2 kg`
FoundSlip number_glued_to_name(const Stuck& stuck) {
  if (!stuck.fits("a number")) return std::nullopt;
  for (std::size_t i = 0; i < stuck.tokens.size() && i < stuck.at; ++i) {
    const std::string_view word = stuck.text(i);
    const std::size_t digits = word.find_first_of("0123456789");
    if (!stuck.is_word(i) || digits == 0 || digits == std::string_view::npos) continue;
    if (word.find_first_not_of("0123456789", digits) != std::string_view::npos) continue;
    const std::string parted = fmt::format("{} {}", word.substr(0, digits), word.substr(digits));
    auto found = slip(Code::unexpected, stuck.tokens[i].span(),
                      fmt::format("`{}` is read as one name", word));
    found.with_fix(suggested("write `" + parted + "`", {{stuck.tokens[i].span(), parted}}));
    return found;
  }
  return std::nullopt;
}

// `sugar 1 500 g`
FoundSlip blank_in_number(const Stuck& stuck) {
  if (!wants_strength(stuck.misfit)) return std::nullopt;
  for (std::size_t i = 1; i < stuck.tokens.size(); ++i) {
    if (!stuck.is_number(i) || !stuck.is_number(i - 1)) continue;
    const Span span = stuck.span(i - 1, i);
    const std::string whole = fmt::format("{}{}", stuck.text(i - 1), stuck.text(i));
    auto found = slip(Code::unexpected, span, "two numbers stand side by side here");
    found.with_mend("if they are one, write it without a blank and with one point: `2000`, `1.5`");
    if (whole.find_first_not_of("0123456789") == std::string::npos) {
      found.with_fix(suggested("write `" + whole + "`", {{span, whole}}));
    }
    return found;
  }
  return std::nullopt;
}

// `at 1.10`, `at 1.10 per`, `24 of 282 ml at 0.55`
FoundSlip price_of_nothing(const Stuck& stuck) {
  const bool of_jars = stuck.fits_word("each");
  for (std::size_t i = 0; i + 1 < stuck.tokens.size(); ++i) {
    if (stuck.text(i) != "at" || !stuck.is_number(i + 1)) continue;
    const bool has_per = stuck.text(i + 2) == "per";
    const std::size_t stops = has_per ? i + 3 : i + 2;
    if (stuck.at != stops || !(of_jars || has_per || stuck.fits_word("per"))) continue;
    const std::string_view number = stuck.text(i + 1);
    const std::string price = fmt::format("at {} {}", number, of_jars ? "each" : "per kg");
    const Span span = stuck.span(i, stops - 1);
    auto found = slip(Code::unfinished, span,
                      of_jars ? "this price does not say that it is for each jar"
                              : "this price does not say what it is for");
    found.with_fix(suggested("write `" + price + "`", {{span, price}}));
    if (!of_jars) found.with_mend("say of what, as the shop does: `per kg`, `per 500 g`, `per l`");
    return found;
  }
  return std::nullopt;
}

}  // namespace

FoundSlip slip_of_numbers(const Stuck& stuck) {
  return first_of({price_of_nothing, number_in_words, number_glued_to_name, blank_in_number},
                  stuck);
}

}  // namespace maslin::syntax
