// SPDX-License-Identifier: Apache-2.0
#include "report/csv.hpp"

#include <gtest/gtest.h>

namespace maslin::report {
namespace {

// RFC 4180, section 2: quotation marks about a field that holds a comma or one of them, which is
// doubled.
TEST(Csv, QuotesWhatNeedsIt) {
  EXPECT_EQ(csv_cell("onion"), "onion");
  EXPECT_EQ(csv_cell(""), "");
  EXPECT_EQ(csv_cell("cider vinegar, 5 % acidity"), "\"cider vinegar, 5 % acidity\"");
  EXPECT_EQ(csv_cell("\"Tuesday\""), "\"\"\"Tuesday\"\"\"");
}

// The signs that begin a formula, after OWASP's page on CSV injection.
TEST(Csv, NothingBeginsAFormula) {
  EXPECT_EQ(csv_cell("=1+1"), "\"'=1+1\"");
  EXPECT_EQ(csv_cell("+1"), "\"'+1\"");
  EXPECT_EQ(csv_cell("-1"), "\"'-1\"");
  EXPECT_EQ(csv_cell("@SUM(A1)"), "\"'@SUM(A1)\"");
  EXPECT_EQ(csv_cell("  =1"), "\"'  =1\"");
  EXPECT_EQ(csv_cell("\t=1"), "\"' =1\"");
  EXPECT_EQ(csv_cell("=HYPERLINK(\"x\",\"y\")"), "\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\"");
  EXPECT_EQ(csv_cell("a=1"), "a=1");
}

TEST(Csv, AValueStaysOnItsLine) {
  EXPECT_EQ(csv_cell("a\r\nb"), "a��b");
  EXPECT_EQ(csv_cell("\r=1"), "�=1");
}

}  // namespace
}  // namespace maslin::report
