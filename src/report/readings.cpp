// SPDX-License-Identifier: Apache-2.0
#include "report/readings.hpp"

namespace maslin::report {

Section readings_section(const plan::VerifiedPlan& plan) {
  std::vector<std::string> readings = {"date and cook", "pan, empty", "pan and all that went in"};
  if (plan.finished()) readings.emplace_back("pan and what is left");
  readings.emplace_back("jars filled, lids not sealed");
  readings.emplace_back("pH of a blended sample");
  readings.emplace_back("meter at pH 4 and pH 7");

  Section section{"Readings to write down", {}, {}, {}, Topic::readings};
  section.table.heads = {"reading", "measured"};
  for (const std::string& reading : readings) {
    section.table.rows.push_back({reading, blank});
  }
  return section;
}

}  // namespace maslin::report
