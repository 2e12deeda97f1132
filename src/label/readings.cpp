// SPDX-License-Identifier: Apache-2.0
#include "label/readings.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace maslin::label {
namespace {

using language::Boil;
using language::Measurement;
using language::Reading;
using language::ToRead;

// One figure, and whether it stood long enough in the jar.
struct Read {
  const Measurement* measured = nullptr;
  std::optional<Duration> after_filling;
};

std::vector<Read> all_of(const Boil& boil, const std::string& figure) {
  std::vector<Read> all;
  for (const Reading& reading : boil.readings) {
    for (const Measurement& each : reading.figures) {
      if (each.figure == figure) all.push_back({&each, reading.after_filling});
    }
  }
  return all;
}

bool is_by_meter(const Measurement& measured) {
  return measured.means == "meter" || measured.means.ends_with(" meter");
}

bool has_two_buffers(const Measurement& measured) {
  const auto& buffers = measured.buffers;
  return std::any_of(buffers.begin(), buffers.end(),
                     [&](const Rational& each) { return !(each == buffers.front()); });
}

class Judge {
 public:
  Judge(const Boil& boil, Readings& result) : boil_(boil), result_(result) {}

  void take(const ToRead& asked) {
    if (asked.figure == "seal") return take_seals();
    if (asked.figure == "pH") return take_ph(asked);
    take_figure(asked);
  }

 private:
  void miss(std::string_view figure, std::string_view why) {
    const std::string text = fmt::format("{} ({})", figure, why);
    auto& all = result_.missing;
    if (std::find(all.begin(), all.end(), text) == all.end()) all.push_back(text);
  }

  void show(std::string text) {
    auto& all = result_.shown;
    if (std::find(all.begin(), all.end(), text) == all.end()) all.push_back(std::move(text));
  }

  void take_seals() {
    bool looked = false;
    bool all = true;
    for (const Reading& reading : boil_.readings) {
      const bool cold = reading.after_filling && *reading.after_filling >= until_cold;
      if (!reading.seals_looked_at) continue;
      all = all && reading.all_sealed;
      looked = looked || cold;
    }
    if (!all) return miss("seal", "not every jar held: keep those cold, and take them out");
    if (!looked) return miss("seal", "not looked at half a day or more after filling");
    show("all seals hold");
  }

  // By a meter set with two buffers, a day or more after filling; the worst that was read, with the
  // meter's error, below the line.
  void take_ph(const ToRead& asked) {
    std::string why = "not read";
    std::optional<Rational> worst;
    bool error_said = true;
    for (const Read& read : all_of(boil_, asked.figure)) {
      const Measurement& measured = *read.measured;
      if (!read.after_filling || *read.after_filling < until_even) {
        why = "not read a day or more after filling";
      } else if (!is_by_meter(measured)) {
        why = "not read by a meter";
      } else if (!has_two_buffers(measured)) {
        why = "the meter was not set with two buffers";
      } else {
        error_said = error_said && measured.off_by.has_value();
        const Rational high = measured.value + measured.off_by.value_or(usual_meter_error);
        worst = worst ? larger(*worst, high) : high;
      }
    }
    if (!worst) return miss("pH", why);
    if (asked.has_high && *worst >= asked.range.high) {
      return miss("pH", fmt::format("{} with the meter's error{}, and below {} is asked",
                                    worst->to_decimal(2), error_said ? "" : ", taken as 0.1",
                                    asked.range.high.to_decimal(2)));
    }
    show(fmt::format("pH {} at the most, with the meter's error{}", worst->to_decimal(2),
                     error_said ? "" : ", taken as 0.1 as none is stated"));
  }

  std::string text_of(const Rational& value, const ToRead& asked) const {
    if (asked.dimension == dimensions::temperature) return value.to_decimal(1) + " °C";
    if (asked.figure == "water activity") return value.to_decimal(3);
    return (value * 100).to_decimal(1) + " %";
  }

  // Every time that it was read.
  void take_figure(const ToRead& asked) {
    std::vector<Bounds> values;
    for (const Read& read : all_of(boil_, asked.figure)) {
      const Rational off = read.measured->off_by.value_or(Rational());
      values.push_back({read.measured->value - off, read.measured->value + off});
    }
    if (asked.figure == language::filling_temperature && boil_.filled_at) {
      values.push_back(Bounds::exactly(boil_.filled_at->in_base()));
    }
    if (values.empty()) return miss(asked.figure, "not read");
    for (const Bounds& value : values) {
      if (asked.has_low && value.low < asked.range.low) {
        return miss(asked.figure, fmt::format("{}, and {} is asked", text_of(value.low, asked),
                                              text_of(asked.range.low, asked)));
      }
      if (asked.has_high && value.high > asked.range.high) {
        return miss(asked.figure,
                    fmt::format("{}, and no more than {} is asked", text_of(value.high, asked),
                                text_of(asked.range.high, asked)));
      }
    }
    show(fmt::format("{} {}", asked.figure, text_of(middle(values.back()), asked)));
  }

  const Boil& boil_;
  Readings& result_;
};

}  // namespace

Readings readings_of(const language::Program& program, const language::Framework& framework,
                     const Boil& boil) {
  Readings result;
  Judge judge(boil, result);
  for (const language::RouteClaim& claim : framework.routes) {
    for (const ToRead& asked : program[claim.route].readings) judge.take(asked);
  }
  return result;
}

}  // namespace maslin::label
