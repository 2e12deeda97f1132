// SPDX-License-Identifier: Apache-2.0
#include "report/markup.hpp"

#include <gtest/gtest.h>

namespace maslin::report {
namespace {

TEST(Markup, TextComesOutAsText) {
  EXPECT_EQ(escape_markup("a < b & \"c\" > 'd'"), "a &lt; b &amp; &quot;c&quot; &gt; 'd'");
  EXPECT_EQ(escape_markup("]]> <!-- --> &amp;"), "]]&gt; &lt;!-- --&gt; &amp;amp;");
  EXPECT_EQ(escape_markup("crème ½ – 12 °C"), "crème ½ – 12 °C");
}

TEST(Markup, WhatNoPageMayHoldIsReplaced) {
  EXPECT_EQ(escape_markup(std::string_view("a\0b", 3)), "a�b");
  EXPECT_EQ(escape_markup("\x1b[31m\x7f"), "�[31m�");
  EXPECT_EQ(escape_markup("\xff\xfe"), "��");
  EXPECT_EQ(escape_markup("\xe2\x80\xae\xe2\x80\x8f"), "��");      // U+202E, U+200F
  EXPECT_EQ(escape_markup("\xef\xbf\xbe\xf0\x9f\xbf\xbf"), "��");  // U+FFFE, U+1FFFF
  EXPECT_EQ(escape_markup("\xef\xb7\x90"), "�");                   // U+FDD0
  EXPECT_EQ(escape_markup("\xed\xa0\x80"), "���");                 // half a surrogate pair
}

TEST(Markup, AttributesAndChildrenAreEscapedWhereTheyAreGiven) {
  Element cell = Element("td").with("class", "a\" onload=\"b").say("<b>");
  EXPECT_EQ(cell.markup(), "<td class=\"a&quot; onload=&quot;b\">&lt;b&gt;</td>");
  EXPECT_EQ(Element("tr").add(cell).markup(), "<tr>\n" + cell.markup() + "\n</tr>");
  EXPECT_EQ(Element("meta").with("charset", "utf-8").markup(), "<meta charset=\"utf-8\">");
}

TEST(Markup, LengthsGoToAHundredth) {
  const auto number = [](double value) { return Element("g").with("x", value).markup(); };
  EXPECT_EQ(number(12), "<g x=\"12\"></g>");
  EXPECT_EQ(number(0.256), "<g x=\"0.26\"></g>");
  EXPECT_EQ(number(1.5), "<g x=\"1.5\"></g>");
  EXPECT_EQ(number(-0.001), "<g x=\"0\"></g>");
}

TEST(Markup, APageHasItsStylesInItsHead) {
  const std::string page = html_page("</title>", "p { color: red; }\n", Element("body"));
  EXPECT_EQ(page,
            "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta "
            "name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
            "<title>&lt;/title&gt;</title>\n<style>\np { color: red; }\n</style>\n</head>\n"
            "<body></body>\n</html>\n");
}

}  // namespace
}  // namespace maslin::report
