// SPDX-License-Identifier: Apache-2.0
// How long it takes: from lighting the hob to the last lid. Ranges, since no table knows this pan.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "plan/boils.hpp"
#include "plan/jars.hpp"

namespace maslin::plan {

// A thick pan is turned down so that it does not catch: down to this share of the hob's heat.
// Common practice, no source.
inline const Rational turned_down(Rational::Wide{1}, Rational::Wide{2});
// To fill, wipe and close a jar. Common practice, no source.
inline const Range<Duration> for_each_jar{Duration(Rational(30)), Duration(Rational(90))};
// For how long the pan is weighed twice, to see how fast it loses water here.
inline const Duration between_weighings{Rational(15 * 60)};

struct ClockMark {
  enum class What : std::uint8_t {
    at_the_boil,  // what this step heats has come to the boil
    step_done,    // this step is done
    boiled_down,  // where no method says the steps
    last_lid,
  };
  What what{};
  std::size_t stage = 0;
  std::size_t step = 0;
  Range<Duration> at;  // since the hob was lit
};

struct Clock {
  std::vector<ClockMark> marks;  // of one boil
  Range<Duration> all_boils;     // one after another in the same pan
  Range<Mass> water_in_an_hour;  // boiled off, g
  bool kind_assumed = false;     // the kitchen does not say what hob it is
  bool measured = false;         // that is by weighing the pan twice, not by the hob's power
};

// Boiling point of water at the kitchen's height; at sea level where it says none.
struct Height {
  Length altitude;
  bool assumed = false;
  Temperature water_boils;  // to a tenth of a degree
};
std::optional<Height> height_of(const language::Kitchen* kitchen);

// Nothing where the kitchen names no hob, or nothing is heated.
std::optional<Clock> make_clock(const language::Program& program, const VerifiedPlan& plan,
                                const Timeline& timeline, const Course& course, const Boils& boils,
                                const std::optional<JarPlan>& jars);

}  // namespace maslin::plan
