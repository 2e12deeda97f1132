// SPDX-License-Identifier: Apache-2.0
#include "base/date.hpp"

#include <gtest/gtest.h>

namespace maslin {
namespace {

TEST(Date, TakesWhatTheCalendarHas) {
  EXPECT_EQ(date_from("2026-06-14"), (Date{2026, 6, 14}));
  EXPECT_EQ(date_from("2018"), (Date{2018, 0, 0}));
  EXPECT_EQ(date_from("2024-02-29"), (Date{2024, 2, 29}));
  EXPECT_EQ(date_from("2000-02-29"), (Date{2000, 2, 29}));
  for (const char* none :
       {"", "26", "0000", "20260", "2026-", "2026-00-10", "2026-13-01", "2026-06-31", "2025-02-29",
        "1900-02-29", "2026-6-14", "2026-06-1", "2026-06-145", "2026/06/14", "20 6-06-14"}) {
    EXPECT_EQ(date_from(none), std::nullopt) << none;
  }
}

TEST(Date, AYearBeginsAndEnds) {
  EXPECT_EQ(text_of(first_day_of(Date{2026, 0, 0})), "2026-01-01");
  EXPECT_EQ(text_of(last_day_of(Date{2026, 0, 0})), "2026-12-31");
  EXPECT_EQ(last_day_of(Date{2026, 3, 1}), (Date{2026, 3, 1}));
  EXPECT_EQ(text_of(Date{2018, 0, 0}), "2018");
  EXPECT_LT((Date{2026, 3, 1}), (Date{2026, 6, 14}));
}

}  // namespace
}  // namespace maslin
