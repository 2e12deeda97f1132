// SPDX-License-Identifier: Apache-2.0
// Pages as Debian's Chromium prints them.
#pragma once

#include <string>
#include <vector>

#include "json/run_program.hpp"

namespace maslin::html_test {

// Prints NAME.html of a folder as NAME.pdf; the test fails, saying what to install, when it cannot.
void print_pdf(const json_test::Folder& folder, const std::string& name);

// What `pdfinfo` says of NAME.pdf under a heading such as "Pages"; empty where it says nothing.
std::string pdf_info(const json_test::Folder& folder, const std::string& name,
                     const std::string& heading);

// A page in shades of grey, 0 black to 255 white.
struct Picture {
  std::size_t width = 0;
  std::size_t height = 0;
  std::vector<unsigned char> shades;

  bool is_ink(std::size_t x, std::size_t y) const { return shades[y * width + x] < 128; }
};
inline constexpr int dots_per_inch = 600;
inline double millimetres(std::size_t dots) {
  return static_cast<double>(dots) * 25.4 / dots_per_inch;
}
// The first page of NAME.pdf.
Picture picture_of(const json_test::Folder& folder, const std::string& name);

}  // namespace maslin::html_test
