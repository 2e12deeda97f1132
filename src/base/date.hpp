// SPDX-License-Identifier: Apache-2.0
// Days of the calendar, and years where nothing nearer is known.
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace maslin {

struct Date {
  int year = 0;
  int month = 0;  // 0, and the day with it: the year alone
  int day = 0;

  friend auto operator<=>(const Date&, const Date&) = default;
};

// "2026-03-01" or "2026"; nothing where the calendar has no such day.
std::optional<Date> date_from(std::string_view text);
std::string text_of(const Date& date);

// What a year alone begins and ends with; a day is both of its own.
Date first_day_of(const Date& date);
Date last_day_of(const Date& date);

}  // namespace maslin
