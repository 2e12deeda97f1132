// SPDX-License-Identifier: Apache-2.0
#include "diagnostic/one_line.hpp"

#include <fmt/format.h>

#include "diagnostic/render.hpp"

namespace maslin {

std::string one_line(const Sources& sources, const Diagnostic& diagnostic) {
  // What has no place in a text is the program's to say.
  std::string place = "maslin";
  if (diagnostic.primary) {
    const SourceFile& file = sources.file(diagnostic.primary->span.file);
    const Position position = file.position(diagnostic.primary->span.begin);
    place = fmt::format("{}:{}:{}", printable(file.name()), position.line, position.column);
  }
  const bool error = severity_of(diagnostic.code) == Severity::error;
  return fmt::format("{}: {}: {} [{}]\n", place, error ? "error" : "warning",
                     printable(diagnostic.message), name_of(diagnostic.code));
}

}  // namespace maslin
