// SPDX-License-Identifier: Apache-2.0
#include "report/proof.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "plan/weights.hpp"
#include "report/measure.hpp"

namespace maslin::report {
namespace {

using prove::Mend;
using prove::Verdict;

std::string percent(double part) { return fmt::format("{:.3g} %", part * 100); }

// With the strength it was taken at.
std::string taken_text(const language::Program& program, const language::Stuff& stuff) {
  const std::string& name = program[stuff.ingredient].name;
  return stuff.acidity ? fmt::format("{} of {}", name, plan::percent_text(*stuff.acidity)) : name;
}

// Additions that a class leaves open: what was taken for them matters.
std::string additions_text(const language::Program& program, const language::Framework& framework,
                           const std::vector<language::Stuff>& additions) {
  std::string text;
  for (std::size_t i = 0; i < additions.size() && i < framework.additions.size(); ++i) {
    const language::Stuff& stuff = additions[i];
    if (!framework.additions[i].target.of_class.valid() && !stuff.acidity) continue;
    text += (text.empty() ? "" : ", ") + taken_text(program, stuff);
  }
  return text;
}

std::string mix_with_additions(const language::Program& program,
                               const language::Framework& framework, const prove::Proof& proof) {
  std::string text = mix_text(program, proof.worst);
  const std::string with = additions_text(program, framework, proof.additions);
  if (!with.empty()) text += "; with " + with;
  return text;
}

std::string amount_text(const language::Program& program, const language::Addition& addition,
                        const Rational& bound) {
  if (!addition.unit.valid()) return bound.to_decimal(1);
  const language::Unit& unit = program[addition.unit];
  return fmt::format("{} {}", (bound / unit.factor).to_decimal(2), unit.name);
}

std::string_view of_what(language::Whole whole) {
  switch (whole) {
    case language::Whole::prepared_produce:
      return " of prepared produce";
    case language::Whole::produce_and_water:
      return " of vegetables and water";
    case language::Whole::finished_product:
      return " of finished product";
    case language::Whole::volatile_matter:
      return " of volatile matter";
    case language::Whole::produce_and_sweetener:
      return " of produce and sweetener";
    case language::Whole::none:
      break;
  }
  return "";
}

std::string mend_text(const language::Program& program, const language::Framework& framework,
                      const Mend& mend) {
  switch (mend.kind) {
    case Mend::Kind::raise_addition: {
      const auto& addition = framework.additions[mend.index];
      return fmt::format("raise the most of {} from {} to {}", addition.target.name,
                         amount_text(program, addition, addition.range.high),
                         amount_text(program, addition, mend.bound));
    }
    case Mend::Kind::lower_share: {
      const auto& share = framework.shares[mend.index];
      return fmt::format("let {} be no more than {}, not {}", share.target.name,
                         plan::percent_text(mend.bound), plan::percent_text(share.range.high));
    }
    case Mend::Kind::loosen_limit: {
      language::Limit limit = framework.limits[mend.index];
      limit.has_low = mend.of_low_end;
      limit.has_high = !mend.of_low_end;
      (mend.of_low_end ? limit.range.low : limit.range.high) = mend.bound;
      return fmt::format("ask less: {} {}{}", language::name_of(*limit.property),
                         measure_of(limit).allowed(limit), of_what(limit.whole));
    }
  }
  return {};
}

// Produce of the mix of which a figure that the limits go by is not known, and how it counts.
std::string unknown_text(const language::Program& program, const language::Framework& framework,
                         const prove::Proof& proof) {
  const bool by_ph = std::any_of(proof.limits.begin(), proof.limits.end(), [&](std::size_t limit) {
    return framework.limits[limit].property == language::Property::ph;
  });
  std::string names;
  for (const prove::Ingredient& each : proof.worst) {
    const language::Ingredient& ingredient = program[each.ingredient];
    if (by_ph && !ingredient.ph) names += (names.empty() ? "" : ", ") + ingredient.name;
  }
  if (names.empty()) return {};
  return fmt::format(
      "no pH is known of {}: it counts as the least acid that produce can be; give one, with its "
      "source, where the ingredient is declared",
      names);
}

}  // namespace

std::string mix_text(const language::Program& program, const std::vector<prove::Ingredient>& mix) {
  // One thing may fill two shares.
  std::vector<prove::Ingredient> sorted;
  for (const prove::Ingredient& each : mix) {
    const auto same = std::find_if(sorted.begin(), sorted.end(), [&](const auto& other) {
      return other.ingredient == each.ingredient;
    });
    if (same == sorted.end()) {
      sorted.push_back(each);
    } else {
      same->part += each.part;
    }
  }
  std::stable_sort(sorted.begin(), sorted.end(),
                   [](const auto& a, const auto& b) { return a.part > b.part; });
  std::string text;
  for (const prove::Ingredient& each : sorted) {
    text += fmt::format("{}{} {}", text.empty() ? "" : ", ", percent(each.part),
                        program[each.ingredient].name);
  }
  return text;
}

void tell_proof(const language::Program& program, const language::Framework& framework,
                const prove::Proof& proof, const std::vector<Mend>& mends,
                Diagnostics& diagnostics) {
  if (proof.verdict != Verdict::breaks && proof.verdict != Verdict::not_shown) return;
  const bool breaks = proof.verdict == Verdict::breaks;
  const Span span = proof.limits.empty() ? framework.span : framework.limits[proof.limits[0]].span;
  const std::string mix = mix_with_additions(program, framework, proof);
  const std::string made =
      framework.taste.empty() ? "" : fmt::format("made to the taste `{}`, ", framework.taste);
  auto& found = diagnostics.report(
      breaks ? Code::mix_breaks_limit : Code::not_shown, span,
      breaks ? made + "a mix that this framework admits cannot be brought inside its limits: " + mix
             : made + "whether every mix can be brought inside the limits was not shown: " +
                   (proof.reason.empty() ? mix : proof.reason),
      breaks ? "out of reach for this mix" : "");
  if (breaks) {
    const std::string unknown = unknown_text(program, framework, proof);
    found.with_why(
        "whoever brings this basket is refused, though every share is inside its range; figures "
        "stand at their unfavourable end" +
        (unknown.empty() ? "" : "; " + unknown));
  } else if (!mix.empty()) {
    found.with_why("the mix in question: " + mix);
  }
  for (std::size_t i = 0; i < proof.limits.size(); ++i) {
    const language::Limit& limit = framework.limits[proof.limits[i]];
    if (i > 0) found.with_because(limit.span, "and this, at the same time");
    if (limit.route.valid()) {
      found.with_because(limit.claim, fmt::format("a floor of {}", program[limit.route].name));
    }
  }
  for (const Mend& mend : mends) found.with_mend(mend_text(program, framework, mend));
  if (!framework.taste.empty()) {
    found.with_mend("multiply by something nearer to 1, or leave that taste out");
    return;
  }
  if (!proof.advice.empty()) found.with_mend(proof.advice);
  if (mends.empty() && breaks) {
    // Claiming no route helps only where one is claimed.
    found.with_mend(framework.routes.empty()
                        ? "no single range mends it: name the produce more narrowly, or let more "
                          "acid be added"
                        : "no single range mends it: name the produce more narrowly, or claim no "
                          "route");
  }
}

std::string_view word_of(Verdict verdict) {
  switch (verdict) {
    case Verdict::holds:
      return "holds by calculation";
    case Verdict::breaks:
      return "broken by a mix";
    case Verdict::not_shown:
      return "not shown";
    case Verdict::no_limits:
      break;
  }
  return "no limits";
}

std::string proof_text(const Sources& sources, const language::Program& program,
                       const language::Framework& framework, const Proved& proved) {
  const prove::Proof& proof = proved.proof;
  std::string text = framework.name + ": ";
  switch (proof.verdict) {
    case Verdict::no_limits:
      return text + "declares no limit that can be worked out\n";
    case Verdict::breaks:
      return text + "a mix it admits breaks its limits\n";
    case Verdict::not_shown:
      return text + "not shown for every mix\n";
    case Verdict::holds:
      break;
  }
  text += "its limits can be met by calculation for every mix it admits\n";
  if (!proved.taste.empty()) {
    text += fmt::format("  but not when it is made to the taste {}\n", proved.taste);
  } else if (!framework.variants.empty()) {
    text += "  and when it is made to any of its tastes\n";
  }
  if (proof.worst.empty()) return text;
  text += fmt::format("  nearest to a limit: {}\n", mix_with_additions(program, framework, proof));
  for (const std::size_t limit : proof.limits) {
    text += fmt::format("    {}\n", sources.text(framework.limits[limit].span));
  }
  return text;
}

}  // namespace maslin::report
