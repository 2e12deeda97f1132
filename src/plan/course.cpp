// SPDX-License-Identifier: Apache-2.0
#include "plan/course.hpp"

#include <algorithm>

#include "language/membership.hpp"
#include "plan/salting.hpp"

namespace maslin::plan {
namespace {

using language::StepKind;

class CourseMaker {
 public:
  CourseMaker(const language::Program& program, const VerifiedPlan& plan, const Timeline& timeline)
      : program_(program), plan_(plan), draft_(plan.draft()), timeline_(timeline) {}

  Course run() {
    Course course;
    for (const TimelineStage& stage : timeline_) {
      course.after.emplace_back();
      for (const TimelineStep& step : stage.steps) {
        take(step);
        course.after.back().push_back({Mass(pan_.low), Mass(pan_.high)});
        if (step.step->kind == StepKind::reduce) course.is_boiled_down = true;
      }
    }
    if (timeline_.empty()) pan_ = Bounds::exactly(plan_.ingoing().in_base());
    settle(course);
    return course;
  }

 private:
  // The stop weight of the plan is what the last boiling down comes to.
  void settle(Course& course) const {
    course.finish = {FinishedMass(pan_.low + packed_.low), FinishedMass(pan_.high + packed_.high)};
    const auto finished = plan_.finished();
    if (!finished) return;
    course.finish = Range<FinishedMass>::exactly(*finished);
    course.is_boiled_down = true;
    Bounds later;
    for (std::size_t i = timeline_.size(); i-- > 0;) {
      for (std::size_t j = timeline_[i].steps.size(); j-- > 0;) {
        if (timeline_[i].steps[j].step->kind == StepKind::reduce) {
          course.after[i][j] = {Mass(finished->in_base() - later.high),
                                Mass(finished->in_base() - later.low)};
          return;
        }
        const Bounds entering = sum_of(timeline_[i].steps[j].entering);
        later = {later.low + entering.low, later.high + entering.high};
      }
    }
  }

  void take(const TimelineStep& step) {
    const Bounds entering = sum_of(step.entering);
    Bounds& where = step.for_jars ? packed_ : pan_;
    where = {where.low + entering.low, where.high + entering.high};
    if (step.for_jars) return;
    switch (step.step->kind) {
      case StepKind::simmer:
      case StepKind::boil:
        lose(language::most_lost(*step.step));
        break;
      case StepKind::reduce:
        reduce(step);
        break;
      case StepKind::strain:
        if (step.step->kept) {
          pan_ = {pan_.low * step.step->kept->low, pan_.high * step.step->kept->high};
        }
        break;
      default:
        break;
    }
  }

  // Less the water that salt has drawn from it.
  Bounds sum_of(const std::vector<Item>& items) const {
    Bounds sum;
    for (const Item& item : items) {
      const Rational weight = weight_of(draft_, item);
      const Bounds lost = lost_by_salting(draft_, timeline_, item.taken);
      sum.low += weight * (Rational(1) - lost.high);
      sum.high += weight * (Rational(1) - lost.low);
    }
    return sum;
  }

  void lose(const Rational& most) { pan_.low = pan_.low * (Rational(1) - most); }

  void reduce(const TimelineStep& step) {
    if (step.step->weight) {
      pan_ = {pan_.low * *step.step->weight, pan_.high * *step.step->weight};
    } else if (step.step->solids) {
      Bounds solids;
      for (const Item& item : step.in_the_pan) {
        const auto share = language::figure_of(program_[taken_of(draft_, item.taken).ingredient],
                                               language::Property::soluble_solids);
        const Rational weight = weight_of(draft_, item);
        solids.low += weight * (share ? share->low : Rational(0));
        solids.high += weight * (share ? share->high : Rational(1));
      }
      const Rational target = *step.step->solids;
      pan_ = {smaller(pan_.low, solids.low / target), smaller(pan_.high, solids.high / target)};
    }
  }

  const language::Program& program_;
  const VerifiedPlan& plan_;
  const Draft& draft_;
  const Timeline& timeline_;
  Bounds pan_;     // g
  Bounds packed_;  // g in the jars
};

}  // namespace

Course make_course(const language::Program& program, const VerifiedPlan& plan,
                   const Timeline& timeline) {
  return CourseMaker(program, plan, timeline).run();
}

}  // namespace maslin::plan
