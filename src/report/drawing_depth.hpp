// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>

#include "report/figures.hpp"
#include "report/markup.hpp"

namespace maslin::report {

// Longest strip that an A4 page takes across, mm.
inline constexpr int longest_strip = 185;

// The two depths in their true size, to be marked on a wooden spoon laid along it. A strip longer
// than the page begins not at the spoon's tip but a whole number of five centimetres from it.
// Nothing where the depths are not 0 < stop <= start, or lie too far apart for the page.
std::optional<Element> depth_strip(const DepthStrip& depths, const std::string& id);

}  // namespace maslin::report
