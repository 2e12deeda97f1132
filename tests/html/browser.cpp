// SPDX-License-Identifier: Apache-2.0
#include "html/browser.hpp"

#include <gtest/gtest.h>

#include <sstream>

namespace maslin::html_test {

void print_pdf(const json_test::Folder& folder, const std::string& name) {
  const auto ran = folder.run(
      "chromium",
      {"--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer",
       "--user-data-dir=" + (folder.path() / ".profile").string(),
       "--print-to-pdf=" + name + ".pdf", "file://" + (folder.path() / (name + ".html")).string()});
  EXPECT_EQ(ran.exit, 0) << "The page cannot be printed. `chromium` must be there (Debian: "
                            "chromium).\n"
                         << ran.err;
}

std::string pdf_info(const json_test::Folder& folder, const std::string& name,
                     const std::string& heading) {
  const auto ran = folder.run("pdfinfo", {name + ".pdf"});
  EXPECT_EQ(ran.exit, 0) << "`pdfinfo` must be there (Debian: poppler-utils).\n" << ran.err;
  std::istringstream lines(ran.out);
  for (std::string line; std::getline(lines, line);) {
    if (line.rfind(heading + ":", 0) != 0) continue;
    const std::size_t begin = line.find_first_not_of(' ', heading.size() + 1);
    return begin == std::string::npos ? "" : line.substr(begin);
  }
  return {};
}

Picture picture_of(const json_test::Folder& folder, const std::string& name) {
  const auto ran =
      folder.run("pdftoppm", {"-gray", "-singlefile", "-aa", "no", "-aaVector", "no", "-r",
                              std::to_string(dots_per_inch), name + ".pdf", name});
  EXPECT_EQ(ran.exit, 0) << "`pdftoppm` must be there (Debian: poppler-utils).\n" << ran.err;
  // P5, width, height, 255, then a byte a dot.
  const std::string bytes = folder.read(name + ".pgm");
  std::istringstream head(bytes);
  std::string magic;
  Picture picture;
  int white = 0;
  head >> magic >> picture.width >> picture.height >> white;
  const std::size_t begin = static_cast<std::size_t>(head.tellg()) + 1;
  EXPECT_EQ(magic, "P5");
  EXPECT_EQ(bytes.size() - begin, picture.width * picture.height);
  picture.shades.assign(bytes.begin() + static_cast<std::ptrdiff_t>(begin), bytes.end());
  return picture;
}

}  // namespace maslin::html_test
