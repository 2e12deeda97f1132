// SPDX-License-Identifier: Apache-2.0
// The pH of finished foods as published, against the pH of their ingredients in the library mixed
// (tests/science/finished_ph.csv). What is claimed of a computed pH may not be tighter than this.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <deque>
#include <iostream>
#include <sstream>

#include "science/acidity.hpp"
#include "support/planning.hpp"
#include "support/tables.hpp"

namespace maslin::test {
namespace {

using namespace science;

// The library's ingredients by name, and pure substances by theirs.
class Larder {
 public:
  AcidPart part(const std::string& name, double grams) {
    AcidPart part;
    part.mass = Kilogram(grams / 1000);
    for (const language::Ingredient& each : planned_.program().ingredients) {
      if (each.name != name) continue;
      part.composition = &each.composition;
      if (each.ph) part.published_ph = ph_range(each.ph->value);
      return part;
    }
    Composition& pure = substances_.emplace_back();
    if (const auto substance = substance_named(name)) {
      pure[*substance] = Bounds::exactly(1);
    } else {
      EXPECT_EQ(name, "rest") << "nothing is called so";
    }
    part.composition = &pure;
    return part;
  }

 private:
  Planned planned_{"basket { onion 1 kg gross }"};
  std::deque<Composition> substances_;  // whose addresses stay
};

struct Finished {
  std::string product;
  Range<PH> published;
  MixturePh computed;
  std::string driver;
  bool all_known = true;
};

std::string trimmed(const std::string& text) {
  const std::size_t begin = text.find_first_not_of(' ');
  return text.substr(begin, text.find_last_not_of(' ') - begin + 1);
}

Finished finished_of(const Row& row, Larder& larder) {
  const auto figure = [&](const char* column) { return std::stod(row.at(column)); };
  Finished result;
  result.product = row.at("product");
  result.published = {PH(figure("ph_low")), PH(figure("ph_high"))};
  std::vector<AcidPart> parts;
  std::vector<std::string> names;
  std::istringstream recipe(row.at("recipe"));
  for (std::string each; std::getline(recipe, each, ';');) {
    const std::string line = trimmed(each);
    const std::size_t space = line.rfind(' ');
    names.push_back(line.substr(0, space));
    parts.push_back(larder.part(names.back(), std::stod(line.substr(space))));
    if (names.back() == "rest") result.all_known = false;
  }
  for (AcidPart& part : parts) {
    part.acetic_acid_kept = {Share(figure("acetic_kept_low")), Share(figure("acetic_kept_high"))};
  }
  const auto ph = mixture_ph(parts, Kilogram(figure("boiled_away") / 1000));
  EXPECT_TRUE(ph.ok()) << result.product;
  if (!ph) return result;
  result.computed = *ph;
  result.driver = names.at(ph->driver);
  return result;
}

// How far outside of the published range, with its sign; none inside.
double error_of(PH computed, const Range<PH>& published) {
  if (computed < published.low) return (computed - published.low).in_unit();
  if (computed > published.high) return (computed - published.high).in_unit();
  return 0;
}

std::string assumption_of(PhAssumption assumption) {
  switch (assumption) {
    case PhAssumption::published_ph:
      return "its published pH";
    case PhAssumption::unknown_ph:
      return "its unknown pH";
    case PhAssumption::minerals:
      return "its minerals";
    case PhAssumption::acid_content:
      break;
  }
  return "its acids";
}

TEST(FinishedPh, LiesWithinWhatIsClaimedOfIt) {
  Larder larder;
  std::cout << fmt::format("{:22}{:>14}{:>14}{:>10}{:>8}  {}\n", "product", "published", "computed",
                           "expected", "error", "widened most by");
  double largest = 0;
  double largest_with_unknown = 0;
  const auto rows = table_at("tests/science/finished_ph.csv");
  ASSERT_GE(rows.size(), 12U);
  for (const Row& row : rows) {
    const Finished each = finished_of(row, larder);
    const MixturePh& ph = each.computed;
    const double error = error_of(ph.expected, each.published);
    std::cout << fmt::format("{:22}{:9.2f} {:.2f}{:9.2f} {:.2f}{:10.2f}{:+8.2f}  {}, {}\n",
                             each.product, each.published.low.in_unit(),
                             each.published.high.in_unit(), ph.range.low.in_unit(),
                             ph.range.high.in_unit(), ph.expected.in_unit(), error, each.driver,
                             assumption_of(ph.assumption));
    EXPECT_LE(ph.range.low - claimed_uncertainty, each.published.high) << each.product;
    EXPECT_GE(ph.range.high + claimed_uncertainty, each.published.low) << each.product;
    double& of_its_kind = each.all_known ? largest : largest_with_unknown;
    of_its_kind = std::max(of_its_kind, std::abs(error));
  }
  std::cout << fmt::format(
      "largest error of the expected pH {:.2f}, claimed {:.2f}; with an unknown part {:.2f}, "
      "claimed {:.2f}\n",
      largest, claimed_uncertainty.in_unit(), largest_with_unknown,
      claimed_uncertainty_with_unknown.in_unit());
  EXPECT_LE(largest, claimed_uncertainty.in_unit());
  EXPECT_LE(largest_with_unknown, claimed_uncertainty_with_unknown.in_unit());
}

}  // namespace
}  // namespace maslin::test
