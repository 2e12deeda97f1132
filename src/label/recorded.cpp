// SPDX-License-Identifier: Apache-2.0
// A batch that was made, boil by boil, as what a label is made from.
#include <fmt/format.h>

#include <algorithm>

#include "label/basis.hpp"
#include "label/went_in.hpp"
#include "language/membership.hpp"
#include "plan/volumes.hpp"
#include "plan/weights.hpp"

namespace maslin::label {
namespace {

using language::Batch;
using language::Boil;
using language::Framework;
using language::Program;

// Where a figure comes from, beside the figure.
struct Left {
  Range<FinishedMass> finished;
  Span span;  // of the reading; of no file where nothing was read
};

bool packs(const language::Method& method) {
  return std::any_of(method.stages.begin(), method.stages.end(), [](const auto& stage) {
    return std::any_of(stage.steps.begin(), stage.steps.end(),
                       [](const auto& step) { return step.kind == language::StepKind::pack; });
  });
}

class BoilBasis {
 public:
  BoilBasis(const Recording& recording, Diagnostics& diagnostics)
      : recording_(recording),
        program_(recording.program),
        boil_(recording.boil),
        framework_(recording.program[recording.task.framework]),
        plan_(recording.plan),
        diagnostics_(diagnostics) {}

  std::optional<Basis> run() {
    auto went = went_in(recording_, diagnostics_);
    if (!went) return std::nullopt;
    basis_.draft = std::move(went->draft);
    from_plan_ = std::move(went->from_plan);
    const auto left = finished();
    if (!left || !check_left(*left)) return std::nullopt;
    basis_.finished = left->finished;
    basis_.mark = recording_.batch.name;
    basis_.boil = &boil_;
    add_jars();
    if (!check_jars(*left)) return std::nullopt;
    basis_.record = Recorded{recording_.batch.name, boil_.number, from_plan_};
    if (!from_plan_.empty()) {
      basis_.notes.insert(basis_.notes.begin(), fmt::format("Not recorded, from the plan: {}.",
                                                            fmt::join(from_plan_, ", ")));
    }
    return std::move(basis_);
  }

 private:
  // ---- What was left of it --------------------------------------------------------------------

  // The last weight that was read on the hob.
  const language::Measurement* last_weight() const {
    const language::Measurement* last = nullptr;
    for (const language::Reading& reading : boil_.readings) {
      if (reading.after_filling) continue;
      for (const language::Measurement& each : reading.figures) {
        if (each.figure == "weight") last = &each;
      }
    }
    return last;
  }

  std::optional<Left> finished() {
    if (const auto left = weighed()) return left;
    if (const auto left = as_planned()) return left;
    if (const auto left = by_solids()) return left;
    report_not_recorded(recording_, "what was left of this boil is not recorded", diagnostics_)
        .with_mend("write the last weight of the pan: `reading { weight 5.02 kg with pan }`");
    return std::nullopt;
  }

  std::optional<Left> weighed() {
    const language::Measurement* last = last_weight();
    if (last == nullptr) return std::nullopt;
    if (packs(framework_.method)) {
      basis_.notes.emplace_back(
          "The weight that was read is of the pan, not of what is packed into the jars: it was not "
          "used.");
      return std::nullopt;
    }
    Mass pan;
    if (last->with_pan) {
      const language::Kitchen* kitchen = recording_.kitchen();
      if (kitchen == nullptr || !kitchen->pan || !kitchen->pan->weighs) {
        basis_.notes.emplace_back(
            "A weight was read with the pan, and the kitchen does not say what the pan weighs: it "
            "was not used.");
        return std::nullopt;
      }
      pan = *kitchen->pan->weighs;
    }
    const FinishedMass left(last->value - pan.in_base());
    basis_.notes.push_back(fmt::format(
        "Finished: {}, by the last weight that was read{}.", plan::weight_text(left.in_base()),
        last->with_pan ? fmt::format(", less the pan of {}", plan::weight_text(pan.in_base()))
                       : std::string()));
    return Left{Range<FinishedMass>::exactly(left), last->span};
  }

  // As far boiled down as the plan: to the same solids, or to the same share where it is not.
  std::optional<Left> as_planned() {
    if (plan_ == nullptr) return std::nullopt;
    const plan::Draft& whole = plan_->verified.draft();
    const plan::Course& course = plan_->afternoon.course;
    const Rational by_weight = ingoing_of(basis_.draft) / ingoing_of(whole);
    const Rational by_solids =
        middle(plan::solids_in(program_, basis_.draft)) / middle(plan::solids_in(program_, whole));
    const Rational share = course.is_boiled_down ? by_solids : by_weight;
    if (!share.is_defined()) return std::nullopt;
    const Rational most = ingoing_of(basis_.draft).in_base();
    const Range<FinishedMass> left{
        FinishedMass(smaller(course.finish.low.in_base() * share, most)),
        FinishedMass(smaller(course.finish.high.in_base() * share, most))};
    from_plan_.push_back(course.is_boiled_down ? "how far it was boiled down"
                                               : "how much boiled away");
    return Left{left, {}};
  }

  // Without a plan, as far as the method says.
  std::optional<Left> by_solids() {
    const auto target = language::solids_at_the_end(framework_.method);
    if (!target || !target->is_positive()) return std::nullopt;
    Bounds solids;
    for (const plan::TakenId& id : plan::all_taken(basis_.draft)) {
      const plan::Taken& taken = plan::taken_of(basis_.draft, id);
      const auto share =
          language::figure_of(program_[taken.ingredient], language::Property::soluble_solids);
      if (!share) return std::nullopt;
      solids.low += taken.weight * share->low;
      solids.high += taken.weight * share->high;
    }
    const Rational most = ingoing_of(basis_.draft).in_base();
    basis_.notes.push_back(fmt::format(
        "Finished: no weight was read; taken to be boiled down to {} of soluble solids, as the "
        "method says.",
        plan::percent_text(*target)));
    return Left{{FinishedMass(smaller(solids.low / *target, most)),
                 FinishedMass(smaller(solids.high / *target, most))},
                {}};
  }

  // With so many figures that can be mistyped, one that cannot be is told.
  bool check_left(const Left& left) {
    const Rational ingoing = ingoing_of(basis_.draft).in_base();
    const Rational value = left.finished.high.in_base();
    if (left.finished.low.is_positive() && value <= ingoing) return true;
    const Span place = left.span.end > left.span.begin ? left.span : boil_.span;
    diagnostics_
        .report(Code::record_disagrees, place,
                left.finished.low.is_positive()
                    ? fmt::format("{} was left, and no more than {} went in",
                                  plan::weight_text(value), plan::weight_text(ingoing))
                    : "nothing was left by this weight")
        .with_because(boil_.span, "of this boil")
        .with_why("boiling takes away and adds nothing")
        .with_mend(
            "look at the figures: was the pan on the scales? then `weight 5.02 kg with pan`, and "
            "what it weighs in the kitchen");
    return false;
  }

  // ---- The jars -------------------------------------------------------------------------------

  void add_jars() {
    Lots lots{boil_.number, boil_.number, {}};
    const FinishedMass middle = middle_of(basis_.finished);
    if (!boil_.filled.empty()) {
      const Length headspace = plan::headspace_of(program_, framework_).height;
      for (const plan::JarSize& size : plan::jar_sizes(boil_.filled, headspace)) {
        lots.jars.push_back(
            {size.holds, size.count, net_of(program_, basis_.draft, middle, size.fill)});
      }
    } else if (plan_ != nullptr && plan_->afternoon.jars) {
      add_planned_jars(*plan_->afternoon.jars, lots, middle);
      from_plan_.emplace_back("the jars");
    }
    basis_.lots.push_back(std::move(lots));
  }

  void add_planned_jars(const plan::JarPlan& jars, Lots& lots, FinishedMass middle) {
    for (const plan::FilledBoils& boils : jars.boils) {
      if (boil_.number < boils.first || boil_.number > boils.last) continue;
      for (std::size_t i = 0; i < boils.filling.full.size(); ++i) {
        if (boils.filling.full[i] == 0) continue;
        lots.jars.push_back({jars.sizes[i].holds, boils.filling.full[i],
                             net_of(program_, basis_.draft, middle, jars.sizes[i].fill)});
      }
      if (!boils.filling.part_size) continue;
      basis_.part_filled = true;
      lots.jars.push_back({jars.sizes[*boils.filling.part_size].holds, 1, std::nullopt});
    }
  }

  // Jars that were filled hold no more than there was; a twentieth is for how full they were.
  bool check_jars(const Left& left) {
    if (boil_.filled.empty() || left.span.end == left.span.begin) return true;
    Mass in_jars;
    for (const JarContents& jar : basis_.lots.back().jars) {
      in_jars += Rational(jar.count) * jar.net.value_or(Mass());
    }
    const Rational most =
        left.finished.high.in_base() * Rational(Rational::Wide{21}, Rational::Wide{20});
    if (in_jars.in_base() <= most) return true;
    diagnostics_
        .report(Code::record_disagrees, boil_.filled.front().span,
                fmt::format("these jars hold {} at the least, and {} was left",
                            plan::weight_text(in_jars.in_base()),
                            plan::weight_text(left.finished.high.in_base())))
        .with_because(left.span, "by this weight")
        .with_mend("count the jars again; a jar that is not full is left out");
    return false;
  }

  const Recording& recording_;
  const Program& program_;
  const Boil& boil_;
  const Framework& framework_;
  const plan::Plan* plan_;
  Diagnostics& diagnostics_;
  std::vector<std::string> from_plan_;
  Basis basis_;
};

// Whether the plan says what this boil was to be: a pan tells how many boils there are.
bool says_of(const plan::Plan& plan, const Batch& batch, const Boil& boil) {
  const plan::Boils& boils = plan.afternoon.boils;
  if (boils.too_many || boil.number > boils.count) return false;
  return boils.pan_known || batch.boils.size() == 1;
}

bool check_version(const Program& program, const Batch& batch, Diagnostics& diagnostics) {
  const Framework& framework = program[batch.framework];
  if (!batch.version || *batch.version == framework.version) return true;
  const bool numbered = framework.version.is_positive();
  diagnostics
      .report(Code::other_version, batch.version_span,
              fmt::format(
                  "this was made by version {} of `{}`, and the framework at hand is {}",
                  batch.version->to_decimal(2), framework.name,
                  numbered ? "version " + framework.version.to_decimal(2) : "without a version"))
      .with_because(framework.span, "the framework")
      .with_why("another version may take other things, and ask other readings")
      .with_mend("name the file with the version it was made by, or write the version that it was");
  return false;
}

}  // namespace

std::optional<std::vector<Basis>> bases_of(const Program& program, const Batch& batch,
                                           const plan::Task& task, const plan::Plan* plan,
                                           Diagnostics& diagnostics) {
  if (!check_version(program, batch, diagnostics)) return std::nullopt;
  if (batch.boils.empty()) {
    diagnostics.report(Code::not_recorded, batch.span, "no boil of this batch is recorded")
        .with_mend("write what was used: `boil 1 { used { apple 1.805 kg prepared } }`");
    return std::nullopt;
  }
  std::vector<Basis> bases;
  bool good = true;
  for (const Boil& boil : batch.boils) {
    const bool divided = plan != nullptr && says_of(*plan, batch, boil);
    const Recording recording{program, batch, boil, task, divided ? plan : nullptr};
    auto basis = BoilBasis(recording, diagnostics).run();
    good = good && basis.has_value();
    if (basis) bases.push_back(std::move(*basis));
  }
  return good ? std::optional(std::move(bases)) : std::nullopt;
}

}  // namespace maslin::label
