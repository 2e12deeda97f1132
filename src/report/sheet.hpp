// SPDX-License-Identifier: Apache-2.0
// What a cook is told, as plain values; each output format prints the same sheet.
#pragma once

#include <string>
#include <vector>

#include "language/program.hpp"
#include "plan/make.hpp"
#include "source/source.hpp"

namespace maslin::report {

struct Table {
  std::vector<std::string> heads;
  std::vector<std::vector<std::string>> rows;  // each as long as heads
};

struct Section {
  std::string title;
  std::vector<std::string> paragraphs;
  Table table;                      // may be empty
  std::vector<std::string> points;  // a list after the table
};

struct Sheet {
  std::string title;
  std::vector<std::string> head;  // lines under the title
  std::vector<Section> sections;
};

Sheet make_sheet(const Sources& sources, const language::Program& program, const plan::Plan& plan);

}  // namespace maslin::report
