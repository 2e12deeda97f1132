// SPDX-License-Identifier: Apache-2.0
#include "command/aim.hpp"

#include <fmt/format.h>

#include <sstream>

namespace maslin::command {

std::optional<plan::Aim> read_aim(Session& session, const std::string& text) {
  std::istringstream words(text);
  std::string number;
  std::string unit;
  std::string basis;
  std::string more;
  words >> number >> unit >> basis;
  const auto value = Rational::from_decimal(number);
  const auto* known = session.names().units.find(unit);
  const bool finished = basis == "finished";
  const bool weight =
      known != nullptr && session.program()[known->value].dimension == dimensions::mass;
  if (!value || !value->is_positive() || !weight || (!finished && basis != "prepared") ||
      (words >> more)) {
    session.diagnostics()
        .report_without_place(Code::bad_aim, fmt::format("the aim `{}` cannot be understood", text))
        .with_mend(
            "write a weight and of what: `--aim \"4 kg finished\"` or `--aim \"3 kg prepared\"`");
    return std::nullopt;
  }
  const Rational grams = *value * session.program()[known->value].factor;
  return plan::Aim{finished ? plan::AimKind::finished : plan::AimKind::prepared, grams};
}

}  // namespace maslin::command
