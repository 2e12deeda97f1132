// SPDX-License-Identifier: Apache-2.0
#include "command/aim.hpp"

#include <fmt/format.h>

#include <sstream>

namespace maslin::command {
namespace {

// `4kg finished` can only mean one thing.
std::string with_gap(const std::string& text) {
  const std::size_t end = text.find_first_not_of("0123456789.");
  if (end == 0 || end == std::string::npos) return text;
  return text.substr(0, end) + " " + text.substr(end);
}

}  // namespace

std::optional<plan::Aim> read_aim(Session& session, const std::string& text) {
  std::istringstream words(with_gap(text));
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
    auto& found = session.diagnostics().report_without_place(
        Code::bad_aim, fmt::format("the aim `{}` cannot be understood", text));
    if (number.find(',') != std::string::npos) {
      found.with_why("a comma between digits means a point to some and thousands to others");
    }
    found.with_mend(
        "write a weight and of what: `--aim \"4 kg finished\"` or `--aim \"3 kg prepared\"`");
    return std::nullopt;
  }
  const Rational grams = *value * session.program()[known->value].factor;
  const Rational most(100000000);
  if (grams > most) {
    session.diagnostics()
        .report_without_place(Code::bad_aim,
                              fmt::format("the aim `{}` is more than any pan holds", text))
        .with_mend("look at the digits and the unit; at most 100 t are taken");
    return std::nullopt;
  }
  return plan::Aim{finished ? plan::AimKind::finished : plan::AimKind::prepared, grams};
}

}  // namespace maslin::command
