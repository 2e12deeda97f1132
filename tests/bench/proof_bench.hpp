// SPDX-License-Identifier: Apache-2.0
// What the keeping proof and the limits of a plan cost.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace maslin::bench {

// Medians of several things that take turns, ms of the processor.
using InTurns =
    std::function<std::vector<double>(int rounds, const std::vector<std::function<void()>>& works)>;
using Print = std::function<void(const std::string& what, double value, const std::string& unit)>;

// For each framework of the library its proof beside one linear programme with every member that
// may fill its shares; and a plan with all limits beside one with the linear ones alone.
void measure_proofs(const InTurns& in_turns, const Print& print);

}  // namespace maslin::bench
