// SPDX-License-Identifier: Apache-2.0
// What a row of published values is computed from: "pH=4.1; fahrenheit=160".
#pragma once

#include <map>
#include <set>
#include <string>

#include "science/mixture.hpp"

namespace maslin::test {

class Inputs {
 public:
  explicit Inputs(const std::string& text);

  bool has(const std::string& key) const { return values_.count(key) != 0; }
  // Throws when it is missing or no number.
  double number(const std::string& key) const;
  double number_or(const std::string& key, double otherwise) const;
  bool yes(const std::string& key) const { return text(key) == "yes"; }
  const std::string& text(const std::string& key) const;
  const std::map<std::string, std::string>& all() const {
    for (const auto& each : values_) used_.insert(each.first);
    return values_;
  }
  // A misspelt key would be passed over in silence.
  std::string unused() const;

 private:
  std::map<std::string, std::string> values_;
  mutable std::set<std::string> used_;
};

// Parts by weight of what the row names: water, acetic, citric, malic, salt, sucrose or
// disaccharide, glucose or hexose, fructose, insoluble (as starch).
science::Composition composition_of(const Inputs& inputs);
science::Mixture mixture_of(const science::Composition& composition, Kilogram mass);
// As it stands in the row, a part of 100 being a gram.
science::Mixture mixture_of(const Inputs& inputs);

}  // namespace maslin::test
