// SPDX-License-Identifier: Apache-2.0
#include "science/pungency.hpp"

namespace maslin::science {
namespace {

struct Row {
  std::string_view name;
  double low;
  double high;
};
// In the order of the kinds.
constexpr Row rows[] = {{"sweet", 0, 100},
                        {"cherry", 100, 500},
                        {"Anaheim", 500, 2500},
                        {"poblano", 1000, 2000},
                        {"jalapeño", 2500, 8000},
                        {"serrano", 5000, 23'000},
                        {"de árbol", 15'000, 30'000},
                        {"cayenne", 30'000, 50'000},
                        {"bird's eye", 50'000, 100'000},
                        {"habanero", 100'000, 350'000},
                        {"Red Savina", 350'000, 580'000},
                        {"ghost", 850'000, 1'463'700},
                        {"unknown", 0, 1'463'700}};

const Row& row_of(Pod pod) { return rows[static_cast<std::size_t>(pod)]; }

std::optional<OutOfRange> bad_figures(const Pods& pods) {
  constexpr double pure_capsaicin = 16e6;
  for (const Share each : {pods.dry_matter.low, pods.dry_matter.high}) {
    if (const auto error = outside("dry matter", each.in_unit(), 0, 1)) return error;
  }
  for (const Scoville each : {pods.dry.low, pods.dry.high}) {
    if (const auto error = outside("Scoville heat units", each.in_unit(), 0, pure_capsaicin)) {
      return error;
    }
  }
  return outside("pods, kg", pods.mass.in_unit(), 0, 100'000);
}

}  // namespace

std::string_view name_of(Pod pod) { return row_of(pod).name; }
Range<Scoville> pungency_of(Pod pod) {
  return {Scoville(row_of(pod).low), Scoville(row_of(pod).high)};
}

Computed<Range<Scoville>> pungency(const std::vector<Pods>& pods, Kilogram batch) {
  Kilogram of_pods;
  Range<Scoville> sum;
  for (const Pods& each : pods) {
    if (const auto error = bad_figures(each)) return Failure{*error};
    of_pods = of_pods + each.mass;
  }
  if (!(batch > Kilogram(0)) || !(of_pods <= batch)) {
    return Failure{OutOfRange{"batch, kg", batch.in_unit(), of_pods.in_unit(), 100'000}};
  }
  for (const Pods& each : pods) {
    const double share = each.mass / batch;
    sum = sum + Range<Scoville>{each.dry.low * (share * each.dry_matter.low.in_unit()),
                                each.dry.high * (share * each.dry_matter.high.in_unit())};
  }
  return sum;
}

}  // namespace maslin::science
