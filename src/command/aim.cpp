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

namespace {

std::optional<language::JarStock> read_jar(const Session& session, const std::string& text) {
  std::istringstream words(text);
  std::string number;
  std::string of;
  std::string size;
  std::string more;
  words >> number >> of >> size;
  // `282ml` can only mean one thing.
  std::istringstream parted(with_gap(size));
  std::string unit;
  parted >> size >> unit;
  if (unit.empty()) words >> unit;
  const auto count = Rational::from_decimal(number);
  const auto holds = Rational::from_decimal(size);
  const auto* known = session.names().units.find(unit);
  const bool volume =
      known != nullptr && session.program()[known->value].dimension == dimensions::volume;
  constexpr int most = 100000;
  if (of != "of" || !count || !holds || !volume || (words >> more)) return std::nullopt;
  if (!count->is_integer() || !count->is_positive() || *count > Rational(most)) return std::nullopt;
  const Volume brimful(*holds * session.program()[known->value].factor);
  const Rational largest(20000);  // ml
  if (!brimful.is_positive() || brimful.in_base() > largest) return std::nullopt;
  return language::JarStock{static_cast<long>(count->to_double()), brimful, Span{}};
}

}  // namespace

std::optional<std::vector<language::JarStock>> read_jars(Session& session,
                                                         const std::string& text) {
  std::vector<language::JarStock> jars;
  std::istringstream parts(text);
  for (std::string part; std::getline(parts, part, ',');) {
    const auto jar = read_jar(session, part);
    if (!jar) {
      jars.clear();
      break;
    }
    jars.push_back(*jar);
  }
  if (!jars.empty()) return jars;
  session.diagnostics()
      .report_without_place(Code::bad_aim, fmt::format("the jars `{}` cannot be understood", text))
      .with_mend("write how many of which size: `--fill \"12 of 282 ml, 4 of 190 ml\"`");
  return std::nullopt;
}

}  // namespace maslin::command
