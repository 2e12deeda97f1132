// SPDX-License-Identifier: Apache-2.0
// A page of `explain`: what it has under each heading.
//
//   ```maslin                     a text that is checked
//   ```maslin shared.maslin       the same, under a name that another fence refers to
//   ```maslin plan --aim "4 kg"   a text that is planned, with these words behind it
//   ```command                    a whole command line, with the texts before it as files
#pragma once

#include <string>
#include <vector>

namespace maslin::test {

struct Fence {
  std::string info;
  std::string content;
};

struct Section {
  std::string heading;
  std::string prose;
  std::vector<Fence> fences;
};

struct Page {
  std::string title;
  std::vector<Section> sections;

  const Section* find(const std::string& heading) const;
};

Page read_page(const std::string& markdown);

}  // namespace maslin::test
