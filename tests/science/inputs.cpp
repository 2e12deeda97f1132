// SPDX-License-Identifier: Apache-2.0
#include "science/inputs.hpp"

#include <cmath>
#include <sstream>
#include <stdexcept>

namespace maslin::test {
namespace {

using science::Composition;
using science::Mixture;
using science::Substance;

const std::map<std::string, Substance> substances = {{"water", Substance::water},
                                                     {"acetic", Substance::acetic_acid},
                                                     {"citric", Substance::citric_acid},
                                                     {"malic", Substance::malic_acid},
                                                     {"salt", Substance::salt},
                                                     {"sucrose", Substance::sucrose},
                                                     {"disaccharide", Substance::sucrose},
                                                     {"glucose", Substance::glucose},
                                                     {"hexose", Substance::glucose},
                                                     {"fructose", Substance::fructose},
                                                     {"insoluble", Substance::starch}};

std::string trimmed(const std::string& text) {
  const std::size_t begin = text.find_first_not_of(' ');
  const std::size_t end = text.find_last_not_of(' ');
  return begin == std::string::npos ? "" : text.substr(begin, end - begin + 1);
}

double weight_of(const Inputs& inputs) {
  double sum = 0;
  for (const auto& each : substances) sum += inputs.number_or(each.first, 0);
  return sum;
}

}  // namespace

Inputs::Inputs(const std::string& text) {
  std::istringstream in(text);
  std::string pair;
  while (std::getline(in, pair, ';')) {
    const std::size_t equals = pair.find('=');
    if (equals == std::string::npos) throw std::runtime_error("no '=' in: " + pair);
    values_[trimmed(pair.substr(0, equals))] = trimmed(pair.substr(equals + 1));
  }
}

const std::string& Inputs::text(const std::string& key) const {
  used_.insert(key);
  const auto found = values_.find(key);
  if (found == values_.end()) throw std::runtime_error("no input called " + key);
  return found->second;
}

double Inputs::number(const std::string& key) const { return std::stod(text(key)); }

double Inputs::number_or(const std::string& key, double otherwise) const {
  return has(key) ? number(key) : otherwise;
}

std::string Inputs::unused() const {
  std::string result;
  for (const auto& each : values_) {
    if (used_.count(each.first) == 0) result += each.first + " ";
  }
  return result;
}

Composition composition_of(const Inputs& inputs) {
  const double whole = weight_of(inputs);
  Composition composition;
  composition[Substance::water] = Bounds{};
  composition[Substance::glucose] = Bounds{};
  for (const auto& [name, substance] : substances) {
    if (!inputs.has(name)) continue;
    constexpr double parts = 1e12;
    const Rational share(
        static_cast<Rational::Wide>(std::llround(inputs.number(name) / whole * parts)),
        static_cast<Rational::Wide>(parts));
    composition[substance] = Bounds::exactly(share);
  }
  return composition;
}

Mixture mixture_of(const Composition& composition, Kilogram mass) {
  return Mixture::of({{&composition, mass}}).value();
}

Mixture mixture_of(const Inputs& inputs) {
  return mixture_of(composition_of(inputs), Kilogram(weight_of(inputs)));
}

}  // namespace maslin::test
