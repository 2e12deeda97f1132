// SPDX-License-Identifier: Apache-2.0
#include "report/readings.hpp"

namespace maslin::report {

Section readings_section(const plan::VerifiedPlan& plan) {
  std::vector<std::string> readings = {"date, and who cooked", "the pan, empty",
                                       "the pan with all that went in"};
  if (plan.finished()) readings.emplace_back("the pan with what was left at the stop");
  readings.emplace_back("jars filled, and lids that did not seal");
  readings.emplace_back("pH of a blended sample after 24 h or later");
  readings.emplace_back("what the meter showed in buffers of pH 4 and 7 that day");

  Section section{Topic::readings, "Readings to write down", {}, {}, {}};
  section.table.heads = {"reading", "measured"};
  for (const std::string& reading : readings) {
    section.table.rows.push_back({reading, blank});
  }
  return section;
}

}  // namespace maslin::report
