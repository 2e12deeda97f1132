// SPDX-License-Identifier: Apache-2.0
#include "report/steps.hpp"

#include <fmt/format.h>

#include "plan/weights.hpp"
#include "report/words.hpp"

namespace maslin::report {
namespace {

using language::Step;
using language::StepKind;
using plan::percent_text;
using plan::range_text;

// "1/2", or to a tenth of a percent.
std::string fraction_text(const Rational& fraction) {
  for (const int below : {2, 3, 4, 5, 6, 8, 10}) {
    const Rational above = fraction * Rational(below);
    if (above.is_integer()) return fmt::format("{}/{}", above.to_decimal(0), below);
  }
  return percent_text(fraction);
}

// "onion, 1/2 of vinegar and all spice", as they are written.
std::string part_text(const language::Part& part) {
  if (part.rest) return "the rest of " + part.name;
  if (part.fraction < Rational(1)) return fraction_text(part.fraction) + " of " + part.name;
  if (part.slots.size() > 1) return "all " + part.name;
  return part.name;
}

std::string parts_text(const std::vector<language::Part>& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) text += i + 1 == parts.size() ? " and " : ", ";
    text += part_text(parts[i]);
  }
  return text;
}

std::string heat_text(const Range<Temperature>& heat) {
  const std::string low = heat.low.in_base().to_decimal(1);
  const std::string high = heat.high.in_base().to_decimal(1);
  return (low == high ? low : low + " to " + high) + " °C";
}

std::string_view lid_text(language::Lid lid) {
  switch (lid) {
    case language::Lid::covered:
      return ", covered";
    case language::Lid::uncovered:
      return ", uncovered";
    case language::Lid::not_stated:
      break;
  }
  return "";
}

std::string until_text(const Step& step) {
  return step.until.empty() ? "" : ", until " + step.until;
}

std::string for_text(const Step& step) {
  return step.lasting ? " for " + lasting_text(*step.lasting) : "";
}

std::string aside_text(const Step& step) {
  switch (step.kind) {
    case StepKind::soak:
      return fmt::format("soak {} in {}{}", parts_text(step.parts), part_text(*step.in),
                         for_text(step));
    case StepKind::macerate:
      return fmt::format("let {} stand in {}{}, until it lies in its own juice",
                         parts_text(step.parts), part_text(*step.in), for_text(step));
    case StepKind::dry_salt:
      if (step.in) {
        return fmt::format("rub {} into {}{}", part_text(*step.in), parts_text(step.parts),
                           for_text(step));
      }
      return fmt::format("salt {} with {} of their weight{}; rinse, and let drain",
                         parts_text(step.parts), percent_text(*step.strength), for_text(step));
    default:
      return fmt::format("lay {} in a brine of {} salt{}; pour it off, and let drain",
                         parts_text(step.parts), percent_text(*step.strength), for_text(step));
  }
}

std::string reduce_text(const Step& step) {
  std::string text = "boil down, stirring";
  if (step.solids) text += fmt::format(", to {} of soluble solids", percent_text(*step.solids));
  if (step.weight) text += fmt::format(", to {} of its weight", percent_text(*step.weight));
  if (step.lasting) text += ", " + lasting_text(*step.lasting);
  return text + until_text(step);
}

}  // namespace

std::string time_text(const Duration& time) {
  const Rational hour(3600);
  const Rational long_in_hours(72);
  if (time.in_base() > long_in_hours * hour) return duration_text(time);
  const Rational hours = (time.in_base() / hour).floor_to(1);
  const Rational minutes = (time.in_base() - hours * hour) / Rational(60);
  if (hours.is_zero()) return minutes.to_decimal(1) + " min";
  if (minutes.is_zero()) return hours.to_decimal(0) + " h";
  return fmt::format("{} h {} min", hours.to_decimal(0), minutes.to_decimal(0));
}

std::string time_range_text(const Range<Duration>& time) {
  std::string low = time_text(time.low);
  const std::string high = time_text(time.high);
  if (low == high) return low;
  // "20 to 30 min": one unit serves both.
  const std::size_t gap = low.find(' ');
  const bool one_unit = low.find(' ', gap + 1) == std::string::npos;
  if (one_unit && low.substr(gap) == high.substr(high.find(' '))) {
    return low.substr(0, gap) + " to " + high;
  }
  return low + " to " + high;
}

std::string lasting_text(const language::Lasting& lasting) {
  if (lasting.or_longer) return "at least " + time_text(lasting.time.low);
  if (lasting.time.low.is_zero()) return "at most " + time_text(lasting.time.high);
  return time_range_text(lasting.time);
}

std::string step_text(const Step& step) {
  switch (step.kind) {
    case StepKind::add:
      return "add";
    case StepKind::pack:
      return "pack";
    case StepKind::take_out:
      return "take out " + parts_text(step.parts);
    case StepKind::soak:
    case StepKind::macerate:
    case StepKind::dry_salt:
    case StepKind::brine:
      return aside_text(step);
    case StepKind::strain:
      return "strain" + for_text(step) +
             (step.kept ? fmt::format("; {} of it should be kept", range_text(*step.kept)) : "");
    case StepKind::simmer:
    case StepKind::boil:
      return fmt::format("{} {}{}{}", step.kind == StepKind::boil ? "boil" : "simmer",
                         step.lasting ? lasting_text(*step.lasting) : "", lid_text(step.lid),
                         until_text(step));
    case StepKind::reduce:
      return reduce_text(step);
    case StepKind::ferment:
      break;
  }
  return fmt::format("let it ferment {}{}{}", step.lasting ? lasting_text(*step.lasting) : "",
                     step.heat ? " at " + heat_text(*step.heat) : "", until_text(step));
}

std::string whole_step_text(const Step& step) {
  const bool named = step.kind == StepKind::add || step.kind == StepKind::pack;
  return step_text(step) + (named ? " " + parts_text(step.parts) : "");
}

std::string filling_text(const language::Filling& filling) {
  std::string text = filling.hot ? "fill hot" : "fill";
  if (filling.heat) {
    text += fmt::format(", at {} °C or more", filling.heat->in_base().to_decimal(1));
  }
  if (filling.headspace) {
    text += fmt::format(", {} mm below the rim", filling.headspace->in_base().to_decimal(1));
  }
  return text + (filling.hot ? "; lids on at once" : "");
}

std::string dealt_text(const plan::Boils& boils, const plan::BoilItem& item, plan::Tool tool) {
  const auto amount = [&](const Rational& value) -> std::string {
    const Rational grams = value * item.grams_per_unit;
    switch (tool) {
      case plan::Tool::scales:
        return plan::weight_text(grams);
      case plan::Tool::spoons:
        return value.is_zero() ? "none" : spoons_text(value);
      case plan::Tool::count:
        break;
    }
    if (!value.is_integer()) return value.to_decimal(2) + " pieces";
    return value.to_decimal(0) + (value == Rational(1) ? " piece" : " pieces");
  };
  const plan::Dealt& dealt = item.dealt;
  if (dealt.first_boils == 0 || dealt.first == dealt.others) return amount(dealt.others);
  if (dealt.first_boils == boils.count) return amount(dealt.first);
  return fmt::format("{} × {}, {} × {}", dealt.first_boils, amount(dealt.first),
                     boils.count - dealt.first_boils, amount(dealt.others));
}

}  // namespace maslin::report
