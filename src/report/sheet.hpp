// SPDX-License-Identifier: Apache-2.0
// What a cook is told, as plain values; each output format prints the same sheet.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "language/program.hpp"
#include "plan/make.hpp"
#include "report/figures.hpp"
#include "report/purchase.hpp"
#include "source/source.hpp"

namespace maslin::report {

// A cell to be filled in by hand.
inline constexpr const char* blank = "______";

struct Table {
  std::vector<std::string> heads;
  std::vector<std::vector<std::string>> rows;  // each as long as heads
  std::vector<std::size_t> weighed = {};       // columns that the scales are read against
};

// What a section is about, where a page gives it a place or a drawing of its own.
enum class Topic : std::uint8_t {
  other,
  fits,
  produce,
  shares,
  additions,
  account,
  limits,
  pungency,
  boiling_down,
  pan,
  method,  // its table: stage (once), what to do, how much, actual
  stop,
  clock,
  jars,
  process,
  to_get,
  cost,
  left_over,
  assumed,
  not_computed,
  notes,
  keeping,
  readings,
  cautions,
};

struct Section {
  std::string title;
  std::vector<std::string> paragraphs;
  Table table;                      // may be empty
  std::vector<std::string> points;  // a list after the table
  Topic topic = Topic::other;
  // Says the last point in fewer words, for a page that has little room; empty where none does.
  std::string last_in_brief = {};
};

struct Sheet {
  std::string title;
  std::vector<std::string> head;  // lines under the title
  std::vector<Section> sections;
  // What is drawn beside the words.
  std::vector<ShareBar> shares;
  std::optional<BoilingDown> boiling_down;
  std::optional<JarRow> jars;
  std::optional<DepthStrip> depth;
  // What the section "To get" lists, as values.
  std::vector<ShoppingLine> shopping;
};

Sheet make_sheet(const Sources& sources, const language::Program& program, const plan::Plan& plan);

}  // namespace maslin::report
