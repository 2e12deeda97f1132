// SPDX-License-Identifier: Apache-2.0
#include "golden/page.hpp"

#include <algorithm>
#include <sstream>

namespace maslin::test {

const Section* Page::find(const std::string& heading) const {
  const auto found = std::find_if(sections.begin(), sections.end(),
                                  [&](const Section& each) { return each.heading == heading; });
  return found == sections.end() ? nullptr : &*found;
}

Page read_page(const std::string& markdown) {
  const std::string fence = "```";
  Page page;
  bool inside = false;
  std::istringstream in(markdown);
  for (std::string line; std::getline(in, line);) {
    if (inside && line != fence) {
      page.sections.back().fences.back().content += line + "\n";
    } else if (line.rfind(fence, 0) == 0 && !page.sections.empty()) {
      if (!inside) page.sections.back().fences.push_back({line.substr(fence.size()), {}});
      inside = !inside;
    } else if (line.rfind("## ", 0) == 0) {
      page.sections.push_back({line.substr(3), {}, {}});
    } else if (line.rfind("# ", 0) == 0) {
      page.title = line.substr(2);
    } else if (!page.sections.empty()) {
      page.sections.back().prose += line + "\n";
    }
  }
  return page;
}

}  // namespace maslin::test
