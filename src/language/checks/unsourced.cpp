// SPDX-License-Identifier: Apache-2.0
// A rule is only as good as where it comes from: what has no source is told.
#include <fmt/format.h>

#include "language/checks/checks.hpp"
#include "language/context.hpp"

namespace maslin::language::checks {
namespace {

void report(std::string_view what, const std::string& name, Span span,
            const std::vector<std::string>& lacking, Diagnostics& diagnostics) {
  if (lacking.empty()) return;
  auto& found = diagnostics.report(
      Code::unsourced_rule, span,
      fmt::format("the {} {} does not say {}", what, name, fmt::join(lacking, ", nor ")));
  found.with_why("a sheet names whose rules it goes by, and what is to be read before release");
  found.with_mend(
      "write what is missing: `in \"Great Britain\" as of 2020` behind the name, "
      "`source \"…\"` and `read pH <= 4.0` inside");
}

}  // namespace

void unsourced(const Program& program, Diagnostics& diagnostics) {
  for (std::size_t i = program.library_routes; i < program.routes.size(); ++i) {
    const Route& route = program.routes[i];
    std::vector<std::string> lacking;
    if (route.sources.empty()) lacking.emplace_back("where its rules come from");
    if (route.place.empty()) lacking.emplace_back("where they hold");
    if (!route.as_of) lacking.emplace_back("of what year they are");
    if (route.readings.empty()) lacking.emplace_back("what is to be read before release");
    if (route.refusals.empty()) lacking.emplace_back("what it refuses");
    report("route", route.name, route.span, lacking, diagnostics);
  }
  for (std::size_t i = program.library_standards; i < program.standards.size(); ++i) {
    const Standard& standard = program.standards[i];
    std::vector<std::string> lacking;
    if (standard.sources.empty()) lacking.emplace_back("where its rules come from");
    if (!standard.as_of) lacking.emplace_back("of what year they are");
    report("standard", standard.name, standard.span, lacking, diagnostics);
  }
}

}  // namespace maslin::language::checks
