// SPDX-License-Identifier: Apache-2.0
// What src/science makes of the inputs of a row, by what the row is of.
#pragma once

#include <functional>
#include <map>
#include <stdexcept>
#include <string>
#include <variant>

#include "science/inputs.hpp"

namespace maslin::test {

using Found = std::variant<double, std::string>;
using Finders = std::map<std::string, std::function<Found(const Inputs&)>>;

// One group a file; together they know every `what` of the tables.
Finders keeping_finders();
Finders boiling_finders();
Finders kitchen_finders();

template <class Computed>
auto must(const Computed& computed) {
  if (!computed) throw std::runtime_error("out of range: " + std::string(computed.error().what));
  return *computed;
}

inline std::string yes_or_no(bool yes) { return yes ? "yes" : "no"; }

}  // namespace maslin::test
