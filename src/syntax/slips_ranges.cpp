// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "syntax/stuck.hpp"

namespace maslin::syntax {
namespace {

struct WrittenRange {
  std::size_t first = 0;  // the lower number
  std::size_t last = 0;   // the upper one, or its unit
  Span dots;              // what stands between the two ends
  std::string ends[2];    // with their units
};

// What may stand between two numbers that are meant as a range. The point or dash before the upper
// number may have become part of it.
bool joins(std::string_view text) {
  return is_any_of(text, {".", "…", "-", "–", "—", "−", "~", "to", "and"});
}

bool leads(std::string_view text) { return is_any_of(text, {"from", "between"}); }

std::optional<WrittenRange> range_from(const Stuck& stuck, std::size_t first) {
  WrittenRange range;
  range.first = first;
  if (!stuck.is_number(first)) return std::nullopt;
  std::size_t i = first + 1;
  const bool unit = (stuck.is_word(i) && !joins(stuck.text(i))) || stuck.text(i) == "%";
  if (unit) ++i;
  range.dots = {stuck.tree.file, stuck.tokens[i - 1].span().end, 0};
  const std::size_t joint = i;
  while (joins(stuck.text(i))) ++i;
  if (!stuck.is_number(i)) return std::nullopt;
  // `2 kg and 3 pears` are two things.
  if (stuck.text(joint) == "and" && (first == 0 || !leads(stuck.text(first - 1)))) {
    return std::nullopt;
  }
  const std::string_view upper = stuck.text(i);
  const std::size_t digits = upper.find_first_not_of(".- ");
  const bool joined_in_number = digits > 0 && digits != std::string_view::npos;
  if (i == joint && !joined_in_number) return std::nullopt;
  // `1.5.2` is one number with two points.
  if (i == joint && upper.starts_with(".")) return std::nullopt;
  range.dots.end = stuck.tokens[i].span().begin + static_cast<std::uint32_t>(digits);
  range.last = i;
  const bool upper_unit =
      (stuck.is_word(i + 1) && !joins(stuck.text(i + 1))) || stuck.text(i + 1) == "%";
  range.ends[0] = stuck.text(first);
  range.ends[1] = upper.substr(digits);
  if (!upper_unit) return range;
  range.last = i + 1;
  range.ends[1] += fmt::format(" {}", stuck.text(i + 1));
  range.ends[0] += fmt::format(" {}", stuck.text(unit ? first + 1 : i + 1));
  return range;
}

// `from 400 to 500 g`, `between 400 and 500 g`, `onion 1..5 kg` on a line of a basket.
FoundSlip range_of_another_form(const Stuck& stuck) {
  std::optional<WrittenRange> range;
  for (std::size_t i = 0; i < stuck.tokens.size() && !range; ++i) range = range_from(stuck, i);
  if (!range || range->last + 1 < stuck.at || range->first > stuck.at + 1) return std::nullopt;
  const std::size_t lead = range->first == 0 ? 0 : range->first - 1;
  const bool led = lead < range->first && leads(stuck.text(lead));
  const Span span = stuck.span(led ? lead : range->first, range->last);
  const std::string plain = fmt::format("{} .. {}", stuck.text(range->first), range->ends[1]);
  if (stuck.fits("`..`") || (led && !stuck.is_in("basket_block"))) {
    auto found = slip(Code::dash_range, span, "a range is written with two dots");
    std::vector<Edit> edits = {{range->dots, " .. "}};
    if (led) {
      edits.insert(edits.begin(), Edit{{stuck.tree.file, stuck.tokens[lead].span().begin,
                                        stuck.tokens[range->first].span().begin},
                                       ""});
    }
    found.with_fix({Fix::Kind::safe, "write `" + plain + "`", std::move(edits)});
    return found;
  }
  if (!stuck.is_in("basket_block")) return std::nullopt;
  auto found = slip(Code::dash_range, span, "a line here holds one weight, and this is a range");
  found.with_why(fmt::format("where a range fits, as in a framework, it is written `{}`", plain));
  found.with_mend("weigh it, and write that weight");
  found.with_fix(suggested("write `" + range->ends[0] + "`, the least that there may be",
                           {{span, range->ends[0]}}));
  return found;
}

// `.. 50 %`
FoundSlip range_without_begin(const Stuck& stuck) {
  if (stuck.text(stuck.at) != "." || !stuck.fits("a number")) return std::nullopt;
  std::size_t i = stuck.at;
  while (stuck.text(i) == ".") ++i;
  const bool dots = i > stuck.at + 1 || stuck.text(i).starts_with(".");
  if (!dots || !stuck.is_number(i)) return std::nullopt;
  auto found = slip(Code::dash_range, stuck.span(stuck.at, i), "a range begins with a number");
  found.with_fix(suggested("begin it with nought", {{stuck.before(stuck.at), "0 "}}));
  return found;
}

}  // namespace

FoundSlip slip_of_range(const Stuck& stuck) {
  return first_of({range_of_another_form, range_without_begin}, stuck);
}

}  // namespace maslin::syntax
