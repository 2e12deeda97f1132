// SPDX-License-Identifier: Apache-2.0
// Texts that the build puts inside the binary.
#pragma once

#include <span>
#include <string_view>

namespace maslin::embedded {

struct File {
  std::string_view path;  // relative to its folder, with forward slashes
  std::string_view text;
};

// The standard library (stdlib/), sorted by path.
std::span<const File> standard_library();

// The standard library resolved (language/image.hpp); empty in the program that makes it.
std::string_view library_image();

// The pages of the diagnostics (src/diagnostic/explain/), sorted by path.
std::span<const File> explain_pages();

// The pages of the terms that a sheet uses (src/report/terms/), sorted by path.
std::span<const File> term_pages();

// The style sheet of the printed sheet (src/report/*.css).
std::span<const File> style_sheets();

}  // namespace maslin::embedded
