// SPDX-License-Identifier: Apache-2.0
#include "base/date.hpp"

#include <array>
#include <charconv>
#include <cstddef>

namespace maslin {
namespace {

int days_in(int year, int month) {
  constexpr std::array<int, 12> days = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return month == 2 && leap ? 29 : days[static_cast<std::size_t>(month - 1)];
}

std::string padded(int number, std::size_t width) {
  std::string digits = std::to_string(number);
  return digits.size() < width ? std::string(width - digits.size(), '0') + digits : digits;
}

// A whole number of just so many digits.
std::optional<int> digits_of(std::string_view text, std::size_t width) {
  int number = 0;
  if (text.size() != width || text.find_first_not_of("0123456789") != std::string_view::npos) {
    return std::nullopt;
  }
  std::from_chars(text.data(), text.data() + text.size(), number);
  return number;
}

}  // namespace

std::optional<Date> date_from(std::string_view text) {
  const auto year = digits_of(text.substr(0, 4), 4);
  if (!year || *year < 1) return std::nullopt;
  if (text.size() == 4) return Date{*year, 0, 0};
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const auto month = digits_of(text.substr(5, 2), 2);
  const auto day = digits_of(text.substr(8, 2), 2);
  if (!month || !day || *month < 1 || *month > 12) return std::nullopt;
  if (*day < 1 || *day > days_in(*year, *month)) return std::nullopt;
  return Date{*year, *month, *day};
}

std::string text_of(const Date& date) {
  std::string text = padded(date.year, 4);
  if (date.month != 0) text += "-" + padded(date.month, 2) + "-" + padded(date.day, 2);
  return text;
}

Date first_day_of(const Date& date) { return date.month != 0 ? date : Date{date.year, 1, 1}; }

Date last_day_of(const Date& date) { return date.month != 0 ? date : Date{date.year, 12, 31}; }

}  // namespace maslin
