// SPDX-License-Identifier: Apache-2.0
// What was made: what went into each boil, what was read of it, and the jars it filled.
#include <fmt/format.h>

#include <algorithm>

#include "language/readable.hpp"
#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

// As many as a plan has at the most.
constexpr long most_boils = 500;

class BoilReader {
 public:
  BoilReader(Context& context, Boil& result) : context_(context), result_(result) {}

  // False after a report.
  bool read(View block) {
    bool good = true;
    for (const View statement : block) good = read_statement(statement) && good;
    return good;
  }

 private:
  bool read_statement(View statement) {
    switch (statement.kind()) {
      case Kind::used:
        return resolve_lines(context_, statement.child(Kind::basket_block), result_.used,
                             LineOf::batch);
      case Kind::reading:
        return read_reading(statement);
      case Kind::filled:
        return read_filled(statement);
      case Kind::bad_item:
        return false;
      default:
        return true;
    }
  }

  std::optional<Duration> read_time(View clause, std::string_view example) {
    const auto time = read_plain(context_, clause.child(Kind::quantity), dimensions::time,
                                 "when something was read", example);
    return time ? std::optional(Duration(*time)) : std::nullopt;
  }

  bool read_reading(View statement) {
    Reading reading;
    reading.span = statement.child(Kind::keyword).span();
    bool good = true;
    if (const View at = statement.child(Kind::reading_time)) {
      good = read_time(at, "reading at 40 min").has_value();
    }
    if (const View age = statement.child(Kind::reading_age)) {
      reading.after_filling = read_time(age, "reading 26 h after filling");
      good = reading.after_filling.has_value();
    }
    for (const View line : statement.child(Kind::reading_block)) {
      if (line.is(Kind::bad_item)) good = false;
      if (line.is(Kind::seals)) good = read_seals(line, reading) && good;
      if (!line.is(Kind::reading_line)) continue;
      if (auto measured = read_line(line)) {
        reading.figures.push_back(std::move(*measured));
      } else {
        good = false;
      }
    }
    result_.readings.push_back(std::move(reading));
    return good;
  }

  std::optional<Measurement> read_line(View line) {
    const Readable* what = read_readable(context_, line.child(Kind::figure), false);
    if (what == nullptr) return std::nullopt;
    const auto value = read_figure_of(context_, *what, line.child(Kind::measure));
    if (!value) return std::nullopt;
    Measurement result;
    result.figure = what->name;
    result.dimension = what->dimension;
    result.value = *value;
    result.with_pan = line.has(Kind::with_pan);
    result.span = line.span();
    if (const View means = line.child(Kind::by_means)) {
      result.means = normal_name(means.child(Kind::name));
      if (const View error = means.child(Kind::meter_error)) {
        result.off_by = read_number(context_, number_child(error));
        if (!result.off_by) return std::nullopt;
        if (what->scale == Scale::percent) result.off_by = *result.off_by / Rational(100);
      }
    }
    for (const View number : line.child(Kind::buffers)) {
      if (!number.is(Kind::number) && !number.is(Kind::bad_number)) continue;
      const auto buffer = read_number(context_, number);
      if (!buffer) return std::nullopt;
      result.buffers.push_back(*buffer);
    }
    return result;
  }

  bool read_seals(View line, Reading& reading) {
    reading.seals_looked_at = true;
    reading.all_sealed = line.has_keyword("all");
    if (reading.all_sealed) return true;
    std::vector<Rational> numbers;
    for (const View child : line) {
      if (!child.is(Kind::number) && !child.is(Kind::bad_number)) continue;
      const auto number = read_number(context_, child);
      if (!number) return false;
      numbers.push_back(*number);
    }
    if (numbers.size() != 2) return false;  // the grammar lets none pass
    const bool whole = numbers[0].is_integer() && numbers[1].is_integer();
    if (!whole || numbers[0] > numbers[1] || !numbers[1].is_positive()) {
      context_
          .report(Code::figure_out_of_range, line.span(),
                  "jars are counted whole, and no more hold than there are")
          .with_mend("write how many hold, and of how many: `seal 8 of 9`");
      return false;
    }
    reading.all_sealed = numbers[0] == numbers[1];
    return true;
  }

  bool read_filled(View statement) {
    bool good = true;
    if (const View heat = statement.child(Kind::filling_heat)) {
      const auto degrees = read_plain(context_, heat.child(Kind::quantity), dimensions::temperature,
                                      "how hot it was filled", "85 °C");
      good = degrees.has_value();
      if (degrees) result_.filled_at = Temperature(*degrees);
    }
    for (const View line : statement.child(Kind::filled_block)) {
      if (line.is(Kind::bad_item)) good = false;
      for (const View jar : line) {
        if (!jar.is(Kind::jar_count)) continue;
        const auto stock = read_jar_count(context_, jar);
        good = good && stock.has_value();
        if (stock) result_.filled.push_back(*stock);
      }
    }
    return good;
  }

  Context& context_;
  Boil& result_;
};

class BatchReader {
 public:
  BatchReader(Context& context, Batch& result) : context_(context), result_(result) {}

  void read(View declaration) {
    read_framework(declaration.child(Kind::name));
    if (const View version = declaration.child(Kind::version)) {
      result_.version_span = version.span();
      result_.version = read_number(context_, number_child(version));
      good_ = good_ && result_.version.has_value();
    }
    for (const View statement : declaration.child(Kind::batch_block)) {
      if (statement.is(Kind::bad_item)) good_ = false;
      if (statement.is(Kind::boil)) read_boil(statement);
    }
    result_.poisoned = !good_;
  }

 private:
  void read_framework(View name) {
    const auto* framework = context_.names.frameworks.find(normal_name(name));
    if (framework == nullptr) {
      report_unknown_framework(context_, name);
      good_ = false;
      return;
    }
    result_.framework = framework->value;
  }

  void read_boil(View statement) {
    const View written = number_child(statement);
    Boil boil;
    boil.span = statement.child(Kind::keyword).span();
    const auto number = read_number(context_, written);
    good_ = BoilReader(context_, boil).read(statement.child(Kind::boil_block)) && good_;
    if (!number) {
      good_ = false;
      return;
    }
    if (!number->is_integer() || !number->is_positive() || *number > Rational(most_boils)) {
      context_
          .report(Code::figure_out_of_range, written.span(),
                  fmt::format("boils are numbered from 1 to {}", most_boils))
          .with_mend("write the number the plan gives it: `boil 1 { … }`");
      good_ = false;
      return;
    }
    boil.number = static_cast<long>(number->to_double());
    const auto same = std::find_if(result_.boils.begin(), result_.boils.end(),
                                   [&](const Boil& other) { return other.number == boil.number; });
    if (same != result_.boils.end()) {
      report_duplicate(context_, Code::duplicate, "the boil", std::string(written.text()),
                       boil.span, same->span, "put both into one, or number the second anew");
      good_ = false;
      return;
    }
    result_.boils.push_back(std::move(boil));
  }

  Context& context_;
  Batch& result_;
  bool good_ = true;
};

}  // namespace

void resolve_batch(Context& context, View declaration, Batch& result) {
  const View name = text_child(declaration);
  result.name = text_of(name);
  result.span = name.span();
  BatchReader(context, result).read(declaration);
  std::sort(result.boils.begin(), result.boils.end(),
            [](const Boil& a, const Boil& b) { return a.number < b.number; });
  for (const Batch& other : context.program.batches) {
    if (&other == &result) break;
    if (other.name != result.name) continue;
    report_duplicate(context, Code::duplicate, "the batch", result.name, result.span, other.span);
    result.poisoned = true;
    break;
  }
}

}  // namespace maslin::language
